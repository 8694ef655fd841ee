package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/** Against two textbook methods with a dense eigenvalue solver, and against exact characteristic equations. */
class CantileverReferenceTest {

    @Test
    void aThousandShaftsAgainstInfluenceCoefficients() {
        Random random = new Random(8);
        for (int i = 0; i < 1000; i++) {
            double length = 0.4 + 0.8 * random.nextDouble();
            double[][] stiffness = line(random, length, 10, 80);
            double[][] density = line(random, length, 0.02, 0.15);
            assertAgrees(stiffness, density, shaftEnd(random));
        }
    }

    @Test
    void beamsNoShaftIsLikeAgainstInfluenceCoefficients() {
        Random random = new Random(9);
        for (int i = 0; i < 200; i++) {
            double length = Math.exp(random.nextGaussian());
            double[][] stiffness = line(random, length, 1, 100);
            double[][] density = line(random, length, 0, 10);
            EndBody body = new EndBody(
                    5 * random.nextDouble(), 5 * random.nextDouble(), length * (2 * random.nextDouble() - 1));
            assertAgrees(stiffness, density, body);
        }
    }

    @Test
    void taperedShaftsAgainstFiniteElements() {
        Random random = new Random(13);
        for (int i = 0; i < 200; i++) {
            double length = 0.4 + 0.8 * random.nextDouble();
            double[] stations = {0, length / 3, 2 * length / 3, length};
            double[][] stiffness = {stations, falling(random, 80, 10)};
            double[][] density = {stations, falling(random, 0.1, 0.03)};
            EndBody body = shaftEnd(random);
            double expected = FiniteElements.frequencyHz(stiffness, density, body, 15);
            // 45 cubic elements: their error falls with the fourth power, (1.875 / 45)^4 / 1440 = 2e-9 for a uniform
            // beam and
            // many times that for a taper; rounding in the stiffness matrix, of order 45^4 times 1e-16, comes on top.
            assertThat(frequencyHz(stiffness, density, body)).isCloseTo(expected, within(1e-6 * expected));
        }
    }

    @Test
    void bodiesOfAllKindsOnAUniformBeamAgainstTheCharacteristicEquation() {
        Random random = new Random(10);
        for (int i = 0; i < 500; i++) {
            EndBody body = new EndBody(
                    4 * random.nextDouble() * random.nextDouble(),
                    random.nextDouble() * random.nextDouble(),
                    1.6 * random.nextDouble() - 0.6);
            double b = smallestRoot(x -> characteristic(x, body));
            Polyline one = Polyline.constant(1, 1);
            // The solver gives b to 1e-13, the panels the frequency to 1e-11.
            double expected = b * b / (2 * Math.PI);
            assertThat(Cantilever.of(one, one, body).slowestSwing().frequencyHz())
                    .isCloseTo(expected, within(1e-10 * expected));
        }
    }

    private static void assertAgrees(double[][] stiffness, double[][] density, EndBody body) {
        double expected = GreensFunction.frequencyHz(stiffness, density, body);
        // Where the third derivative of an influence jumps, a rule of 24 points between stations errs by about 24^-4 /
        // 100.
        assertThat(frequencyHz(stiffness, density, body)).isCloseTo(expected, within(1e-7 * expected));
    }

    private static double frequencyHz(double[][] stiffness, double[][] density, EndBody body) {
        return Cantilever.of(Polyline.of(stiffness[0], stiffness[1]), Polyline.of(density[0], density[1]), body)
                .slowestSwing()
                .frequencyHz();
    }

    private static EndBody shaftEnd(Random random) {
        return new EndBody(
                random.nextInt(5) == 0 ? 0 : 0.5 * random.nextDouble(),
                random.nextInt(5) == 0 ? 0 : 1e-3 * random.nextDouble(),
                0.1 * random.nextDouble() - 0.02);
    }

    private static double[] falling(Random random, double most, double least) {
        double[] rising = random.doubles(4, least, most).sorted().toArray();
        return new double[] {rising[3], rising[2], rising[1], rising[0]};
    }

    /**
     * From two to five stations, at whole fortieths of the length, some of them steps.
     */
    private static double[][] line(Random random, double length, double least, double most) {
        TreeSet<Integer> fortieths = new TreeSet<>(List.of(0, 40));
        for (int inner = random.nextInt(4); inner > 0; inner--) {
            fortieths.add(1 + random.nextInt(39));
        }
        List<Double> stations = new ArrayList<>();
        for (int fortieth : fortieths) {
            double station = length * fortieth / 40;
            stations.add(station);
            if (0 < fortieth && fortieth < 40 && random.nextInt(3) == 0) {
                stations.add(station);
            }
        }
        double[] s = stations.stream().mapToDouble(x -> x).toArray();
        return new double[][] {s, random.doubles(s.length, least, most).toArray()};
    }

    /**
     * Zero for each {@code b} at which a uniform beam of length, stiffness and density 1 swings with the body.
     *
     * <p>{@code w = A (cosh bs - cos bs) + B (sinh bs - sin bs)} is clamped at 0; at 1 its moment and shear drive the body:
     * {@code w'' = b^4 (J w' + o M (w + o w'))}, {@code w''' = -b^4 M (w + o w')}. Two equations in A and B, one determinant.
     */
    private static double characteristic(double b, EndBody body) {
        double b4 = b * b * b * b;
        double o = body.offsetM();
        double[] a = {
            Math.cosh(b) - Math.cos(b),
            b * (Math.sinh(b) + Math.sin(b)),
            b * b * (Math.cosh(b) + Math.cos(b)),
            b * b * b * (Math.sinh(b) - Math.sin(b))
        };
        double[] d = {
            Math.sinh(b) - Math.sin(b),
            b * (Math.cosh(b) - Math.cos(b)),
            b * b * (Math.sinh(b) + Math.sin(b)),
            b * b * b * (Math.cosh(b) + Math.cos(b))
        };
        double[][] rows = new double[2][2];
        for (int i = 0; i < 2; i++) {
            double[] w = i == 0 ? a : d;
            double inertiaForce = b4 * body.massKg() * (w[0] + o * w[1]);
            rows[0][i] = w[2] - b4 * body.inertiaKgM2() * w[1] - o * inertiaForce;
            rows[1][i] = w[3] + inertiaForce;
        }
        return (rows[0][0] * rows[1][1] - rows[0][1] * rows[1][0]) / (b * b * b * b * b);
    }

    private static double smallestRoot(UnivariateFunction f) {
        double from = 0.2;
        while (f.value(from) * f.value(from + 0.005) > 0) {
            from += 0.005;
        }
        return new BrentSolver(1e-14, 1e-14).solve(1000, f, from, from + 0.005);
    }
}
