package dev.tipwright.core.internal.assign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Why the shorter side of a table cannot be served in full, and by how much it falls short.
 *
 * <p>There is always a reason that can be pointed at (P. Hall 1935): some lines, the contenders, may only be paired with too
 * few lines of the other side, the contested ones. There are exactly as many contenders too many as lines unserved. Each
 * contender could be the one to go without; which of them does is settled in order, a line being left unserved only if
 * serving it would take away from one before it.
 *
 * @param side the side to be served in full: the rows, unless there are fewer columns
 * @param unserved the lines of that side that go without, in ascending order, counted from 0; at least one
 * @param contenders all lines of that side that compete, the unserved ones among them, in ascending order
 * @param contested all lines of the other side that the contenders may be paired with, in ascending order; can be empty
 */
public record Shortage(Side side, List<Integer> unserved, List<Integer> contenders, List<Integer> contested)
        implements Assignment {

    /** A side of the table. */
    public enum Side {
        /** The rows. */
        ROWS,
        /** The columns. */
        COLUMNS
    }

    /**
     * A shortage with its lists copied.
     *
     * @param side the side to be served in full
     * @param unserved the lines that go without
     * @param contenders the lines that compete
     * @param contested the lines they compete for
     * @throws NullPointerException if an argument, or an element of a list, is null
     */
    public Shortage {
        Objects.requireNonNull(side, "side");
        unserved = List.copyOf(Objects.requireNonNull(unserved, "unserved"));
        contenders = List.copyOf(Objects.requireNonNull(contenders, "contenders"));
        contested = List.copyOf(Objects.requireNonNull(contested, "contested"));
    }

    static Shortage of(CostTable table) {
        long[][] counts = table.servedByOffered();
        Shares shares = new Shares(counts.length, counts[0].length);
        List<Integer> unserved = new ArrayList<>();
        for (int line = 0; line < counts.length; line++) {
            Arrays.fill(shares.settled, false);
            int end = search(counts, shares, line);
            if (end == Shares.FREE) {
                unserved.add(line);
            } else {
                shares.handOn(line, end);
            }
        }
        Arrays.fill(shares.settled, false);
        List<Integer> contenders = new ArrayList<>(unserved);
        for (int line : unserved) {
            search(counts, shares, line);
        }
        List<Integer> contested = new ArrayList<>();
        for (int offered = 0; offered < counts[0].length; offered++) {
            if (shares.settled[offered]) {
                contested.add(offered);
                contenders.add(shares.holder[offered]);
            }
        }
        contenders.sort(null);
        return new Shortage(
                table.rows() <= table.columns() ? Side.ROWS : Side.COLUMNS, unserved, contenders, contested);
    }

    /** Breadth first along chains of allowed pairs, to the first free line or until all that can be reached is settled. */
    private static int search(long[][] counts, Shares shares, int start) {
        int[] queue = new int[counts.length];
        int waiting = 0;
        queue[waiting++] = start;
        for (int next = 0; next < waiting; next++) {
            long[] row = counts[queue[next]];
            for (int offered = 0; offered < row.length; offered++) {
                if (row[offered] != CostTable.NO_PAIR && !shares.settled[offered]) {
                    shares.settled[offered] = true;
                    shares.taker[offered] = queue[next];
                    if (shares.holder[offered] == Shares.FREE) {
                        return offered;
                    }
                    queue[waiting++] = shares.holder[offered];
                }
            }
        }
        return Shares.FREE;
    }
}
