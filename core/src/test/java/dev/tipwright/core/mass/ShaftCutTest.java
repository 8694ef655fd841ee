package dev.tipwright.core.mass;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces of a shaft: the rod of any mechanics text (table rigid-bodies), by hand, and what is refused. */
class ShaftCutTest {

    private static Shaft of(String length, String mass, String balance) {
        return Bench.shaft("A")
                .withSection(Bench.shaft("A")
                        .section()
                        .withOutside(Bench.shaft("A").section().outside().endedAt(len("2 mm"))))
                .withMass(ShaftMass.of(Mass.parse(mass), len(balance)))
                .withLength(len(length));
    }

    /** Mass 2, length 3: about one end 6, about the centre 1.5, here in g and mm. A tube of thin wall swings like a rod. */
    @Test
    void anEvenRodHasThePublishedInertia() {
        CheckTable table = CheckTable.named("rigid-bodies");
        ShaftCut rod = new ShaftCut(of("3 mm", "2 g", "1.5 mm"), Length.ZERO, len("3 mm"));
        double aboutEnd = rod.inertiaAboutTip().gramSquareMillimetres();
        // A few roundings of small numbers.
        assertThat(aboutEnd)
                .isCloseTo(table.row("quantity", "inertia about one end").number("value"), within(1e-14));
        assertThat(aboutEnd
                        - rod.momentAboutTip().gramMillimetres() * rod.balance().millimetres())
                .isCloseTo(row(table, "rod", "inertia about the centre"), within(1e-14));
    }

    private static double row(CheckTable table, String body, String quantity) {
        return table.rows().stream()
                .filter(row ->
                        row.text("body").equals(body) && row.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }

    /** The formula that is shown is that of the straight line, and where knots were read it says so instead. */
    @Test
    void theWorkingSaysWhereTheLineDensityComesFrom() {
        Shaft even = of("3 mm", "2 g", "1.5 mm");
        Working straight = new ShaftCut(even, Length.ZERO, len("3 mm")).working();
        assertThat(straight.lines()).hasSize(1);
        assertThat(straight.lines().get(0).formula())
                .isEqualTo("2 * m * (2 * R - 3 * b) / R^2 * (z2 - z1) + 3 * m * (2 * b - R) / R^3 * (z2^2 - z1^2)");
        LineDensityProfile along = ShaftCut.lineDensity(even).orElseThrow();
        Shaft read = even.withMass(even.mass().withAlong(Reading.measured(along)));
        Working knots = new ShaftCut(read, Length.ZERO, len("3 mm")).working();
        assertThat(knots.lines().get(0).formula()).isEqualTo("m1");
        assertThat(knots.lines().get(0).result().text(Units.METRIC))
                .isEqualTo(straight.lines().get(0).result().text(Units.METRIC))
                .isEqualTo("2.00 g");
    }

    /** 39 in, 78 g, balanced in the middle: 2 g an inch, so 36 in weigh 72 g and balance at 18 in. */
    @Test
    void anEvenShaftByHand() {
        Build club = Bench.club("7");
        Build cut = club.withWork(club.work().withTipTrim(len("1 in")).withButtTrim(len("2 in")));
        ShaftCut piece = ShaftCut.of(cut);
        assertThat(piece.from()).isEqualTo(len("1 in"));
        assertThat(piece.to()).isEqualTo(len("37 in"));
        // Doubles of 78 g keep 1e-14 g, of 1 m 1e-13 mm.
        assertThat(piece.mass().within(Mass.parse("72 g"), Mass.ofPicograms(1))).isTrue();
        assertThat(piece.balance().within(len("18 in"), len("1 nm"))).isTrue();
        assertThat(piece.momentAboutTip().ounceInches() * 28.349523125).isCloseTo(72 * 18, within(1e-9));
    }

    /**
     * A line density of z from the tip is a triangle: 200 mm long and 20 g it balances at 2/3, 133.3 mm, which is the end of the
     * believable range. The half nearer the tip weighs a quarter, 5 g, and its own balance is 2/3 of its length.
     */
    @Test
    void aTriangleByHand() {
        Shaft shaft = of("200 mm", "20 g", "133.333333 mm");
        ShaftCut half = new ShaftCut(shaft, Length.ZERO, len("100 mm"));
        // The balance is a third of a nanometre short of 2/3: 3e-10 mm in 133, some 1e-8 of the mass.
        assertThat(half.mass().grams()).isCloseTo(5, within(1e-7));
        assertThat(half.balance().millimetres()).isCloseTo(66.666667, within(1e-5));
        assertThat(ShaftCut.believable(shaft)).isTrue();
        assertThat(ShaftCut.believable(of("200 mm", "20 g", "133.333334 mm"))).isFalse();
        assertThat(ShaftCut.believable(of("300 mm", "20 g", "100 mm"))).isTrue();
        assertThat(ShaftCut.believable(of("300 mm", "20 g", "99.999999 mm"))).isFalse();
        assertThat(ShaftCut.believable(of("300 mm", "20 g", "200 mm"))).isTrue();
    }

    /**
     * 12 g on 384 mm are 1/32 g/mm in the mean. Balanced a third of the way up it is a triangle: 1/16 at the tip and none at the
     * butt, which is no density a shaft can have; balanced at two thirds it is that triangle turned round.
     */
    @Test
    void aLineDensityThatGoesToZeroIsNone() {
        assertThat(ShaftCut.lineDensity(of("384 mm", "12 g", "128 mm"))).isEmpty();
        assertThat(ShaftCut.lineDensity(of("384 mm", "12 g", "256 mm"))).isEmpty();
        assertThat(ShaftCut.lineDensity(of("384 mm", "12 g", "128.000001 mm"))).isPresent();
        assertThat(ShaftCut.lineDensity(of("384 mm", "12 g", "255.999999 mm"))).isPresent();
    }

    /** Weighed: .06 g/mm for the first 100 mm, then rising to .1 at 200 mm: 6 g and 8 g. */
    @Test
    void aWeighedShaftOverridesTheStraightLine() {
        LineDensityProfile along =
                new LineDensityProfile(List.of(knot("0 mm", .06), knot("100 mm", .06), knot("200 mm", .1)));
        Shaft shaft = of("200 mm", "20 g", "150 mm");
        Shaft weighed = shaft.withMass(shaft.mass().withAlong(Reading.measured(along)));
        assertThat(new ShaftCut(weighed, Length.ZERO, len("100 mm")).mass().grams())
                .isCloseTo(6, within(1e-12));
        assertThat(new ShaftCut(weighed, len("100 mm"), len("200 mm")).mass().grams())
                .isCloseTo(8, within(1e-12));
        // Halfway up the rise the density is .08: 50 mm from .06 to .08 are 3.5 g.
        assertThat(new ShaftCut(weighed, len("50 mm"), len("150 mm")).mass().grams())
                .isCloseTo(3 + 3.5, within(1e-12));
        assertThat(ShaftCut.believable(weighed)).isTrue();
    }

    private static LineDensityProfile.Knot knot(String at, double gramsPerMillimetre) {
        return new LineDensityProfile.Knot(len(at), LineDensity.ofGramsPerMillimetre(gramsPerMillimetre));
    }

    @Test
    void refusesAPieceThatIsNotOfTheShaft() {
        Shaft shaft = Bench.shaft("A");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShaftCut(shaft, len("-1 mm"), len("1 in")))
                .withMessage("from must be from 0 mm to 990.6 mm, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShaftCut(shaft, len("2 in"), len("1 in")))
                .withMessage("to must be from 50.8 mm to 990.6 mm, was 25.4 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShaftCut(shaft, len("2 in"), len("40 in")))
                .withMessageEndingWith("was 1016 mm");
        ShaftCut nothing = new ShaftCut(shaft, len("1 in"), len("1 in"));
        assertThat(nothing.mass()).isEqualTo(Mass.ZERO);
        assertThatIllegalArgumentException().isThrownBy(nothing::balance).withMessage("mass must not be zero, was 0 g");
        assertThatNullPointerException()
                .isThrownBy(() -> new ShaftCut(null, Length.ZERO, Length.ZERO))
                .withMessage("shaft must not be null");
        assertThatNullPointerException().isThrownBy(() -> ShaftCut.of(null)).withMessage("build must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> ShaftCut.believable(null))
                .withMessage("shaft must not be null");
    }
}
