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

    LeastTotal(long[][] counts) {
        this.counts = counts;
        servedPrice = new long[counts.length];
        offeredPrice = new long[counts[0].length];
        distance = new long[offeredPrice.length];
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

    /** For each offered line, whether some pairing of least total could give it to a served one, as far as prices tell. */
    boolean[] tight(int served) {
        boolean[] tight = new boolean[offeredPrice.length];
        long[] row = counts[served];
        for (int j = 0; j < tight.length; j++) {
            tight[j] = row[j] != CostTable.NO_PAIR && row[j] == servedPrice[served] + offeredPrice[j];
        }
        return tight;
    }

    /** For each offered line, whether a pairing of least total may leave it free, as far as prices tell. */
    boolean[] spare() {
        boolean[] spare = new boolean[offeredPrice.length];
        for (int j = 0; j < spare.length; j++) {
            spare[j] = offeredPrice[j] == 0;
        }
        return spare;
    }

    /** The free offered line that the cheapest chain of swaps from {@code start} ends at, or {@link Shares#FREE}. */
    private int cheapestEnd(int start) {
        Arrays.fill(distance, CostTable.NO_PAIR);
        Arrays.fill(shares.settled, false);
        int line = start;
        long travelled = 0;
        while (true) {
            int nearest = reach(line, travelled);
            if (nearest == Shares.FREE || shares.holder[nearest] == Shares.FREE) {
                return nearest;
            }
            shares.settled[nearest] = true;
            travelled = distance[nearest];
            line = shares.holder[nearest];
        }
    }

    /** Extends the chains through {@code line} and gives the nearest offered line not yet settled. */
    private int reach(int line, long travelled) {
        long[] row = counts[line];
        long shift = travelled - servedPrice[line];
        long least = CostTable.NO_PAIR;
        int nearest = Shares.FREE;
        for (int j = 0; j < row.length; j++) {
            if (shares.settled[j]) {
                continue;
            }
            if (row[j] != CostTable.NO_PAIR) {
                long through = row[j] + shift - offeredPrice[j];
                if (through < distance[j]) {
                    distance[j] = through;
                    shares.taker[j] = line;
                }
            }
            if (distance[j] < least) {
                least = distance[j];
                nearest = j;
            }
        }
        return nearest;
    }

    private void reprice(int start, long length) {
        servedPrice[start] += length;
        for (int j = 0; j < distance.length; j++) {
            if (shares.settled[j]) {
                servedPrice[shares.holder[j]] += length - distance[j];
                offeredPrice[j] -= length - distance[j];
            }
        }
    }
}
