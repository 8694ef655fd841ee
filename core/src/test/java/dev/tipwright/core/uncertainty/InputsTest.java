package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InputsTest {

    private static final Input A = Input.ofStandard("a", "mm", 1, 0.1);
    private static final Input B = Input.ofStandard("b", "mm", 2, 0.2);
    private static final Input C = Input.ofStandard("c", "mm", 3, 0.3);
    private static final Input D = Input.ofStandard("d", "mm", 4, 0.4);

    private static double u(Inputs inputs, Model model) {
        return Budget.of(Measurand.of("y", "mm", inputs, model)).standardUncertainty();
    }

    private static Inputs correlated(Correlation... correlations) {
        return Inputs.of(A, B, C, D).withCorrelations(List.of(correlations));
    }

    @Test
    void keepsTheOrder() {
        assertThat(Inputs.of(B, A).list()).containsExactly(B, A);
        assertThat(Inputs.of(B, A)).hasToString("[b = 2.00 mm, u 0.20 mm, a = 1.00 mm, u 0.10 mm]");
        assertThat(Measurand.of("y", "mm", Inputs.of(A), x -> 0)).hasToString("y in mm from 1 input");
    }

    @Test
    void doesNotFollowTheListItWasMadeFrom() {
        Input[] array = {A, B};
        Inputs inputs = Inputs.of(Arrays.asList(array));
        array[0] = C;
        assertThat(inputs.list()).containsExactly(A, B);
    }

    @Test
    void correlationEntersTheVariance() {
        // u^2 = 0.1^2 + 0.2^2 + 2 r 0.1 * 0.2 for a sum.
        Inputs pair = correlated(new Correlation("b", "a", 0.5));
        assertThat(u(pair, x -> x[0] + x[1])).isCloseTo(Math.sqrt(0.01 + 0.04 + 0.02), within(1e-12));
        assertThat(u(pair, x -> x[0] - x[1])).isCloseTo(Math.sqrt(0.01 + 0.04 - 0.02), within(1e-12));
        assertThat(u(pair, x -> x[2] + x[3])).isCloseTo(0.5, within(1e-12));
        assertThat(pair.withCorrelations(List.of()).correlations()).isEmpty();
    }

    @Test
    void fullCorrelationAddsPlainlyAndCancelsWholly() {
        Inputs all =
                correlated(new Correlation("a", "b", 1), new Correlation("a", "c", 1), new Correlation("b", "c", 1));
        assertThat(u(all, x -> x[0] + x[1] + x[2])).isCloseTo(0.6, within(1e-12));
        // Not merely the root of a rounding error, which would be 1e-8: the contributions are added before squaring.
        assertThat(u(all, x -> x[0] + x[1] - x[2])).isLessThan(1e-14);
        Inputs opposed = correlated(new Correlation("a", "b", -1));
        assertThat(u(opposed, x -> 2 * x[0] + x[1])).isLessThan(1e-14);
    }

    @Test
    void tiedThroughOthersIsOneGroup() {
        Inputs chain = correlated(new Correlation("d", "b", 0.5), new Correlation("b", "a", 0.5));
        assertThat(chain.groups()).hasSize(2);
        assertThat(chain.groups().get(0).members()).containsExactly(0, 1, 3);
        assertThat(chain.groups().get(1).members()).containsExactly(2);
    }

    @Test
    void groupHasTheLeastDegreesOfFreedomOfThoseThatContribute() {
        Inputs inputs = Inputs.of(
                        A.withDegreesOfFreedom(DegreesOfFreedom.of(5)),
                        B.withDegreesOfFreedom(DegreesOfFreedom.of(9)),
                        C,
                        D.withDegreesOfFreedom(DegreesOfFreedom.of(2)))
                .withCorrelations(List.of(new Correlation("a", "b", 0.5), new Correlation("c", "d", 0.1)));
        // Without d: group variance 0.07 with 5, c alone 0.09 with none: 0.16^2 / (0.07^2 / 5).
        Budget budget = Budget.of(Measurand.of("y", "mm", inputs, x -> x[0] + x[1] + x[2]));
        assertThat(budget.degreesOfFreedom().count().orElseThrow())
                .isCloseTo(0.16 * 0.16 * 5 / 0.07 / 0.07, within(1e-9));
    }

    @Test
    void refusesAMatrixThatNothingCanHave() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> correlated(
                        new Correlation("a", "b", 0.9),
                        new Correlation("b", "c", 0.9),
                        new Correlation("a", "c", -0.9)))
                .withMessage("correlations contradict each other:"
                        + " the matrix of coefficients must be positive semidefinite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> correlated(new Correlation("a", "b", 1), new Correlation("b", "c", 0.5)));
    }

    @Test
    void takesAMatrixOnTheEdge() {
        // r(a,b) = 0.6, r(b,c) = 0.8 and r(a,c) = 0: 1 - 0.36 - 0.64 = 0.
        Inputs edge = correlated(new Correlation("a", "b", 0.6), new Correlation("b", "c", 0.8));
        assertThat(edge.groups().get(0).size()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0001, -1.0001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesACoefficientThatIsNone(double r) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Correlation("a", "b", r))
                .withMessage("coefficient of a and b must lie between -1 and 1, was " + r);
    }

    @Test
    void refusesNamesThatDoNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Inputs.of(A, B, A))
                .withMessage("inputs must have different names, was twice: a");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Inputs.of(List.of()))
                .withMessage("inputs must be one or more, was none");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> correlated(new Correlation("a", "z", 0.5)))
                .withMessage("correlation must name an input, was z");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> correlated(new Correlation("a", "b", 0.5), new Correlation("b", "a", 0.5)))
                .withMessage("correlation of b and a must be given once, was given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Correlation("a", "a", 1))
                .withMessage("first and second must be two different inputs, was a twice");
    }

    @Test
    void refusesNulls() {
        assertThatNullPointerException()
                .isThrownBy(() -> Inputs.of((Input[]) null))
                .withMessage("inputs must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Inputs.of((List<Input>) null))
                .withMessage("inputs must not be null");
        assertThatNullPointerException().isThrownBy(() -> Inputs.of(A, null));
        assertThatNullPointerException()
                .isThrownBy(() -> Inputs.of(A).withCorrelations(null))
                .withMessage("correlations must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Correlation(null, "b", 0))
                .withMessage("first");
        assertThatNullPointerException()
                .isThrownBy(() -> new Correlation("a", null, 0))
                .withMessage("second");
    }
}
