package dev.tipwright.core.internal.assign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against a general graph library, and against every pairing there is. */
class AssignmentReferenceTest {

    /** 1e-9 relative: the grid, 1e-12 of costs of about 1, moves a sum of 14 by 7e-12 at most; the library rounds less. */
    private static final double RELATIVE = 1e-9;

    @Test
    void leastTotalOfTenThousandTables() {
        Random random = new Random(1);
        for (int i = 0; i < 10_000; i++) {
            double[][] costs = random(random, 1 + random.nextInt(14), 1 + random.nextInt(14), 0);
            double expected = GraphLibrary.leastTotal(costs);
            Pairing pairing = (Pairing) Assignment.best(CostTable.of(costs, 1e-12), Aim.LEAST_TOTAL);
            assertThat(pairing.total()).isCloseTo(expected, within(RELATIVE * expected));
            assertComplete(costs, pairing);
        }
    }

    @Test
    void leastWorstAndWhetherThereIsAPairing() {
        Random random = new Random(2);
        int shortages = 0;
        for (int i = 0; i < 1000; i++) {
            double[][] costs =
                    random(random, 1 + random.nextInt(9), 1 + random.nextInt(9), random.nextBoolean() ? 0.7 : 0);
            Assignment best = Assignment.best(CostTable.of(costs, 1e-12), Aim.LEAST_WORST);
            double expected = GraphLibrary.leastWorst(costs);
            if (best instanceof Pairing pairing) {
                // The very cost that was put in, so equal to the last bit.
                assertThat(pairing.worst()).isEqualTo(expected);
                assertThat(pairing.total())
                        .isCloseTo(
                                GraphLibrary.leastTotal(penalised(costs, expected)),
                                within(RELATIVE * pairing.total()));
                assertComplete(costs, pairing);
            } else {
                assertThat(expected).isInfinite();
                shortages++;
            }
        }
        assertThat(shortages).isBetween(50, 500);
    }

    @Test
    void leastTotalOfATableOfTwoHundred() {
        double[][] costs = random(new Random(3), 200, 180, 0);
        double expected = GraphLibrary.leastTotal(costs);
        Pairing pairing = (Pairing) Assignment.best(CostTable.of(costs, 1e-12), Aim.LEAST_TOTAL);
        assertThat(pairing.total()).isCloseTo(expected, within(RELATIVE * expected));
    }

    @Test
    void theFirstOfTheBestAmongEveryPairingThereIs() {
        Random random = new Random(4);
        int shortages = 0;
        for (int i = 0; i < 6000; i++) {
            int rows = 1 + random.nextInt(6);
            int columns = 1 + random.nextInt(6);
            shortages += assertFirstOfTheBest(random, rows, columns, 2 + random.nextInt(4)) ? 0 : 1;
        }
        for (int i = 0; i < 100; i++) {
            shortages += assertFirstOfTheBest(random, 7, 7, 2 + random.nextInt(4)) ? 0 : 1;
        }
        assertThat(shortages).isBetween(500, 4000);
    }

    /** A few whole costs only, so that ties abound; true when there was a pairing. */
    private static boolean assertFirstOfTheBest(Random random, int rows, int columns, int kinds) {
        double forbiddenShare = random.nextInt(3) * 0.3;
        double[][] costs = new double[rows][columns];
        long[][] counts = new long[rows][columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                boolean forbidden = random.nextDouble() < forbiddenShare;
                counts[row][column] = forbidden ? 99 : random.nextInt(kinds) - 1;
                costs[row][column] = forbidden ? CostTable.FORBIDDEN : counts[row][column];
            }
        }
        boolean found = false;
        for (Aim aim : Aim.values()) {
            int[] expected = BruteForce.best(counts, 99, aim);
            Assignment best = Assignment.best(CostTable.of(costs, 1), aim);
            assertThat(best instanceof Pairing).isEqualTo(expected != null);
            if (best instanceof Pairing pairing) {
                assertThat(pairing.columns()).isEqualTo(expected);
                found = true;
            }
        }
        return found;
    }

    private static double[][] random(Random random, int rows, int columns, double forbidden) {
        double[][] costs = new double[rows][columns];
        for (double[] row : costs) {
            for (int column = 0; column < columns; column++) {
                row[column] = random.nextDouble() < forbidden ? CostTable.FORBIDDEN : random.nextDouble();
            }
        }
        return costs;
    }

    /** Pairs dearer than the bound at a price no pairing without them can reach. */
    private static double[][] penalised(double[][] costs, double bound) {
        double[][] result = new double[costs.length][];
        for (int row = 0; row < costs.length; row++) {
            result[row] = costs[row].clone();
            for (int column = 0; column < result[row].length; column++) {
                result[row][column] = result[row][column] <= bound ? result[row][column] : 1000;
            }
        }
        return result;
    }

    private static void assertComplete(double[][] costs, Pairing pairing) {
        long served = IntStream.of(pairing.columns())
                .filter(column -> column != Pairing.NONE)
                .distinct()
                .count();
        long paired = IntStream.of(pairing.columns())
                .filter(column -> column != Pairing.NONE)
                .count();
        assertThat(served).isEqualTo(Math.min(costs.length, costs[0].length)).isEqualTo(paired);
    }
}
