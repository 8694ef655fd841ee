package dev.tipwright.fitcheck;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.Optional;

/**
 * The step that makes a tip seat: it settles the insertion, strips the finish over it, works the tip down to the wanted clearance,
 * and holds the result against the caller's limits. It needs the tip trim.
 *
 * <pre>{@code
 * JobPlanner planner = JobPlanner.of(
 *         TipTrimStep.by(Samples.chart(), Length.parse("1/16 in")),
 *         TipFitStep.with(FitTarget.of(Length.parse(".004 in"))));
 * TipFit fit = planner.plan(Samples.set()).club("6").report(TipFit.class);
 * fit.insertion().inches();               // = 1.25
 * fit.seated().least().thousandths();     // = 4.0
 * }</pre>
 */
public final class TipFitStep implements WorkStep {

    private final FitTarget target;

    private TipFitStep(FitTarget target) {
        this.target = target;
    }

    /**
     * A step that works tips to a target.
     *
     * @param target wanted clearance and limits
     * @return the step
     */
    public static TipFitStep with(FitTarget target) {
        return new TipFitStep(Require.given("target", target));
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        Bore bore = build.parts().head().bore();
        Seat given = build.work().seat();
        if (given.equals(Seat.APART) && bore.end() == BoreEnd.THROUGH) {
            return StepOutcome.notTaken(build, Finding.stop(FitCode.NO_STOP));
        }
        Seat seat = given.equals(Seat.APART) ? Seat.onBottomOf(bore) : given;
        Optional<Finding> hindrance = hindrance(build, seat.insertion());
        if (hindrance.isPresent()) {
            return StepOutcome.notTaken(build, hindrance.get());
        }
        TipSection tip = TipSection.of(build);
        if (!tip.leavesStructure()) {
            return StepOutcome.notTaken(build, Finding.stop(FitCode.FINISH_TOO_THICK));
        }
        DiameterProfile stripped = tip.stripped();
        TipFit fit = TipFit.of(tip, stripped, bore, seat.insertion(), target.clearance());
        Work seated = given.equals(seat) ? build.work() : build.work().withSeat(seat);
        Work work = seated.withTip(new TipWork(seat.insertion(), fit.removal().finished()));
        return StepOutcome.of(build.withWork(work), FitFindings.of(build, fit, stripped, target), fit);
    }

    /** What keeps the step from being worked out at all, before anything is asked of the tip. */
    private Optional<Finding> hindrance(Build build, Length insertion) {
        Length outside = build.parts().shaft().section().outside().to();
        Length read = outside.minus(build.work().tipTrim()).max(Length.ZERO);
        if (insertion.moreThan(read)) {
            return Optional.of(Finding.stop(
                    FitCode.TIP_NOT_READ, Term.of("z", "measured up to", read), Term.of("i", "insertion", insertion)));
        }
        Bore bore = build.parts().head().bore();
        Length clearance = target.clearance();
        if (clearance.nanometres() < Stations.of(bore.profile().stations()).narrowestNanometres()) {
            return Optional.empty();
        }
        Length narrowest = Extremes.narrowest(bore, insertion);
        return clearance.lessThan(narrowest)
                ? Optional.empty()
                : Optional.of(Finding.stop(
                        FitCode.BORE_TOO_NARROW,
                        Term.fine("w", "wanted clearance", clearance),
                        Term.fine("D", "narrowest bore", narrowest)));
    }
}
