package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** JCGM 100:2008, example H.1, calibration of an end gauge, to the digits printed there. Lengths in nanometres. */
class EndGaugeJcgm100Test {

    private static final CheckTable INPUTS = CheckTable.named("uncertainty-end-gauge");
    private static final CheckTable RESULT = CheckTable.named("uncertainty-end-gauge-result");

    private final Measurand gauge = gauge();
    private final Budget budget = Budget.of(gauge);

    static Measurand gauge() {
        // l = ls + d - ls (da t + as dt), in the order of the table
        return Measurand.of(
                "l",
                "nm",
                Inputs.of(INPUTS.rows().stream().map(EndGaugeJcgm100Test::input).toList()),
                x -> x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]));
    }

    private static Input input(CheckTable.Row row) {
        boolean millimetres = row.text("unit").equals("mm");
        double value = row.decimal("value").movePointRight(millimetres ? 6 : 0).doubleValue();
        String unit = row.text("uncertainty_unit");
        Input input = Input.ofStandard(row.text("input"), unit, value, row.number("standard_uncertainty"));
        return row.has("degrees_of_freedom")
                ? input.withDegreesOfFreedom(DegreesOfFreedom.of(row.number("degrees_of_freedom")))
                : input;
    }

    private static BigDecimal printed(String quantity) {
        return RESULT.row("quantity", quantity).decimal("value");
    }

    private static BigDecimal roundedAs(BigDecimal printed, double value) {
        return new BigDecimal(value).setScale(printed.scale(), RoundingMode.HALF_EVEN);
    }

    @Test
    void givesEachContribution() {
        for (CheckTable.Row row : INPUTS.rows()) {
            Contribution line = budget.contributions().stream()
                    .filter(c -> c.input().name().equals(row.text("input")))
                    .findFirst()
                    .orElseThrow();
            // Half the last digit printed; dt is printed as 16.6 where ls * as * u(dt) is 16.675, hence one digit more.
            double digit = row.text("input").equals("dt") ? 0.1 : 0.05;
            assertThat(Math.abs(line.uncertainty())).isCloseTo(row.number("contribution_nm"), within(digit));
        }
    }

    @Test
    void sortsContributionsLargestFirstThenByName() {
        assertThat(budget.contributions())
                .extracting(c -> c.input().name())
                .containsExactly("ls", "dt", "d", "da", "as", "t");
    }

    @Test
    void givesTheLength() {
        BigDecimal printed = printed("length of the gauge").movePointRight(6);
        assertThat(roundedAs(printed, budget.value())).isEqualByComparingTo(printed);
    }

    @Test
    void givesTheCombinedStandardUncertainty() {
        BigDecimal printed = printed("combined standard uncertainty");
        assertThat(roundedAs(printed, budget.standardUncertainty())).isEqualTo(printed);
    }

    @Test
    void givesTheEffectiveDegreesOfFreedom() {
        BigDecimal printed = printed("effective degrees of freedom");
        double nu = budget.degreesOfFreedom().count().orElseThrow();
        assertThat(roundedAs(printed, nu)).isEqualTo(printed);
    }

    @Test
    void givesTheExpandedUncertaintyWithTruncatedDegreesOfFreedom() {
        Expanded expanded = budget.expanded(0.99);
        assertThat(expanded.degreesOfFreedom()).isEqualTo(DegreesOfFreedom.of(16));
        BigDecimal factor = printed("t factor for 99 per cent");
        assertThat(roundedAs(factor, expanded.coverageFactor())).isEqualTo(factor);
        BigDecimal printed = printed("expanded uncertainty for 99 per cent");
        assertThat(roundedAs(printed, expanded.uncertainty())).isEqualTo(printed);
    }

    @Test
    void givesTheStandardUncertaintyWithTermsOfSecondOrder() {
        SecondOrder second = SecondOrder.of(gauge);
        BigDecimal printed = printed("combined standard uncertainty with terms of second order");
        assertThat(roundedAs(printed, second.standardUncertainty().orElseThrow()))
                .isEqualTo(printed);
        // H.1.7 by hand: (ls u(da) u(t))^2 + (ls u(as) u(dt))^2; differences leave about 1e-6 of it to rounding.
        double byHand = Math.pow(50000623 * 0.58e-6 * 0.41, 2) + Math.pow(50000623 * 1.2e-6 * 0.029, 2);
        assertThat(second.secondOrderVariance()).isCloseTo(byHand, within(1e-4 * byHand));
        assertThat(second.firstOrder()).isEqualTo(budget.standardUncertainty());
    }

    @Test
    void secondOrderMattersByMoreThanFivePerCent() {
        LinearityCheck check = LinearityCheck.of(gauge, 0.05);
        assertThat(check.verdict()).isEqualTo(Linearity.CURVED);
        // 34 against 32 nm as printed; unrounded 33.91 against 31.71.
        assertThat(check.secondOrderShare()).isCloseTo(2 / 34.0, within(0.01));
        assertThat(check.bend()).isZero();
        assertThat(LinearityCheck.of(gauge, 0.1).verdict()).isEqualTo(Linearity.STRAIGHT);
    }

    @Test
    void monteCarloAgreesWithTheSecondOrder() {
        MonteCarloResult run = MonteCarlo.of(200_000, 1).run(gauge);
        double u = SecondOrder.of(gauge).standardUncertainty().orElseThrow();
        // Four standard errors: u / sqrt M for the mean, u / sqrt 2M for the deviation.
        assertThat(run.mean()).isCloseTo(50_000_838, within(4 * u / Math.sqrt(200_000)));
        assertThat(run.standardUncertainty()).isCloseTo(u, within(4 * u / Math.sqrt(400_000)));
        assertThat(run.standardUncertainty()).isGreaterThan(budget.standardUncertainty() + 1);
    }

    @Test
    void printsShort() {
        assertThat(budget).hasToString("l = 50000838 nm, u 32 nm");
        assertThat(gauge).hasToString("l in nm from 6 inputs");
        assertThat(MonteCarlo.of(20_000, 1).run(gauge)).hasToString("l = 50000838 nm, u 34 nm, 20000 trials");
    }
}
