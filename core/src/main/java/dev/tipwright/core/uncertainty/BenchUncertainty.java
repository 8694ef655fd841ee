package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.HeadCentreRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The instruments of a bench and what each is used for: from this the uncertain inputs of any club follow.
 *
 * <p>An instrument's own uncertainty is there anew in each reading, so every reading is an input by itself. What all
 * its readings share is one input that moves them all together: a scale that weighs 0.1 g too much does so for head,
 * shaft and grip.
 *
 * <pre>{@code
 * BenchUncertainty bench = BenchUncertainty.of(
 *         BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 0, 0.1), BenchInput.MASS),
 *         BenchUncertainty.Tool.of(Instrument.ofStandard("rule", "mm", 0.4, 0), BenchInput.RAW_LENGTH, BenchInput.CUTS));
 * Measure total = new Measure("m", "head and grip", Measure.Kind.MASS, build ->
 *         build.parts().head().mass().mass().plus(build.parts().grip().mass()).grams());
 * Math.round(1000 * total.budget(Samples.build(), bench).orElseThrow().standardUncertainty());   // = 200
 * }</pre>
 *
 * @param tools the instruments; one or more, each input of the bench at most once
 */
public record BenchUncertainty(List<Tool> tools) {

    /**
     * Checks the value.
     *
     * @param tools the instruments; one or more, each input of the bench at most once
     */
    public BenchUncertainty {
        tools = Require.someOf("tools", tools);
        Require.distinct(
                "tools", tools.stream().flatMap(tool -> tool.uses().stream()).toList(), use -> use);
        Require.distinct("tools", tools, tool -> tool.instrument().name());
    }

    /**
     * An instrument and what it is used for.
     *
     * @param instrument the instrument, in the unit of what it is used for
     * @param uses one or more
     */
    public record Tool(Instrument instrument, List<BenchInput> uses) {

        /**
         * The least uncertainty but zero, in the unit of the instrument: below it sensitivities would be lost in the nanometre or picogram
         * that measured values are rounded to.
         */
        public static final double LEAST = 1e-4;

        /**
         * Checks the values.
         *
         * @param instrument the instrument, in the unit of what it is used for; each uncertainty of it zero, or at
         *     least 0.0001 mm or 0.0001 g
         * @param uses one or more
         */
        public Tool {
            Require.given("instrument", instrument);
            uses = Require.someOf("uses", uses);
            for (BenchInput use : uses) {
                Require.that(
                        use.unit().equals(instrument.unit()),
                        "instrument",
                        "must be in " + use.unit() + " for " + use,
                        instrument.unit());
            }
            coarse(instrument.ownUncertainty(), instrument);
            coarse(instrument.sharedUncertainty(), instrument);
        }

        private static void coarse(double uncertainty, Instrument instrument) {
            Require.that(
                    uncertainty == 0 || uncertainty >= LEAST,
                    "instrument",
                    "must have uncertainties of 0 or at least " + LEAST + " " + instrument.unit(),
                    uncertainty);
        }

        /**
         * An instrument and what it is used for.
         *
         * @param instrument the instrument
         * @param uses one or more
         * @return both
         */
        public static Tool of(Instrument instrument, BenchInput... uses) {
            return new Tool(instrument, Arrays.asList(Require.given("uses", uses)));
        }

        private void addTo(List<BuildInput> inputs, Build build) {
            List<BenchInput.Named> readings =
                    uses.stream().flatMap(use -> use.of(build).stream()).toList();
            boolean onlyShared = instrument.ownUncertainty() == 0 && instrument.sharedUncertainty() > 0;
            if (!onlyShared) {
                readings.forEach(reading ->
                        inputs.add(new BuildInput(instrument.ownReading(reading.name(), 0), reading.nudge())));
            }
            Optional<Nudge> all = readings.stream().map(BenchInput.Named::nudge).reduce(Nudge::and);
            if (instrument.sharedUncertainty() > 0 && all.isPresent()) {
                inputs.add(new BuildInput(instrument.sharedError("all by " + instrument.name()), all.get()));
            }
        }
    }

    /**
     * A bench with these instruments.
     *
     * @param tools the instruments
     * @return the bench
     */
    public static BenchUncertainty of(Tool... tools) {
        return new BenchUncertainty(Arrays.asList(Require.given("tools", tools)));
    }

    /**
     * This bench as if some things were known exactly: what is left says what a better reading of them would be worth.
     *
     * @param known what counts as known; at least one other use must be left
     * @return the bench without these
     */
    public BenchUncertainty without(BenchInput... known) {
        List<BenchInput> gone = Require.all("known", known);
        List<Tool> left = keeping(use -> !gone.contains(use));
        Require.that(!left.isEmpty(), "known", "must leave a use of one instrument", gone);
        return new BenchUncertainty(left);
    }

    /**
     * This bench with some of its uses alone: for a number that comes from these only, the budget is the same and
     * sooner worked out.
     *
     * @param wanted the uses to keep
     * @return the bench with these uses; empty where it has none of them
     */
    public Optional<BenchUncertainty> only(BenchInput... wanted) {
        List<BenchInput> kept = Require.all("wanted", wanted);
        List<Tool> left = keeping(kept::contains);
        return left.isEmpty() ? Optional.empty() : Optional.of(new BenchUncertainty(left));
    }

    private List<Tool> keeping(Predicate<BenchInput> wanted) {
        List<Tool> left = new ArrayList<>();
        for (Tool tool : tools) {
            List<BenchInput> uses = tool.uses().stream().filter(wanted).toList();
            if (!uses.isEmpty()) {
                left.add(new Tool(tool.instrument(), uses));
            }
        }
        return left;
    }

    /**
     * The uncertain inputs of a club. A head whose centre of mass was not measured has it as uncertain as {@link
     * HeadCentreRule} says, whatever the tools are.
     *
     * @param build the club
     * @return its inputs, in the order of the tools
     */
    public List<BuildInput> inputs(Build build) {
        Require.given("build", build);
        List<BuildInput> inputs = new ArrayList<>();
        tools.forEach(tool -> tool.addTo(inputs, build));
        if (!BenchInput.centreMeasured(build)) {
            double uncertainty = HeadCentreRule.STANDARD_UNCERTAINTY.millimetres();
            inputs.add(new BuildInput(
                    Input.ofStandard(Measure.HEAD_CENTRE, "mm", 0, uncertainty), BenchInput.HEAD_CENTRE_INPUT.nudge()));
        }
        return List.copyOf(inputs);
    }
}
