package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Test;

/** Values drawn from each shape against the distribution function of a general statistics library, and correlations. */
class MonteCarloShapesTest {

    private static final int TRIALS = 100_000;

    private static MonteCarloResult drawn(Input input) {
        return MonteCarlo.of(TRIALS, 11).run(Measurand.of("x", "mm", Inputs.of(input), x -> x[0]));
    }

    /** Kolmogorov and Smirnov's distance; 1.95 / sqrt n is passed by chance once in a thousand seeds. */
    private static void follows(MonteCarloResult run, DoubleUnaryOperator distributionFunction) {
        double[] sorted = run.sorted().toArray();
        double distance = 0;
        for (int i = 0; i < sorted.length; i++) {
            double f = distributionFunction.applyAsDouble(sorted[i]);
            distance = Math.max(distance, Math.max(f - i / (double) TRIALS, (i + 1) / (double) TRIALS - f));
        }
        assertThat(distance).isLessThan(1.95 / Math.sqrt(TRIALS));
    }

    @Test
    void normal() {
        follows(drawn(Input.ofStandard("x", "mm", 5, 2)), NormalDistribution.of(5, 2)::cumulativeProbability);
    }

    @Test
    void rectangular() {
        MonteCarloResult run = drawn(Input.ofLimits("x", "mm", 5, 2));
        follows(run, UniformContinuousDistribution.of(3, 7)::cumulativeProbability);
        // The limits again, but for the rounding of 2 / sqrt 3 * sqrt 3.
        assertThat(run.sorted().min().orElseThrow()).isGreaterThan(3 - 1e-15);
        assertThat(run.sorted().max().orElseThrow()).isLessThan(7 + 1e-15);
    }

    @Test
    void triangular() {
        MonteCarloResult run = drawn(Input.ofTriangularLimits("x", "mm", 5, 2));
        follows(run, TriangularDistribution.of(3, 5, 7)::cumulativeProbability);
    }

    @Test
    void student() {
        for (double nu : new double[] {1, 2, 3.5, 19}) {
            Input input = Input.ofStandard("x", "mm", 5, 2)
                    .withDegreesOfFreedom(DegreesOfFreedom.of(nu))
                    .withDistribution(Distribution.STUDENT);
            TDistribution t = TDistribution.of(nu);
            follows(drawn(input), x -> t.cumulativeProbability((x - 5) / 2));
        }
    }

    @Test
    void studentInputsWithoutMomentsAreNoted() {
        assertThat(drawn(Input.ofReadings("x", "mm", 1, 2)).notes())
                .containsExactly(MonteCarloResult.Note.NO_STANDARD_DEVIATION, MonteCarloResult.Note.NO_MEAN);
        assertThat(drawn(Input.ofReadings("x", "mm", 1, 2, 4)).notes())
                .containsExactly(MonteCarloResult.Note.NO_STANDARD_DEVIATION);
        assertThat(drawn(Input.ofReadings("x", "mm", 1, 2, 4, 3)).notes()).isEmpty();
        assertThat(drawn(Input.ofReadings("x", "mm", 2, 2)).notes()).isEmpty();
        assertThat(drawn(Input.ofStandard("x", "mm", 2, 2).withDegreesOfFreedom(DegreesOfFreedom.of(1)))
                        .notes())
                .isEmpty();
    }

    private static MonteCarloResult pair(double r, Model model) {
        Inputs inputs = Inputs.of(
                        Input.ofLimits("other", "mm", 0, 1),
                        Input.ofStandard("x", "mm", 5, 2),
                        Input.ofStandard("y", "mm", 5, 2))
                .withCorrelations(List.of(new Correlation("y", "x", r)));
        return MonteCarlo.of(TRIALS, 11).run(Measurand.of("z", "mm", inputs, model));
    }

    @Test
    void correlatedInputsGoTogether() {
        // Var(x - y) = 2 u^2 (1 - r), Var(x + y) = 2 u^2 (1 + r); four standard errors.
        double relative = 4 / Math.sqrt(2.0 * TRIALS);
        for (double r : new double[] {-0.8, 0, 0.3, 0.9}) {
            double difference = Math.sqrt(8 * (1 - r));
            double sum = Math.sqrt(8 * (1 + r));
            assertThat(pair(r, x -> x[1] - x[2]).standardUncertainty())
                    .isCloseTo(difference, within(relative * difference));
            assertThat(pair(r, x -> x[1] + x[2]).standardUncertainty()).isCloseTo(sum, within(relative * sum));
        }
    }

    @Test
    void fullyCorrelatedInputsMoveAsOne() {
        assertThat(pair(1, x -> x[1] - x[2]).standardUncertainty()).isZero();
        assertThat(pair(-1, x -> x[1] + x[2]).standardUncertainty()).isZero();
    }

    @Test
    void inputsBesideACorrelatedPairAreLeftAlone() {
        follows(pair(0.9, x -> x[0]), UniformContinuousDistribution.of(-1, 1)::cumulativeProbability);
        follows(pair(0.9, x -> x[1]), NormalDistribution.of(5, 2)::cumulativeProbability);
        follows(pair(0.9, x -> x[2]), NormalDistribution.of(5, 2)::cumulativeProbability);
    }

    @Test
    void correlatedInputsMustBeNormal() {
        Inputs inputs = Inputs.of(Input.ofStandard("x", "mm", 0, 1), Input.ofLimits("y", "mm", 0, 1))
                .withCorrelations(List.of(new Correlation("x", "y", 0.5)));
        Measurand sum = Measurand.of("z", "mm", inputs, x -> x[0] + x[1]);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(100, 1).run(sum))
                .withMessage(
                        "correlated input y must be normal for Monte Carlo (JCGM 101:2008, 6.4.8), was RECTANGULAR;"
                                + " make what the inputs share an input of its own instead");
    }
}
