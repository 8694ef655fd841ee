package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Published eigenvalues of uniform beams, and the order in which the panels come near them. */
class CantileverPublishedTest {

    private static final Polyline ONE = Polyline.constant(1, 1);

    /** (bL)^2 of a beam of length, stiffness and density 1. */
    private static double squareOfBl(EndBody body) {
        return 2 * Math.PI * Cantilever.of(ONE, ONE, body).slowestSwing().frequencyHz();
    }

    @Test
    void clampedFree() {
        // Blevins, Formulas for Natural Frequency and Mode Shape, table 8-1: bL = 1.87510407; half its last digit.
        assertThat(Math.sqrt(squareOfBl(EndBody.NONE))).isCloseTo(1.87510407, within(5e-9));
    }

    @Test
    void endMassEqualToTheBeams() {
        // Mathematical Problems in Engineering 2017, 1568019, table 1: (bL)^2 = 1.557298; half its last digit.
        assertThat(squareOfBl(EndBody.point(1))).isCloseTo(1.557298, within(5e-7));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.1, 0.25, 0.5, 1, 2, 5, 10, 100})
    void endMassesByTheirEquation(double ratio) {
        // 1 + cos b cosh b + m b (cos b sinh b - sin b cosh b) = 0, solved by Commons Math to 1e-14.
        double b = new BrentSolver(1e-15, 1e-15)
                .solve(
                        1000,
                        x -> 1
                                + Math.cos(x) * Math.cosh(x)
                                + ratio * x * (Math.cos(x) * Math.sinh(x) - Math.sin(x) * Math.cosh(x)),
                        0.05,
                        2);
        // What the documentation promises is 1e-9; the panels do better.
        assertThat(squareOfBl(EndBody.point(ratio))).isCloseTo(b * b, within(1e-11 * b * b));
    }

    @Test
    void aSquareSteelBar() {
        // 1 m long, 50 mm square, E 210 GPa, 7800 kg/m3: 41.91 Hz in a published worked example; half its last digit.
        double side = 0.05;
        Polyline stiffness = Polyline.constant(1, 210e9 * side * side * side * side / 12);
        Polyline density = Polyline.constant(1, 7800 * side * side);
        assertThat(Cantilever.of(stiffness, density, EndBody.NONE)
                        .slowestSwing()
                        .frequencyHz())
                .isCloseTo(41.91, within(0.005));
    }

    @Test
    void theErrorFallsWithTheEighthPowerOfThePanelLength() {
        double b = new BrentSolver(1e-15, 1e-15).solve(1000, x -> 1 + Math.cos(x) * Math.cosh(x), 1, 2);
        double exact = b * b / (2 * Math.PI);
        double before = error(1, exact);
        // Beyond a quarter of the beam what is left is near rounding.
        for (double longest : new double[] {0.5, 0.25, 0.125}) {
            double error = error(longest, exact);
            // 2^8 = 256, within a tenth of a power.
            assertThat(before / error).isBetween(Math.pow(2, 7.9), Math.pow(2, 8.1));
            before = error;
        }
        // The panels used by default, an eighth of the beam.
        assertThat(error(0.125, exact)).isLessThan(1e-11);
    }

    private static double error(double longest, double exact) {
        return Math.abs(
                Cantilever.of(ONE, ONE, EndBody.NONE, longest).slowestSwing().frequencyHz() / exact - 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.2, 1, 3, 30})
    void theTextbookRuleOfThirtyThreePartsIn140(double ratio) {
        // f = sqrt(3 EI / (L^3 (M + 33/140 m))) / 2 pi, within 1.5 % by any textbook (from memory), and always above.
        double rule = Math.sqrt(3 / (ratio + 33.0 / 140));
        assertThat(squareOfBl(EndBody.point(ratio))).isLessThan(rule).isCloseTo(rule, within(0.015 * rule));
    }
}
