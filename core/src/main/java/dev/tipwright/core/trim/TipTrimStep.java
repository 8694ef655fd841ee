package dev.tipwright.core.trim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.UncertainClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The step that trims tips by a chart, corrected for how high each bore sits. It also settles how far the tip is to go in: as the
 * build's work says, or to the bottom of a blind bore.
 *
 * <pre>{@code
 * TipTrimStep step = TipTrimStep.by(Samples.chart(), Length.parse("1/16 in"));
 * StepOutcome outcome = step.take(Samples.set().club("6"));
 * outcome.after().work().tipTrim().inches();              // = 0.5
 * outcome.after().work().seat().insertion().inches();     // = 1.25
 * }</pre>
 */
public final class TipTrimStep implements WorkStep {

    private static final Measure BOTTOM = Measure.length(
            "G", "bore bottom to ground", build -> build.parts().head().bottomToGround());

    private final TrimChart chart;
    private final Length kerf;
    private final Function<Build, Length> doubt;

    private TipTrimStep(TrimChart chart, Length kerf, Function<Build, Length> doubt) {
        this.chart = chart;
        this.kerf = kerf;
        this.doubt = doubt;
    }

    /**
     * A step that trims by a chart.
     *
     * @param chart the shaft maker's chart
     * @param kerf width of the saw cut; zero or more
     * @return the step
     */
    public static TipTrimStep by(TrimChart chart, Length kerf) {
        return new TipTrimStep(Require.given("chart", chart), Require.notNegative("kerf", kerf), build -> Length.ZERO);
    }

    /**
     * This step with the uncertainty of the height at which a tip ends, from hosel mouth to ground and the depth of the bore. A
     * correction no greater than that is made all the same, and is said to be in doubt.
     *
     * @param doubt expanded uncertainty of the height; zero or more
     * @return a copy that differs in that alone
     */
    public TipTrimStep withDoubt(Length doubt) {
        Require.notNegative("doubt", doubt);
        return new TipTrimStep(chart, kerf, build -> doubt);
    }

    /**
     * The same step where the height is known by the instruments of a bench: a correction is in doubt up to the expanded
     * uncertainty of the bore bottom over the ground.
     *
     * @param bench what head and bore were measured with
     * @return a copy that differs in that alone
     */
    public TipTrimStep measuredWith(BenchUncertainty bench) {
        Require.given("bench", bench);
        return new TipTrimStep(
                chart,
                kerf,
                build -> UncertainClub.of(build, bench)
                        .budget(BOTTOM)
                        .map(budget -> Length.ofMillimetres(
                                budget.expanded(Measure.TWO_SIGMA).uncertainty()))
                        .orElse(Length.ZERO));
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        Head head = build.parts().head();
        Shaft shaft = build.parts().shaft();
        Seat seat = build.work().seat();
        if (seat.equals(Seat.APART)) {
            if (head.bore().end() == BoreEnd.THROUGH) {
                return StepOutcome.notTaken(build, Finding.stop(TrimCode.NO_STOP));
            }
            seat = Seat.onBottomOf(head.bore());
        }
        Build seated = build.withWork(build.work().withSeat(seat));
        Optional<Length> row = chart.trim(head.label(), shaft.blank().label());
        if (row.isEmpty()) {
            return StepOutcome.notTaken(
                    seated,
                    Finding.stop(
                            TrimCode.NOT_ON_CHART,
                            Term.of("club", "club", head.label()),
                            Term.of("blank", "blank", shaft.blank().label())));
        }
        TipTrim trim = new TipTrim(
                row.get(), head.bottomToGround(), head.bore().depth(), seat.insertion(), chart.groundReference(), kerf);
        return made(seated, trim, trim.correction().equals(Length.ZERO) ? Length.ZERO : doubt.apply(build));
    }

    private static StepOutcome made(Build build, TipTrim trim, Length doubt) {
        Shaft shaft = build.parts().shaft();
        Term term = Term.atMost("T", "tip trim", trim.trim());
        List<Finding> findings = new ArrayList<>();
        if (!trim.correction().equals(Length.ZERO)) {
            findings.add(correction(trim, doubt));
        }
        if (trim.trim().nanometres() < 0) {
            findings.add(Finding.caution(TrimCode.CANNOT_TRIM, Term.of("T", "tip trim", trim.trim())));
            return StepOutcome.of(build.withWork(build.work().withTipTrim(Length.ZERO)), findings, trim);
        }
        Length used = trim.trim().plus(trim.insertion());
        if (!used.plus(build.work().buttTrim()).lessThan(shaft.length())) {
            findings.add(Finding.stop(TrimCode.SHAFT_TOO_SHORT, term, Term.of("R", "raw length", shaft.length())));
            return StepOutcome.of(build, findings, trim);
        }
        Term insertion = Term.of("i", "insertion", trim.insertion());
        if (used.moreThan(shaft.section().outside().to())) {
            findings.add(Finding.stop(
                    TrimCode.TIP_NOT_READ,
                    Term.of("z", "measured up to", shaft.section().outside().to()),
                    term,
                    insertion));
        }
        Length parallel = shaft.blank().parallelTip();
        if (parallel.moreThan(Length.ZERO) && used.moreThan(parallel)) {
            findings.add(Finding.caution(
                    TrimCode.PAST_PARALLEL, term, insertion, Term.of("p", "parallel section", parallel)));
        }
        return StepOutcome.of(build.withWork(build.work().withTipTrim(trim.trim())), findings, trim);
    }

    private static Finding correction(TipTrim trim, Length doubt) {
        Length correction = trim.correction();
        boolean doubted = !correction.abs().moreThan(doubt);
        Term toGround = Term.of("t", "tip end to ground", trim.groundReference().plus(correction));
        Term assumed = Term.of("G_ref", "bore bottom to ground the chart assumes", trim.groundReference());
        Term corrected = Term.of("c", "correction", correction);
        Term chart = Term.of("chart", "what the chart says", trim.chart());
        return doubted
                ? Finding.note(
                        TrimCode.CORRECTION_IN_DOUBT,
                        toGround,
                        assumed,
                        corrected,
                        chart,
                        Term.of("u", "uncertainty of the height", doubt))
                : Finding.note(TrimCode.BORE_CORRECTED, toGround, assumed, corrected, chart);
    }
}
