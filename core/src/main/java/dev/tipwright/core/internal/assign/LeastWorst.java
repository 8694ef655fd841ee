package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/**
 * The least worst pair: the smallest count that lets the whole served side be served by pairs no dearer than it.
 *
 * <p>Lines of the served side enter one by one; each takes the chain of swaps whose dearest pair is cheapest. Where that
 * raises the bound it must: a pairing of the lines so far under a lower bound would contain a cheaper chain. A
 * forbidden pair counts as the dearest of all, so a chain is always found.
 */
final class LeastWorst {

    private final long[][] counts;
    private final long[] dearest;
    private final Shares shares;

    private LeastWorst(long[][] counts) {
        this.counts = counts;
        dearest = new long[counts[0].length];
        shares = new Shares(counts.length, dearest.length);
    }

    /**
     * Forbids, in {@code counts} itself, every pair dearer than the least worst; where not all can be served, none, so that
     * it is for the search after this one to find that out.
     */
    static void keepOnlyNeeded(long[][] counts) {
        long bound = new LeastWorst(counts).bound();
        for (long[] row : counts) {
            for (int j = 0; j < row.length; j++) {
                if (row[j] > bound) {
                    row[j] = CostTable.NO_PAIR;
                }
            }
        }
    }

    private long bound() {
        long bound = Long.MIN_VALUE;
        for (int line = 0; line < counts.length; line++) {
            int end = cheapestEnd(line);
            bound = Math.max(bound, dearest[end]);
            shares.handOn(line, end);
        }
        return bound;
    }

    private int cheapestEnd(int start) {
        Arrays.fill(dearest, CostTable.NO_PAIR);
        Arrays.fill(shares.taker, start);
        Arrays.fill(shares.settled, false);
        int nearest = reach(start, Long.MIN_VALUE);
        while (shares.holder[nearest] != Shares.FREE) {
            shares.settled[nearest] = true;
            nearest = reach(shares.holder[nearest], dearest[nearest]);
        }
        return nearest;
    }

    /** Extends the chains through {@code line} and gives the cheapest offered line not yet settled. */
    private int reach(int line, long soFar) {
        long[] row = counts[line];
        int nearest = Shares.FREE;
        for (int j = 0; j < row.length; j++) {
            if (shares.settled[j]) {
                continue;
            }
            long through = Math.max(soFar, row[j]);
            if (through < dearest[j]) {
                dearest[j] = through;
                shares.taker[j] = line;
            }
            if (nearest == Shares.FREE || dearest[j] < dearest[nearest]) {
                nearest = j;
            }
        }
        return nearest;
    }
}
