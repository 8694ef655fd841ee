package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/** Which column each row takes. */
public final class Pairing implements Assignment {

    /** In place of a column: this row takes none, because there are more rows than columns. */
    public static final int NONE = -1;

    private final int[] columns;
    private final double total;
    private final double worst;

    private Pairing(int[] columns, double total, double worst) {
        this.columns = columns;
        this.total = total;
        this.worst = worst;
    }

    static Pairing of(CostTable table, int[] columns) {
        double total = 0;
        double worst = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < columns.length; row++) {
            if (columns[row] != NONE) {
                double cost = table.cost(row, columns[row]);
                total += cost;
                worst = Math.max(worst, cost);
            }
        }
        if (Double.isInfinite(total)) {
            throw new ArithmeticException("The sum of the costs overflows: " + total);
        }
        return new Pairing(columns, total, worst);
    }

    /**
     * The column that a row takes.
     *
     * @param row the row, counted from 0
     * @return the column, counted from 0, or {@link #NONE}
     * @throws IndexOutOfBoundsException if there is no such row
     */
    public int columnOf(int row) {
        return columns[row];
    }

    /**
     * The column of each row, in the order of the rows.
     *
     * @return a fresh array of columns counted from 0, {@link #NONE} where a row takes none
     */
    public int[] columns() {
        return columns.clone();
    }

    /**
     * The sum of the costs of the pairs made, as they were given (not on the grid), added in the order of the rows.
     *
     * @return the sum, in the unit of the table
     */
    public double total() {
        return total;
    }

    /**
     * The cost of the dearest pair made, as it was given (not on the grid).
     *
     * @return the largest cost, in the unit of the table
     */
    public double worst() {
        return worst;
    }

    /** Two pairings are equal when each row takes the same column at the same total and worst cost. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Pairing that
                && Arrays.equals(columns, that.columns)
                && Double.compare(total, that.total) == 0
                && Double.compare(worst, that.worst) == 0;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(columns) + 31 * Double.hashCode(total);
    }

    @Override
    public String toString() {
        return "columns " + Arrays.toString(columns) + ", total " + total + ", worst " + worst;
    }
}
