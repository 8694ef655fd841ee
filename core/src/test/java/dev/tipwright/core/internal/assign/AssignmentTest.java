package dev.tipwright.core.internal.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Small tables a reader can do in the head, ties, and hostile input. */
class AssignmentTest {

    private static final double NO = CostTable.FORBIDDEN;

    @Test
    void theTableInThePackageDescription() {
        double[][] costs = {{4, 1, 3, NO}, {2, 0, 5, 3}, {3, 2, 2, NO}};
        Pairing pairing = best(costs, 1, Aim.LEAST_TOTAL);
        assertThat(pairing.columns()).containsExactly(1, 0, 2);
        assertThat(pairing.total()).isEqualTo(5);
        assertThat(pairing.worst()).isEqualTo(2);
        assertThat(pairing).hasToString("columns [1, 0, 2], total 5.0, worst 2.0");
    }

    @Test
    void theTwoAimsPart() {
        double[][] costs = {{0, 4}, {4, 9}};
        assertThat(best(costs, 1, Aim.LEAST_TOTAL).columns()).containsExactly(1, 0);
        double[][] skewed = {{0, 5}, {5, 9}};
        assertThat(best(skewed, 1, Aim.LEAST_TOTAL).columns()).containsExactly(0, 1);
        assertThat(best(skewed, 1, Aim.LEAST_WORST).columns()).containsExactly(1, 0);
    }

    /** What one aim forbids itself in the table is not forbidden to the next. */
    @Test
    void aTableServesOneAimAfterTheOther() {
        CostTable table = CostTable.of(new double[][] {{0, 5}, {5, 9}}, 1);
        assertThat(((Pairing) Assignment.best(table, Aim.LEAST_WORST)).columns())
                .containsExactly(1, 0);
        assertThat(((Pairing) Assignment.best(table, Aim.LEAST_TOTAL)).columns())
                .containsExactly(0, 1);
    }

    @Test
    void moreRowsThanColumnsLeavesTheLaterOfEqualRowsWithout() {
        double[][] costs = {{7}, {3}, {3}};
        Pairing pairing = best(costs, 1, Aim.LEAST_TOTAL);
        assertThat(pairing.columns()).containsExactly(Pairing.NONE, 0, Pairing.NONE);
        assertThat(pairing.columnOf(1)).isZero();
    }

    @Test
    void withNothingToChooseByTheOrderDecides() {
        assertThat(best(new double[3][5], 1, Aim.LEAST_TOTAL).columns()).containsExactly(0, 1, 2);
        assertThat(best(new double[5][3], 1, Aim.LEAST_WORST).columns()).containsExactly(0, 1, 2, -1, -1);
    }

    @Test
    void aTieIsATieOnTheGridEvenWhereDoublesDiffer() {
        // 0.1 + 0.2 is 0.30000000000000004 in doubles, so without a grid the second pairing would win.
        double[][] costs = {{0.1, 0.3}, {0.0, 0.2}};
        assertThat(0.1 + 0.2).isNotEqualTo(0.3 + 0.0);
        assertThat(best(costs, 0.01, Aim.LEAST_TOTAL).columns()).containsExactly(0, 1);
    }

    @Test
    void differencesBelowTheGridDoNotCount() {
        double[][] costs = {{1.04, 1.00}, {1.00, 1.00}};
        assertThat(best(costs, 0.1, Aim.LEAST_TOTAL).columns()).containsExactly(0, 1);
        assertThat(best(costs, 0.01, Aim.LEAST_TOTAL).columns()).containsExactly(1, 0);
    }

    @Test
    void theLargestTableOfTheLargestCounts() {
        int size = CostTable.MOST_LINES;
        double most = CostTable.MOST_STEPS;
        double[][] costs = new double[size][size];
        for (int row = 0; row < size; row++) {
            Arrays.fill(costs[row], most);
            costs[row][size - 1 - row] = -most;
        }
        Pairing pairing = best(costs, 1, Aim.LEAST_TOTAL);
        // 2^48 times 2^10.
        assertThat(pairing.total()).isEqualTo(-0x1p58);
        assertThat(pairing.columnOf(0)).isEqualTo(size - 1);
    }

    @Test
    void theTableKeepsWhatItWasGiven() {
        double[][] costs = {{1, NO}};
        CostTable table = CostTable.of(costs, 0.5);
        costs[0][0] = 9;
        assertThat(table.rows()).isEqualTo(1);
        assertThat(table.columns()).isEqualTo(2);
        assertThat(table.cost(0, 0)).isEqualTo(1);
        assertThat(table.count(0, 0)).isEqualTo(2);
        assertThat(table).hasToString("[[1.0, Infinity]]");
    }

    @Test
    void pairingsAreEqualWhenAllTheyTellIs() {
        Pairing pairing = best(new double[][] {{1, 2}, {2, 1}}, 1, Aim.LEAST_TOTAL);
        Pairing same = best(new double[][] {{1, 5}, {5, 1}}, 1, Aim.LEAST_TOTAL);
        assertThat(pairing).isEqualTo(same).hasSameHashCodeAs(same);
        assertThat(pairing)
                .isNotEqualTo(best(new double[][] {{2, 1}, {1, 2}}, 1, Aim.LEAST_TOTAL))
                .isNotEqualTo(best(new double[][] {{1, 5}, {5, 2}}, 1, Aim.LEAST_TOTAL))
                .isNotEqualTo(best(new double[][] {{2, 9}, {9, 0}}, 1, Aim.LEAST_TOTAL))
                .isNotEqualTo("columns");
        pairing.columns()[0] = 9;
        assertThat(pairing.columnOf(0)).isZero();
    }

    @Test
    void nullsAreNamed() {
        CostTable table = CostTable.of(new double[][] {{1}}, 1);
        assertThatNullPointerException().isThrownBy(() -> CostTable.of(null, 1)).withMessage("costs");
        assertThatNullPointerException()
                .isThrownBy(() -> CostTable.of(new double[][] {null}, 1))
                .withMessage("costs[0]");
        assertThatNullPointerException()
                .isThrownBy(() -> CostTable.of(new double[][] {{1}, null}, 1))
                .withMessage("costs[1]");
        assertThatNullPointerException()
                .isThrownBy(() -> Assignment.best(null, Aim.LEAST_TOTAL))
                .withMessage("table");
        assertThatNullPointerException()
                .isThrownBy(() -> Assignment.best(table, null))
                .withMessage("aim");
    }

    @Test
    void theSizeIsChecked() {
        refused(new double[0][0], 1, "costs must have 1 to 1024 rows, had 0");
        refused(new double[1][0], 1, "costs must have 1 to 1024 columns, had 0");
        refused(new double[1025][1], 1, "costs must have 1 to 1024 rows, had 1025");
        refused(new double[1][1025], 1, "costs must have 1 to 1024 columns, had 1025");
        refused(
                new double[][] {{1}, {1, 2}},
                1,
                "rows of costs must be equally long, row 1 has 2 columns and row 0 has 1");
    }

    @Test
    void theCostsAndTheGridAreChecked() {
        for (double cost : new double[] {Double.NaN, Double.NEGATIVE_INFINITY, 0x1.8p49, -0x1.8p49, 1e300}) {
            refused(
                    new double[][] {{1, cost}},
                    1,
                    "costs[0][1] must be a number within 2^48 grid steps of 1.0 of zero, or forbidden, was " + cost);
        }
        for (double grid : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            refused(new double[][] {{1}}, grid, "grid must be positive and finite, was " + grid);
        }
    }

    @Test
    void aSumThatOverflowsIsAnError() {
        CostTable table = CostTable.of(new double[][] {{1e308, NO}, {NO, 1e308}}, 1e300);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Assignment.best(table, Aim.LEAST_TOTAL))
                .withMessage("The sum of the costs overflows: Infinity");
    }

    private static Pairing best(double[][] costs, double grid, Aim aim) {
        return (Pairing) Assignment.best(CostTable.of(costs, grid), aim);
    }

    private static void refused(double[][] costs, double grid, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CostTable.of(costs, grid))
                .withMessage(message);
    }
}
