package dev.tipwright.core.internal.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is said when the shorter side cannot be served in full. */
class ShortageTest {

    private static final double NO = CostTable.FORBIDDEN;

    @Test
    void twoRowsWantTheOneColumn() {
        double[][] costs = {
            {NO, 1, NO, NO},
            {1, 1, 1, 1},
            {NO, 2, NO, NO}
        };
        Shortage expected = new Shortage(Shortage.Side.ROWS, List.of(2), List.of(0, 2), List.of(1));
        for (Aim aim : Aim.values()) {
            assertThat(Assignment.best(CostTable.of(costs, 1), aim)).isEqualTo(expected);
        }
    }

    @Test
    void aRowThatMayTakeNothing() {
        double[][] costs = {{NO, NO}, {1, 1}};
        assertThat(Assignment.best(CostTable.of(costs, 1), Aim.LEAST_TOTAL))
                .isEqualTo(new Shortage(Shortage.Side.ROWS, List.of(0), List.of(0), List.of()));
    }

    @Test
    void anEarlierRowMovesRatherThanLetALaterOneGoWithout() {
        double[][] costs = {{1, 1, NO}, {1, NO, NO}, {1, 1, NO}};
        assertThat(Assignment.best(CostTable.of(costs, 1), Aim.LEAST_TOTAL))
                .isEqualTo(new Shortage(Shortage.Side.ROWS, List.of(2), List.of(0, 1, 2), List.of(0, 1)));
    }

    @Test
    void columnsAreServedWhereThereAreFewer() {
        double[][] costs = {{1, 1, NO}, {NO, NO, 1}, {NO, NO, 1}, {NO, NO, 1}};
        assertThat(Assignment.best(CostTable.of(costs, 1), Aim.LEAST_TOTAL))
                .isEqualTo(new Shortage(Shortage.Side.COLUMNS, List.of(1), List.of(0, 1), List.of(0)));
    }

    @Test
    void theNumbersAddUpInThousandsOfTables() {
        Random random = new Random(5);
        int shortages = 0;
        for (int i = 0; i < 3000; i++) {
            int rows = 1 + random.nextInt(8);
            double[][] costs = sparse(random, rows, rows + random.nextInt(3));
            if (Assignment.best(CostTable.of(costs, 1), Aim.LEAST_TOTAL) instanceof Shortage shortage) {
                shortages++;
                // JGraphT says how many can be served at most.
                assertThat(shortage.unserved()).hasSize(rows - GraphLibrary.mostPairs(costs, 0));
                assertThat(shortage.contenders())
                        .containsAll(shortage.unserved())
                        .isSorted();
                assertThat(shortage.contested()).containsExactlyElementsOf(allowed(costs, shortage.contenders()));
                assertThat(shortage.contenders().size() - shortage.contested().size())
                        .isEqualTo(shortage.unserved().size());
                assertThat(shortage.unserved()).isEqualTo(leftOutInOrder(costs));
            }
        }
        assertThat(shortages).isGreaterThan(1000);
    }

    @Test
    void anyContenderCouldBeTheOneToGoWithoutAndNobodyElse() {
        Random random = new Random(6);
        for (int i = 0; i < 300; i++) {
            double[][] costs = sparse(random, 6, 6);
            if (Assignment.best(CostTable.of(costs, 1), Aim.LEAST_TOTAL) instanceof Shortage shortage) {
                int most = GraphLibrary.mostPairs(costs, 0);
                for (int row = 0; row < 6; row++) {
                    double[][] without = costs.clone();
                    without[row] = new double[] {NO, NO, NO, NO, NO, NO};
                    assertThat(GraphLibrary.mostPairs(without, 0) == most)
                            .isEqualTo(shortage.contenders().contains(row));
                }
            }
        }
    }

    @Test
    void nothingMayBeNull() {
        List<Integer> one = List.of(1);
        assertThatNullPointerException()
                .isThrownBy(() -> new Shortage(null, one, one, one))
                .withMessage("side");
        assertThatNullPointerException()
                .isThrownBy(() -> new Shortage(Shortage.Side.ROWS, null, one, one))
                .withMessage("unserved");
        assertThatNullPointerException()
                .isThrownBy(() -> new Shortage(Shortage.Side.ROWS, one, null, one))
                .withMessage("contenders");
        assertThatNullPointerException()
                .isThrownBy(() -> new Shortage(Shortage.Side.ROWS, one, one, null))
                .withMessage("contested");
    }

    private static double[][] sparse(Random random, int rows, int columns) {
        double[][] costs = new double[rows][columns];
        for (double[] row : costs) {
            for (int column = 0; column < columns; column++) {
                row[column] = random.nextInt(4) == 0 ? 0 : NO;
            }
        }
        return costs;
    }

    private static Set<Integer> allowed(double[][] costs, List<Integer> rows) {
        Set<Integer> columns = new TreeSet<>();
        for (int row : rows) {
            for (int column = 0; column < costs[row].length; column++) {
                if (costs[row][column] != NO) {
                    columns.add(column);
                }
            }
        }
        return columns;
    }

    /** Rows that do not raise the number of pairs when they are added in order. */
    private static List<Integer> leftOutInOrder(double[][] costs) {
        List<Integer> leftOut = new ArrayList<>();
        int served = 0;
        for (int rows = 1; rows <= costs.length; rows++) {
            int most = GraphLibrary.mostPairs(Arrays.copyOf(costs, rows), 0);
            if (most == served) {
                leftOut.add(rows - 1);
            }
            served = most;
        }
        return leftOut;
    }
}
