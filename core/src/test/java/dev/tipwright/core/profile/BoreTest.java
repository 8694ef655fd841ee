package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A bore from each kind of reading comes to the same form; by hand, and with what is refused. */
class BoreTest {

    /** From .363 to .355 in over 1 1/4 in the rate is .008 / 1.25 = .0064; halfway down the bore is .359 in. */
    @Test
    void twoDiametersAMouthAndARateAndReadingsGiveTheSameBore() {
        Bore two = Bore.ofTwoDiameters(len(".363 in"), len(".355 in"), len("1 1/4 in"), BoreEnd.FLAT);
        Bore rate = Bore.ofMouthAndTaper(len(".363 in"), .0064, len("1 1/4 in"), BoreEnd.FLAT);
        Bore readings = Bore.ofReadings(
                List.of(Station.of(Length.ZERO, len(".363 in")), Station.of(len("1 1/4 in"), len(".355 in"))),
                BoreEnd.FLAT);
        assertThat(rate).isEqualTo(two);
        assertThat(readings).isEqualTo(two);
        assertThat(two.depth()).isEqualTo(len("1.25 in"));
        assertThat(two.reading()).isEqualTo(BoreReading.AT_STATIONS);
        assertThat(two.profile().diameterAt(len("5/8 in"))).isEqualTo(len(".359 in"));
    }

    @Test
    void aNegativeRateWidensDownwards() {
        Bore bore = Bore.ofMouthAndTaper(len("9 mm"), -.01, len("30 mm"), BoreEnd.THROUGH);
        assertThat(bore.profile().diameterAt(bore.depth())).isEqualTo(len("9.3 mm"));
    }

    @Test
    void pinsAndAChamferAreReadingsThatSayTheyWerePins() {
        Bore bore = Bore.ofPins(
                List.of(Station.of(Length.ZERO, len(".380 in")), Station.of(len(".015 in"), len(".363 in"))),
                List.of(
                        new GaugePin(len(".359 in"), len("5/8 in")),
                        new GaugePin(len(".359 in"), len("3/4 in")),
                        new GaugePin(len(".355 in"), len("1 1/4 in"))),
                BoreEnd.CONE);
        assertThat(bore.reading()).isEqualTo(BoreReading.BY_PINS);
        assertThat(bore.depth()).isEqualTo(len("1 1/4 in"));
        assertThat(bore.profile().stations()).hasSize(5);
        assertThat(bore.profile().diameterAt(len("5/8 in"))).isEqualTo(len(".359 in"));
    }

    @Test
    void refusesPinsThatCannotBe() {
        GaugePin thin = new GaugePin(len(".355 in"), len("1/2 in"));
        GaugePin wide = new GaugePin(len(".359 in"), len("1 in"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofPins(List.of(), List.of(thin, wide), BoreEnd.FLAT))
                .withMessageStartingWith(
                        "pins must each be no wider than the one before, was GaugePin[diameter=9.1186 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        Bore.ofPins(List.of(Station.of(Length.ZERO, len(".38 in"))), List.of(wide, thin), BoreEnd.FLAT))
                .withMessage("chamfer and pins must be in order of their place, was 12.7 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofPins(List.of(), List.of(), BoreEnd.FLAT))
                .withMessage("pins must not be empty, was []");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GaugePin(Length.ZERO, len("1 in")))
                .withMessageStartingWith("diameter must be from");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> thin.withDrop(len("-1 mm")))
                .withMessage("drop must be from 0 mm to 3000 mm, was -1 mm");
        assertThat(thin.withDiameter(len("9 mm")).diameter()).isEqualTo(len("9 mm"));
        assertThat(thin.withDrop(len("9 mm")).drop()).isEqualTo(len("9 mm"));
    }

    /**
     * A drill of 118 degrees leaves a cone half a diameter over tan 59 degrees high. Tan 59 is 1.664279, so under 10 mm the
     * cone is 5 / 1.664279 = 3.004304 mm high; a drill of 90 degrees leaves one of 5 mm.
     */
    @Test
    void aPointedRodReadsTheConeToo() {
        Length depth = Bore.depthByPointedRod(len("35 mm"), len("10 mm"), Angle.ofDegrees(118));
        // Tan is given to seven digits, so the height is good to 3 nm.
        assertThat(depth.within(len("31.995696 mm"), len("0.000003 mm"))).isTrue();
        assertThat(Bore.depthByPointedRod(len("35 mm"), len("10 mm"), Angle.ofDegrees(90))
                        .within(len("30 mm"), len("1 nm")))
                .isTrue();
    }

    @Test
    void refusesARodThatCannotHaveReadTheCone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.depthByPointedRod(len("5 mm"), len("10 mm"), Angle.ofDegrees(89)))
                .withMessage("read must be deeper than the cone of a bottom of 10 mm, was 5 mm");
        // A cone of 90 degrees under 10 mm is 5 mm high: nothing is left above it.
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.depthByPointedRod(len("5 mm"), len("10 mm"), Angle.ofDegrees(90)))
                .withMessage("read must be deeper than the cone of a bottom of 10 mm, was 5 mm");
        for (double bad : new double[] {0, 180, -5, 200}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bore.depthByPointedRod(len("35 mm"), len("10 mm"), Angle.ofDegrees(bad)))
                    .withMessage("point must be above 0 and under 180 deg, was " + bad + " deg");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.depthByPointedRod(Length.ZERO, len("10 mm"), Angle.ofDegrees(118)))
                .withMessage("read must be above zero, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.depthByPointedRod(len("35 mm"), len("-1 mm"), Angle.ofDegrees(118)))
                .withMessage("bottom must be above zero, was -1 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> Bore.depthByPointedRod(len("35 mm"), len("10 mm"), null))
                .withMessage("point must not be null");
    }

    @Test
    void refusesATaperThatLeavesNoBottom() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1, -1}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Bore.ofMouthAndTaper(len("9 mm"), bad, len("30 mm"), BoreEnd.FLAT))
                    .withMessage("taperRate must be between -1 and 1, was " + bad);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofMouthAndTaper(len("9 mm"), .3, len("30 mm"), BoreEnd.FLAT))
                .withMessageContaining(
                        "taperRate must leave a bottom diameter at depth 30 mm from mouth 9 mm above zero")
                .withMessageEndingWith("was 0.3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofMouthAndTaper(len("9 mm"), -.5, len("300 mm"), BoreEnd.FLAT))
                .withMessageEndingWith("was -0.5");
    }

    @Test
    void startsAtItsMouthAndIsWhole() {
        DiameterProfile below =
                DiameterProfile.of(Station.of(len("1 mm"), len("9 mm")), Station.of(len("30 mm"), len("9 mm")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Bore(below, BoreEnd.FLAT, BoreReading.AT_STATIONS))
                .withMessage("profile must start at the mouth, 0, was 1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofReadings(below.stations(), BoreEnd.FLAT))
                .withMessage("readings must start at the mouth, 0, was 1 mm");
        List<GaugePin> pins = List.of(new GaugePin(len("9 mm"), len("2 mm")), new GaugePin(len("8 mm"), len("30 mm")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofPins(List.of(), pins, BoreEnd.FLAT))
                .withMessage("chamfer and pins must start at the mouth, 0, was 2 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Bore.ofReadings(List.of(), BoreEnd.FLAT))
                .withMessage("readings must not be empty, was []");
        assertThatNullPointerException()
                .isThrownBy(() -> Bore.ofReadings(below.stations(), null))
                .withMessage("end must not be null");
        Bore bore = Bore.ofTwoDiameters(len("9 mm"), len("9 mm"), len("30 mm"), BoreEnd.FLAT);
        assertThatNullPointerException()
                .isThrownBy(() -> bore.withProfile(null))
                .withMessage("profile must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> bore.withReading(null))
                .withMessage("reading must not be null");
        assertThat(bore.withEnd(BoreEnd.THROUGH).end()).isEqualTo(BoreEnd.THROUGH);
        assertThat(bore.shallowedTo(len("28 mm")).depth()).isEqualTo(len("28 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bore.shallowedTo(len("31 mm")))
                .withMessage("depth must be from 0.000001 mm to 30 mm, was 31 mm");
    }
}
