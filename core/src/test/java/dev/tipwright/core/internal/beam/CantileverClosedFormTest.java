package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Static bending and massless beams, which have answers in closed form. */
class CantileverClosedFormTest {

    private static final EndBody ANY = EndBody.point(1);

    @Test
    void aUniformBeamUnderForceAndCouple() {
        // F L^3 / 3 EI + C L^2 / 2 EI and F L^2 / 2 EI + C L / EI, with F 6, C 4, L 2, EI 8; few roundings.
        EndMotion end = Cantilever.of(Polyline.constant(2, 8), Polyline.constant(2, 1), ANY)
                .under(6, 4);
        assertThat(end.deflectionM()).isCloseTo(2 + 1, within(1e-14));
        assertThat(end.slope()).isCloseTo(1.5 + 1, within(1e-14));
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 1", "60, 18", "18, 60", "1, 20", "100, 1"})
    void aLinearStiffnessIntegratesToLogarithms(double a, double b) {
        // EI = a + k s over L = 1, k = b - a: put u = EI for s in int (1 - s)^n / EI.
        double k = b - a;
        double log = Math.log(b / a);
        double forceDeflection = (b * b * log - 2 * b * (b - a) + (b * b - a * a) / 2) / (k * k * k);
        double forceSlope = (b * log - (b - a)) / (k * k);
        double coupleSlope = log / k;

        Polyline stiffness = Polyline.of(new double[] {0, 1}, new double[] {a, b});
        Cantilever beam = Cantilever.of(stiffness, Polyline.constant(1, 1), ANY);
        // Four points over a panel whose stiffness doubles at most: the error term of the rule is 1 / 3^8 / 8 or less
        // at
        // the steepest, and the panels are halved besides; as a part of the largest value 1e-8 holds with room.
        assertThat(beam.under(1, 0).deflectionM()).isCloseTo(forceDeflection, within(1e-8 * forceDeflection));
        assertThat(beam.under(1, 0).slope()).isCloseTo(forceSlope, within(1e-8 * forceSlope));
        assertThat(beam.under(0, 1).deflectionM()).isCloseTo(forceSlope, within(1e-8 * forceSlope));
        assertThat(beam.under(0, 1).slope()).isCloseTo(coupleSlope, within(1e-8 * coupleSlope));
    }

    @Test
    void aStepInStiffnessAddsUpFromItsParts() {
        // EI 1 over the first half of L = 2, EI 4 over the second: int (2 - s)^2 / EI = 7/3 + 1/12.
        Polyline stiffness = Polyline.of(new double[] {0, 1, 1, 2}, new double[] {1, 1, 4, 4});
        assertThat(Cantilever.of(stiffness, Polyline.constant(2, 1), ANY)
                        .under(1, 0)
                        .deflectionM())
                .isCloseTo(29.0 / 12, within(1e-14));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0, 0", // sqrt(3): the mass alone
        "0, 1, 0", // 1: the inertia alone
        "1, 0.5, 0", //
        "0.3, 0.01, 0.1", //
        "1, 0.25, -0.5", // turning about the middle of the beam, and no coupling: the faster of two
        "12, 1, -0.5", // both modes at one frequency
        "1, 1, -0.5", // slowest mode moves the centre of mass not at all
        "2, 0, -0.25"
    })
    void aMasslessBeamHasTwoModesAtMost(double mass, double inertia, double offset) {
        // With L = EI = 1 the end has flexibilities 1/3, 1/2, 1; the centre of mass 1/3 + o + o^2, 1/2 + o, 1.
        double centre = 1.0 / 3 + offset + offset * offset;
        double coupling = 0.5 + offset;
        double sum = mass * centre + inertia;
        double product = mass * inertia * (centre - coupling * coupling);
        double t = sum / 2 + Math.sqrt(Math.max(0, sum * sum / 4 - product));

        Mode mode = Cantilever.of(Polyline.constant(1, 1), Polyline.constant(1, 0), new EndBody(mass, inertia, offset))
                .slowestSwing();
        double expected = 1 / (2 * Math.PI * Math.sqrt(t));
        // Four points integrate a quadratic exactly; what is left is rounding.
        assertThat(mode.frequencyHz()).isCloseTo(expected, within(1e-13 * expected));
        assertThat(mode.iterations()).isLessThanOrEqualTo(3);
    }

    @Test
    void whatTheRuleIntegratesExactly() {
        for (int i = 0; i < Gauss.POINTS; i++) {
            double c = Gauss.point(i);
            for (int power = 0; power < 4; power++) {
                double once = 0;
                double twice = 0;
                double back = 0;
                for (int j = 0; j < Gauss.POINTS; j++) {
                    once += Gauss.once(i, j) * Math.pow(Gauss.point(j), power);
                    twice += Gauss.twice(i, j) * Math.pow(Gauss.point(j), power);
                    back += Gauss.twiceBack(i, j) * Math.pow(1 - Gauss.point(j), power);
                }
                assertThat(once).isCloseTo(Math.pow(c, power + 1) / (power + 1), within(1e-15));
                if (power < 3) {
                    // A cubic integrates to a quartic, which the second pass only interpolates.
                    double exact = Math.pow(c, power + 2) / (power + 1) / (power + 2);
                    double mirrored = Math.pow(1 - c, power + 2) / (power + 1) / (power + 2);
                    assertThat(twice).isCloseTo(exact, within(1e-15));
                    assertThat(back).isCloseTo(mirrored, within(1e-15));
                }
            }
        }
    }

    @Test
    void forwardsAndBackwardsAreAdjoint() {
        for (int i = 0; i < Gauss.POINTS; i++) {
            for (int j = 0; j < Gauss.POINTS; j++) {
                double both = Gauss.weight(i) * Gauss.once(i, j) + Gauss.weight(j) * Gauss.once(j, i);
                assertThat(both).isCloseTo(Gauss.weight(i) * Gauss.weight(j), within(1e-16));
                assertThat(Gauss.weight(i) * Gauss.twiceBack(i, j))
                        .isCloseTo(Gauss.weight(j) * Gauss.twice(j, i), within(1e-16));
            }
        }
    }
}
