package dev.tipwright.swingweight;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.MassForTarget;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The step that predicts how each club will balance and brings it towards its swing weight with a tip weight from a stock, if it is
 * not near enough without; or with two, one on the other, if two may be and one is not near enough. It needs the cut.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * SwingWeightTarget two = new SwingWeightTarget("6", scale.parse("D2"), 0.5);
 * SwingWeightStep step = SwingWeightStep.towards(
 *         new SwingWeightTargets(scale, List.of(two)), Samples.tipWeights());   // a single one, of 4 g
 * ClubBalance report = (ClubBalance) step.take(Samples.build()).reports().get(0);
 * scale.designation(report.readsBefore());   // = C9.4
 * scale.designation(report.reads());         // = D1.2
 * }</pre>
 */
public final class SwingWeightStep implements WorkStep {

    private final SwingWeightTargets targets;
    private final List<TipWeight> stock;
    private final int most;

    private SwingWeightStep(SwingWeightTargets targets, List<TipWeight> stock, int most) {
        this.targets = targets;
        this.stock = stock;
        this.most = most;
    }

    /**
     * A step towards swing weights, with one tip weight at most.
     *
     * @param targets the scale and what each club is to read on it
     * @param stock tip weights there are; may be empty
     * @return the step
     */
    public static SwingWeightStep towards(SwingWeightTargets targets, List<TipWeight> stock) {
        return new SwingWeightStep(Require.given("targets", targets), Require.list("stock", stock), 1);
    }

    /**
     * A step towards swing weights, with as many tip weights as may go into one tip.
     *
     * @param targets the scale and what each club is to read on it
     * @param stock tip weights there are, one entry a piece, at most 1000; may be empty
     * @param most how many may go into one tip, 1 or 2
     * @return the step
     */
    public static SwingWeightStep towards(SwingWeightTargets targets, List<TipWeight> stock, int most) {
        Require.given("targets", targets);
        List<TipWeight> pieces = Require.list("stock", stock);
        Require.that(pieces.size() <= 1000, "stock", "must be at most 1000 pieces", pieces.size());
        Require.that(most == 1 || most == 2, "most", "must be 1 or 2", most);
        return new SwingWeightStep(targets, pieces, most);
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        if (build.work().seat().insertion().equals(Length.ZERO)) {
            return StepOutcome.notTaken(build, Finding.stop(SwingWeightCode.NOT_SEATED));
        }
        Length read = build.parts()
                .shaft()
                .section()
                .outside()
                .to()
                .minus(build.work().tipTrim());
        Length reach = build.work().tip().reach();
        if (reach.moreThan(Length.ZERO) && reach.moreThan(read)) {
            return StepOutcome.notTaken(
                    build,
                    Finding.stop(
                            SwingWeightCode.TIP_NOT_READ,
                            Term.of("z", "work reaches", reach),
                            Term.of("read", "measured up to", read)));
        }
        List<Finding> findings = new ArrayList<>(2);
        Optional<SwingWeightTarget> target = targets.target(build.label());
        Balance before = Balance.of(build);
        FirstMoment moment = before.momentAbout(targets.scale().fulcrum());
        SwingWeight reads = targets.scale().read(moment);
        List<TipWeight> chosen = List.of();
        Optional<Mass> exact = Optional.empty();
        if (target.isEmpty()) {
            findings.add(Finding.note(SwingWeightCode.NO_TARGET, reads(reads)));
        } else {
            SwingWeight wanted = target.get().wanted();
            exact = MassForTarget.at(before, targets.scale(), wanted, weightFromTop(build));
            chosen = towards(build, target.get(), moment, exact, findings);
        }
        Build after = build;
        Balance balance = before;
        for (TipWeight weight : chosen) {
            after = after.withWork(after.work().plus(weight));
            balance = balance.plus(part(build, weight));
        }
        unsure(build, findings);
        ClubBalance report =
                new ClubBalance(targets.scale(), before, balance, target, exact, chosen, AssumedReadings.of(build));
        return StepOutcome.of(after, findings, report);
    }

    private List<TipWeight> towards(
            Build build, SwingWeightTarget target, FirstMoment moment, Optional<Mass> exact, List<Finding> findings) {
        SwingWeight reads = targets.scale().read(moment);
        double over = reads.over(target.wanted());
        Term off = Term.number("off", "points off", Math.abs(over));
        if (target.metBy(reads)) {
            findings.add(Finding.note(
                    SwingWeightCode.ON_TARGET,
                    reads(reads),
                    off,
                    Term.of("wanted", "wanted", targets.scale().designation(target.wanted()))));
            return List.of();
        }
        Length tip = weightFromTop(build);
        if (exact.isEmpty() || tip.lessThan(targets.scale().fulcrum())) {
            findings.add(Finding.caution(
                    SwingWeightCode.TIP_NOT_PAST_FULCRUM,
                    off,
                    Term.of("x", "tip weight from the top", tip),
                    Term.of("F", "fulcrum", targets.scale().fulcrum())));
            return List.of();
        }
        Term mass = Term.of("m", "exact mass", exact.get().abs());
        if (over > 0) {
            findings.add(Finding.caution(SwingWeightCode.TOO_HEAVY, off, mass));
            return List.of();
        }
        if (weighted(build)) {
            findings.add(Finding.caution(SwingWeightCode.TIP_WEIGHT_IN_PLACE, off, mass));
            return List.of();
        }
        List<TipWeight> nearest = nearest(build, target, moment, usable(build, findings));
        if (nearest.isEmpty()) {
            findings.add(Finding.caution(SwingWeightCode.NOTHING_IN_STOCK, off, mass));
            return nearest;
        }
        SwingWeight then = with(nearest, build, moment);
        Mass together = nearest.stream().map(TipWeight::mass).reduce(Mass.ZERO, Mass::plus);
        Term chosen = Term.of("chosen", "chosen", together);
        findings.add(
                target.metBy(then)
                        ? Finding.note(SwingWeightCode.WEIGHT_CHOSEN, off, mass, chosen, reads(then))
                        : Finding.caution(SwingWeightCode.STOCK_NOT_ENOUGH, off, mass, chosen, reads(then)));
        return nearest;
    }

    /** One weight where one is near enough; else two, where two may be and come nearer. */
    private List<TipWeight> nearest(Build build, SwingWeightTarget target, FirstMoment moment, List<TipWeight> usable) {
        List<TipWeight> one = MassForTarget.fromStock(build, moment, targets.scale(), target.wanted(), usable)
                .map(List::of)
                .orElse(List.of());
        return most == 1 || target.metBy(with(one, build, moment))
                ? one
                : StockChoice.of(build, targets.scale(), target.wanted(), usable, most)
                        .pieces();
    }

    /** What a club of that moment reads with weights in its tip. */
    private SwingWeight with(List<TipWeight> weights, Build build, FirstMoment moment) {
        FirstMoment sum = moment;
        for (TipWeight weight : weights) {
            sum = sum.plus(part(build, weight).about(targets.scale().fulcrum()));
        }
        return targets.scale().read(sum);
    }

    private static boolean weighted(Build build) {
        for (Attachment attachment : build.work().attached()) {
            if (attachment instanceof TipWeight) {
                return true;
            }
        }
        return false;
    }

    /** A weight without a flange leaves everything else where it is. */
    private static BalancePart part(Build build, TipWeight weight) {
        return BalancePart.at(weight.label(), weight.mass(), MassForTarget.fromTop(build, weight));
    }

    private Term reads(SwingWeight reading) {
        return Term.of("reads", "swing weight", targets.scale().designation(reading));
    }

    /** Where a weight of the stock would lie; without a stock, at the end of the tip. */
    private Length weightFromTop(Build build) {
        return stock.isEmpty() ? build.tipFromTop() : MassForTarget.fromTop(build, stock.get(0));
    }

    /** The weights that go into the tip and leave the insertion as it is. */
    private List<TipWeight> usable(Build build, List<Finding> findings) {
        Optional<Length> inside = StockChoice.insideOfTip(build);
        int flanged = 0;
        int wide = 0;
        for (TipWeight weight : stock) {
            if (flanged(weight)) {
                flanged++;
            } else if (!enters(weight, inside)) {
                wide++;
            }
        }
        if (flanged > 0) {
            findings.add(Finding.note(SwingWeightCode.FLANGE_PASSED_OVER, Term.count("n", "passed over", flanged)));
        }
        if (wide > 0) {
            findings.add(Finding.note(
                    SwingWeightCode.STEM_TOO_WIDE,
                    Term.count("n", "passed over", wide),
                    Term.fine("d", "inside of the tip", inside.orElse(Length.ZERO))));
        }
        int entering = stock.size() - flanged - wide;
        if (inside.isEmpty() && entering > 0) {
            findings.add(Finding.caution(SwingWeightCode.INSIDE_UNKNOWN));
        }
        return entering == stock.size()
                ? stock
                : stock.stream()
                        .filter(weight -> !flanged(weight) && enters(weight, inside))
                        .toList();
    }

    private static boolean flanged(TipWeight weight) {
        return weight.flange().nanometres() != 0;
    }

    /** Whether a weight goes into a tip; one that is not known is tried by hand. */
    static boolean enters(TipWeight weight, Optional<Length> inside) {
        return inside.isEmpty() || !weight.stem().moreThan(inside.get());
    }

    private void unsure(Build build, List<Finding> findings) {
        Head head = build.parts().head();
        if (head.mass().centre() instanceof Reading.Unknown<HeadCentre> unknown) {
            double point = head.mass()
                    .mass()
                    .at(Length.ofMillimetres(1))
                    .ratioTo(targets.scale().perPoint());
            findings.add(Finding.caution(
                    SwingWeightCode.HEAD_CENTRE_ASSUMED,
                    Term.of("c", "assumed centre", HeadCentreRule.of(head).along()),
                    Term.number("p", "points for a millimetre", point),
                    Term.of("ask", "how to find out", unknown.ask())));
        }
        Shaft shaft = build.parts().shaft();
        if (!ShaftCut.believable(shaft)) {
            findings.add(Finding.caution(
                    SwingWeightCode.BALANCE_NOT_BELIEVED,
                    Term.of("b", "balance point", shaft.mass().balance()),
                    Term.of("R", "raw length", shaft.length())));
        }
    }
}
