package dev.tipwright.swingweight;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.BalancePart;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds shafts that are heavier or lighter than the others of their blank. A few grams of shaft move swing weight little and total
 * mass much, so both are said. It speaks where a shaft is two grams on the same side of both the middle one of its blank and the
 * mean of the others, so that one odd shaft does not make all the others odd. The two grams are an assumption of this library.
 */
public final class ShaftReview implements SetReview {

    /** The difference from which it speaks. */
    public static final Mass NOTICEABLE = Mass.ofGrams(2);

    /** Makes the review. */
    public ShaftReview() {}

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubPlan> set = Require.list("clubs", clubs);
        List<ClubFinding> found = new ArrayList<>();
        for (ClubPlan club : set) {
            List<Mass> others = set.stream()
                    .filter(other -> !other.label().equals(club.label()))
                    .map(ShaftReview::shaft)
                    .filter(other -> other.blank().equals(shaft(club).blank()))
                    .map(other -> other.mass().mass())
                    .toList();
            if (!others.isEmpty() && standsOut(club, others)) {
                club.find(ClubBalance.class)
                        .ifPresent(balance -> found.add(new ClubFinding(club.label(), finding(club, balance, others))));
            }
        }
        return found;
    }

    private static boolean standsOut(ClubPlan club, List<Mass> others) {
        Mass mass = shaft(club).mass().mass();
        List<Mass> all = new ArrayList<>(others);
        all.add(mass);
        all.sort(null);
        Mass overMiddle = mass.minus(all.get((all.size() - 1) / 2));
        Mass overMean = overMean(club, others);
        return !overMiddle.min(overMean).lessThan(NOTICEABLE)
                || !overMiddle.max(overMean).moreThan(NOTICEABLE.negated());
    }

    private static Mass overMean(ClubPlan club, List<Mass> others) {
        Mass sum = others.stream().reduce(Mass.ZERO, Mass::plus);
        return shaft(club).mass().mass().minus(sum.scaledBy(1.0 / others.size()));
    }

    private static Finding finding(ClubPlan club, ClubBalance balance, List<Mass> others) {
        Mass more = overMean(club, others);
        BalancePart cut = balance.after().part("shaft");
        double share = more.ratioTo(shaft(club).mass().mass());
        return Finding.note(
                SwingWeightCode.SHAFT_STANDS_OUT,
                Term.of("m", "difference", more.abs()),
                Term.of("heavier", "which way", more.picograms() > 0 ? "heavier" : "lighter"),
                Term.of("blank", "blank", shaft(club).blank().label()),
                Term.number("p", "points", Math.abs(share * balance.points("shaft"))),
                Term.of("total", "total mass", cut.mass().scaledBy(share).abs()));
    }

    private static Shaft shaft(ClubPlan club) {
        return club.after().parts().shaft();
    }
}
