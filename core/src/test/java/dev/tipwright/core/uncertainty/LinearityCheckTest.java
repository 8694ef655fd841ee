package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Straight, curved, kinked and jumping models are told apart, wherever within two standard uncertainties it happens.
 */
class LinearityCheckTest {

    private static final double X = 10;
    private static final double U = 0.4;

    /** A model of {@code z = (x - 10) / 0.4}. */
    private static LinearityCheck of(DoubleUnaryOperator ofZ) {
        return LinearityCheck.of(measurand(ofZ), 0.05);
    }

    private static Measurand measurand(DoubleUnaryOperator ofZ) {
        Inputs inputs = Inputs.of(Input.ofStandard("x", "mm", X, U));
        return Measurand.of("y", "mm", inputs, x -> ofZ.applyAsDouble((x[0] - X) / U));
    }

    @Test
    void straight() {
        LinearityCheck check = of(z -> 3 + 2 * z);
        assertThat(check.verdict()).isEqualTo(Linearity.STRAIGHT);
        assertThat(check.bend()).isLessThan(1e-12);
        assertThat(check.slopeBelow()).isCloseTo(2, within(1e-12));
        assertThat(check.slopeAbove()).isCloseTo(2, within(1e-12));
        assertThat(check.worstInput()).isEqualTo("x");
        assertThat(check.jump()).isZero();
    }

    @Test
    void slightlyCurvedIsStraightEnough() {
        // 2 z + 0.04 z^2 strays 0.16 at z = 2, over 2 u = 4: 0.04.
        LinearityCheck check = of(z -> 2 * z + 0.04 * z * z);
        assertThat(check.verdict()).isEqualTo(Linearity.STRAIGHT);
        assertThat(check.bend()).isCloseTo(0.04, within(1e-12));
        assertThat(check.tolerance()).isEqualTo(0.05);
    }

    @Test
    void curved() {
        // 2 z + 0.5 z^2 strays 2 at z = 2, over 2 u = 4; slopes 1.5 and 2.5.
        LinearityCheck check = of(z -> 2 * z + 0.5 * z * z);
        assertThat(check.verdict()).isEqualTo(Linearity.CURVED);
        assertThat(check.bend()).isCloseTo(0.5, within(1e-12));
        assertThat(check.slopeBelow()).isCloseTo(1.5, within(1e-12));
        assertThat(check.slopeAbove()).isCloseTo(2.5, within(1e-12));
        assertThat(of(StrictMath::exp).verdict()).isEqualTo(Linearity.CURVED);
        assertThat(of(z -> z * z).bend()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.3, -1, -0.7, -0.25, 0, 0.1, 0.5, 1, 1.13})
    void kinked(double at) {
        LinearityCheck check = of(z -> z + Math.max(0, z - at));
        assertThat(check.verdict()).isEqualTo(Linearity.KINKED);
        assertThat(check.jump()).isZero();
    }

    @Test
    void kinkAtTheEstimateShowsInTheSlopes() {
        LinearityCheck check = of(Math::abs);
        assertThat(check.verdict()).isEqualTo(Linearity.KINKED);
        assertThat(check.slopeBelow()).isCloseTo(-1, within(1e-12));
        assertThat(check.slopeAbove()).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.99, -1.3, -1, -0.7, -0.01, 0, 0.1, 0.5, 1, 1.13, 1.99})
    void jumping(double at) {
        LinearityCheck check = of(z -> z > at ? z + 3 : z);
        assertThat(check.verdict()).isEqualTo(Linearity.JUMPS);
        // A quarter over 256 beside the jump is what the slope adds; it has none in a second difference.
        assertThat(check.jump()).isCloseTo(3, within(0.01));
    }

    @Test
    void whatLiesBeyondTwoStandardUncertaintiesIsNotSeen() {
        assertThat(of(z -> z > 2.2 ? z + 3 : z).verdict()).isEqualTo(Linearity.STRAIGHT);
    }

    @Test
    void bendOfAnInputThatHardlyCountsIsNoMatter() {
        Inputs inputs = Inputs.of(Input.ofStandard("small", "mm", 0, 0.01), Input.ofStandard("large", "mm", 0, 1));
        LinearityCheck check = LinearityCheck.of(Measurand.of("y", "mm", inputs, x -> Math.abs(x[0]) + x[1]), 0.05);
        assertThat(check.verdict()).isEqualTo(Linearity.STRAIGHT);
        assertThat(check.worstInput()).isEqualTo("small");
        // It strays 0.02 at 2 u from a tangent of slope 0, over 2 u = 2.
        assertThat(check.bend()).isCloseTo(0.01, within(1e-6));
    }

    @Test
    void theGravestVerdictNamesItsInput() {
        Inputs inputs = Inputs.of(
                Input.ofStandard("curved", "mm", 0, 1),
                Input.ofStandard("jumping", "mm", 0, 1),
                Input.ofStandard("kinked", "mm", 0, 1),
                Input.ofStandard("straight", "mm", 0, 1));
        LinearityCheck check = LinearityCheck.of(
                Measurand.of(
                        "y", "mm", inputs, x -> 3 * x[0] * x[0] + (x[1] > 0.6 ? 2 : 0) + Math.abs(x[2]) + 2 * x[3]),
                0.05);
        assertThat(check.verdict()).isEqualTo(Linearity.JUMPS);
        assertThat(check.worstInput()).isEqualTo("jumping");
        assertThat(check.jump()).isCloseTo(2, within(1e-9));
    }

    @Test
    void ofTwoAlikeTheOneThatBendsMoreIsNamed() {
        Inputs inputs = Inputs.of(Input.ofStandard("less", "mm", 0, 1), Input.ofStandard("more", "mm", 0, 2));
        Model model = x -> x[0] + x[1] + x[0] * x[0] + x[1] * x[1];
        assertThat(LinearityCheck.of(Measurand.of("y", "mm", inputs, model), 0.05)
                        .worstInput())
                .isEqualTo("more");
    }

    @Test
    void inputsThatMultiplyEachOtherAreCurved() {
        Inputs inputs = Inputs.of(Input.ofStandard("a", "1", 0, 1), Input.ofStandard("b", "1", 0.5, 1));
        LinearityCheck check = LinearityCheck.of(Measurand.of("y", "1", inputs, x -> x[0] * x[1]), 0.05);
        assertThat(check.verdict()).isEqualTo(Linearity.CURVED);
        assertThat(check.bend()).isZero();
        // u1 = 0.5, u2 = sqrt 1.25.
        assertThat(check.secondOrderShare()).isCloseTo(1 - 0.5 / Math.sqrt(1.25), within(1e-9));
    }

    @Test
    void roundingIsNotTakenForABend() {
        // Differences of 1e-4 in a value of 1e9: the digits of a double end at 1e-7.
        Inputs inputs = Inputs.of(Input.ofStandard("x", "nm", 1e9, 1e-4));
        LinearityCheck check = LinearityCheck.of(Measurand.of("y", "nm", inputs, x -> x[0] / 3), 0.05);
        assertThat(check.verdict()).isEqualTo(Linearity.STRAIGHT);
    }

    @Test
    void exactInputsAreStraight() {
        Measurand exact = Measurand.of("y", "1", Inputs.of(Input.exact("x", "1", 0)), x -> Math.abs(x[0]));
        assertThat(LinearityCheck.of(exact, 0.05))
                .isEqualTo(new LinearityCheck(Linearity.STRAIGHT, 0.05, 0, 0, "x", 0, 0, 0));
    }

    @Test
    void refusesBadArguments() {
        Measurand measurand = measurand(z -> z);
        assertThatNullPointerException()
                .isThrownBy(() -> LinearityCheck.of(null, 0.05))
                .withMessage("measurand");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearityCheck.of(measurand, 0))
                .withMessage("tolerance must lie between 0 and 1, both excluded, was 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> LinearityCheck.of(measurand, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> LinearityCheck.of(measurand, Double.NaN));
    }

    private static Optional<String> strays(Model model) {
        Inputs two = Inputs.of(Input.ofStandard("x", "mm", 0, 1), Input.ofStandard("y", "mm", 0, 1));
        return LinearityCheck.straysWith(Measurand.of("z", "mm", two, model), 0.1);
    }

    @Test
    void theQuickLookNamesWhatBends() {
        assertThat(strays(v -> 3 + 2 * v[0] - v[1])).isEmpty();
        assertThat(strays(v -> 7)).isEmpty();
        assertThat(strays(v -> v[0] + Math.abs(v[1]))).contains("y");
        assertThat(strays(v -> v[0] + Math.max(0, v[0] - 0.5))).contains("x");
        assertThat(strays(v -> v[1] < 0.7 ? 0 : 1)).contains("y");
    }

    /** By hand: 2 x + y + x y is straight along each; at x = 4 / sqrt 5, y = 2 / sqrt 5 it strays x y = 1.6 of 2 sqrt 5. */
    @Test
    void theQuickLookSeesInputsThatBendOnlyTogether() {
        assertThat(strays(v -> 2 * v[0] + v[1] + v[0] * v[1])).contains("x");
        assertThat(strays(v -> 2 * v[0] + v[1] + v[0] * v[1] / 4)).isEmpty();
    }

    /** A tenth of what it does within two standard uncertainties is still straight: a z^2 strays 4 a of 2. */
    @Test
    void theQuickLookHasTheSameMeasureOfStraight() {
        assertThat(LinearityCheck.straysWith(measurand(z -> z + 0.049 * z * z), 0.1))
                .isEmpty();
        assertThat(LinearityCheck.straysWith(measurand(z -> z + 0.051 * z * z), 0.1))
                .contains("x");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearityCheck.straysWith(measurand(z -> z), 1.5))
                .withMessageContaining("tolerance");
    }
}
