package dev.tipwright.core.internal.root;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/** Published roots, the Brent solver of Commons Math, hard shapes and hostile input. */
class RootTest {

    @Test
    void firstEigenvalueOfAClampedFreeBeam() {
        // Blevins, Formulas for Natural Frequency and Mode Shape, table 8-1: 1.87510407; so 5e-9 is its last digit.
        Root root = Root.between(b -> 1 + Math.cos(b) * Math.cosh(b), 1, 2, 0);
        assertThat(root.x()).isCloseTo(1.87510407, within(5e-9));
        assertThat(root.settled()).isTrue();
    }

    @Test
    void fixedPointOfTheCosine() {
        // OEIS A003957: 0.73908513321516064165...
        Root root = Root.between(x -> Math.cos(x) - x, 0, 1, 0);
        assertThat(root.x()).isCloseTo(0.7390851332151607, within(2 * Math.ulp(1.0)));
    }

    @Test
    void agreesWithAReferenceSolver() {
        BrentSolver reference = new BrentSolver(1e-15, 1e-14);
        double[][] brackets = {{-1, 4}, {0, 3}, {0.1, 8}, {-5, 2}, {1, 2}, {-2, 2}};
        List<DoubleUnaryOperator> functions = List.of(
                x -> x * x * x - 2 * x - 5,
                x -> Math.exp(-x) - x / 7,
                x -> Math.log(x) - 1,
                x -> Math.atan(x - 1.5) + (x - 1.5) / 10,
                x -> Math.pow(x, 20) - 2,
                x -> x < 0.3 ? x - 0.3 : 100 * (x - 0.3));
        for (int i = 0; i < brackets.length; i++) {
            DoubleUnaryOperator f = functions.get(i);
            double expected = reference.solve(1000, f::applyAsDouble, brackets[i][0], brackets[i][1]);
            Root root = Root.between(f, brackets[i][0], brackets[i][1], 1e-14);
            // Both promise about 1e-14; f itself is known to a few of its last places only.
            assertThat(root.x()).isCloseTo(expected, within(1e-13));
            assertThat(root.residual()).isEqualTo(f.applyAsDouble(root.x()));
        }
    }

    @Test
    void smoothFunctionsTakeFarFewerStepsThanHalving() {
        // Halving from a width of 1 to 1e-15 takes 50.
        assertThat(Root.between(x -> Math.cos(x) - x, 0, 1, 1e-15).iterations()).isLessThanOrEqualTo(10);
        assertThat(Root.between(x -> x * x - 2, 1, 2, 1e-15).iterations()).isLessThanOrEqualTo(10);
    }

    @Test
    void theFirstStepsByHand() {
        List<Double> seen = new ArrayList<>();
        Root.between(
                x -> {
                    seen.add(x);
                    return x < 19 ? -1 : 3;
                },
                16,
                20,
                1,
                2);
        // The chord crosses at 17, a quarter of the way; the nudge is 0.2 / 4 * 4^2 = 0.8 towards the middle, 18.
        assertThat(seen.subList(0, 2)).containsExactly(16.0, 20.0);
        assertThat(seen.get(2)).isCloseTo(17.8, within(1e-14));
        // Between 17.8 and 20 the chord crosses at 18.35, the nudge 0.05 * 2.2^2 = 0.242 leads to 18.592, the middle is
        // 18.9;
        // halving would by now be at a width of 2, so no more than 2 - 1.1 from the middle is allowed, and that holds.
        assertThat(seen.get(3)).isCloseTo(18.592, within(1e-14));
    }

    @Test
    void aStepTooFarFromTheMiddleIsHeldBack() {
        List<Double> seen = new ArrayList<>();
        Root.between(
                x -> {
                    seen.add(x);
                    return x < 19 ? -1 : 1e15;
                },
                16,
                20,
                1,
                2);
        // The chord stays at the lower end. First 16 + 0.8; then 16.8 + 0.05 * 3.2^2 = 17.312, but the middle is 18.4
        // and
        // halving would by now be at a width of 2, so no more than 2 - 1.6 from it is allowed.
        assertThat(seen.get(2)).isCloseTo(16.8, within(1e-13));
        assertThat(seen.get(3)).isCloseTo(18.0, within(1e-13));
    }

    @Test
    void theWorstOfShapesTakeOneStepMoreThanHalving() {
        List<DoubleUnaryOperator> shapes = List.of(
                x -> x < 1e-7 ? -1 : 1,
                x -> x < 0.999 ? -1e-300 : 1e300,
                x -> Math.cbrt(x - 0.123),
                x -> Math.pow(x - 0.7, 41),
                x -> x < 0.5 ? -Double.MIN_VALUE : Double.MAX_VALUE,
                x -> x < 0.5 ? -Double.MAX_VALUE : Double.MIN_VALUE);
        for (DoubleUnaryOperator f : shapes) {
            Root root = Root.between(x -> f.applyAsDouble(x / 4 - 4), 16, 20, 0x1p-38);
            // 4 / 2^-38 is 2^40.
            assertThat(root.iterations()).isLessThanOrEqualTo(41);
            assertThat(root.settled()).isTrue();
            assertThat(root.width()).isLessThanOrEqualTo(0x1p-38);
        }
    }

    @Test
    void aRootAtAnEndNeedsNoStep() {
        assertThat(Root.between(x -> x, 0, 1, 0)).isEqualTo(new Root(0, 0, 0, 0, true));
        assertThat(Root.between(x -> x - 1, 0, 1, 0)).isEqualTo(new Root(1, 0, 0, 0, true));
        assertThat(Root.between(x -> 0, 2, 3, 0).residual()).isZero();
    }

    @Test
    void aWideToleranceNeedsNoStepAndGivesTheBetterEnd() {
        assertThat(Root.between(x -> x - 0.2, 0, 1, 1)).isEqualTo(new Root(0, -0.2, 1, 0, true));
        assertThat(Root.between(x -> x - 0.75, 0, 1, 5)).isEqualTo(new Root(1, 0.25, 1, 0, true));
    }

    @Test
    void theLimitStopsItAndSaysSo() {
        List<Double> seen = new ArrayList<>();
        Root root = Root.between(
                x -> {
                    seen.add(x);
                    return x < 0.3 ? -1 : 1;
                },
                0,
                1,
                1e-9,
                3);
        assertThat(root.settled()).isFalse();
        assertThat(root.iterations()).isEqualTo(3);
        assertThat(seen).hasSize(5);
        assertThat(Math.abs(root.x() - 0.3)).isLessThanOrEqualTo(root.width());
        assertThat(Root.between(x -> x - 0.3, 0, 1, 1e-9, 0).iterations()).isZero();
    }

    @Test
    void theFinestToleranceEndsForEveryBracket() {
        for (double size : new double[] {1e300, 1, 1e-300, Double.MIN_VALUE}) {
            Root root = Root.between(x -> x < size / 3 ? -1 : 1, -size, size, 0);
            assertThat(root.settled()).isTrue();
            assertThat(root.iterations()).isLessThanOrEqualTo(55);
        }
    }

    @Test
    void theBracketIsChecked() {
        String rule = "low must be below high, both within 1e300 of zero, was ";
        refused(1, 1, 0, 9, rule + "1.0 and 1.0");
        refused(2, 1, 0, 9, rule + "2.0 and 1.0");
        refused(Double.NaN, 1, 0, 9, rule + "NaN and 1.0");
        refused(0, Double.NaN, 0, 9, rule + "0.0 and NaN");
        refused(-1e301, 1, 0, 9, rule + "-1.0E301 and 1.0");
        refused(0, Double.POSITIVE_INFINITY, 0, 9, rule + "0.0 and Infinity");
    }

    @Test
    void toleranceLimitAndSignsAreChecked() {
        refused(0, 1, -1, 9, "tolerance must be from 0 to 1e300, was -1.0");
        refused(0, 1, Double.NaN, 9, "tolerance must be from 0 to 1e300, was NaN");
        refused(0, 1, Double.POSITIVE_INFINITY, 9, "tolerance must be from 0 to 1e300, was Infinity");
        refused(0, 1, 0, -1, "limit must be 0 or more, was -1");
        refused(3, 4, 0, 9, "f must differ in sign at low and high, was 2.5 and 3.5");
    }

    @Test
    void theFunctionIsChecked() {
        assertThatNullPointerException()
                .isThrownBy(() -> Root.between(null, 0, 1, 0))
                .withMessage("f");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Root.between(x -> x == 0 ? -1 : x == 1 ? 1 : Double.NaN, 0, 1, 0))
                .withMessage("f(0.5) must be finite, was NaN");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Root.between(x -> 1 / x, 0, 1, 0))
                .withMessage("f(0.0) must be finite, was Infinity");
    }

    private static void refused(double low, double high, double tolerance, int limit, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Root.between(x -> x - 0.5, low, high, tolerance, limit))
                .withMessage(message);
    }
}
