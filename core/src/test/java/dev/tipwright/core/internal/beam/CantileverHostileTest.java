package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Input that is wrong, and input that is right but extreme. */
class CantileverHostileTest {

    private static final Polyline ONE = Polyline.constant(1, 1);

    @Test
    void nullsAreNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> Cantilever.of(null, ONE, EndBody.NONE))
                .withMessage("stiffnessNm2");
        assertThatNullPointerException()
                .isThrownBy(() -> Cantilever.of(ONE, null, EndBody.NONE))
                .withMessage("densityKgPerM");
        assertThatNullPointerException()
                .isThrownBy(() -> Cantilever.of(ONE, ONE, null))
                .withMessage("body");
    }

    @Test
    void theStationsMustAgree() {
        String rule = "stiffnessNm2 and densityKgPerM must both go from 0 m to the same end, was ";
        Polyline late = Polyline.of(new double[] {0.5, 1}, new double[] {1, 1});
        refused(ONE, Polyline.constant(2, 1), EndBody.NONE, rule + "0.0 m to 1.0 m and 0.0 m to 2.0 m");
        refused(late, ONE, EndBody.NONE, rule + "0.5 m to 1.0 m and 0.0 m to 1.0 m");
        refused(ONE, late, EndBody.NONE, rule + "0.0 m to 1.0 m and 0.5 m to 1.0 m");
    }

    @Test
    void theValuesAreChecked() {
        Polyline massless = Polyline.constant(1, 0);
        Polyline fading = Polyline.of(new double[] {0, 1}, new double[] {5, 0});
        refused(fading, ONE, EndBody.NONE, "stiffnessNm2 must be positive throughout, was as little as 0.0 N m2");
        refused(
                ONE,
                Polyline.of(new double[] {0, 1}, new double[] {1, -1}),
                EndBody.NONE,
                "densityKgPerM must be 0 or more throughout, was as little as -1.0 kg/m");
        refused(
                ONE,
                massless,
                EndBody.NONE,
                "body must have mass or inertia where the beam has no mass, was "
                        + "EndBody[massKg=0.0, inertiaKgM2=0.0, offsetM=0.0]");
        assertThat(Cantilever.of(ONE, fading, EndBody.NONE).slowestSwing().frequencyHz())
                .isPositive();
    }

    @Test
    void theBodyIsChecked() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> EndBody.point(bad))
                    .withMessage("massKg must be 0 or more and finite, was " + bad + " kg");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new EndBody(0, bad, 0))
                    .withMessage("inertiaKgM2 must be 0 or more and finite, was " + bad + " kg m2");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new EndBody(0, 0, Double.NaN))
                .withMessage("offsetM must be finite, was NaN m");
    }

    @Test
    void theLoadIsChecked() {
        Cantilever beam = Cantilever.of(ONE, ONE, EndBody.NONE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> beam.under(Double.NaN, 0))
                .withMessage("forceN and coupleNm must be finite, was NaN N and 0.0 N m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> beam.under(0, Double.POSITIVE_INFINITY))
                .withMessage("forceN and coupleNm must be finite, was 0.0 N and Infinity N m");
    }

    @Test
    void whatNoDoubleHoldsIsAnError() {
        Cantilever soft = Cantilever.of(Polyline.constant(1, 1e-300), ONE, EndBody.NONE);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> soft.under(1e300, 0))
                .withMessageStartingWith("The bending overflows: ");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> soft.under(0, 1e308))
                .withMessageStartingWith("The bending overflows: ");
        Polyline heavy = Polyline.constant(1, 1e300);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Cantilever.of(Polyline.constant(1, 1e-300), heavy, EndBody.NONE)
                        .slowestSwing())
                .withMessageStartingWith("The frequency is out of the range of a double: ");
        Polyline speck = Polyline.constant(1e-300, 1);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Cantilever.of(speck, speck, EndBody.NONE).slowestSwing())
                .withMessageStartingWith("The frequency is out of the range of a double: ");
    }

    @Test
    void aStiffnessThatFallsAThousandMillionFold() {
        // Into a needle: static deflection int s^2 / EI ds from the tip, EI = 1e-9 + s, is 1/2 to within 1e-9.
        Polyline needle = Polyline.of(new double[] {0, 1}, new double[] {1 + 1e-9, 1e-9});
        Cantilever beam = Cantilever.of(needle, ONE, EndBody.point(1));
        assertThat(beam.under(1, 0).deflectionM()).isCloseTo(0.5, within(3e-9));
        assertThat(beam.slowestSwing().residual()).isLessThanOrEqualTo(1e-7);
    }

    @Test
    void oddBeamsSettleInFewSteps() {
        Random random = new Random(12);
        for (int i = 0; i < 3000; i++) {
            double[] stations = {0, 0.3, 0.3, 0.30001, 0.9, 1};
            double[] stiffness =
                    random.doubles(6).map(x -> Math.pow(10, 12 * x - 6)).toArray();
            double[] density =
                    random.doubles(6).map(x -> Math.pow(10, 12 * x - 6)).toArray();
            EndBody body = new EndBody(
                    Math.pow(10, 12 * random.nextDouble() - 6),
                    Math.pow(10, 12 * random.nextDouble() - 6),
                    random.nextGaussian());
            Mode mode = Cantilever.of(Polyline.of(stations, stiffness), Polyline.of(stations, density), body)
                    .slowestSwing();
            assertThat(mode.iterations()).isLessThanOrEqualTo(10);
            assertThat(mode.residual()).isLessThanOrEqualTo(1e-7);
        }
    }

    @Test
    void theLimitStopsItAndTheResidualSaysSo() {
        Swing swing = new Swing(Panels.of(ONE, ONE, 0.125), EndBody.NONE);
        Mode stopped = Lanczos.slowest(swing, 1, 1);
        Mode settled = Lanczos.slowest(swing, 1, Lanczos.LIMIT);
        assertThat(stopped.iterations()).isEqualTo(1);
        assertThat(stopped.residual()).isGreaterThan(0.1);
        // By Rayleigh's principle a shape that is not the true one swings faster.
        assertThat(stopped.frequencyHz()).isGreaterThan(settled.frequencyHz());
    }

    @Test
    void manyStationsNeedManyPanels() {
        double[] stations = new double[200];
        double[] values = new double[200];
        for (int i = 0; i < 200; i++) {
            stations[i] = i / 199.0;
            values[i] = 1;
        }
        Polyline fine = Polyline.of(stations, values);
        double expected = Cantilever.of(ONE, ONE, EndBody.NONE).slowestSwing().frequencyHz();
        // The eight panels of the plain beam are good to 1e-12, see the test of the order.
        assertThat(Cantilever.of(fine, fine, EndBody.NONE).slowestSwing().frequencyHz())
                .isCloseTo(expected, within(2e-12 * expected));
    }

    private static void refused(Polyline stiffness, Polyline density, EndBody body, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cantilever.of(stiffness, density, body))
                .withMessage(message);
    }
}
