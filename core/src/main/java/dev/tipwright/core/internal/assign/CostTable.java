package dev.tipwright.core.internal.assign;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * What each pairing of a row with a column would cost, on a grid.
 *
 * <p>The unit of the costs is the caller's (gram, point, squared millimetre); the grid is in the same unit. A cost {@code c}
 * counts as the whole number {@code round(c / grid)}, ties to even.
 */
public final class CostTable {

    /** The cost of a pair that must not be made. */
    public static final double FORBIDDEN = Double.POSITIVE_INFINITY;

    /** The most rows, and the most columns, that a table may have. */
    public static final int MOST_LINES = 1024;

    /**
     * The most grid steps that a cost may be away from zero, {@code 2^48}. With no more than {@value #MOST_LINES} lines
     * every sum and every dual value then stays well inside a {@code long}.
     */
    public static final long MOST_STEPS = 1L << 48;

    /** The count of a pair that must not be made; larger than any count that may be. */
    static final long NO_PAIR = Long.MAX_VALUE;

    private final double[][] costs;
    private final long[][] counts;

    private CostTable(double[][] costs, long[][] counts) {
        this.costs = costs;
        this.counts = counts;
    }

    /**
     * A table of costs, one array a row. The arrays are copied.
     *
     * @param costs cost of each row with each column: finite, or {@link #FORBIDDEN}; from 1 to {@value #MOST_LINES} rows
     *     and columns, all rows equally long
     * @param grid the smallest difference in cost that matters, in the unit of the costs; positive and finite, and no
     *     cost more than {@code 2^48} steps of it away from zero
     * @return the table
     * @throws NullPointerException if {@code costs} or one of its rows is null
     * @throws IllegalArgumentException if the table is empty, ragged or too large, if a cost is NaN or negative infinity,
     *     or if the grid is not positive and finite or too fine for a cost
     */
    public static CostTable of(double[][] costs, double grid) {
        Objects.requireNonNull(costs, "costs");
        requireLines("rows", costs.length);
        requireLines("columns", Objects.requireNonNull(costs[0], "costs[0]").length);
        if (!(grid > 0 && grid < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("grid must be positive and finite, was " + grid);
        }
        double[][] copies = new double[costs.length][];
        long[][] counts = new long[costs.length][];
        for (int row = 0; row < costs.length; row++) {
            copies[row] =
                    Objects.requireNonNull(costs[row], "costs[" + row + "]").clone();
            if (copies[row].length != copies[0].length) {
                throw new IllegalArgumentException("rows of costs must be equally long, row " + row + " has "
                        + copies[row].length + " columns and row 0 has " + copies[0].length);
            }
            counts[row] = new long[copies[row].length];
            for (int column = 0; column < counts[row].length; column++) {
                counts[row][column] = count(copies[row][column], grid, row, column);
            }
        }
        return new CostTable(copies, counts);
    }

    /**
     * The number of rows.
     *
     * @return the number of rows, 1 to {@value #MOST_LINES}
     */
    public int rows() {
        return costs.length;
    }

    /**
     * The number of columns.
     *
     * @return the number of columns, 1 to {@value #MOST_LINES}
     */
    public int columns() {
        return costs[0].length;
    }

    /**
     * The cost of one pair as it was given, before it was put on the grid.
     *
     * @param row the row, counted from 0
     * @param column the column, counted from 0
     * @return the cost, in the unit of the table, or {@link #FORBIDDEN}
     * @throws IndexOutOfBoundsException if there is no such row or column
     */
    public double cost(int row, int column) {
        return costs[row][column];
    }

    /** The cost of one pair in grid steps, or {@link #NO_PAIR}. */
    long count(int row, int column) {
        return counts[row][column];
    }

    /** The counts with the side that is served in full (the rows, if both are equal) as first index; a fresh copy. */
    long[][] servedByOffered() {
        if (rows() <= columns()) {
            long[][] same = counts.clone();
            for (int row = 0; row < same.length; row++) {
                same[row] = counts[row].clone();
            }
            return same;
        }
        long[][] turned = new long[columns()][rows()];
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                turned[column][row] = counts[row][column];
            }
        }
        return turned;
    }

    private static void requireLines(String what, int lines) {
        if (lines < 1 || lines > MOST_LINES) {
            throw new IllegalArgumentException("costs must have 1 to " + MOST_LINES + " " + what + ", had " + lines);
        }
    }

    private static long count(double cost, double grid, int row, int column) {
        if (cost == FORBIDDEN) {
            return NO_PAIR;
        }
        double steps = Math.rint(cost / grid);
        // Written so that NaN fails too.
        if (!(Math.abs(steps) <= MOST_STEPS)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "costs[%d][%d] must be a number within 2^48 grid steps of %s of zero, or forbidden, was %s",
                    row,
                    column,
                    grid,
                    cost));
        }
        return (long) steps;
    }

    /** Gives the costs row by row, for a person to read. */
    @Override
    public String toString() {
        return Arrays.deepToString(costs);
    }
}
