package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/** Every pairing there is, in the order of its sequence of columns; the first of the best is the answer. */
final class BruteForce {

    private final long[][] counts;
    private final Aim aim;
    private final int rows;
    private final int columns;
    private final int[] current;
    private final boolean[] taken;

    int[] best;
    private long bestWorst;
    private long bestTotal;

    /** Counts, {@code null} for a forbidden pair. */
    private BruteForce(long[][] counts, Aim aim) {
        this.counts = counts;
        this.aim = aim;
        rows = counts.length;
        columns = counts[0].length;
        current = new int[rows];
        taken = new boolean[columns];
    }

    /** The first of the best sequences of columns (-1 for none), or null when there is no pairing. */
    static int[] best(long[][] counts, long forbidden, Aim aim) {
        BruteForce search = new BruteForce(counts, aim);
        search.from(0, Math.max(0, search.rows - search.columns), forbidden, 0, Long.MIN_VALUE);
        return search.best;
    }

    private void from(int row, int mayGoWithout, long forbidden, long total, long worst) {
        if (row == rows) {
            keepIfBetter(total, worst);
            return;
        }
        for (int column = 0; column < columns; column++) {
            if (!taken[column] && counts[row][column] != forbidden) {
                taken[column] = true;
                current[row] = column;
                long count = counts[row][column];
                from(row + 1, mayGoWithout, forbidden, total + count, Math.max(worst, count));
                taken[column] = false;
            }
        }
        if (mayGoWithout > 0) {
            current[row] = -1;
            from(row + 1, mayGoWithout - 1, forbidden, total, worst);
        }
    }

    private void keepIfBetter(long total, long worst) {
        boolean better = best == null
                || (aim == Aim.LEAST_WORST && worst < bestWorst)
                || ((aim == Aim.LEAST_TOTAL || worst == bestWorst) && total < bestTotal);
        if (better) {
            best = Arrays.copyOf(current, rows);
            bestTotal = total;
            bestWorst = worst;
        }
    }
}
