package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

/** Coverage factors against printed tables, closed forms and a general statistics library. */
class CoverageFactorTest {

    private static final double[] PROBABILITIES = {
        0.5, 0.55, 0.6, 0.6827, 0.75, 0.8, 0.85, 0.9, 0.95, 0.9545, 0.98, 0.99, 0.9973, 0.999, 0.9999, 0.999999,
        1 - 1e-8, 1 - 1e-10, 1 - 1e-12, 1 - 1e-14
    };
    private static final double[] DEGREES = {
        1, 1.0625, 1.5, 2, 2.5, 3, 4, 5, 7.3, 10, 16, 16.7, 25.6, 50, 79, 81, 100, 333.3, 1000, 3000, 9999, 10_000,
        10_001, 20_000, 1e5
    };

    @Test
    void matchesThePrintedTable() {
        CheckTable table = CheckTable.named("uncertainty-t-factors");
        Map<String, Double> columns = new TreeMap<>(Map.of(
                "t_68_27", 0.6827, "t_90", 0.90, "t_95", 0.95, "t_95_45", 0.9545, "t_99", 0.99, "t_99_73", 0.9973));
        for (CheckTable.Row row : table.rows()) {
            DegreesOfFreedom nu = row.has("degrees_of_freedom")
                    ? DegreesOfFreedom.of(row.number("degrees_of_freedom"))
                    : DegreesOfFreedom.INFINITE;
            columns.forEach((column, probability) -> {
                double half = 0.5 * Math.pow(10, -row.decimal(column).scale());
                // 68.27, 95.45 and 99.73 per cent are themselves rounded (to 1, 2 and 3 sigma): their last digit
                // moves the factor by 0.00005 times its slope, which only shows in the first rows.
                double slope = 0.00005 * nu.coverageFactor(probability) / (1 - probability);
                double rounded = probability == 0.6827 || probability == 0.9545 || probability == 0.9973 ? slope : 0;
                assertThat(nu.coverageFactor(probability))
                        .as("%s at %s", column, nu)
                        .isCloseTo(row.number(column), within(half + rounded));
            });
        }
    }

    @Test
    void matchesTheClosedForms() {
        for (double p : PROBABILITIES) {
            double alpha = 1 - p;
            // Cauchy: tan(pi p / 2), written for the tail so that it keeps its digits.
            double one = 1 / StrictMath.tan(Math.PI * alpha / 2);
            double two = p * Math.sqrt(2 / (alpha * (2 - alpha)));
            double root = Math.sqrt(alpha * (2 - alpha));
            double four = 2 * Math.sqrt(StrictMath.cos(StrictMath.acos(root) / 3) / root - 1);
            assertThat(StudentT.twoSided(p, 1)).isCloseTo(one, within(1e-13 * one));
            assertThat(StudentT.twoSided(p, 2)).isCloseTo(two, within(1e-13 * two));
            // The closed form for four loses digits of cos(..)/root - 1 near one half.
            assertThat(StudentT.twoSided(p, 4)).isCloseTo(four, within(1e-12 * four));
        }
    }

    @Test
    void matchesAnIndependentDistributionOverAWideGrid() {
        for (double nu : DEGREES) {
            TDistribution reference = TDistribution.of(nu);
            for (double p : PROBABILITIES) {
                double t = DegreesOfFreedom.of(nu).coverageFactor(p);
                double tail = (1 - p) / 2;
                double off = (reference.survivalProbability(t) - tail) / reference.density(t);
                // The error promised, 1e-12 of t; the reference's own tail is good to about 1e-13 of itself.
                assertThat(off).as("nu %s, p %s", nu, p).isCloseTo(0, within(1e-12 * t));
            }
        }
    }

    @Test
    void ratioOfGammaFunctionsMatchesCentralBinomials() {
        // Gamma(n + 1/2) / Gamma(n) = n C(2n, n) sqrt(pi) / 4^n, the binomial by whole numbers.
        BigInteger binomial = BigInteger.TWO;
        for (int n = 1; n <= 200; n++) {
            double share = new BigDecimal(binomial)
                    .divide(new BigDecimal(BigInteger.valueOf(4).pow(n)), MathContext.DECIMAL64)
                    .doubleValue();
            double exact = n * share * Math.sqrt(Math.PI);
            // Up to 40 roundings of half a unit in the last place, which mostly cancel.
            assertThat(StudentT.gammaRatio(n)).as("n %s", n).isCloseTo(exact, within(2e-15 * exact));
            // C(2n + 2, n + 1) = C(2n, n) (2n + 1) 2 / (n + 1)
            binomial = binomial.multiply(BigInteger.valueOf(4L * n + 2)).divide(BigInteger.valueOf(n + 1));
        }
        assertThat(StudentT.gammaRatio(0.5)).isCloseTo(1 / Math.sqrt(Math.PI), within(2e-15));
    }

    @Test
    void infiniteDegreesOfFreedomGiveTheNormalDeviate() {
        NormalDistribution reference = NormalDistribution.of(0, 1);
        for (double p : PROBABILITIES) {
            double z = DegreesOfFreedom.INFINITE.coverageFactor(p);
            double off = (reference.survivalProbability(z) - (1 - p) / 2) / reference.density(z);
            assertThat(off).as("p %s", p).isCloseTo(0, within(2e-15 * z));
        }
    }

    @Test
    void normalQuantileHasTheDigitsOfItsAlgorithmInEveryBranch() {
        NormalDistribution reference = NormalDistribution.of(0, 1);
        for (double p : new double[] {1e-300, 1e-100, 1e-20, 1e-12, 1e-11, 1e-6, 0.01, 0.0749, 0.0751, 0.3, 0.499}) {
            double z = NormalQuantile.of(p);
            double off = (reference.cumulativeProbability(z) - p) / reference.density(z);
            // AS 241 promises 1e-16; the reference's tail adds a few units in the last place.
            assertThat(off).as("p %s", p).isCloseTo(0, within(1e-14 * -z));
        }
        for (int i = 1; i < 1024; i++) {
            assertThat(NormalQuantile.of(i / 1024.0)).isEqualTo(-NormalQuantile.of(1 - i / 1024.0));
        }
    }

    @Test
    void fallsSteadilyTowardsTheNormalAcrossTheChangeOfMethod() {
        for (double p : PROBABILITIES) {
            double before = Double.POSITIVE_INFINITY;
            for (double nu : DEGREES) {
                double t = StudentT.twoSided(p, nu);
                assertThat(t).isLessThan(before);
                before = t;
            }
            assertThat(DegreesOfFreedom.INFINITE.coverageFactor(p)).isLessThan(before);
            // As far as the number of degrees of freedom goes in a double.
            assertThat(StudentT.twoSided(p, Double.MAX_VALUE)).isEqualTo(NormalQuantile.twoSided(p));
        }
    }
}
