package dev.tipwright.core.flex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published eigenvalues of beams through the doors a caller uses, and the stiffness of tubes by hand. */
class FrequencyPublishedTest {

    /** (bL)^2 = 2 pi f L^2 sqrt(mu / EI) of a uniform shaft, 1 m, 80 g, 50 N m2, clamped by the last 100 mm. */
    private static double squareOfBl(double tipGrams) {
        Shaft shaft = SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, 50, 1000, 50)));
        double hertz = ShaftBend.of(shaft)
                .orElseThrow()
                .raw(shaft, SampleClub.timed(1, 100, tipGrams))
                .hertz();
        return 2 * Math.PI * hertz * 0.9 * 0.9 * Math.sqrt(0.08 / 50);
    }

    @Test
    void clampedFree() {
        double bl = CheckTable.named("beams-clamped-free").row("mode", "1").number("bL");
        // Half the last digit printed.
        assertThat(Math.sqrt(squareOfBl(0))).isCloseTo(bl, within(5e-9));
    }

    static List<CheckTable.Row> tipMasses() {
        return CheckTable.named("beams-tip-mass").rows().stream()
                .filter(row -> row.text("mode").equals("1"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("tipMasses")
    void tipMass(CheckTable.Row row) {
        // The beam that bends is nine tenths of 80 g.
        double found = squareOfBl(72 * row.number("mass_ratio"));
        double published = row.number("bL_squared");
        // The read row is printed to 1e-6, the computed ones to ten digits.
        assertThat(found).isCloseTo(published, within(row.text("status").equals("read") ? 5e-7 : 1e-9 * published));
    }

    @Test
    void aSquareSteelBarAsAShaft() {
        CheckTable.Row row = CheckTable.named("beams-square-bar").row("mode", "1");
        // 1 m, 50 mm square, 210 GPa, 7800 kg/m3: EI = 210e9 * 0.05^4 / 12 = 109375 N m2, 19.5 kg.
        Shaft bar = SampleClub.shaft()
                .withMass(ShaftMass.of(Mass.ofGrams(19_500), SampleClub.mm(500)))
                .withFlex(SampleClub.flex(SampleClub.stations(0, 109_375, 1000, 109_375)));
        double hertz = ShaftBend.of(bar)
                .orElseThrow()
                .raw(bar, SampleClub.timed(1, 0, 0))
                .hertz();
        assertThat(hertz).isCloseTo(row.number("frequency_Hz"), within(0.005));
    }

    private static Shaft tube(DiameterProfile outside, Length wall, Reading<Finish> finish) {
        Wall all = new Wall(ThicknessProfile.uniform(wall), Reading.unknown("the shaft's maker"));
        return SampleClub.shaft()
                .withSection(new ShaftSection(outside, SampleClub.mm(15), Reading.measured(all), finish))
                .withFlex(SampleClub.flex(new StiffnessShape.Tube(Stress.ofGigapascals(200))));
    }

    private static Station at(double place, double diameter) {
        return Station.of(SampleClub.mm(place), SampleClub.mm(diameter));
    }

    @Test
    void theStiffnessOfASteppedTubeByHand() {
        DiameterProfile outside = DiameterProfile.of(at(0, 10), at(300, 10), at(300, 12), at(1000, 12));
        Shaft shaft = tube(outside, SampleClub.mm(0.5), Reading.unknown("the shaft's maker"));
        List<StiffnessShape.Knot> knots = ShaftBend.of(shaft).orElseThrow().knots();
        assertThat(knots)
                .extracting(StiffnessShape.Knot::at)
                .containsExactly(Length.ZERO, SampleClub.mm(300), SampleClub.mm(300), SampleClub.mm(1000));
        // 200e3 N/mm2 * pi / 64 * (10^4 - 9^4) = 9817.477 * 3439 = 33.76230 N m2; (12^4 - 11^4) = 6095: 59.83752 N m2.
        double[] byHand = {33.76230, 33.76230, 59.83752, 59.83752};
        for (int i = 0; i < 4; i++) {
            assertThat(knots.get(i).stiffness().newtonSquareMetres()).isCloseTo(byHand[i], within(1e-5));
        }
    }

    @Test
    void finishAddsNoStiffness() {
        Finish finish = new Finish(
                ThicknessProfile.uniform(SampleClub.mm(0.1)),
                Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)));
        DiameterProfile painted = DiameterProfile.cylinder(SampleClub.mm(10.2), SampleClub.mm(1000));
        Shaft shaft = tube(painted, SampleClub.mm(0.6), Reading.measured(finish));
        assertThat(ShaftBend.of(shaft).orElseThrow().knots().get(0).stiffness().newtonSquareMetres())
                .isCloseTo(33.76230, within(1e-5));
    }

    @Test
    void aTaperedTubeIsDrawnCloselyEnough() {
        Shaft shaft = tube(DiameterProfile.of(at(0, 9), at(1000, 15)), SampleClub.mm(0.5), Reading.unknown("ask"));
        List<StiffnessShape.Knot> knots = ShaftBend.of(shaft).orElseThrow().knots();
        for (int i = 1; i < knots.size(); i++) {
            double z = (knots.get(i - 1).at().millimetres() + knots.get(i).at().millimetres()) / 2;
            double d = 9 + 0.006 * z;
            double there = 200e3 * Math.PI / 64 * (Math.pow(d, 4) - Math.pow(d - 1, 4)) * 1e-6;
            double drawn = (knots.get(i - 1).stiffness().newtonSquareMetres()
                            + knots.get(i).stiffness().newtonSquareMetres())
                    / 2;
            // A thousandth, as promised beside the number of parts.
            assertThat(drawn).isCloseTo(there, within(1e-3 * there));
        }
    }

    @Test
    void aTubeWithoutWallOrNotReadToTheButtHasNone() {
        DiameterProfile whole = DiameterProfile.cylinder(SampleClub.mm(10), SampleClub.mm(1000));
        DiameterProfile half = DiameterProfile.cylinder(SampleClub.mm(10), SampleClub.mm(500));
        assertThat(ShaftBend.of(tube(whole, Length.ZERO, Reading.unknown("ask"))))
                .isEmpty();
        assertThat(ShaftBend.of(tube(half, SampleClub.mm(0.5), Reading.unknown("ask"))))
                .isEmpty();
        Finish thick = new Finish(ThicknessProfile.uniform(SampleClub.mm(6)), Reading.unknown("ask"));
        assertThat(ShaftBend.of(tube(whole, SampleClub.mm(8), Reading.measured(thick))))
                .isEmpty();
        // A wall thicker than half the outside is a solid rod: pi / 64 * 10^4 * 200e3 = 98.17477 N m2.
        assertThat(ShaftBend.of(tube(whole, SampleClub.mm(8), Reading.unknown("ask")))
                        .orElseThrow()
                        .knots()
                        .get(0)
                        .stiffness()
                        .newtonSquareMetres())
                .isCloseTo(98.17477, within(1e-5));
    }
}
