package dev.tipwright.lessons;

import static dev.tipwright.lessons.Lumps.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.flex.FrequencyLine;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.set.RescueChoice;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ClubChange;
import dev.tipwright.swingweight.set.SetAims;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The headline numbers of the lessons, worked out beside them: by arithmetic on paper, by sums of lumps, by another way of solving. */
class LessonNumbersTest {

    /** Arithmetic in doubles, a few operations. */
    private static final double ROUNDING = 1e-9;

    @Test
    void theShimLeavesWhatTheTaperLeavesOpen() {
        Clearance bare = Clearance.of(ShimmedTip.TIP, ShimmedTip.BORE, ShimmedTip.BORE.depth());
        assertThat(bare.least().thousandths()).isCloseTo(370 - 358, within(ROUNDING));
        assertThat(bare.greatest().thousandths()).isCloseTo(370 - 355, within(ROUNDING));
        // (12 - 3) / 2 = 4.5 thousandths of wall at most, so the shim of 4; twice 4 off both ends.
        ShimFit shim = ShimmedTip.shim();
        assertThat(shim.wall().orElseThrow().thousandths()).isCloseTo(4, within(ROUNDING));
        assertThat(shim.least().thousandths()).isCloseTo(12 - 8, within(ROUNDING));
        assertThat(shim.greatest().thousandths()).isCloseTo(15 - 8, within(ROUNDING));
        // Leaning from end to end: half of both clearances over the insertion.
        assertThat(Lean.of(ShimmedTip.TIP, ShimmedTip.BORE, ShimmedTip.BORE.depth())
                        .angle()
                        .radians())
                .isCloseTo((.012 + .015) / 2 / 1.25, within(1e-6)); // an angle for its tangent
        // A tube of mean diameter .3565 + .004 and wall .004, 1 1/4 in long, at 8.5 g/cm3.
        double volume = Math.PI * .004 * (.3565 + .004) * 1.25 * 16.387064;
        assertThat(shim.mass(ShimmedTip.TIP, ShimmedTip.BRASS).grams()).isCloseTo(volume * 8.5, within(1e-6));
        assertThat(ShimmedTip.page()).contains("0.79 g");
        // 0.7888 g at .125 + 36.375 - 1.25 + .625 = 35.875 in, 21.875 in past the fulcrum, 1.75 oz in a point.
        assertThat(volume * 8.5 / 28.349523125 * 21.875 / 1.75).isCloseTo(0.35, within(0.005)); // two printed places
        assertThat(ShimmedTip.page()).contains("0.35 of a swing weight point");
        // Shear of the tip's surface: 12 000 N mm over the integral of pi d^2 / 2.
        double squares = (.355 * .355 + .355 * .358 + .358 * .358) / 3 * INCH * INCH;
        assertThat(12_000 / (Math.PI / 2 * squares * 1.25 * INCH)).isCloseTo(2.93, within(0.005)); // as printed
        assertThat(ShimmedTip.page()).contains("shear at 12 N m, tip to shim           2.93 MPa");
    }

    /** Club of the set by the sums of its lumps; head at the mouth and 1.3 in off the axis, 2.4 kg cm2 of its own. */
    private static Lumps lumps(double head, double centre, double cut, double more) {
        double tip = (.125 + cut) * INCH;
        double mouth = tip - 1.25 * INCH;
        Lumps club = new Lumps().add(50, 4.4 * INCH).add(head + more, mouth + centre * INCH);
        club.inertia += 2.4e5 + (head + more) * Math.pow(1.3 * INCH, 2);
        return club.shaft(84, 20.2 * INCH, 39 * INCH, .5 * INCH, (.5 + cut) * INCH, tip);
    }

    @Test
    void theHeadsMassThatEvensTheInertia() {
        Lumps six = lumps(262, 2.10, 36.375, 0);
        Lumps nine = lumps(283.5, 2.16, 34.875, 0);
        assertThat(EqualInertia.wanted().kilogramSquareCentimetres())
                .isCloseTo(six.kilogramSquareCentimetres(), within(1e-3)); // the sum over slices
        // Mass at the head's centre, out from the butt and off the axis.
        double arm2 = Math.pow((.125 + 34.875 - 1.25 + 2.16) * INCH, 2) + Math.pow(1.3 * INCH, 2);
        double more = (six.inertia - nine.inertia) / arm2;
        ClubChange change = SetAims.equalInertia(EqualInertia.set(), EqualInertia.wanted(), 0)
                .get(3);
        assertThat(change.heavier().grams()).isCloseTo(more, within(1e-3)); // the sum over slices, over 83 dm2
        assertThat(change.reads(SwingWeightScale.LETTERS_AT_14_INCHES).points())
                .isCloseTo(lumps(283.5, 2.16, 34.875, more).points(), within(1e-3)); // the same
        assertThat(EqualInertia.page()).contains("2.98 g     2557.7 ->   2582.5   C8.0 -> C9.3");
    }

    @Test
    void theLengthThatEvensTheInertia() {
        ClubChange change = SetAims.equalInertia(EqualInertia.set(), EqualInertia.wanted(), 1)
                .get(3);
        double cut = 34.875 + change.longer().inches();
        assertThat(lumps(283.5, 2.16, cut, 0).kilogramSquareCentimetres())
                .isCloseTo(lumps(262, 2.10, 36.375, 0).kilogramSquareCentimetres(), within(1e-3)); // sums over slices
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void theFrequenciesOfTheStraightenedSet(int club) {
        double[] head = {255, 262, 269, 276, 283.5};
        double[] centre = {2.08, 2.10, 2.12, 2.14, 2.16};
        double[] timed = {271.0, 271.6, 267.9, 271.2, 273.9};
        double cut = 36.875 - club * .5;
        double[] trims = {
            1 + club * .5,
            StraightenedLine.straightened(StraightenedLine.byChart())
                    .get(club)
                    .work()
                    .tipTrim()
                    .inches()
        };
        List<List<Build>> sets =
                List.of(StraightenedLine.byChart(), StraightenedLine.straightened(StraightenedLine.byChart()));
        for (int k = 0; k < 2; k++) {
            assertThat(StraightenedLine.frequency(sets.get(k).get(club))
                            .frequency()
                            .perMinute())
                    .isCloseTo(
                            shot(head[club], centre[club], timed[club], trims[k], cut),
                            within(0.01)); // of 270: the steps
        }
    }

    /** In metres and kilograms; stiffness in N m2, straight from 18 at the tip to 24 at 8 in and 60 at 40 in. */
    private static double shot(double head, double centre, double timed, double trim, double cut) {
        double m = INCH / 1000;
        DoubleUnaryOperator shape = z -> z < 8 * m ? 18 + 6 * z / (8 * m) : 24 + 36 * (z - 8 * m) / (32 * m);
        double r = 40 * m;
        double a = (4 * r * .086 - 6 * .086 * 20.7 * m) / (r * r);
        double b = (12 * .086 * 20.7 * m - 6 * r * .086) / (r * r * r);
        double top = 35 * m;
        double raw = new Shooting(s -> shape.applyAsDouble(top - s), s -> a + b * (top - s), top, .2, 0, 0).perMinute();
        double scale = Math.pow(timed / raw, 2);
        // The body: head, and an inch and a quarter of tip in slices, its places beyond the mouth.
        double mass = head / 1000;
        double first = mass * centre * m;
        double second = 2.4e-4 + mass * (Math.pow(centre * m, 2) + Math.pow(1.3 * m, 2));
        for (int k = 0; k < 1000; k++) {
            double z = (trim + 1.25 * (k + .5) / 1000) * m;
            double slice = (a + b * z) * 1.25 * m / 1000;
            double beyond = (trim + 1.25) * m - z;
            mass += slice;
            first += slice * beyond;
            second += slice * beyond * beyond;
        }
        double offset = first / mass;
        double butt = (trim + cut - 5) * m;
        return new Shooting(
                        s -> scale * shape.applyAsDouble(butt - s),
                        s -> a + b * (butt - s),
                        (cut - 1.25 - 5) * m,
                        mass,
                        offset,
                        second - mass * offset * offset)
                .perMinute();
    }

    /** Slope of the least squares line by the sums, clubs half an inch apart: lengths -1, -1/2, 0, 1/2, 1 from the middle. */
    @Test
    void theLineThroughTheSet() {
        for (List<Build> set :
                List.of(StraightenedLine.byChart(), StraightenedLine.straightened(StraightenedLine.byChart()))) {
            double[] f = set.stream()
                    .mapToDouble(
                            club -> StraightenedLine.frequency(club).frequency().perMinute())
                    .toArray();
            double slope = (f[0] + f[1] / 2 - f[3] / 2 - f[4]) / (1 + .25 + .25 + 1);
            double mean = (f[0] + f[1] + f[2] + f[3] + f[4]) / 5;
            FrequencyLine line = StraightenedLine.line(set);
            assertThat(line.perInch().perMinute()).isCloseTo(slope, within(ROUNDING));
            assertThat(line.off("7").perMinute()).isCloseTo(f[2] - mean, within(ROUNDING));
        }
        assertThat(StraightenedLine.furthest(StraightenedLine.byChart())).isGreaterThan(3);
        assertThat(StraightenedLine.furthest(StraightenedLine.straightened(StraightenedLine.byChart())))
                .isLessThan(StraightenedLine.WITHIN.perMinute());
    }

    @Test
    void whatTheStopsSay() {
        // At the end of the tip d = D(i) = .363 - .0064 i, and .351 is wanted: e = .012 - .0064 i, give or take .0064 /
        // 64.
        assertThat(StopOnTheBelt.first().stock().orElseThrow().least().thousandths())
                .isCloseTo(12 - 6.4 * .40 - .1, within(1e-4)); // inward to the nanometre, 4e-5 thousandths
        assertThat(StopOnTheBelt.first().stock().orElseThrow().most().thousandths())
                .isCloseTo(12 - 6.4 * .40 + .1, within(1e-4));
        // .3560 - .351 and .3640 - .359, give or take .2.
        assertThat(StopOnTheBelt.second().stock().orElseThrow().least().thousandths())
                .isCloseTo(4.8, within(ROUNDING));
        assertThat(StopOnTheBelt.second().stock().orElseThrow().most().thousandths())
                .isCloseTo(5.2, within(ROUNDING));
        // Three passes took between 9.34 - 5.2 and 9.54 - 4.8; 4.8 / 1.58 is three and a bit.
        assertThat(StopOnTheBelt.rate().least().thousandths()).isCloseTo(4.14 / 3, within(1e-4));
        assertThat(StopOnTheBelt.rate().most().thousandths()).isCloseTo(4.74 / 3, within(1e-4));
        assertThat(StopOnTheBelt.rate()
                        .safePasses(StopOnTheBelt.second().stock().orElseThrow()))
                .isEqualTo(3);
        // .351 - .348 too much; half of it is the shim that would fill it; the .001 shim leaves 4 + 3 - 2.
        assertThat(StopOnTheBelt.fourth().shimWall().orElseThrow().thousandths())
                .isCloseTo(1.5, within(ROUNDING));
        assertThat(StopOnTheBelt.page()).contains("a shim of wall 0.0010 in leaves 0.0050 in of clearance");
        // The thickest shim fills 6 and 2 of looseness are allowed.
        assertThat(StopOnTheBelt.reach().beyond().thousandths()).isCloseTo(6 + 2, within(ROUNDING));
    }

    @Test
    void whatTheMiscutShaftCanBecome() {
        List<RescueChoice> choices = Miscut.choices();
        // The chart gives the 8 an inch and a half: nothing is lost.
        assertThat(choices.get(0).head()).isEqualTo("8");
        assertThat(choices.get(0).plan().after().work().tipTrim().inches()).isEqualTo(1.5);
        // L = g + S + G with the tip on the bottom: S = 36.5 - .125 - 1 = 35.375, and 39 - 1.5 - 35.375 is left for the
        // butt.
        assertThat(choices.get(0).plan().report(CutToLength.class).buttTrim().inches())
                .isEqualTo(2.125);
        // As the 6 with the worked part off, 39 - 2.75 - 36.375 is an eighth too little.
        RescueChoice last = choices.get(choices.size() - 1);
        assertThat(last.head()).isEqualTo("6");
        assertThat(last.possible()).isFalse();
        assertThat(last.plan().report(CutToLength.class).buttTrim().inches()).isEqualTo(-.125);
    }

    /** The lumps themselves, on numbers that come out round. */
    @Test
    void theLumpsAddUp() {
        Lumps even = new Lumps().shaft(100, 500, 1000, 0, 1000, 1000);
        assertThat(even.mass).isCloseTo(100, within(1e-9));
        assertThat(even.moment).isCloseTo(100 * 500, within(1e-6));
        assertThat(even.inertia).isCloseTo(100 * 1000.0 * 1000 / 3, within(1.0)); // of 3e7: the slices
        assertThat(Balance.of(EqualInertia.set().club("6")).total().grams())
                .isCloseTo(lumps(262, 2.10, 36.375, 0).mass, within(1e-6));
        // A uniform beam without a body: (1.8751041)^2 sqrt(EI / (mu l^4)), Blevins, table 8-1.
        double uniform = new Shooting(s -> 2, s -> 0.5, 1, 1e-12, 0, 0).perMinute();
        assertThat(uniform).isCloseTo(60 / (2 * Math.PI) * 1.8751041 * 1.8751041 * 2, within(1e-4)); // eight digits
    }
}
