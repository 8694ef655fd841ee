package dev.tipwright.swingweight;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.swingweight.aim.AimCode;
import dev.tipwright.swingweight.aim.MassForTarget;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fits, cuts and weighs in one step, because a tip weight can undo the fit: a flange under the tip lifts it out of the bore. The
 * steps for fit and cut are taken, and before them the trim if the chart is to be corrected for the flange too; if the club is then off
 * its target, the stock is looked through. One piece that leaves the tip where it is will do if it brings the club near enough, or two
 * of them if two may be and one is not enough; else the nearest is taken of those and of each piece whose flange lifts the tip. For
 * each such piece the club goes back through the steps once, seated on the flange, so that its swing weight is that of the club as it
 * would be built; a flange that brings a stop, such as too short an insertion, is passed over. Of equals, to a billionth of a point, it is
 * what has no flange. Only the reports of the club as it is to be built
 * are given.
 *
 * <pre>{@code
 * List<WorkStep> fitAndCut = List.of(CutToLengthStep.to(Samples.lengths(), Length.parse("1/16 in")));
 * TipWeightStep step = TipWeightStep.of(fitAndCut, Samples.targets(), Samples.tipWeights(), 2);
 * step.take(Samples.build()).reports().size();   // = 2
 * }</pre>
 */
public final class TipWeightStep implements WorkStep {

    private final List<WorkStep> fitAndCut;
    private final SwingWeightTargets targets;
    private final List<TipWeight> stock;
    private final int most;

    private TipWeightStep(List<WorkStep> fitAndCut, SwingWeightTargets targets, List<TipWeight> stock, int most) {
        this.fitAndCut = fitAndCut;
        this.targets = targets;
        this.stock = stock;
        this.most = most;
    }

    /** A club on its way through the steps, with all that was said of it and what was chosen for it. */
    private record Pass(Build build, List<Finding> findings, List<StepReport> reports, Optional<StockChoice> choice) {

        Pass through(WorkStep step) {
            StepOutcome outcome = step.take(build);
            List<Finding> moreFindings = new ArrayList<>(findings);
            moreFindings.addAll(outcome.findings());
            List<StepReport> moreReports = new ArrayList<>(reports);
            moreReports.addAll(outcome.reports());
            return new Pass(outcome.after(), moreFindings, moreReports, choice);
        }

        Pass with(StockChoice choice) {
            List<Finding> more = new ArrayList<>(findings);
            more.addAll(choice.findings());
            return new Pass(choice.after(), more, reports, Optional.of(choice));
        }

        long stops() {
            return findings.stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .count();
        }
    }

    /**
     * A step that fits, cuts and weighs.
     *
     * @param fitAndCut the steps that a changed insertion sends the club back through, in their order; they honour a seat that is
     *     given; may be empty
     * @param targets the scale and what each club is to read on it
     * @param stock tip weights there are, one entry a piece, at most 1000; may be empty
     * @param most how many may go into one tip, 1 or 2
     * @return the step
     */
    public static TipWeightStep of(
            List<WorkStep> fitAndCut, SwingWeightTargets targets, List<TipWeight> stock, int most) {
        List<WorkStep> steps = Require.list("fitAndCut", fitAndCut);
        Require.given("targets", targets);
        List<TipWeight> pieces = Require.list("stock", stock);
        Require.that(pieces.size() <= 1000, "stock", "must be at most 1000 pieces", pieces.size());
        Require.that(most == 1 || most == 2, "most", "must be 1 or 2", most);
        return new TipWeightStep(steps, targets, pieces, most);
    }

    @Override
    public StepOutcome take(Build build) {
        Pass fitted = fitted(Require.given("build", build));
        Optional<SwingWeightTarget> target = targets.target(build.label());
        Pass best =
                target.isPresent() && low(fitted.build(), target.get()) ? best(build, fitted, target.get()) : fitted;
        Pass weighed = best.through(SwingWeightStep.towards(targets, List.of()));
        Optional<StockChoice> choice =
                best.choice().filter(chosen -> !chosen.pieces().isEmpty());
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : weighed.findings()) {
            findings.add(choice.isPresent() ? ofOwnWeight(finding, weighed.build()) : finding);
        }
        if (choice.isPresent() && StockChoice.insideOfTip(weighed.build()).isEmpty()) {
            findings.add(Finding.caution(SwingWeightCode.INSIDE_UNKNOWN));
        }
        List<StepReport> reports = weighed.reports().stream()
                .map(report -> choice.isPresent() && report instanceof ClubBalance balance
                        ? ofOwnWeight(balance, choice.get())
                        : report)
                .toList();
        return new StepOutcome(weighed.build(), findings, reports);
    }

    /** Whether the club reads too little and nothing is in its tip yet. */
    private boolean low(Build build, SwingWeightTarget target) {
        if (!seated(build) || build.work().attached().stream().anyMatch(TipWeight.class::isInstance)) {
            return false;
        }
        double over = Balance.of(build).on(targets.scale()).over(target.wanted());
        return over < -target.within();
    }

    /** The weighing does not know that the weight in the tip was just chosen. */
    private Finding ofOwnWeight(Finding finding, Build build) {
        return finding.code() == SwingWeightCode.TIP_WEIGHT_IN_PLACE
                ? Finding.caution(
                        SwingWeightCode.STOCK_NOT_ENOUGH,
                        finding.term("off"),
                        finding.term("m"),
                        Term.of(
                                "reads",
                                "swing weight",
                                targets.scale().designation(Balance.of(build).on(targets.scale()))))
                : finding;
    }

    private ClubBalance ofOwnWeight(ClubBalance balance, StockChoice choice) {
        Balance before = Balance.of(choice.build());
        Length place = MassForTarget.fromTop(choice.build(), choice.pieces().get(0));
        return new ClubBalance(
                balance.scale(),
                before,
                balance.after(),
                balance.target(),
                MassForTarget.at(before, balance.scale(), choice.wanted(), place),
                choice.pieces(),
                balance.assumptions());
    }

    private static boolean seated(Build build) {
        return build.work().seat().insertion().moreThan(Length.ZERO);
    }

    private Pass fitted(Build build) {
        Pass pass = new Pass(build, List.of(), List.of(), Optional.empty());
        for (WorkStep step : fitAndCut) {
            pass = pass.through(step);
        }
        return pass;
    }

    private Pass best(Build build, Pass fitted, SwingWeightTarget target) {
        List<TipWeight> plain =
                stock.stream().filter(piece -> !lifts(fitted.build(), piece)).toList();
        StockChoice choice = StockChoice.of(fitted.build(), targets.scale(), target.wanted(), plain, 1);
        if (most == 2 && !target.metBy(choice.reads())) {
            choice = StockChoice.of(fitted.build(), targets.scale(), target.wanted(), plain, 2);
        }
        Pass best = fitted.with(choice);
        if (target.metBy(choice.reads())) {
            return best;
        }
        for (TipWeight piece : stock) {
            if (lifts(fitted.build(), piece)) {
                Optional<Pass> flanged = onFlange(build, fitted, target, piece);
                if (flanged.isPresent()
                        && flanged.get().stops() <= fitted.stops()
                        && off(flanged.get(), target) < off(best, target)) {
                    best = flanged.get();
                }
            }
        }
        return best;
    }

    private double off(Pass pass, SwingWeightTarget target) {
        double off = Balance.of(pass.build()).on(targets.scale()).over(target.wanted());
        return Math.rint(Math.abs(off) * 1e9);
    }

    /** Whether a piece goes in and its flange lifts the tip. */
    private static boolean lifts(Build build, TipWeight piece) {
        return SwingWeightStep.enters(piece, StockChoice.insideOfTip(build))
                && StockChoice.seatOn(build, piece.flange())
                        .filter(seat -> !seat.equals(build.work().seat()))
                        .isPresent();
    }

    /** The club once more through fit and cut, its tip seated on the flange; empty if it does not stay there. */
    private Optional<Pass> onFlange(Build build, Pass fitted, SwingWeightTarget target, TipWeight piece) {
        Seat lifted = StockChoice.seatOn(fitted.build(), piece.flange()).orElseThrow();
        Pass again = fitted(build.withWork(build.work().withSeat(lifted).withTip(TipWork.NONE)));
        if (!again.build().work().seat().equals(lifted)) {
            return Optional.empty();
        }
        StockChoice choice = new StockChoice(again.build(), targets.scale(), target.wanted(), List.of(piece), 0);
        Pass with = again.with(choice);
        List<Finding> findings = new ArrayList<>(with.findings());
        findings.add(Finding.note(
                AimCode.FLANGE_REFITTED,
                Term.of(
                        "before",
                        "insertion without it",
                        fitted.build().work().seat().insertion()),
                Term.of("i", "insertion", lifted.insertion())));
        return Optional.of(new Pass(with.build(), findings, with.reports(), with.choice()));
    }
}
