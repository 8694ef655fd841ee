package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.core.uncertainty.MonteCarloResult;
import dev.tipwright.examples.read.Job;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.swingweight.ClubBalance;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How sure the numbers of the practice set are, against an independent working. */
class UncertaintyTest {

    private static final Job JOB =
            JobFolder.read(Scenario.named("practice-set").folder()).job().orElseThrow();
    private static final BenchUncertainty BENCH = JOB.bench().orElseThrow();
    private static final JobPlan PLAN = MainJob.plan(JOB);

    static List<Expected> expected() throws IOException {
        return Expected.in("practice-set-uncertainty.csv");
    }

    @ParameterizedTest
    @MethodSource("expected")
    void swingWeightIsAsSureAsWorkedOutElsewhere(Expected expected) {
        Budget budget = swingWeight(expected.club());
        double value = switch (expected.quantity()) {
            case "standard uncertainty" -> budget.standardUncertainty();
            case "expanded uncertainty, coverage factor 2" ->
                budget.expanded(Measure.TWO_SIGMA).uncertainty();
            case "share of centre of mass in the variance" ->
                line(budget, "centre of mass").share();
            default ->
                line(budget, expected.quantity().replace("contribution of ", ""))
                        .uncertainty();
        };
        // The step of an eighth of a rule's uncertainty, 49.6 um, is rounded to whole nanometres: 0.5 nm is one part in
        // 1e5 of a
        // contribution, and two parts of a share, which holds its square.
        assertThat(Math.abs(value - Double.parseDouble(expected.value())))
                .as(expected.toString())
                .isLessThanOrEqualTo(0.5 * Math.pow(10, -expected.decimals()) + 2e-5 * Math.abs(value));
    }

    /** 20 000 trials leave a standard uncertainty uncertain by 1 / sqrt(2 * 20000), half a per cent; four times that is allowed. */
    @ParameterizedTest
    @ValueSource(strings = {"6", "9", "gap"})
    void forSwingWeightFirstOrderAndMonteCarloAgree(String club) {
        Budget budget = swingWeight(club);
        MonteCarloResult run = MonteCarlo.of(20_000, 1).run(budget.measurand());
        assertThat(run.standardUncertainty() / budget.standardUncertainty()).isBetween(0.98, 1.02);
    }

    @Test
    void everyMeasureIsTheNumberThatThePlanPrints() {
        for (ClubPlan club : PLAN.clubs()) {
            club.reports()
                    .forEach(report -> report.measures().forEach(measure -> {
                        Budget budget = measure.budget(club.after(), BENCH).orElseThrow();
                        report.headline().stream()
                                .filter(term -> term.meaning().equals(measure.meaning())
                                        && !term.symbol().equals("reads"))
                                .forEach(term -> assertThat(
                                                measure.term(measure.symbol(), measure.meaning(), budget.value())
                                                        .text(dev.tipwright.core.quantity.Units.METRIC))
                                        .isEqualTo(nearest(term).text(dev.tipwright.core.quantity.Units.METRIC)));
                    }));
        }
    }

    /** What the plan rounds to the safe side, rounded as a measure is. */
    private static Term nearest(Term term) {
        return term instanceof Term.OfSafeLength safe ? Term.of(safe.symbol(), safe.meaning(), safe.value()) : term;
    }

    private static Budget swingWeight(String label) {
        ClubPlan club = PLAN.club(label);
        return club.report(ClubBalance.class)
                .pointsMeasure()
                .budget(withoutTipWeight(club), BENCH)
                .orElseThrow();
    }

    /** The independent working is that of the clubs before a tip weight is put in. */
    private static dev.tipwright.core.club.Build withoutTipWeight(ClubPlan club) {
        return club.after()
                .withWork(club.after().work().withAttached(club.before().work().attached()));
    }

    private static Contribution line(Budget budget, String input) {
        return budget.contributions().stream()
                .filter(line -> line.input().name().equals(input))
                .findFirst()
                .orElseThrow();
    }
}
