package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/**
 * The least total by shortest augmenting paths, in whole numbers.
 *
 * <p>Lines of the served side enter one by one; each finds the cheapest chain of swaps that ends at a free line of the
 * offered side. The prices keep {@code count - servedPrice - offeredPrice >= 0} for every allowed pair, and {@code = 0} (a
 * tight pair) for each pair made; {@code offeredPrice <= 0}, and {@code = 0} for each line left free. That is what proves
 * the total least, and what shows all other pairings as good: they are those which use tight pairs alone and leave free
 * only lines of price 0.
 */
final class LeastTotal {

    final long[][] counts;
    final long[] servedPrice;
    final long[] offeredPrice;
    final Shares shares;

    private final long[] distance;

    /** The offered lines: first those still open to the search, from {@code open} on those it has settled. */
    private final int[] order;

    private int open;

    LeastTotal(long[][] counts) {
        this.counts = counts;
        servedPrice = new long[counts.length];
        offeredPrice = new long[counts[0].length];
        distance = new long[offeredPrice.length];
        order = new int[offeredPrice.length];
        for (int line = 0; line < order.length; line++) {
            order[line] = line;
        }
        shares = new Shares(servedPrice.length, offeredPrice.length);
    }

    /** True when every line of the served side has got one of the offered side. */
    boolean serveAll() {
        for (int line = 0; line < counts.length; line++) {
            int end = cheapestEnd(line);
            if (end == Shares.FREE) {
                return false;
            }
            reprice(line, distance[end]);
            shares.handOn(line, end);
        }
        return true;
    }

    /** True for an allowed pair that some pairing of least total could hold, as far as prices tell. */
    boolean tight(int served, int offered) {
        long count = counts[served][offered];
        return count != CostTable.NO_PAIR && count == servedPrice[served] + offeredPrice[offered];
    }

    /** The free offered line that the cheapest chain of swaps from {@code start} ends at, or {@link Shares#FREE}. */
    private int cheapestEnd(int start) {
        Arrays.fill(distance, CostTable.NO_PAIR);
        open = order.length;
        int line = start;
        long travelled = 0;
        while (true) {
            int place = reach(line, travelled);
            if (place == Shares.FREE) {
                return Shares.FREE;
            }
            int nearest = order[place];
            if (shares.holder[nearest] == Shares.FREE) {
                return nearest;
            }
            order[place] = order[--open];
            order[open] = nearest;
            travelled = distance[nearest];
            line = shares.holder[nearest];
        }
    }

    /** Extends the chains through {@code line} and gives the place of the nearest open line in their order. */
    private int reach(int line, long travelled) {
        long[] row = counts[line];
        long shift = travelled - servedPrice[line];
        long least = CostTable.NO_PAIR;
        int nearest = Shares.FREE;
        for (int place = 0; place < open; place++) {
            int j = order[place];
            long far = distance[j];
            if (row[j] != CostTable.NO_PAIR) {
                long through = row[j] + shift - offeredPrice[j];
                if (through < far) {
                    far = through;
                    distance[j] = through;
                    shares.taker[j] = line;
                }
            }
            if (far < least) {
                least = far;
                nearest = place;
            }
        }
        return nearest;
    }

    private void reprice(int start, long length) {
        servedPrice[start] += length;
        for (int place = open; place < order.length; place++) {
            int j = order[place];
            servedPrice[shares.holder[j]] += length - distance[j];
            offeredPrice[j] -= length - distance[j];
        }
    }
}
