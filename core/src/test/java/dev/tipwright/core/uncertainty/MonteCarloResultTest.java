package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Intervals and quantiles by JCGM 101:2008, 7.7 and annex D, on samples small enough to count on the fingers. */
class MonteCarloResultTest {

    private static final Measurand MEASURAND = Measurand.of("x", "mm", Inputs.of(Input.exact("x", "mm", 0)), x -> x[0]);

    private static MonteCarloResult of(double... values) {
        return MonteCarloResult.of(MEASURAND, 1, values.clone());
    }

    @Test
    void keepsWhatItWasMadeFrom() {
        MonteCarloResult run = of(3, 1, 2);
        assertThat(run.measurand()).isSameAs(MEASURAND);
        assertThat(run.seed()).isEqualTo(1);
        assertThat(run.trials()).isEqualTo(3);
        assertThat(run.sorted()).containsExactly(1.0, 2.0, 3.0);
        assertThat(MonteCarlo.of(3, 1)).hasToString("3 trials, seed 1");
    }

    @Test
    void meanAndDeviation() {
        MonteCarloResult run = of(2, 4, 4, 4, 5, 5, 7, 9);
        assertThat(run.mean()).isEqualTo(5);
        // Squares 9 + 1 + 1 + 1 + 0 + 0 + 4 + 16 = 32, over 7.
        assertThat(run.standardUncertainty()).isCloseTo(Math.sqrt(32 / 7.0), within(1e-15));
    }

    @Test
    void symmetricIntervalLeavesOutAsManyBelowAsAbove() {
        // M = 10, p = 0.8: q = 8, r = 1, from the first value to the ninth.
        assertThat(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).symmetricInterval(0.8)).isEqualTo(new Interval(0.8, 1, 9));
        // p = 0.6: q = 6, r = 2, from the second to the eighth.
        assertThat(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).symmetricInterval(0.6)).isEqualTo(new Interval(0.6, 2, 8));
        // p = 0.5: q = 5, (M - q) / 2 is not whole, r = 3, from the third to the eighth.
        assertThat(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).symmetricInterval(0.5)).isEqualTo(new Interval(0.5, 3, 8));
        // p = 0.75: pM = 7.5, q = 8.
        assertThat(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).symmetricInterval(0.75)).isEqualTo(new Interval(0.75, 1, 9));
    }

    @Test
    void shortestIntervalIsTheShortestAndTheLowestOfEqualOnes() {
        assertThat(of(0, 10, 11, 12, 13, 14, 30, 50, 70, 90).shortestInterval(0.4))
                .isEqualTo(new Interval(0.4, 10, 14));
        assertThat(of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).shortestInterval(0.5)).isEqualTo(new Interval(0.5, 1, 6));
        assertThat(of(0, 4, 7, 9, 10).shortestInterval(0.4)).isEqualTo(new Interval(0.4, 7, 10));
    }

    /** M = 10: 0.05 M + 1/2 is 1 in, 0.94 M + 1/2 is 9 in and one out; 0.04 leaves none in, 0.96 none out. */
    @Test
    void anIntervalHoldsAtLeastOneTrialAndLeavesOneOut() {
        MonteCarloResult run = of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
        assertThat(run.shortestInterval(0.05)).isEqualTo(new Interval(0.05, 1, 2));
        assertThat(run.shortestInterval(0.94)).isEqualTo(new Interval(0.94, 1, 10));
        for (double probability : new double[] {0.04, 0.96}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> run.shortestInterval(probability))
                    .withMessage("probability must leave at least one of 10 trials in and one out, was " + probability);
        }
    }

    @Test
    void quantilesLieOnLinesBetweenTheValues() {
        // M = 4: the values stand for 1/8, 3/8, 5/8 and 7/8.
        MonteCarloResult run = of(10, 20, 40, 80);
        assertThat(run.quantile(0.125)).isEqualTo(10);
        assertThat(run.quantile(0.25)).isEqualTo(15);
        assertThat(run.quantile(0.5)).isEqualTo(30);
        assertThat(run.quantile(0.875)).isEqualTo(80);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> run.quantile(0.1))
                .withMessage("probability must lie between 0.125 and 1 - 0.125 for 4 trials, was 0.1");
        assertThatIllegalArgumentException().isThrownBy(() -> run.quantile(0.9));
        assertThatIllegalArgumentException().isThrownBy(() -> run.quantile(Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, Double.NaN})
    void refusesAProbabilityThatIsNone(double p) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(1, 2, 3).symmetricInterval(p))
                .withMessage("probability must lie between 0 and 1, both excluded, was " + p);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.96})
    void refusesAProbabilityThatTheTrialsCannotShow(double p) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10).shortestInterval(p))
                .withMessage("probability must leave at least one of 10 trials in and one out, was " + p);
    }

    @Test
    void refusesToOverflow() {
        double huge = Double.MAX_VALUE;
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> of(-huge, huge))
                .withMessage("standard uncertainty of x overflows the range of a double");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> of(-huge, huge, huge, huge))
                .withMessage("mean of x overflows the range of a double");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> new Interval(0.5, -huge, huge).width())
                .withMessage("width overflows the range of a double");
        // Large but in range is no trouble.
        assertThat(of(1e200, 3e200).standardUncertainty()).isCloseTo(Math.sqrt(2) * 1e200, within(1e186));
    }

    @Test
    void intervalRefusesLimitsTheWrongWayRound() {
        assertThat(new Interval(0.5, 1, 1).width()).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Interval(0.5, 2, 1))
                .withMessage("high must not lie below low 2.0, was 1.0");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> new Interval(0.5, Double.NEGATIVE_INFINITY, 1));
    }
}
