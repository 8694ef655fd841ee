package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/**
 * Among all pairings of least total, the one with the smallest sequence of columns, read row by row.
 *
 * <p>The shorter side is filled up with blank lines, which may take whatever a pairing of least total may leave over (price
 * 0). The pairings of least total are then just the complete ones made of tight pairs. Row by row, each takes the
 * smallest column from which a chain of such pairs, through rows further down, leads back to the column it gives up.
 */
final class FirstInOrder {

    private final int columns;

    /** Row by row, whether it may take each column; blank lines stand for the lines that the shorter side lacks. */
    private final boolean[][] tight;

    private final int[] columnOf;
    private final int[] rowOf;

    private final int[] moveTo;
    private final int[] queue;

    private FirstInOrder(LeastTotal optimum, int rows, int columns) {
        this.columns = columns;
        int size = Math.max(rows, columns);
        columnOf = new int[size];
        rowOf = new int[size];
        moveTo = new int[size];
        queue = new int[size];
        boolean rowsServed = rows <= columns;
        tight = rowsServed ? new boolean[size][] : new boolean[size][size];
        int blank = Math.min(rows, columns);
        for (int served = 0; served < size; served++) {
            boolean[] may = served < blank ? optimum.tight(served) : optimum.spare();
            if (rowsServed) {
                tight[served] = may;
            } else {
                for (int offered = 0; offered < size; offered++) {
                    tight[offered][served] = may[offered];
                }
            }
        }
        for (int offered = 0; offered < size; offered++) {
            int holder = optimum.shares.holder[offered];
            int served = holder == Shares.FREE ? blank++ : holder;
            pair(rowsServed ? served : offered, rowsServed ? offered : served);
        }
    }

    /** The column of each row, {@link Pairing#NONE} where a row takes none. */
    static int[] among(LeastTotal optimum, int rows, int columns) {
        FirstInOrder pairing = new FirstInOrder(optimum, rows, columns);
        int[] result = new int[rows];
        for (int row = 0; row < rows; row++) {
            pairing.improve(row);
            int column = pairing.columnOf[row];
            result[row] = column < columns ? column : Pairing.NONE;
        }
        return result;
    }

    private void pair(int row, int column) {
        columnOf[row] = column;
        rowOf[column] = row;
    }

    /** Gives {@code row} the smallest column it can have while the rows before it keep theirs. */
    private void improve(int row) {
        int givenUp = columnOf[row];
        boolean searched = false;
        for (int column = 0; column < Math.min(givenUp, columns); column++) {
            if (tight[row][column] && rowOf[column] > row) {
                if (!searched) {
                    findMovesTo(givenUp, row);
                    searched = true;
                }
                if (moveTo[rowOf[column]] != Pairing.NONE) {
                    shift(row, column, givenUp);
                    return;
                }
            }
        }
    }

    /** For each row after {@code row}: the column it would move to in a chain that ends at {@code end}. */
    private void findMovesTo(int end, int row) {
        Arrays.fill(moveTo, Pairing.NONE);
        int waiting = 0;
        queue[waiting++] = end;
        for (int next = 0; next < waiting; next++) {
            int column = queue[next];
            for (int other = row + 1; other < tight.length; other++) {
                if (tight[other][column] && moveTo[other] == Pairing.NONE) {
                    moveTo[other] = column;
                    queue[waiting++] = columnOf[other];
                }
            }
        }
    }

    private void shift(int row, int column, int givenUp) {
        int mover = rowOf[column];
        pair(row, column);
        while (true) {
            int to = moveTo[mover];
            int displaced = rowOf[to];
            pair(mover, to);
            if (to == givenUp) {
                return;
            }
            mover = displaced;
        }
    }
}
