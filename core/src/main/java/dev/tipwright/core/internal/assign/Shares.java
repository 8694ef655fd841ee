package dev.tipwright.core.internal.assign;

import java.util.Arrays;

/** Who holds what while lines of the served side enter one by one, and the trail of the chain of swaps being sought. */
final class Shares {

    /** In place of the line that holds an offered one: nobody does. */
    static final int FREE = -1;

    /** For each offered line the served line that holds it, or {@link #FREE}. */
    final int[] holder;

    /** For each offered line the served line that would take it over, as far as the search has come. */
    final int[] taker;

    /** For each offered line whether the search is done with it. */
    final boolean[] settled;

    private final int[] held;

    Shares(int served, int offered) {
        holder = new int[offered];
        taker = new int[offered];
        settled = new boolean[offered];
        held = new int[served];
        Arrays.fill(holder, FREE);
    }

    /** Hands on along the trail, from the free line {@code end} back to {@code start}, which held nothing before. */
    void handOn(int start, int end) {
        int offered = end;
        int line;
        do {
            line = taker[offered];
            holder[offered] = line;
            int left = held[line];
            held[line] = offered;
            offered = left;
        } while (line != start);
    }
}
