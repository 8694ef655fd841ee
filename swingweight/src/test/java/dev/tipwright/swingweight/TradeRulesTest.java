package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import org.junit.jupiter.api.Test;

/**
 * Pins down the rules of thumb of the trade as bands, each for the kind of club the table names; common practice, no source. They are
 * nowhere an input to the library, so that they can say something about it. Where rule and model part it is said why.
 */
class TradeRulesTest {

    private static final CheckTable RULES = CheckTable.named("trade-facts");
    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    @Test
    void twoGramsAtTheHeadOfAnIronAreAboutAPoint() {
        CheckTable.Row rule = RULES.row("fact", "swing weight for 2 g at the head");
        for (double length : new double[] {35.5, 36, 36.5, 37, 37.5, 38, 38.5, 39}) {
            assertIn(rule, "iron of " + length, change(iron(length), Change.HEAD, 2));
        }
    }

    /** By hand: in a wood of 45 in two grams lie some 30 in from the fulcrum, 2 x 30 / 28.35 / 1.75 = 1.2: longer clubs more. */
    @Test
    void twoGramsAtTheHeadOfAWoodAreMore() {
        double points = change(wood(), Change.HEAD, 2);
        assertThat(points).isBetween(1.15, 1.25);
        assertThat(points)
                .isGreaterThan(
                        RULES.row("fact", "swing weight for 2 g at the head").number("high"));
    }

    @Test
    void halfAnInchIsAboutThreePoints() {
        CheckTable.Row rule = RULES.row("fact", "swing weight for 1/2 in of length");
        for (double length : new double[] {35.5, 36.5, 37.5, 39}) {
            assertIn(rule, "iron of " + length, read(iron(length + 0.5, head(length))) - read(iron(length)));
        }
    }

    /** By hand: half an inch under a head of 200 g and a shaft of some 45 g is 245 x 0.5 / 28.35 / 1.75 = 2.5; heavier heads more. */
    @Test
    void halfAnInchOfAWoodIsAtTheLowEnd() {
        Build wood = wood();
        Build longer =
                wood.withWork(wood.work().withButtTrim(wood.work().buttTrim().minus(Clubs.inches(0.5))));
        double points = read(longer) - read(wood);
        assertThat(points)
                .isLessThan(
                        RULES.row("fact", "swing weight for 1/2 in of length").number("value"))
                .isBetween(2.3, 2.6);
    }

    @Test
    void fourToFiveGramsOfGripAreAboutAPointTheOtherWay() {
        CheckTable.Row rule = RULES.row("fact", "swing weight for 4 to 5 g of grip");
        for (double grams = 4; grams <= 5; grams += 0.25) {
            assertIn(rule, "iron, " + grams + " g", change(iron(37), Change.GRIP, grams));
            assertIn(rule, "wood, " + grams + " g", change(wood(), Change.GRIP, grams));
        }
    }

    /**
     * Grams of shaft, as cut, for a point are 1.75 oz in over the distance from the fulcrum to the centre of the shaft: 9 g where that is
     * 5.5 in, 18 g where it is 2.75. So the rule's nine grams want a club of nearly 42 in, and short irons are near
     * twice as much; a wedge of 35.5 in is past the one end, a wood of 45 in past the other.
     */
    @Test
    void nineGramsOfShaftAreAPointInALongClubAndNearTwiceAsMuchInAShortIron() {
        CheckTable.Row rule = RULES.row("fact", "mass of shaft for one point");
        double last = gramsOfShaft(iron(35.5));
        assertThat(last).isBetween(rule.number("high"), 20.0);
        for (double length : new double[] {36.5, 37, 37.5, 38, 38.5, 39, 40, 41}) {
            double grams = gramsOfShaft(iron(length));
            assertIn(rule, "club of " + length, grams);
            assertThat(grams).as("the longer the fewer").isLessThan(last);
            last = grams;
        }
        assertThat(last).isCloseTo(rule.number("value"), within(1.0));
        assertThat(gramsOfShaft(wood())).isBetween(6.0, rule.number("low"));
    }

    /** By the shaft ten grams heavier, which changes its cut mass too. */
    private static double gramsOfShaft(Build build) {
        double cut = Balance.of(build).part("shaft").mass().grams();
        double share = cut / build.parts().shaft().mass().mass().grams();
        return 10 * share / change(build, Change.SHAFT, 10);
    }

    private enum Change {
        HEAD,
        SHAFT,
        GRIP
    }

    private static double change(Build build, Change what, double grams) {
        Mass more = Clubs.grams(grams);
        Build heavier = switch (what) {
            case HEAD ->
                Clubs.withHead(
                        build,
                        build.parts()
                                .head()
                                .withMass(build.parts()
                                        .head()
                                        .mass()
                                        .withMass(build.parts()
                                                .head()
                                                .mass()
                                                .mass()
                                                .plus(more))));
            case SHAFT ->
                Clubs.withShaft(
                        build,
                        build.parts()
                                .shaft()
                                .withMass(ShaftMass.of(
                                        build.parts().shaft().mass().mass().plus(more),
                                        build.parts().shaft().mass().balance())));
            case GRIP ->
                build.withParts(build.parts()
                        .withGrip(build.parts()
                                .grip()
                                .withMass(build.parts().grip().mass().plus(more))));
        };
        return read(heavier) - read(build);
    }

    private static double read(Build build) {
        return SCALE.read(Balance.of(build).momentAbout(SCALE.fulcrum())).points();
    }

    /** An iron of usual sizes: 270 g of head at 37 in and 7 g for half an inch; 80 g of shaft, a blank 2.5 in longer than its cut. */
    private static Build iron(double length) {
        return iron(length, head(length));
    }

    private static Build iron(double length, double head) {
        return club(length, head, 2.25, 2.15, 2.5, 80, 50);
    }

    private static double head(double length) {
        return 270 - 14 * (length - 37);
    }

    /** A wood of usual sizes: 200 g at 45 in, 62 g of shaft, a blank 1.5 in longer than its cut. */
    private static Build wood() {
        return club(45, 200, 2.5, 1.6, 1.5, 62, 48);
    }

    /** Half an inch trimmed at the tip and the rest at the butt; the blank balances 52 hundredths of the way up. */
    private static Build club(
            double length, double head, double mouthToGround, double centre, double trims, double shaft, double grip) {
        Build plain = Clubs.plain();
        Build build = Clubs.withHead(
                plain,
                plain.parts()
                        .head()
                        .withMass(plain.parts()
                                .head()
                                .mass()
                                .withMass(Clubs.grams(head))
                                .withCentre(Reading.measured(new HeadCentre(Clubs.inches(centre), Length.ZERO)))));
        // cap, shaft above the mouth, mouth to ground make the length; an inch is in the bore
        double raw = length - 0.125 - mouthToGround + 1 + trims;
        build = Clubs.withShaft(
                build,
                build.parts()
                        .shaft()
                        .withLength(Clubs.inches(raw))
                        .withMass(ShaftMass.of(Clubs.grams(shaft), Clubs.inches(0.52 * raw))));
        build = build.withParts(build.parts()
                .withGrip(build.parts()
                        .grip()
                        .withMass(Clubs.grams(grip))
                        .withCap(Clubs.inches(0.125))
                        .withCentre(Clubs.inches(4.4))));
        return build.withWork(build.work().withTipTrim(Clubs.inches(0.5)).withButtTrim(Clubs.inches(trims - 0.5)));
    }

    private static void assertIn(CheckTable.Row rule, String club, double value) {
        assertThat(value).as("%s: %s", club, rule).isBetween(rule.number("low"), rule.number("high"));
    }
}
