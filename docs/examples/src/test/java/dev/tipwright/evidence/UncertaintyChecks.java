package dev.tipwright.evidence;

import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.DegreesOfFreedom;
import dev.tipwright.core.uncertainty.Distribution;
import dev.tipwright.core.uncertainty.Expanded;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Interval;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.core.uncertainty.MonteCarloResult;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** How sure a number is. */
final class UncertaintyChecks {

    private static final int TRIALS = 200_000;
    private static final long SEED = 20_260_101;

    /** 68.27, 95.45 and 99.73 per cent stand for one, two and three standard deviations: erf(k / sqrt 2). */
    private static final Map<String, Double> PROBABILITIES = Map.of(
            "t_68_27", 0.682689492137086,
            "t_90", 0.90,
            "t_95", 0.95,
            "t_95_45", 0.954499736103642,
            "t_99", 0.99,
            "t_99_73", 0.997300203936740);

    private UncertaintyChecks() {}

    static void budget(Tally tally) {
        Budget budget = Budget.of(gauge(tally));
        tally.cases("uncertainty-end-gauge")
                .forEach(row -> row.check(
                        "contribution_nm",
                        "contribution",
                        "nm",
                        contribution(budget, row.text("input")),
                        printed(row)));
        Expanded expanded = budget.expanded(0.99);
        result(tally, "length of the gauge", budget.value() / 1e6);
        result(tally, "combined standard uncertainty", budget.standardUncertainty());
        result(
                tally,
                "effective degrees of freedom",
                budget.degreesOfFreedom().count().orElseThrow());
        result(tally, "t factor for 99 per cent", expanded.coverageFactor());
        result(tally, "expanded uncertainty for 99 per cent", expanded.uncertainty());
        tally.cases("uncertainty-t-factors").forEach(UncertaintyChecks::factors);
    }

    /** {@code l = ls + d - ls (da t + as dt)}, nanometres, in the order of the table. */
    private static Measurand gauge(Tally tally) {
        List<Input> inputs = tally.cases("uncertainty-end-gauge")
                .map(UncertaintyChecks::input)
                .toList();
        return Measurand.of("l", "nm", Inputs.of(inputs), x -> x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]));
    }

    private static Input input(Case row) {
        double value = row.number("value") * (row.text("unit").equals("mm") ? 1e6 : 1);
        Input input = Input.ofStandard(
                row.text("input"), row.text("uncertainty_unit"), value, row.number("standard_uncertainty"));
        return row.has("degrees_of_freedom")
                ? input.withDegreesOfFreedom(DegreesOfFreedom.of(row.number("degrees_of_freedom")))
                : input;
    }

    private static double contribution(Budget budget, String input) {
        return budget.contributions().stream()
                .filter(line -> line.input().name().equals(input))
                .mapToDouble(Contribution::uncertainty)
                .map(Math::abs)
                .findFirst()
                .orElseThrow();
    }

    private static Bound printed(Case row) {
        return row.text("input").equals("dt")
                ? Bound.of(0.1, "printed as 16.6, where its own numbers give 16.675")
                : Bound.of(0.05, "half the last digit printed, 0.1 nm");
    }

    private static void result(Tally tally, String quantity, double found) {
        Case row = tally.only("uncertainty-end-gauge-result", "quantity", quantity);
        String unit = row.text("unit").equals("1") ? "" : row.text("unit");
        row.check("value", quantity, unit, found, Bound.PRINTED);
    }

    private static void factors(Case row) {
        DegreesOfFreedom nu = row.has("degrees_of_freedom")
                ? DegreesOfFreedom.of(row.number("degrees_of_freedom"))
                : DegreesOfFreedom.INFINITE;
        PROBABILITIES.forEach((column, probability) ->
                row.check(column, "coverage factor", "", nu.coverageFactor(probability), Bound.PRINTED));
    }

    static void monteCarlo(Tally tally) {
        MonteCarloResult normal = run(Distribution.NORMAL);
        MonteCarloResult rectangular = run(Distribution.RECTANGULAR);
        tally.cases("uncertainty-sums").forEach(row -> {
            MonteCarloResult sum = row.text("inputs").equals("four normal") ? normal : rectangular;
            boolean standard = row.text("quantity").equals("standard uncertainty");
            double found = standard ? sum.standardUncertainty() : halfWidth(sum);
            row.check("value", row.text("inputs") + ", " + row.text("quantity"), "", found, sampling(standard));
        });
        MonteCarloResult gauge = MonteCarlo.of(TRIALS, SEED).run(gauge(tally));
        tally.only(
                        "uncertainty-end-gauge-result",
                        "quantity",
                        "combined standard uncertainty with terms of second order")
                .check(
                        "value",
                        "standard uncertainty of the end gauge",
                        "nm",
                        gauge.standardUncertainty(),
                        Bound.PRINTED);
    }

    private static MonteCarloResult run(Distribution distribution) {
        List<Input> inputs = IntStream.range(0, 4)
                .mapToObj(i -> Input.ofStandard("x" + i, "1", 0, 1).withDistribution(distribution))
                .toList();
        Measurand sum = Measurand.of("sum", "1", Inputs.of(inputs), x -> x[0] + x[1] + x[2] + x[3]);
        return MonteCarlo.of(TRIALS, SEED).run(sum);
    }

    private static double halfWidth(MonteCarloResult sum) {
        Interval interval = sum.symmetricInterval(0.95);
        return interval.width() / 2;
    }

    /** Four standard errors: of a standard deviation of 2, which is exact, and of a quantile where the density is 0.029 or more. */
    private static Bound sampling(boolean standard) {
        String reason = "four standard errors of 200 000 trials";
        return standard
                ? Bound.of(4 * 2 / Math.sqrt(2.0 * TRIALS), reason)
                : Bound.printedAnd(4 * Math.sqrt(0.025 * 0.975 / TRIALS) / 0.029, "half the last digit, and " + reason);
    }
}
