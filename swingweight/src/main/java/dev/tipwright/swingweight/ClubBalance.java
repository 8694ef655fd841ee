package dev.tipwright.swingweight;

import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.text.Decimals;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a club will balance and what its scale will read, before and after a tip weight: the report of {@link
 * SwingWeightStep}.
 *
 * @param scale the scale
 * @param before the club without a tip weight of this plan
 * @param after the club with it; as before if there is none
 * @param target what it is to read
 * @param exactWeight tip weight that would hit the target exactly where the first of the stock would lie, below zero
 *     if the club is too heavy; empty without a target, or with the tip at the fulcrum
 * @param chosen the weight chosen from the stock
 * @param assumptions assumed readings the numbers touched
 */
public record ClubBalance(
        SwingWeightScale scale,
        Balance before,
        Balance after,
        Optional<SwingWeightTarget> target,
        Optional<Mass> exactWeight,
        Optional<TipWeight> chosen,
        List<Assumption> assumptions)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param scale the scale
     * @param before the club without a tip weight of this plan
     * @param after the club with it; as before if there is none
     * @param target what it is to read
     * @param exactWeight tip weight that would hit the target exactly where the first of the stock would lie, below
     *     zero if the club is too heavy; empty without a target, or with the tip at the fulcrum
     * @param chosen the weight chosen from the stock
     * @param assumptions assumed readings the numbers touched
     */
    public ClubBalance {
        Require.given("scale", scale);
        Require.given("before", before);
        Require.given("after", after);
        Require.given("target", target);
        Require.given("exactWeight", exactWeight);
        Require.given("chosen", chosen);
        assumptions = Require.list("assumptions", assumptions);
    }

    /**
     * What the scale reads without a tip weight of this plan.
     *
     * @return the reading
     */
    public SwingWeight readsBefore() {
        return scale.read(before.momentAbout(scale.fulcrum()));
    }

    /**
     * What the scale will read of the finished club.
     *
     * @return the reading
     */
    public SwingWeight reads() {
        return scale.read(after.momentAbout(scale.fulcrum()));
    }

    /**
     * What one part adds to the reading.
     *
     * @param label of the part; the first of that label
     * @return points, negative for a part above the fulcrum
     * @throws IllegalArgumentException if there is no such part
     */
    public double points(String label) {
        return points(after.part(label));
    }

    /**
     * What a part adds to the reading; of two parts with one label each can be asked.
     *
     * @param part of the club
     * @return points, negative for a part above the fulcrum
     */
    public double points(BalancePart part) {
        Require.given("part", part);
        return part.about(scale.fulcrum()).ratioTo(scale.perPoint());
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("reads", "swing weight", scale.designation(reads())),
                Term.of("m", "total mass", after.total()),
                Term.of("x", "balance from the top", after.balancePoint()),
                Term.of("J", "inertia about the butt", after.inertiaAboutButt()));
    }

    @Override
    public Working working() {
        List<Term> moments = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        for (int i = 0; i < after.parts().size(); i++) {
            BalancePart part = after.parts().get(i);
            moments.add(Term.of(
                    "M" + (i + 1),
                    part.label() + ", " + Decimals.fixed(part.mass().grams(), 2) + " g",
                    part.about(scale.fulcrum())));
            sum.append(i == 0 ? "M1" : " + M" + (i + 1));
        }
        Term moment = Term.of("M", "moment about the fulcrum", after.momentAbout(scale.fulcrum()));
        return new Working(
                "Swing weight",
                List.of(
                        new Working.Line(
                                moment,
                                sum.toString(),
                                moments,
                                Source.assumption("each part's mass times its distance from the fulcrum")),
                        new Working.Line(
                                Term.number("P", "points above the zero of the scale", reads().points()),
                                "(M - M0) / K",
                                List.of(
                                        moment,
                                        Term.of("M0", "moment that reads zero", scale.zero()),
                                        Term.of("K", "moment of a point", scale.perPoint())),
                                Source.commonPractice("a scale with a fulcrum, a zero and a moment for each point"))));
    }

    @Override
    public List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        chosen.ifPresent(weight -> operations.add(Operation.of(
                BenchStage.DRY_BUILD,
                WeighInstruction.FIT_TIP_WEIGHT,
                Term.of("weight", "tip weight", weight.label()),
                Term.of("m", "its mass", weight.mass()))));
        operations.add(Operation.of(
                BenchStage.CHECK,
                WeighInstruction.WEIGH,
                Term.of("reads", "swing weight", scale.designation(reads())),
                Term.of("total", "total mass", after.total()),
                Term.of("x", "balance point from the top", after.balancePoint())));
        return operations;
    }
}
