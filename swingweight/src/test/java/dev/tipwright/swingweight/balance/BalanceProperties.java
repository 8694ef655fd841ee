package dev.tipwright.swingweight.balance;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * Pins down the laws of the balance on any club, each with a number worked by hand beside it; and what a balance refuses. Tolerance
 * unless said: 1e-9 of a point, which is 1e-6 g mm of a sum of some 1e6.
 */
class BalanceProperties {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    /** The quick sum has the bits of the list of parts, about any fulcrum. */
    @Property
    void aMomentWithoutTheListIsTheSame(@ForAll long seed, @ForAll @IntRange(max = 1500) int fulcrumMm) {
        Build build = new RandomClubs(seed).next();
        Length fulcrum = Length.ofMillimetres(fulcrumMm);
        assertThat(Balance.momentAbout(build, fulcrum))
                .isEqualTo(Balance.of(build).momentAbout(fulcrum));
    }

    @Property
    void massAtTheFulcrumChangesNothing(@ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 500) double grams) {
        Build build = new RandomClubs(seed).next();
        OtherMass there = new OtherMass("there", Clubs.grams(grams), new Place(Anchor.GRIP_TOP, SCALE.fulcrum()));
        Build heavier = build.withWork(build.work().plus(there));
        assertThat(points(Balance.of(heavier))).isCloseTo(points(Balance.of(build)), within(1e-9));
        assertThat(Balance.of(heavier).total())
                .isEqualTo(Balance.of(build).total().plus(Clubs.grams(grams)));
    }

    /** By hand: the plain club reads 61 / 1.75 points over A0, with a pound at the fulcrum too. */
    @Example
    void aPoundAtTheFulcrum() {
        Balance club = Balance.of(Clubs.plain()).plus(BalancePart.at("lead", Mass.ofOunces(16), SCALE.fulcrum()));
        assertThat(points(club)).isCloseTo(61 / 1.75, within(1e-9));
    }

    @Property
    void aGramFurtherOutNeverLowersTheReading(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 1100) double from,
            @ForAll @DoubleRange(min = 0, max = 100) double outwards) {
        Balance club = Balance.of(new RandomClubs(seed).next());
        Length near = Length.ofMillimetres(from);
        Length far = Length.ofMillimetres(from + outwards);
        double before = points(club.plus(BalancePart.at("gram", Clubs.grams(1), near)));
        double after = points(club.plus(BalancePart.at("gram", Clubs.grams(1), far)));
        assertThat(after).isGreaterThanOrEqualTo(before);
        // a gram over so many millimetres, over 1.75 oz in
        double perPoint = SCALE.perPoint().gramMillimetres();
        assertThat(after - before).isCloseTo(outwards / perPoint, within(1e-9));
    }

    /** By hand: an ounce from 18 in to 21.5 in adds 3.5 oz in, two points. */
    @Example
    void anOunceMovedThreeAndAHalfInches() {
        Balance club = Balance.of(Clubs.plain());
        double near = points(club.plus(BalancePart.at("ounce", Mass.ofOunces(1), Length.ofInches(18))));
        double far = points(club.plus(BalancePart.at("ounce", Mass.ofOunces(1), Length.ofInches(21.5))));
        assertThat(far - near).isCloseTo(2, within(1e-9));
    }

    /** Parallel axes: about the butt the inertia is that about the balance point and the whole mass at its distance. */
    @Property
    void parallelAxes(@ForAll long seed) {
        Balance club = Balance.of(new RandomClubs(seed).next());
        double balance = club.moment().gramMillimetres() / club.total().grams();
        double aboutBalance = 0;
        for (BalancePart part : club.parts()) {
            double m = part.mass().grams();
            double place = part.moment().gramMillimetres() / m;
            double own = part.inertia().gramSquareMillimetres() - m * place * place;
            aboutBalance += own + m * (place - balance) * (place - balance);
        }
        double about = club.inertiaAboutButt().gramSquareMillimetres();
        assertThat(aboutBalance + club.total().grams() * balance * balance).isCloseTo(about, within(1e-12 * about));
        assertThat(aboutBalance).isPositive();
    }

    /** By hand: 1 g at 100 mm and 1 g at 300 mm: 100 000 g mm2; about their middle 20 000, and 2 g at 200 mm 80 000. */
    @Example
    void twoGrams() {
        Balance two = new Balance(List.of(
                BalancePart.at("a", Clubs.grams(1), Length.ofMillimetres(100)),
                BalancePart.at("b", Clubs.grams(1), Length.ofMillimetres(300))));
        assertThat(two.inertiaAboutButt()).isEqualTo(Inertia.ofGramSquareMillimetres(100_000));
        assertThat(two.balancePoint()).isEqualTo(Length.ofMillimetres(200));
    }

    /** The order of the parts changes the sums by rounding alone, 1e-13 of them; the mass, whole picograms, not at all. */
    @Property
    void orderDoesNotMatter(@ForAll long seed) {
        Balance club = Balance.of(new RandomClubs(seed).next());
        List<BalancePart> shuffled = new ArrayList<>(club.parts());
        Collections.shuffle(shuffled, new Random(seed));
        Balance other = new Balance(shuffled);
        double moment = club.moment().gramMillimetres();
        double inertia = club.inertiaAboutButt().gramSquareMillimetres();
        assertThat(other.total()).isEqualTo(club.total());
        assertThat(other.moment().gramMillimetres()).isCloseTo(moment, within(1e-13 * moment));
        assertThat(other.inertiaAboutButt().gramSquareMillimetres()).isCloseTo(inertia, within(1e-13 * inertia));
    }

    /** By hand: 432 oz in whichever comes first. */
    @Example
    void headFirst() {
        List<BalancePart> parts = new ArrayList<>(Balance.of(Clubs.plain()).parts());
        Collections.reverse(parts);
        assertThat(new Balance(parts).moment().ounceInches()).isCloseTo(432, within(1e-9));
    }

    /** The balance point is where the club balances: no moment about it beyond half a nanometre of its mass. */
    @Property
    void nothingTurnsAboutTheBalancePoint(@ForAll long seed) {
        Balance club = Balance.of(new RandomClubs(seed).next());
        assertThat(club.momentAbout(club.balancePoint()).gramMillimetres())
                .isCloseTo(0, within(5.1e-7 * club.total().grams()));
    }

    /** An unknown centre is taken at 0.95 of 2.25 in = 2.1375 in: 10 oz x 0.1375 in more than at 2 in. */
    @Example
    void anUnknownCentreIsNearTheGround() {
        Build build = Clubs.plain();
        Build unknown = Clubs.withHead(build, build.parts().head().withMass(HeadMass.of(Mass.ofOunces(10))));
        assertThat(Balance.of(unknown).moment().ounceInches()).isCloseTo(432 + 1.375, within(1e-9));
        assertThat(HeadCentreRule.of(build.parts().head()).along()).isEqualTo(Length.ofInches(2.1375));
        assertThatThrownBy(() -> HeadCentreRule.of(null)).hasMessage("head must not be null");
    }

    @Example
    void hostileInputIsNamed() {
        BalancePart gram = BalancePart.at("gram", Clubs.grams(1), Length.ZERO);
        refused("parts must not be empty, was []", () -> new Balance(List.of()));
        refused("label must be one of the parts [gram], was \"x\"", () -> new Balance(List.of(gram)).part("x"));
        refused(
                "label must be 1 to 80 printable characters, was \"\"",
                () -> BalancePart.at("", Mass.ZERO, Length.ZERO));
        refused(
                "build must be seated, was " + Work.NONE.seat(),
                () -> Balance.of(Clubs.plain().withWork(Work.NONE)));
        Balance nothing = new Balance(List.of(gram, BalancePart.at("off", Clubs.grams(-1), Length.ofMillimetres(1))));
        assertThatThrownBy(nothing::balancePoint)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mass")
                .hasMessageContaining("zero");
        missing("parts", () -> new Balance(null));
        missing("build", () -> Balance.of(null));
        missing("label", () -> nothing.part(null));
        missing("part", () -> nothing.plus(null));
        missing("fulcrum", () -> nothing.momentAbout(null));
        missing("fulcrum", () -> gram.about(null));
        missing("mass", () -> BalancePart.at("x", null, Length.ZERO));
        missing("fromTop", () -> BalancePart.at("x", Mass.ZERO, null));
        missing("mass", () -> new BalancePart("x", null, FirstMoment.ZERO, Inertia.ZERO));
        missing("moment", () -> new BalancePart("x", Mass.ZERO, null, Inertia.ZERO));
        missing("inertia", () -> new BalancePart("x", Mass.ZERO, FirstMoment.ZERO, null));
    }

    @Example
    void sumsOutOfRangeOverflow() {
        BalancePart vast = new BalancePart(
                "vast",
                Mass.ofPicograms(Long.MAX_VALUE),
                FirstMoment.ofGramMillimetres(Double.MAX_VALUE),
                Inertia.ofKilogramSquareCentimetres(Double.MAX_VALUE));
        Balance twice = new Balance(List.of(vast, vast));
        assertThatThrownBy(twice::total).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(twice::moment).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(twice::inertiaAboutButt).isInstanceOf(ArithmeticException.class);
    }

    private static double points(Balance club) {
        return SCALE.read(club.momentAbout(SCALE.fulcrum())).points();
    }
}
