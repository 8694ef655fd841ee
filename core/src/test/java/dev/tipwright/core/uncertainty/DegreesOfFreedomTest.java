package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DegreesOfFreedomTest {

    @Test
    void keepsItsNumberOrNone() {
        assertThat(DegreesOfFreedom.of(16.7).count()).hasValue(16.7);
        assertThat(DegreesOfFreedom.INFINITE.count()).isEmpty();
    }

    @Test
    void comesFromARelativeDoubt() {
        // JCGM 100:2008, G.4.2: right to about 25 per cent is 8; H.1.6: 10 per cent is 50.
        assertThat(DegreesOfFreedom.ofRelativeDoubt(0.25)).isEqualTo(DegreesOfFreedom.of(8));
        assertThat(DegreesOfFreedom.ofRelativeDoubt(0.10).count().orElseThrow()).isCloseTo(50, within(1e-12));
        assertThat(DegreesOfFreedom.ofRelativeDoubt(1e-200)).isEqualTo(DegreesOfFreedom.INFINITE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DegreesOfFreedom.ofRelativeDoubt(0.8))
                .withMessageStartingWith("nu must be finite and at least 1, was 0.78");
        assertThatIllegalArgumentException().isThrownBy(() -> DegreesOfFreedom.ofRelativeDoubt(0));
    }

    @Test
    void isTruncatedToAWholeNumberButNotByRounding() {
        assertThat(DegreesOfFreedom.of(16.7).truncated()).isEqualTo(DegreesOfFreedom.of(16));
        assertThat(DegreesOfFreedom.of(Math.nextDown(17.0)).truncated()).isEqualTo(DegreesOfFreedom.of(17));
        assertThat(DegreesOfFreedom.of(16.999).truncated()).isEqualTo(DegreesOfFreedom.of(16));
        assertThat(DegreesOfFreedom.of(1).truncated()).isEqualTo(DegreesOfFreedom.of(1));
        assertThat(DegreesOfFreedom.INFINITE.truncated()).isEqualTo(DegreesOfFreedom.INFINITE);
    }

    @Test
    void comparesAndPrintsByItsNumber() {
        assertThat(DegreesOfFreedom.of(4))
                .isEqualTo(DegreesOfFreedom.of(4))
                .hasSameHashCodeAs(DegreesOfFreedom.of(4))
                .isNotEqualTo(DegreesOfFreedom.of(5))
                .isNotEqualTo(4)
                .hasToString("4");
        assertThat(DegreesOfFreedom.of(16.6543)).hasToString("16.65");
        assertThat(DegreesOfFreedom.of(123456)).hasToString("123500");
        assertThat(DegreesOfFreedom.INFINITE).hasToString("infinite");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.999, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotANumberOfAtLeastOne(double nu) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DegreesOfFreedom.of(nu))
                .withMessage("nu must be finite and at least 1, was " + nu);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.49, 1, 1.5, -0.5, Double.NaN})
    void refusesAProbabilityOutsideItsRange(double probability) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DegreesOfFreedom.INFINITE.coverageFactor(probability))
                .withMessage("probability must be at least 0.5 and less than 1, was " + probability);
    }
}
