package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** JCGM 101:2008, 9.2: the sum of four inputs, by Monte Carlo and by first order, and 9.4: a sum of two squares. */
class SumsJcgm101Test {

    private static final int TRIALS = 400_000;
    private static final CheckTable SUMS = CheckTable.named("uncertainty-sums");

    private static Measurand sum(Distribution distribution, double... u) {
        List<Input> inputs = IntStream.range(0, u.length)
                .mapToObj(i -> Input.ofStandard("x" + i, "1", 0, u[i]).withDistribution(distribution))
                .toList();
        return Measurand.of("sum", "1", Inputs.of(inputs), x -> x[0] + x[1] + x[2] + x[3]);
    }

    private static double printed(String inputs, String quantity) {
        return SUMS.rows().stream()
                .filter(row -> row.text("inputs").equals(inputs)
                        && row.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }

    /** Four standard errors of a quantile at which the density is the one given: sqrt(p (1 - p) / M) / density. */
    private static double samplingError(double density) {
        return 4 * Math.sqrt(0.025 * 0.975 / TRIALS) / density;
    }

    @Test
    void fourNormals() {
        Measurand sum = sum(Distribution.NORMAL, 1, 1, 1, 1);
        MonteCarloResult run = MonteCarlo.of(TRIALS, 3).run(sum);
        double u = printed("four normal", "standard uncertainty");
        double half = printed("four normal", "half width of the 95 per cent interval");
        // Normal density of standard deviation 2 at its 2.5 % point: 0.0585 / 2. Half a printed digit on top.
        double error = samplingError(0.0585 / 2) + 0.005;
        assertThat(run.mean()).isCloseTo(0, within(4 * u / Math.sqrt(TRIALS)));
        assertThat(run.standardUncertainty()).isCloseTo(u, within(4 * u / Math.sqrt(2.0 * TRIALS)));
        assertThat(run.symmetricInterval(0.95).low()).isCloseTo(-half, within(error));
        assertThat(run.symmetricInterval(0.95).high()).isCloseTo(half, within(error));
        assertThat(Budget.of(sum).expanded(0.95).uncertainty()).isCloseTo(half, within(0.005));
    }

    @Test
    void fourRectangularsHaveShorterTailsThanFirstOrderSays() {
        Measurand sum = sum(Distribution.RECTANGULAR, 1, 1, 1, 1);
        MonteCarloResult run = MonteCarlo.of(TRIALS, 3).run(sum);
        double u = printed("four rectangular", "standard uncertainty");
        double half = printed("four rectangular", "half width of the 95 per cent interval with more digits");
        double[] halfWidths = {Math.sqrt(3), Math.sqrt(3), Math.sqrt(3), Math.sqrt(3)};
        assertThat(distributionFunction(half, halfWidths)).isCloseTo(0.975, within(1e-5));
        double error = samplingError(density(half, halfWidths));
        assertThat(run.standardUncertainty()).isCloseTo(u, within(4 * u / Math.sqrt(2.0 * TRIALS)));
        assertThat(run.symmetricInterval(0.95).low()).isCloseTo(-half, within(error));
        assertThat(run.symmetricInterval(0.95).high()).isCloseTo(half, within(error));
        assertThat(Budget.of(sum).expanded(0.95).uncertainty()).isCloseTo(3.92, within(0.005));
    }

    @Test
    void oneRectangularTenTimesAsWideGoverns() {
        // 9.2.4: 10.1 and, by Monte Carlo, 17.0 against 19.9 by first order (from memory).
        Measurand sum = sum(Distribution.RECTANGULAR, 1, 1, 1, 10);
        MonteCarloResult run = MonteCarlo.of(TRIALS, 3).run(sum);
        double[] halfWidths = {Math.sqrt(3), Math.sqrt(3), Math.sqrt(3), 10 * Math.sqrt(3)};
        double error = samplingError(density(17.0, halfWidths));
        assertThat(Budget.of(sum).standardUncertainty()).isCloseTo(10.1, within(0.05));
        assertThat(Budget.of(sum).expanded(0.95).uncertainty()).isCloseTo(19.9, within(0.05));
        assertThat(run.symmetricInterval(0.95).high()).isCloseTo(17.0, within(error + 0.05));
        double end = run.symmetricInterval(0.95).high();
        // The same through the distribution function, free of the printed rounding.
        assertThat(distributionFunction(end, halfWidths))
                .isCloseTo(0.975, within(4 * Math.sqrt(0.025 * 0.975 / TRIALS)));
    }

    @Test
    void sumOfTwoSquares() {
        // 9.4, x = 0.010 and 0, u = 0.005 each. For normal inputs exactly: mean x1^2 + 2 u^2,
        // variance 4 x1^2 u^2 + 4 u^4, and with correlation r another 2 * 2 r^2 u^4.
        Inputs inputs = Inputs.of(Input.ofStandard("x1", "1", 0.010, 0.005), Input.ofStandard("x2", "1", 0, 0.005));
        squares(inputs, Math.sqrt(1.25e-8));
        squares(
                inputs.withCorrelations(List.of(new Correlation("x1", "x2", 0.9))),
                Math.sqrt(1.25e-8 + 4 * 0.81 * 6.25e-10));
    }

    private static void squares(Inputs inputs, double u) {
        Measurand squares = Measurand.of("dY", "1", inputs, x -> x[0] * x[0] + x[1] * x[1]);
        SecondOrder second = SecondOrder.of(squares);
        // The expansion ends at second order here, so it is exact but for rounding.
        assertThat(second.standardUncertainty().orElseThrow()).isCloseTo(u, within(1e-10 * u));
        assertThat(second.shift()).isCloseTo(5e-5, within(1e-14));
        assertThat(Budget.of(squares).standardUncertainty()).isCloseTo(1e-4, within(1e-14));
        MonteCarloResult run = MonteCarlo.of(TRIALS, 5).run(squares);
        assertThat(run.mean()).isCloseTo(1.5e-4, within(4 * u / Math.sqrt(TRIALS)));
        // The values lean, so the fourth moment, at most 15 u^4 as for chi-square of one, stands in for the normal's 3.
        assertThat(run.standardUncertainty()).isCloseTo(u, within(4 * u * Math.sqrt(14.0 / 4 / TRIALS)));
        assertThat(run.shortestInterval(0.95).width())
                .isLessThan(run.symmetricInterval(0.95).width());
    }

    @Test
    void shortestIntervalOfASumOfTwoSquaresBeginsAtZero() {
        // Over u^2 it is chi-square of two with non-centrality 4: density exp(-2) / 2 = 0.068 at 0, still more than at
        // the
        // upper end, so no interval is shorter than one from 0; a symmetric one leaves 2.5 % below, at 0.025 / 0.068
        // u^2.
        Inputs inputs = Inputs.of(Input.ofStandard("x1", "1", 0.010, 0.005), Input.ofStandard("x2", "1", 0, 0.005));
        Measurand squares = Measurand.of("dY", "1", inputs, x -> x[0] * x[0] + x[1] * x[1]);
        MonteCarloResult run = MonteCarlo.of(TRIALS, 5).run(squares);
        // A share of 0.0007 of the values lies below 0.01 u^2.
        assertThat(run.shortestInterval(0.95).low()).isBetween(0.0, 0.01 * 25e-6);
        assertThat(run.symmetricInterval(0.95).low()).isGreaterThan(0.2 * 25e-6);
    }

    /**
     * Distribution function of a sum of rectangulars about 0, any widths (Olds, Annals of Mathematical Statistics 23,
     * 1952).
     */
    private static double distributionFunction(double y, double... halfWidths) {
        return signed(y, halfWidths, halfWidths.length) / factorial(halfWidths.length) / widths(halfWidths);
    }

    private static double density(double y, double... halfWidths) {
        return signed(y, halfWidths, halfWidths.length - 1) / factorial(halfWidths.length - 1) / widths(halfWidths);
    }

    private static double signed(double y, double[] halfWidths, int power) {
        double sum = 0;
        for (int signs = 0; signs < 1 << halfWidths.length; signs++) {
            double at = y;
            double sign = 1;
            for (int i = 0; i < halfWidths.length; i++) {
                boolean plus = (signs >> i & 1) == 0;
                at += plus ? halfWidths[i] : -halfWidths[i];
                sign = plus ? sign : -sign;
            }
            sum += at > 0 ? sign * Math.pow(at, power) : 0;
        }
        return sum;
    }

    private static double widths(double[] halfWidths) {
        double product = 1;
        for (double halfWidth : halfWidths) {
            product *= 2 * halfWidth;
        }
        return product;
    }

    private static double factorial(int n) {
        return n <= 1 ? 1 : n * factorial(n - 1);
    }
}
