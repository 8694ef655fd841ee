package dev.tipwright.core.match;

import dev.tipwright.core.internal.arg.Require;
import java.util.OptionalDouble;

/**
 * One head, the shaft it came with and the shaft it takes.
 *
 * @param head label of the head
 * @param before label of the shaft it came with
 * @param costBefore what that shaft costs; empty if it must not go there
 * @param after label of the shaft it takes
 * @param costAfter what that shaft costs; empty only if nothing could be shared out
 */
public record MatchedPair(
        String head, String before, OptionalDouble costBefore, String after, OptionalDouble costAfter) {

    /**
     * Checks the values.
     *
     * @param head label of the head
     * @param before label of the shaft it came with
     * @param costBefore what that shaft costs; empty if it must not go there
     * @param after label of the shaft it takes
     * @param costAfter what that shaft costs; empty only if nothing could be shared out
     */
    public MatchedPair {
        Require.label("head", head);
        Require.label("before", before);
        Require.given("costBefore", costBefore);
        Require.label("after", after);
        Require.given("costAfter", costAfter);
    }

    /**
     * Whether the head takes another shaft than it came with.
     *
     * @return true if the shafts differ
     */
    public boolean changed() {
        return !before.equals(after);
    }
}
