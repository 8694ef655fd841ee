package dev.tipwright.swingweight.set;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.match.MatchAim;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.SwingWeightCost;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Pins down what is said of a set: by hand on plain clubs with other heads, and the straight line against Commons Math. */
class SetTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    /** A plain club, 15 oz and 222 oz in, with ounces more of head, each 23 oz in. */
    private static Build plain(String label, double moreOunces) {
        Build plain = Clubs.plain();
        var head = plain.parts().head();
        return Clubs.withHead(
                plain, head.withLabel(label).withMass(head.mass().withMass(Mass.ofOunces(10 + moreOunces))));
    }

    private static SetSpread spread(double... moreOunces) {
        List<Build> builds = new ArrayList<>();
        for (int i = 0; i < moreOunces.length; i++) {
            builds.add(plain("c" + i, moreOunces[i]));
        }
        return new SetSpread(SCALE, new ClubSet(builds));
    }

    /** Heads of 10, 10.25 and 10.25 oz: 5.75 oz in apart, 3.2857 points; masses 15, 15.25, 15.25 off 15 1/24 + i/8 by 1/24, 1/12, 1/24. */
    @Test
    void theSpreadByHand() {
        SetSpread spread = spread(0, 0.25, 0.25);
        assertThat(spread.points()).isCloseTo(5.75 / 1.75, within(1e-9));
        assertThat(spread.reads()).hasSize(3);
        assertThat(spread.step().ounces()).isCloseTo(0.125, within(1e-9));
        assertThat(spread.massOff().ounces()).isCloseTo(1 / 12.0, within(1e-9));
        assertThat(spread(0).step()).isEqualTo(Mass.ZERO);
        assertThat(spread(0).points()).isZero();
    }

    @Test
    void theEvenStepIsTheRegression() {
        SetSpread spread = spread(0, 0.3, 0.4, 0.9, 1.1, 1.0);
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < 6; i++) {
            line.addData(i, spread.masses().get(i).grams());
        }
        assertThat(spread.step().grams()).isCloseTo(line.getSlope(), within(1e-9));
        double worst = 0;
        for (int i = 0; i < 6; i++) {
            worst = Math.max(worst, Math.abs(spread.masses().get(i).grams() - line.predict(i)));
        }
        assertThat(spread.massOff().grams()).isCloseTo(worst, within(1e-9));
    }

    @Test
    void beforeAndAfterAreCompared() {
        SetSpread before = spread(0, 0.5, 0.25);
        assertThat(before.to(spread(0, 0.25, 0.25)).severity()).isEqualTo(Severity.NOTE);
        assertThat(before.to(before).message(Units.METRIC))
                .isEqualTo("swing weights from 6.571 points apart to 6.571; total mass off an even step from 7.09 g to"
                        + " 7.09 g");
        // evenly rising heads: masses in step, swing weights far apart
        assertThat(before.to(spread(0, 1, 2)).code()).isEqualTo(SetCode.TRADED);
        assertThat(before.to(spread(0, 1, 2)).severity()).isEqualTo(Severity.CAUTION);
        assertThat(spread(0, 1, 2).to(before).code()).isEqualTo(SetCode.TRADED);
    }

    /**
     * Even shafts of 5.875 and 3 oz, 4 in past the fulcrum, on heads of 10 and 9.5 oz, 23 in past it: with the heavy one on the heavy head 11.5 +
     * 11.5 oz in apart, the other way round alike. In mass the two clubs were 3.375 oz apart and are 2.375.
     */
    @Test
    void matchingIsSeenInTheSpread() {
        Build six = Clubs.withShaft(plain("6", 0), even("heavy", 5.875));
        Build seven = Clubs.withShaft(plain("7", -0.5), even("light", 3));
        List<SwingWeightTarget> targets = List.of(
                new SwingWeightTarget("6", new SwingWeight(61 / 1.75), 0.1),
                new SwingWeightTarget("7", new SwingWeight(61 / 1.75), 0.1));
        JobPlanner planner = JobPlanner.of(SwingWeightStep.towards(new SwingWeightTargets(SCALE, targets), List.of()));
        for (MatchAim aim : MatchAim.values()) {
            for (ClubSet set : List.of(ClubSet.of(six, seven), ClubSet.of(seven, six))) {
                ShaftMatch match = ShaftMatcher.by(planner, SwingWeightCost.FINISHED)
                        .withAim(aim)
                        .match(set);
                SetSpread before = SetSpread.of(SCALE, planner.plan(set));
                SetSpread after = SetSpread.of(SCALE, planner.plan(match.set()));
                assertThat(before.points()).isCloseTo(23 / 1.75, within(1e-9));
                assertThat(after.points()).isCloseTo(0, within(1e-9));
                assertThat(before.step().abs().ounces()).isCloseTo(3.375, within(1e-9));
                assertThat(after.step().abs().ounces()).isCloseTo(2.375, within(1e-9));
                assertThat(before.to(after).code()).isEqualTo(SetCode.SPREAD);
            }
        }
    }

    private static Shaft even(String label, double ounces) {
        return Clubs.plain()
                .parts()
                .shaft()
                .withLabel(label)
                .withMass(ShaftMass.of(Mass.ofOunces(ounces), Clubs.inches(18)));
    }

    /** Heads of 10 and 10.5 oz: the lighter gets half an ounce, and then reads as the heavier, 11.5 oz in more. */
    @Test
    void equalInertiaByHeadMass() {
        ClubSet set = new ClubSet(List.of(plain("a", 0), plain("b", 0.5)));
        Inertia heavier = Balance.of(set.builds().get(1)).inertiaAboutButt();
        List<ClubChange> changes = SetAims.equalInertia(set, heavier, 0);
        assertThat(changes).allMatch(ClubChange::reached);
        assertThat(changes.get(0).heavier().ounces()).isCloseTo(0.5, within(1e-9));
        assertThat(changes.get(0).longer()).isEqualTo(Length.ZERO);
        assertThat(changes.get(0).reads(SCALE).points()).isCloseTo((222 + 11.5 - 161) / 1.75, within(1e-8));
        assertThat(changes.get(1).heavier().grams()).isCloseTo(0, within(1e-9));
        assertThat(changes.get(0).inertia().ratioTo(heavier)).isCloseTo(1, within(1e-10));
        assertThat(changes.get(0).club()).isEqualTo("a");
    }

    /** By length one comes down to the other, and weighs and reads less for it; up it cannot, because the shaft is not cut. */
    @Test
    void equalInertiaByLengthAndByBoth() {
        ClubSet set = new ClubSet(List.of(plain("a", 0), plain("b", 0.5)));
        Inertia lighter = Balance.of(set.builds().get(0)).inertiaAboutButt();
        List<ClubChange> down = SetAims.equalInertia(set, lighter, 1);
        assertThat(down).allMatch(ClubChange::reached);
        assertThat(down.get(1).longer()).isLessThan(Length.ZERO);
        assertThat(down.get(1).total())
                .isLessThan(Balance.of(set.builds().get(1)).total());
        List<ClubChange> both = SetAims.equalInertia(set, lighter, 0.5);
        assertThat(both).allMatch(ClubChange::reached);
        assertThat(both.get(1).longer()).isBetween(down.get(1).longer(), Length.ofNanometres(-1));
        assertThat(both.get(1).after().parts().head().mass().mass()).isLessThan(Mass.ofOunces(10.5));
        Inertia heavier = Balance.of(set.builds().get(1)).inertiaAboutButt();
        List<ClubChange> up = SetAims.equalInertia(set, heavier, 1);
        assertThat(up).extracting(ClubChange::reached).containsExactly(false, true);
        assertThat(SetAims.notReached(up)).hasSize(1);
        assertThat(SetAims.notReached(up).get(0).message(Units.INCH))
                .isEqualTo("a cannot be brought to it: choose another target, or another way");
    }

    /** 15, 15.5 and 15.25 oz to 15.25, 15.5 and 15.75: a quarter, nothing and half an ounce, at 1 in from the top: 13 oz in less each ounce. */
    @Test
    void anEvenStepInMass() {
        ClubSet set = new ClubSet(List.of(plain("a", 0), plain("b", 0.5), plain("c", 0.25)));
        Mass step = Mass.ofOunces(0.25);
        Place butt = new Place(Anchor.GRIP_TOP, Clubs.inches(1));
        Mass first = SetAims.leastFirst(set, step);
        assertThat(first.ounces()).isCloseTo(15.25, within(1e-9));
        List<ClubChange> changes = SetAims.evenMass(set, first, step, butt);
        assertThat(changes).allMatch(ClubChange::reached);
        assertThat(changes.get(0).heavier().ounces()).isCloseTo(0.25, within(1e-9));
        assertThat(changes.get(1).after()).isEqualTo(changes.get(1).before());
        assertThat(changes.get(2).heavier().ounces()).isCloseTo(0.5, within(1e-9));
        double reads = 222 + 0.25 * 23 - 13 * 0.5;
        assertThat(changes.get(2).reads(SCALE).points()).isCloseTo((reads - 161) / 1.75, within(1e-8));
        assertThat(new SetSpread(
                                SCALE,
                                new ClubSet(
                                        changes.stream().map(ClubChange::after).toList()))
                        .massOff())
                .isLessThanOrEqualTo(Mass.ofPicograms(2));
        List<ClubChange> tooLow = SetAims.evenMass(set, Mass.ofOunces(15), step, butt);
        assertThat(tooLow).extracting(ClubChange::reached).containsExactly(true, false, true);
        assertThat(SetAims.leastFirst(set, step.negated()).ounces()).isCloseTo(15.75, within(1e-9));
    }

    @Test
    void hostileInputIsNamed() {
        Build apart = Clubs.plain().withWork(Work.NONE);
        ClubSet set = ClubSet.of(Clubs.plain());
        Place tip = new Place(Anchor.TIP_END, Length.ZERO);
        Inertia one = Inertia.ofOunceSquareInches(15_000);
        missing("set", () -> SetAims.equalInertia(null, one, 0));
        missing("wanted", () -> SetAims.equalInertia(set, null, 0));
        missing("first", () -> SetAims.evenMass(set, null, Mass.ZERO, tip));
        missing("step", () -> SetAims.evenMass(set, Mass.ofGrams(400), null, tip));
        missing("place", () -> SetAims.evenMass(set, Mass.ofGrams(400), Mass.ZERO, null));
        missing("step", () -> SetAims.leastFirst(set, null));
        missing("changes", () -> SetAims.notReached(null));
        missing("scale", () -> new SetSpread(null, set));
        missing("set", () -> new SetSpread(SCALE, null));
        missing("plan", () -> SetSpread.of(SCALE, null));
        missing("after", () -> new SetSpread(SCALE, set).to(null));
        missing("before", () -> new ClubChange(null, apart, true));
        missing("scale", () -> new ClubChange(Clubs.plain(), Clubs.plain(), true).reads(null));
        refused(
                "first must be from 0.000000000001 g to 10000 g, was 0 g",
                () -> SetAims.evenMass(set, Mass.ZERO, Mass.ZERO, tip));
        for (ThrowingCallable call : List.<ThrowingCallable>of(
                () -> SetAims.leastFirst(ClubSet.of(apart), Mass.ZERO),
                () -> new SetSpread(SCALE, ClubSet.of(apart)))) {
            assertThatThrownBy(call).hasMessageStartingWith("set must be seated");
        }
        assertThatThrownBy(() -> new ClubChange(Clubs.plain(), apart, true))
                .hasMessageStartingWith("after must be seated");
    }
}
