package dev.tipwright.swingweight.aim;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.PrintedWorking;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Pins down what things are worth: by hand on the plain club, and on ten thousand others by building each club again with a gram, a
 * millimetre or a cut more. Tolerance 1e-9 of a point: sixteen digits of a reading of a few hundred points, less what a difference
 * of two of them loses; a place is rounded to the nanometre, which is 1e-9 of a point for a gram.
 */
class WorthTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static final double POINT = 1e-8;

    /** A point of 1.75 oz in is 49.6117 g in: head 23 in past the fulcrum, shaft 4 in, grip 10 in before it. */
    @Test
    void theWorthOfThePlainClub() {
        Worth worth = Worth.of(Clubs.plain(), SCALE);
        double point = 1.75 * 28.349523125;
        assertThat(worth.gramAtHead()).isCloseTo(23 / point, within(POINT));
        assertThat(worth.gramInShaft()).isCloseTo(4 / point, within(POINT));
        assertThat(worth.gramAtGrip()).isCloseTo(-10 / point, within(POINT));
        assertThat(worth.gramAt(Length.ofInches(14))).isZero();
        assertThat(worth.millimetreOfCentre()).isCloseTo(10 / 25.4 / 1.75, within(POINT));
    }

    /**
     * An eighth off the butt: 1/96 oz of shaft goes, the rest is 35.875 in long with its centre at 17.9375 in, and the head is at
     * 36.875 in: -20 + (3 - 1/96) 3.9375 + 228.75 = 220.521484 oz in instead of 222.
     */
    @Test
    void anEighthOffThePlainClub() {
        double then = -20 + (3 - 1.0 / 96) * 3.9375 + 228.75;
        assertThat(Worth.of(Clubs.plain(), SCALE).eighthShorter()).isCloseTo((then - 222) / 1.75, within(POINT));
    }

    @Test
    void tenThousandClubsBuiltAgain() {
        RandomClubs clubs = new RandomClubs(20_261_101);
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 10_000; i++) {
            Build build = clubs.next();
            Worth worth = Worth.of(build, SCALE);
            double before = points(build);
            String as = "club " + i;
            Mass head = build.parts().head().mass().mass().plus(Mass.ofGrams(1));
            Build heavier = Clubs.withHead(
                    build,
                    build.parts().head().withMass(build.parts().head().mass().withMass(head)));
            assertThat(worth.gramAtHead()).as(as).isCloseTo(points(heavier) - before, within(POINT));
            Build gripped = build.withParts(build.parts()
                    .withGrip(build.parts()
                            .grip()
                            .withMass(build.parts().grip().mass().plus(Mass.ofGrams(1)))));
            assertThat(worth.gramAtGrip()).as(as).isCloseTo(points(gripped) - before, within(POINT));
            HeadCentre centre = build.parts().head().mass().centre().known().orElseThrow();
            Build lower = Clubs.withHead(
                    build,
                    build.parts()
                            .head()
                            .withMass(build.parts()
                                    .head()
                                    .mass()
                                    .withCentre(Reading.measured(
                                            centre.withAlong(centre.along().plus(Length.ofMillimetres(1)))))));
            assertThat(worth.millimetreOfCentre()).as(as).isCloseTo(points(lower) - before, within(POINT));
            Length more = build.work().buttTrim().scaledBy(random.nextDouble());
            Build longer = build.withWork(
                    build.work().withButtTrim(build.work().buttTrim().minus(more)));
            assertThat(worth.longer(more)).as(as).isCloseTo(points(longer) - before, within(POINT));
        }
    }

    /** A shaft heavier by a part in a thousand of what is left of it, everywhere. */
    @Test
    void aGramInTheShaftIsSpreadAsTheShaftIs() {
        Build plain = Clubs.plain();
        Build heavier = Clubs.withShaft(
                plain,
                plain.parts()
                        .shaft()
                        .withMass(plain.parts()
                                .shaft()
                                .mass()
                                .withMass(Mass.ofOunces(3).plus(Mass.ofGrams(1)))));
        assertThat(Worth.of(plain, SCALE).gramInShaft()).isCloseTo(points(heavier) - points(plain), within(POINT));
    }

    /** By hand on a lever: at 13, 14 and 16 in a gram is worth -1, 0 and 2 g in. */
    @Test
    void aGramMovedOutwardNeverLowers() {
        Worth worth = Worth.of(Clubs.plain(), SCALE);
        double least = Double.NEGATIVE_INFINITY;
        for (double inches = -100; inches <= 100; inches += 0.5) {
            double gram = worth.gramAt(Length.ofInches(inches));
            assertThat(gram).isGreaterThan(least);
            least = gram;
        }
        double point = 1.75 * 28.349523125;
        assertThat(worth.gramAt(Length.ofInches(13))).isCloseTo(-1 / point, within(POINT));
        assertThat(worth.gramAt(Length.ofInches(16))).isCloseTo(2 / point, within(POINT));
    }

    @Test
    void theWorkingIsTrue() {
        PrintedWorking.isTrue(Worth.of(Clubs.plain(), SCALE).working());
        PrintedWorking.isTrue(Worth.of(Clubs.practiceSix(), SCALE).working());
    }

    @Test
    void hostileInputIsNamed() {
        Build build = Clubs.plain();
        Worth worth = Worth.of(build, SCALE);
        missing("build", () -> Worth.of(null, SCALE));
        missing("scale", () -> Worth.of(build, null));
        missing("balance", () -> new Worth(build, SCALE, null));
        missing("fromTop", () -> worth.gramAt(null));
        missing("more", () -> worth.longer(null));
        refused(
                "more must be at most the butt trim 0 mm and leave some of the 914.4 mm, was 0.000001 mm",
                () -> worth.longer(Length.ofNanometres(1)));
        refused(
                "more must be at most the butt trim 0 mm and leave some of the 914.4 mm, was -914.4 mm",
                () -> worth.longer(Length.ofInches(-36)));
        assertThatThrownBy(() -> Worth.of(build.withWork(Work.NONE), SCALE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("build must be seated");
        Worth headless = new Worth(
                build, SCALE, new Balance(java.util.List.of(BalancePart.at("x", Mass.ofGrams(1), Length.ZERO))));
        assertThatThrownBy(headless::gramAtHead).isInstanceOf(IllegalArgumentException.class);
    }

    private static double points(Build build) {
        return Balance.of(build).on(SCALE).points();
    }
}
