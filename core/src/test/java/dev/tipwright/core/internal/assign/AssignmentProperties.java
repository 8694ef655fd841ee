package dev.tipwright.core.internal.assign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of a best pairing. Costs are whole, so every comparison is exact. */
class AssignmentProperties {

    @Property
    void theOrderOfTheLinesDoesNotMatterWhereOnlyOnePairingIsBest(
            @ForAll @IntRange(min = 1, max = 5) int rows,
            @ForAll @IntRange(min = 1, max = 5) int columns,
            @ForAll Random random,
            @ForAll Aim aim) {
        // Different powers of two: no two sets of pairs have the same sum, so no two pairings tie.
        List<Integer> powers = shuffled(25, random);
        double[][] costs = new double[rows][columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                costs[row][column] = 1L << powers.get(columns * row + column);
            }
        }
        List<Integer> rowOrder = shuffled(rows, random);
        List<Integer> columnOrder = shuffled(columns, random);
        Pairing straight = best(costs, aim);
        Pairing mixed = best(reordered(costs, rowOrder, columnOrder), aim);
        for (int row = 0; row < rows; row++) {
            int column = mixed.columnOf(row);
            assertThat(straight.columnOf(rowOrder.get(row)))
                    .isEqualTo(column == Pairing.NONE ? Pairing.NONE : columnOrder.get(column));
        }
    }

    @Property
    void theOrderOfTheLinesDoesNotChangeWhatIsLeast(@ForAll Random random, @ForAll Aim aim) {
        double[][] costs = few(random);
        double[][] mixed = reordered(costs, shuffled(costs.length, random), shuffled(costs[0].length, random));
        assertThat(best(mixed, aim).total()).isEqualTo(best(costs, aim).total());
        assertThat(best(mixed, Aim.LEAST_WORST).worst())
                .isEqualTo(best(costs, Aim.LEAST_WORST).worst());
    }

    @Property
    void swappingTheSidesDoesNotChangeWhatIsLeast(@ForAll Random random, @ForAll Aim aim) {
        double[][] costs = few(random);
        double[][] swapped = new double[costs[0].length][costs.length];
        for (int row = 0; row < costs.length; row++) {
            for (int column = 0; column < costs[0].length; column++) {
                swapped[column][row] = costs[row][column];
            }
        }
        assertThat(best(swapped, aim).total()).isEqualTo(best(costs, aim).total());
        assertThat(best(swapped, Aim.LEAST_WORST).worst())
                .isEqualTo(best(costs, Aim.LEAST_WORST).worst());
    }

    @Property
    void aSurchargeOnALineThatMustBeServedChangesOnlyTheTotal(
            @ForAll Random random, @ForAll @IntRange(min = -50, max = 50) int surcharge) {
        double[][] costs = few(random);
        Pairing before = best(costs, Aim.LEAST_TOTAL);
        if (costs.length <= costs[0].length) {
            for (int column = 0; column < costs[0].length; column++) {
                costs[0][column] += surcharge;
            }
        } else {
            for (double[] row : costs) {
                row[0] += surcharge;
            }
        }
        Pairing after = best(costs, Aim.LEAST_TOTAL);
        assertThat(after.columns()).isEqualTo(before.columns());
        assertThat(after.total()).isEqualTo(before.total() + surcharge);
    }

    @Property
    void theLeastWorstIsNoWorseAndTheLeastTotalNoDearer(@ForAll Random random) {
        double[][] costs = few(random);
        Pairing total = best(costs, Aim.LEAST_TOTAL);
        Pairing worst = best(costs, Aim.LEAST_WORST);
        assertThat(worst.worst()).isLessThanOrEqualTo(total.worst());
        assertThat(total.total()).isLessThanOrEqualTo(worst.total());
    }

    @Property
    void aFinerGridKeepsWholeCostsApartInTheSameWay(@ForAll Random random, @ForAll Aim aim) {
        double[][] costs = few(random);
        assertThat(Assignment.best(CostTable.of(costs, 0.001), aim)).isEqualTo(best(costs, aim));
    }

    private static Pairing best(double[][] costs, Aim aim) {
        return (Pairing) Assignment.best(CostTable.of(costs, 1), aim);
    }

    /** Up to 8 by 8, whole costs from -2 to 5. */
    private static double[][] few(Random random) {
        double[][] costs = new double[1 + random.nextInt(8)][1 + random.nextInt(8)];
        for (double[] row : costs) {
            for (int column = 0; column < row.length; column++) {
                row[column] = random.nextInt(8) - 2;
            }
        }
        return costs;
    }

    private static List<Integer> shuffled(int size, Random random) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            order.add(i);
        }
        Collections.shuffle(order, random);
        return order;
    }

    private static double[][] reordered(double[][] costs, List<Integer> rowOrder, List<Integer> columnOrder) {
        double[][] result = new double[costs.length][costs[0].length];
        for (int row = 0; row < costs.length; row++) {
            for (int column = 0; column < costs[0].length; column++) {
                result[row][column] = costs[rowOrder.get(row)][columnOrder.get(column)];
            }
        }
        return result;
    }
}
