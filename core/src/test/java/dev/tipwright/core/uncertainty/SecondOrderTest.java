package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Second-order terms against moments worked out by hand. */
class SecondOrderTest {

    private static SecondOrder of(Input x, Model model) {
        return SecondOrder.of(Measurand.of("y", "1", Inputs.of(x), model));
    }

    @ParameterizedTest
    @CsvSource({"NORMAL, 3", "RECTANGULAR, 1.8", "TRIANGULAR, 2.4"})
    void squareHasTheVarianceOfItsShape(Distribution shape, double kappa) {
        // Var(X^2) = 4 x^2 u^2 + (kappa - 1) u^4 for a symmetric X, exactly; x = 3, u = 0.5.
        SecondOrder second = of(Input.ofStandard("x", "1", 3, 0.5).withDistribution(shape), x -> x[0] * x[0]);
        assertThat(second.firstOrder()).isCloseTo(3, within(1e-14));
        assertThat(second.secondOrderVariance()).isCloseTo((kappa - 1) * 0.0625, within(1e-11));
        assertThat(second.shift()).isCloseTo(0.25, within(1e-12));
        double both = Math.sqrt(9 + (kappa - 1) * 0.0625);
        assertThat(second.share()).isCloseTo((both - 3) / both, within(1e-11));
    }

    @Test
    void studentCountsAsNormal() {
        Input x = Input.ofStandard("x", "1", 3, 0.5).withDegreesOfFreedom(DegreesOfFreedom.of(4));
        assertThat(of(x.withDistribution(Distribution.STUDENT), v -> v[0] * v[0]))
                .isEqualTo(of(x, v -> v[0] * v[0]));
    }

    @Test
    void cubeTakesTheThirdDerivativeIn() {
        // Var(X^3) = 9 x^4 u^2 + 36 x^2 u^4 + 15 u^6 for a normal X; the middle term is that of second order.
        SecondOrder second = of(Input.ofStandard("x", "1", 2, 0.1), x -> x[0] * x[0] * x[0]);
        // The difference behind the slope holds f''' h^2 / 6 = u^2 / 64 beside 3 x^2: that times f''' u^4.
        assertThat(second.secondOrderVariance()).isCloseTo(36 * 4 * 1e-4, within(6 * 1e-4 * 0.01 / 64 + 1e-11));
    }

    @Test
    void productOfOneAndASquareTakesTheMixedDerivativesIn() {
        // Var(X Y^2) to fourth order beyond first: 6 y^2 u^2 v^2 + 2 x^2 v^4 for normal X, Y.
        Inputs inputs = Inputs.of(Input.ofStandard("x", "1", 5, 0.2), Input.ofStandard("y", "1", 3, 0.1));
        double expected = 6 * 9 * 0.04 * 0.01 + 2 * 25 * 1e-4;
        // Exact polynomial differences: only rounding, 512 units in the last place of 45 times the slopes.
        SecondOrder one = SecondOrder.of(Measurand.of("z", "1", inputs, x -> x[0] * x[1] * x[1]));
        assertThat(one.secondOrderVariance()).isCloseTo(expected, within(1e-10));
        SecondOrder other = SecondOrder.of(Measurand.of(
                "z", "1", Inputs.of(inputs.list().get(1), inputs.list().get(0)), x -> x[1] * x[0] * x[0]));
        assertThat(other.secondOrderVariance()).isCloseTo(expected, within(1e-10));
        assertThat(one.shift()).isCloseTo(5 * 0.01, within(1e-12));
    }

    @Test
    void straightModelHasNone() {
        Inputs inputs = Inputs.of(Input.ofStandard("x", "1", 1e9, 0.01), Input.ofLimits("y", "1", -3e8, 0.7));
        SecondOrder second = SecondOrder.of(Measurand.of("z", "1", inputs, x -> 0.1 * x[0] - 0.3 * x[1]));
        assertThat(second.secondOrderVariance()).isZero();
        assertThat(second.shift()).isZero();
        assertThat(second.share()).isZero();
    }

    @Test
    void expansionThatDoesNotDescribeTheModelHasNoUncertainty() {
        // sin at 0 with u = 2: first order 4, second order f' f''' u^4 = -16.
        SecondOrder second = of(Input.ofStandard("x", "rad", 0, 2), x -> StrictMath.sin(x[0]));
        assertThat(second.standardUncertainty()).isEmpty();
        assertThat(second.share()).isEqualTo(1);
    }

    @Test
    void exactInputsHaveNone() {
        SecondOrder second = of(Input.exact("x", "1", 2), x -> x[0] * x[0]);
        assertThat(second).isEqualTo(new SecondOrder(0, 0, 0));
        assertThat(second.share()).isZero();
    }

    @Test
    void flatTopIsAllSecondOrder() {
        // x^2 at 0: first order sees nothing; Var = 2 u^4.
        SecondOrder second = of(Input.ofStandard("x", "1", 0, 1), x -> x[0] * x[0]);
        assertThat(second.standardUncertainty().orElseThrow()).isCloseTo(Math.sqrt(2), within(1e-14));
        assertThat(second.share()).isEqualTo(1);
    }

    @Test
    void refusesToOverflow() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> of(Input.ofStandard("x", "1", 0, 1e150), x -> x[0] * x[0]))
                .withMessage("secondOrderVariance overflows the range of a double");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> new SecondOrder(1e200, 0, 0).standardUncertainty())
                .withMessage("standard uncertainty overflows the range of a double");
    }

    /** Others that are tied to each other do not make a rectangular input normal: (9/5 - 1) 0.5^4 as if it were alone. */
    @Test
    void anInputOutsideEveryCorrelationKeepsItsShape() {
        Input c = Input.ofStandard("c", "1", 3, 0.5).withDistribution(Distribution.RECTANGULAR);
        Inputs inputs = Inputs.of(Input.ofStandard("a", "1", 1, 0.1), Input.ofStandard("b", "1", 1, 0.1), c)
                .withCorrelations(List.of(new Correlation("a", "b", 0.5)));
        SecondOrder second = SecondOrder.of(Measurand.of("y", "1", inputs, x -> x[2] * x[2]));
        assertThat(second.secondOrderVariance()).isCloseTo(0.8 * 0.0625, within(1e-11));
    }
}
