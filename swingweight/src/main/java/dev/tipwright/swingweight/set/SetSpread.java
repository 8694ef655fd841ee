package dev.tipwright.swingweight.set;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Comparator;
import java.util.List;

/**
 * How far apart the clubs of a set are, in swing weight and in total mass. A set is meant to read alike, so swing weights are compared
 * with each other; its masses are meant to go in an even step, so they are compared with the straight line through them in the order of the set
 * (least squares). A heavy shaft moves swing weight little and total mass much, so that both are said.
 *
 * <pre>{@code
 * SetSpread spread = new SetSpread(SwingWeightScale.LETTERS_AT_14_INCHES, ClubSet.of(Samples.build()));
 * spread.points();      // = 0.0
 * spread.massOff();     // = 0 g
 * }</pre>
 *
 * @param scale the scale
 * @param set the clubs in their order, seated
 */
public record SetSpread(SwingWeightScale scale, ClubSet set) {

    /**
     * Checks the values.
     *
     * @param scale the scale
     * @param set the clubs in their order, seated
     */
    public SetSpread {
        Require.given("scale", scale);
        Require.given("set", set).builds().forEach(build -> seated("set", build));
    }

    /**
     * The spread of a set as it is planned.
     *
     * @param scale the scale
     * @param plan of the set, every club of it seated
     * @return the spread of the clubs as they are to be built
     */
    public static SetSpread of(SwingWeightScale scale, JobPlan plan) {
        Require.given("plan", plan);
        return new SetSpread(
                scale, new ClubSet(plan.clubs().stream().map(ClubPlan::after).toList()));
    }

    static void seated(String name, Build build) {
        Require.given(name, build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                name,
                "must be seated",
                build.work().seat());
    }

    /**
     * What the clubs read.
     *
     * @return readings in the order of the set
     */
    public List<SwingWeight> reads() {
        return set.builds().stream().map(build -> Balance.of(build).on(scale)).toList();
    }

    /**
     * How far apart the readings are.
     *
     * @return greatest less least, points
     */
    public double points() {
        List<SwingWeight> reads = reads();
        Comparator<SwingWeight> order = Comparator.naturalOrder();
        return reads.stream()
                .max(order)
                .orElseThrow()
                .over(reads.stream().min(order).orElseThrow());
    }

    /**
     * What the clubs weigh.
     *
     * @return total masses in the order of the set
     */
    public List<Mass> masses() {
        return set.builds().stream().map(build -> Balance.of(build).total()).toList();
    }

    /**
     * The even step that fits the masses best.
     *
     * @return from club to club, by least squares; zero for one club
     */
    public Mass step() {
        return Mass.ofGrams(slope());
    }

    private double slope() {
        List<Mass> masses = masses();
        double middle = (masses.size() - 1) / 2.0;
        double mean = mean(masses);
        double above = 0;
        double below = 0;
        for (int i = 0; i < masses.size(); i++) {
            above += (i - middle) * (masses.get(i).grams() - mean);
            below += (i - middle) * (i - middle);
        }
        return below == 0 ? 0 : above / below;
    }

    private static double mean(List<Mass> masses) {
        return masses.stream().mapToDouble(Mass::grams).sum() / masses.size();
    }

    /**
     * How far the mass that is farthest off the even step is off it.
     *
     * @return zero or more
     */
    public Mass massOff() {
        List<Mass> masses = masses();
        double middle = (masses.size() - 1) / 2.0;
        double mean = mean(masses);
        double slope = slope();
        double worst = 0;
        for (int i = 0; i < masses.size(); i++) {
            worst = Math.max(worst, Math.abs(masses.get(i).grams() - mean - slope * (i - middle)));
        }
        return Mass.ofGrams(worst);
    }

    /**
     * Compares this spread with that of the same set built another way, for instance with its shafts shared out again.
     *
     * @param after the other way
     * @return a note; a caution if swing weight or mass got better at the cost of the other
     */
    public Finding to(SetSpread after) {
        Require.given("after", after);
        Term[] terms = {
            Term.number("before", "points apart before", points()),
            Term.number("after", "points apart after", after.points()),
            Term.of("massBefore", "mass off an even step before", massOff()),
            Term.of("massAfter", "mass off an even step after", after.massOff())
        };
        boolean traded =
                (after.points() - points()) * after.massOff().minus(massOff()).grams() < 0;
        return traded ? Finding.caution(SetCode.TRADED, terms) : Finding.note(SetCode.SPREAD, terms);
    }
}
