package dev.tipwright.swingweight.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Pins down moment and inertia against published numbers: the worked example of US patent 4 128 242, and the rod, the tube and the
 * parallel axes of any text on mechanics. Tolerances are sixteen digits less those a short sum loses.
 */
class PublishedBalanceTest {

    private static final CheckTable FULCRUM = CheckTable.named("swing-weight-fulcrum");
    private static final CheckTable BODIES = CheckTable.named("rigid-bodies");

    @Test
    void fifteenOuncesAtTwentyEightAndAHalfInches() {
        Mass mass = Mass.ofOunces(fulcrum("mass"));
        Length point = Length.ofInches(fulcrum("balance point from the top of the grip"));
        Length at = Length.ofInches(fulcrum("fulcrum from the top of the grip"));
        Balance club = new Balance(List.of(BalancePart.at("club", mass, point)));
        double published = fulcrum("moment about the fulcrum");
        assertThat(club.momentAbout(at).ounceInches()).isCloseTo(published, within(1e-9));
        assertThat(club.parts().get(0).about(at).ounceInches()).isCloseTo(published, within(1e-9));
        assertThat(club.balancePoint()).isEqualTo(point);
    }

    /** The same club in two parts: (10 oz x 34 in + 5 oz x 17.5 in) / 15 oz = 28.5 in, by hand. */
    @Test
    void twoPartsOfFifteenOunces() {
        Balance club = new Balance(List.of(
                BalancePart.at("head", Mass.ofOunces(10), Length.ofInches(34)),
                BalancePart.at("grip", Mass.ofOunces(5), Length.ofInches(17.5))));
        assertThat(club.total()).isEqualTo(Mass.ofOunces(15));
        assertThat(club.balancePoint()).isEqualTo(Length.ofInches(28.5));
        assertThat(club.momentAbout(Length.ofInches(12)).ounceInches()).isCloseTo(247.5, within(1e-9));
    }

    /** An even shaft, uncut, its tip at the far end, is a rod about one end: mass 2 (kg), length 3 (m), inertia 6. */
    @Test
    void anEvenShaftIsARodAboutItsEnd() {
        Build build = Clubs.plain();
        build = Clubs.withShaft(
                build,
                build.parts()
                        .shaft()
                        .withLength(Length.ofMillimetres(3000))
                        .withMass(ShaftMass.of(Mass.ofGrams(2000), Length.ofMillimetres(1500))));
        Inertia rod = Balance.of(build).part("shaft").inertia();
        // kg m2 are 1e4 kg cm2
        assertThat(rod.kilogramSquareCentimetres() / 1e4)
                .isCloseTo(body("rod", "inertia about one end"), within(1e-12));
    }

    /** Many slices of a rod about its middle and about its end; midpoint rule, error m (L/n)^2 / 12 = 1.5 / n^2. */
    @Test
    void slicesOfARod() {
        int n = 1000;
        assertThat(rod(n, -1500)).isCloseTo(body("rod", "inertia about the centre"), within(1.6 / n / n));
        assertThat(rod(n, 0)).isCloseTo(body("rod", "inertia about one end"), within(1.6 / n / n));
    }

    private static double rod(int n, double from) {
        List<BalancePart> slices = IntStream.range(0, n)
                .mapToObj(i -> BalancePart.at(
                        "slice", Mass.ofGrams(2000.0 / n), Length.ofMillimetres(from + 3000 * (i + 0.5) / n)))
                .toList();
        return new Balance(slices).inertiaAboutButt().kilogramSquareCentimetres() / 1e4;
    }

    /** Parallel axes: a head that is a tube of the table, mass 2, across its own axis 4.29..., at 1 m: 4.29... + 2 x 1^2. */
    @Test
    void aHeadTurnsAboutTheButtByParallelAxes() {
        double own = body("tube", "inertia across the axis about the centre");
        Build build = Clubs.plain();
        Length mouth = build.mouthFromTop();
        Length along = Length.ofMillimetres(1000).minus(mouth);
        build = Clubs.withHead(
                build,
                build.parts()
                        .head()
                        .withMass(build.parts()
                                .head()
                                .mass()
                                .withMass(Mass.ofGrams(2000))
                                .withCentre(Reading.measured(new HeadCentre(along, Length.ZERO)))
                                .withInertia(Reading.measured(Inertia.ofKilogramSquareCentimetres(own * 1e4)))));
        assertThat(Balance.of(build).part("head").inertia().kilogramSquareCentimetres() / 1e4)
                .isCloseTo(own + 2, within(1e-12));
    }

    /** Off the axis by 3 at 4 along: the distance is 5, so m x^2 = 2 x 25. The first moment is along the axis alone. */
    @Test
    void aHeadOffTheAxisTurnsAtItsDistance() {
        Build build = Clubs.plain();
        Length along = Length.ofMillimetres(400).minus(build.mouthFromTop());
        build = Clubs.withHead(
                build,
                build.parts()
                        .head()
                        .withMass(build.parts()
                                .head()
                                .mass()
                                .withMass(Mass.ofGrams(2000))
                                .withCentre(Reading.measured(new HeadCentre(along, Length.ofMillimetres(300))))));
        BalancePart head = Balance.of(build).part("head");
        double place = head.moment().gramMillimetres() / 2000;
        assertThat(place).isCloseTo(400, within(1e-9));
        assertThat(head.inertia().gramSquareMillimetres()).isCloseTo(2000 * 500 * 500, within(1e-6));
    }

    /** The plain club, by hand in ounces and inches: see {@link Clubs#plain()}. */
    @Test
    void thePlainClub() {
        Balance club = Balance.of(Clubs.plain());
        assertThat(club.total()).isEqualTo(Mass.ofOunces(15));
        assertThat(club.moment().ounceInches()).isCloseTo(432, within(1e-9));
        assertThat(club.momentAbout(Length.ofInches(14)).ounceInches()).isCloseTo(222, within(1e-9));
        assertThat(club.balancePoint()).isEqualTo(Length.ofInches(28.8));
        // 2 x 4^2 + 3 x 36^2 / 3 + 10 x 37^2 oz in2
        assertThat(club.inertiaAboutButt().ounceSquareInches()).isCloseTo(32 + 1296 + 13690, within(1e-8));
        assertThat(club.parts().stream().map(BalancePart::label)).containsExactly("grip", "shaft", "head");
    }

    /** One gram taken off a metre from the top: -1000 g mm and -1e6 g mm2. */
    @Test
    void whatIsTakenOffCountsWithItsSign() {
        BalancePart off = BalancePart.at("dust", Mass.ofGrams(-1), Length.ofMillimetres(1000));
        assertThat(off.moment()).isEqualTo(FirstMoment.ofGramMillimetres(-1000));
        assertThat(off.inertia()).isEqualTo(Inertia.ofGramSquareMillimetres(-1e6));
    }

    private static double fulcrum(String quantity) {
        return FULCRUM.row("quantity", quantity).number("value");
    }

    private static double body(String body, String quantity) {
        return BODIES.rows().stream()
                .filter(row ->
                        row.text("body").equals(body) && row.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
