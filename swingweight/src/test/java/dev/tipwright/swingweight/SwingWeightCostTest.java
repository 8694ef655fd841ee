package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Points off the target as the price of a pair. */
class SwingWeightCostTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static JobPlanner planner(SwingWeight wanted, List<TipWeight> stock, String... clubs) {
        List<SwingWeightTarget> targets = Arrays.stream(clubs)
                .map(club -> new SwingWeightTarget(club, wanted, 0.1))
                .toList();
        return JobPlanner.of(SwingWeightStep.towards(new SwingWeightTargets(SCALE, targets), stock));
    }

    /** The plain club reads 61 oz in over the zero, 34.857 points: 5.143 under D10, the square of which is 26.449. */
    @Test
    void isTheSquareOfThePointsOff() {
        ClubPlan plan = planner(SCALE.parse("E0"), List.of(), "6").plan(Clubs.plain());
        double off = 40 - 61 / 1.75;
        assertThat(SwingWeightCost.FINISHED.of(plan).getAsDouble()).isCloseTo(off * off, within(1e-9));
        assertThat(SwingWeightCost.WITHOUT_TIP_WEIGHT.of(plan)).isEqualTo(SwingWeightCost.FINISHED.of(plan));
    }

    @Test
    void aTipWeightMakesTheFinishedClubCheaper() {
        ClubPlan plan =
                planner(SCALE.parse("E0"), List.of(Clubs.weight(6)), "6").plan(Clubs.plain());
        assertThat(SwingWeightCost.FINISHED.of(plan).getAsDouble())
                .isLessThan(SwingWeightCost.WITHOUT_TIP_WEIGHT.of(plan).getAsDouble());
    }

    @Test
    void aClubOfWhichNothingCanBeSaidMustNotBeBuiltThatWay() {
        assertThat(SwingWeightCost.FINISHED.of(
                        planner(SCALE.parse("E0"), List.of(), "7").plan(Clubs.plain())))
                .isEmpty();
        Build apart = Build.of(Clubs.plain().parts());
        assertThat(SwingWeightCost.FINISHED.of(
                        planner(SCALE.parse("E0"), List.of(), "6").plan(apart)))
                .isEmpty();
    }

    /**
     * An even shaft of the plain club has its centre 4 in beyond the fulcrum, so 1.75 oz in, a point, is 0.4375 oz of it. Head 6 is
     * on its target with 3 oz of shaft, head 7, half an ounce lighter and so 23 x 0.5 = 11.5 oz in lower, with 2.875 oz more.
     */
    @Test
    void theHeavyShaftGoesToTheLightHead() {
        Build six = Clubs.plain();
        Build seven = Clubs.withHead(
                six,
                six.parts()
                        .head()
                        .withLabel("7")
                        .withMass(six.parts().head().mass().withMass(Mass.ofOunces(9.5))));
        Shaft heavy = even("heavy", 5.875);
        Shaft light = even("light", 3);
        ClubSet set = ClubSet.of(Clubs.withShaft(six, heavy), Clubs.withShaft(seven, light));
        ShaftMatch match = ShaftMatcher.by(
                        planner(SCALE.read(momentOf(six)), List.of(), "6", "7"), SwingWeightCost.FINISHED)
                .match(set);
        assertThat(match.set().club("6").parts().shaft().label()).isEqualTo("light");
        assertThat(match.set().club("7").parts().shaft().label()).isEqualTo("heavy");
        // Masses lie on a grid of a picogram, which is far under a millionth of a point.
        assertThat(match.totalAfter().getAsDouble()).isCloseTo(0, within(1e-9));
        // 2.875 oz x 4 in are 11.5 / 1.75 points too many in one club and as many too few in the other.
        double off = 11.5 / 1.75;
        assertThat(match.totalBefore().getAsDouble()).isCloseTo(2 * off * off, within(1e-6));
    }

    private static Shaft even(String label, double ounces) {
        return Clubs.shaft().withLabel(label).withMass(ShaftMass.of(Mass.ofOunces(ounces), Clubs.inches(18)));
    }

    private static FirstMoment momentOf(Build build) {
        return Balance.of(build).momentAbout(SCALE.fulcrum());
    }
}
