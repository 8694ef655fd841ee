package dev.tipwright.swingweight;

import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.Measure;
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
 * @param chosen what was chosen from the stock, the lower of two first, each placed as it will lie; may be empty
 * @param assumptions assumed readings the numbers touched
 */
public record ClubBalance(
        SwingWeightScale scale,
        Balance before,
        Balance after,
        Optional<SwingWeightTarget> target,
        Optional<Mass> exactWeight,
        List<TipWeight> chosen,
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
     * @param chosen what was chosen from the stock, the lower of two first, each placed as it will lie; may be empty
     * @param assumptions assumed readings the numbers touched
     */
    public ClubBalance {
        Require.given("scale", scale);
        Require.given("before", before);
        Require.given("after", after);
        Require.given("target", target);
        Require.given("exactWeight", exactWeight);
        chosen = Require.list("chosen", chosen);
        Require.that(chosen.size() <= 2, "chosen", "must be at most two", chosen.size());
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
    public List<Measure> measures() {
        return List.of(
                pointsMeasure(),
                new Measure(
                        "m",
                        "total mass",
                        Measure.Kind.MASS,
                        build -> Balance.of(build).total().grams()),
                Measure.length(
                        "x", "balance from the top", build -> Balance.of(build).balancePoint()),
                new Measure(
                        "J",
                        "inertia about the butt",
                        Measure.Kind.INERTIA,
                        build -> Balance.of(build).inertiaAboutButt().kilogramSquareCentimetres()));
    }

    /**
     * The swing weight in points above the zero of the scale, so that it can have a budget.
     *
     * @return the measure
     */
    public Measure pointsMeasure() {
        return new Measure(
                "reads",
                "swing weight",
                Measure.Kind.POINTS,
                build -> scale.read(Balance.momentAbout(build, scale.fulcrum())).points());
    }

    @Override
    public Working working() {
        List<Working.Line> lines = new ArrayList<>();
        List<Term> moments = new ArrayList<>();
        List<Term> masses = new ArrayList<>();
        List<Term> inertias = new ArrayList<>();
        for (int i = 0; i < after.parts().size(); i++) {
            BalancePart part = after.parts().get(i);
            String k = String.valueOf(i + 1);
            moments.add(Term.of("M" + k, "moment of " + part.label(), part.about(scale.fulcrum())));
            masses.add(Term.of("m" + k, "mass of " + part.label(), part.mass()));
            inertias.add(Term.of("J" + k, "inertia of " + part.label(), part.inertia()));
            if (part.mass().picograms() != 0) {
                lines.add(partMoment(moments.get(i), part.mass(), part.moment().over(part.mass())));
            }
        }
        Term moment = Term.of("M", "moment about the fulcrum", after.momentAbout(scale.fulcrum()));
        Term total = Term.of("m", "total mass", after.total());
        Source sum = Source.published("any text on mechanics", "a club is the sum of its parts");
        lines.add(new Working.Line(moment, sum("M", moments), moments, sum));
        lines.add(reading(moment, "P", reads()));
        lines.add(new Working.Line(total, sum("m", masses), masses, sum));
        lines.add(new Working.Line(
                Term.of("x", "balance from the top", after.balancePoint()),
                "F + M * c / m",
                List.of(fulcrum(), moment, Term.momentFactor(), total),
                sum));
        lines.add(new Working.Line(
                Term.of("J", "inertia about the butt", after.inertiaAboutButt()), sum("J", inertias), inertias, sum));
        target.ifPresent(wanted -> towards(lines, wanted));
        return new Working("Balance and swing weight", lines);
    }

    private Term fulcrum() {
        return Term.fine("F", "fulcrum from the top", scale.fulcrum());
    }

    private Working.Line partMoment(Term moment, Mass mass, Length place) {
        return new Working.Line(
                moment,
                "m * (x - F) / c",
                List.of(
                        Term.of("m", "its mass", mass),
                        Term.fine("x", "its centre from the top", place),
                        fulcrum(),
                        Term.momentFactor()),
                Source.published("any text on mechanics", "moment of a weight"));
    }

    private Working.Line reading(Term moment, String symbol, SwingWeight reading) {
        return new Working.Line(
                Term.number(symbol, "points above the zero of the scale", reading.points()),
                "(" + moment.symbol() + " - M0) / K",
                List.of(
                        moment,
                        Term.of("M0", "moment that reads zero", scale.zero()),
                        Term.of("K", "moment of a point", scale.perPoint())),
                Source.commonPractice("a scale with a fulcrum, a zero and a moment for each point"));
    }

    /** What the target asks for, how far off the club was, and what would mend it exactly. */
    private void towards(List<Working.Line> lines, SwingWeightTarget wanted) {
        Term without = Term.of("Mb", "moment before a tip weight", before.momentAbout(scale.fulcrum()));
        Term asked = Term.of("Mw", "moment that reads the target", scale.moment(wanted.wanted()));
        lines.add(reading(without, "Pb", readsBefore()));
        lines.add(new Working.Line(
                asked,
                "M0 + Pw * K",
                List.of(
                        Term.of("M0", "moment that reads zero", scale.zero()),
                        Term.number("Pw", "points wanted", wanted.wanted().points()),
                        Term.of("K", "moment of a point", scale.perPoint())),
                Source.commonPractice("a scale with a fulcrum, a zero and a moment for each point")));
        exactWeight.filter(mass -> mass.picograms() != 0).ifPresent(mass -> {
            FirstMoment missing = scale.moment(wanted.wanted()).minus(before.momentAbout(scale.fulcrum()));
            lines.add(new Working.Line(
                    Term.of("mw", "exact mass of a tip weight", mass),
                    "(Mw - Mb) * c / (x - F)",
                    List.of(
                            asked,
                            without,
                            Term.momentFactor(),
                            Term.fine(
                                    "x",
                                    "its place from the top",
                                    scale.fulcrum().plus(missing.over(mass))),
                            fulcrum()),
                    Source.published("any text on mechanics", "moment of a weight")));
        });
        Term off = Term.number("off", "points over the target, with what was chosen", reads().over(wanted.wanted()));
        lines.add(new Working.Line(
                off,
                "P - Pw",
                List.of(
                        Term.number("P", "points above the zero of the scale", reads().points()),
                        Term.number("Pw", "points wanted", wanted.wanted().points())),
                Source.assumption(
                        chosen.size() < 2
                                ? "of the stock, the weight that leaves least"
                                : "of the stock, the two that leave least, where one is not near enough")));
    }

    private static String sum(String symbol, List<Term> terms) {
        StringBuilder sum = new StringBuilder();
        for (int i = 1; i <= terms.size(); i++) {
            sum.append(i == 1 ? "" : " + ").append(symbol).append(i);
        }
        return sum.toString();
    }

    @Override
    public List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        for (int i = chosen.size() - 1; i >= 0; i--) {
            operations.add(putIn(chosen.get(i), i > 0));
        }
        operations.add(Operation.of(
                BenchStage.CHECK,
                WeighInstruction.WEIGH,
                Term.of("reads", "swing weight", scale.designation(reads())),
                Term.of("total", "total mass", after.total()),
                Term.of("x", "balance point from the top", after.balancePoint())));
        return operations;
    }

    private static Operation putIn(TipWeight weight, boolean upper) {
        Term label = Term.of("weight", "tip weight", weight.label());
        Term mass = Term.of("m", "its mass", weight.mass());
        if (upper) {
            return Operation.of(
                    BenchStage.DRY_BUILD,
                    WeighInstruction.FIT_UPPER_WEIGHT,
                    label,
                    mass,
                    Term.of("z", "its centre above the end of the tip", weight.centre()));
        }
        return weight.flange().equals(Length.ZERO)
                ? Operation.of(BenchStage.DRY_BUILD, WeighInstruction.FIT_TIP_WEIGHT, label, mass)
                : Operation.of(BenchStage.FIT, WeighInstruction.FIT_FLANGED_WEIGHT, label, mass);
    }
}
