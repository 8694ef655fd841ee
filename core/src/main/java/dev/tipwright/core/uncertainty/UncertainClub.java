package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A club with all its work and what may be off with it, ready for the budgets of many measures.
 *
 * <p>A first-order budget looks at each input a step above and a step below its estimate. Those clubs are the same
 * whatever is measured of them, so they are made once, here, and not again for each measure.
 *
 * <pre>{@code
 * Measure mouth = Measure.length("H", "mouth to ground", build -> build.parts().head().geometry().mouthToGround());
 * UncertainClub club = UncertainClub.of(Samples.build(), Samples.bench());
 * Budget budget = club.budget(mouth).orElseThrow();
 * budget.largest().orElseThrow().input().name();  // = mouth to ground
 * }</pre>
 */
public final class UncertainClub {

    private final Build build;
    private final Nudge[] nudges;
    private final Inputs inputs;
    /** The clubs a step below and those a step above each input; empty where there is no such club. */
    private final List<Optional<Build>> below;

    private final List<Optional<Build>> above;

    private UncertainClub(Build build, List<BuildInput> uncertain) {
        this.build = build;
        this.nudges = uncertain.stream().map(BuildInput::nudge).toArray(Nudge[]::new);
        this.inputs = Inputs.of(uncertain.stream().map(BuildInput::input).toList());
        this.below = stepped(-1);
        this.above = stepped(1);
    }

    /**
     * A club and the bench it is made on.
     *
     * @param build the club with all its work
     * @param bench what it was measured and is made with
     * @return both
     */
    public static UncertainClub of(Build build, BenchUncertainty bench) {
        Require.given("build", build);
        return new UncertainClub(build, Require.given("bench", bench).inputs(build));
    }

    /**
     * A measure of this club, ready for a {@link Budget}, a {@link LinearityCheck} or a {@link MonteCarlo} run.
     *
     * @param measure what to measure
     * @return the measurand
     */
    public Measurand measurand(Measure measure) {
        Require.given("measure", measure);
        return Measurand.of(
                measure.meaning(),
                measure.kind().unit(),
                inputs,
                deltas -> measure.value().applyAsDouble(at(deltas)));
    }

    /**
     * The first-order budget of a measure of this club.
     *
     * @param measure what to measure
     * @return the budget; empty where the club, or one a step of an input away from it, cannot be built, so that there
     *     is no number to be sure of
     */
    public Optional<Budget> budget(Measure measure) {
        Measurand measurand = measurand(measure);
        try {
            return Optional.of(Budget.of(measurand));
        } catch (IllegalArgumentException | ArithmeticException notBuilt) {
            return Optional.empty();
        }
    }

    private double step(int i) {
        return FirstOrder.STEP * inputs.at(i).standardUncertainty();
    }

    private List<Optional<Build>> stepped(int way) {
        return IntStream.range(0, nudges.length)
                .mapToObj(i -> stepped(i, way * step(i)))
                .toList();
    }

    private Optional<Build> stepped(int i, double step) {
        try {
            return Optional.of(step == 0 ? build : nudges[i].by(build, step));
        } catch (IllegalArgumentException | ArithmeticException notBuilt) {
            return Optional.empty();
        }
    }

    /** The club with these errors. */
    private Build at(double[] deltas) {
        int only = onlyOne(deltas);
        Optional<Build> made = only >= 0 && Double.compare(Math.abs(deltas[only]), step(only)) == 0
                ? (deltas[only] < 0 ? below : above).get(only)
                : Optional.empty();
        return made.orElseGet(() -> moved(deltas));
    }

    private Build moved(double[] deltas) {
        Draft draft = new Draft(build);
        for (int i = 0; i < nudges.length; i++) {
            if (deltas[i] != 0) {
                draft.move(nudges[i], deltas[i]);
            }
        }
        return draft.build();
    }

    /** The index of the only error that is not zero; -1 where there is none or more than one. */
    private static int onlyOne(double[] deltas) {
        int only = -1;
        for (int i = 0; i < deltas.length; i++) {
            if (deltas[i] != 0) {
                if (only >= 0) {
                    return -1;
                }
                only = i;
            }
        }
        return only;
    }
}
