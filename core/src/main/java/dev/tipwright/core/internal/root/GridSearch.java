package dev.tipwright.core.internal.root;

import java.util.Objects;
import java.util.OptionalLong;
import java.util.function.LongPredicate;

/**
 * Where on a grid of whole numbers a test turns from false to true, or from true to false.
 *
 * <p>By halving: at most 65 calls of the test, {@code 1 + ceil(log2(high - low + 1))} to be exact. The test must be monotonic: it turns
 * at most once. If it is not, the answer is one of its turns.
 */
public final class GridSearch {

    private GridSearch() {}

    /**
     * The least whole number from {@code low} to {@code high} for which a test holds that, once it holds, holds for all
     * greater ones.
     *
     * @param low the least to consider
     * @param high the greatest to consider, not below {@code low}
     * @param holds the test
     * @return the least for which it holds, or empty if it does not even hold for {@code high}
     * @throws NullPointerException if {@code holds} is null
     * @throws IllegalArgumentException if {@code high < low}
     */
    public static OptionalLong least(long low, long high, LongPredicate holds) {
        Objects.requireNonNull(holds, "holds");
        if (high < low) {
            throw new IllegalArgumentException("high must not be below low " + low + ", was " + high);
        }
        if (!holds.test(high)) {
            return OptionalLong.empty();
        }
        long from = low;
        long to = high;
        while (from < to) {
            // Unsigned, as the span of a bracket can be up to 2^64 - 1.
            long middle = from + ((to - from) >>> 1);
            if (holds.test(middle)) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return OptionalLong.of(to);
    }

    /**
     * The greatest whole number from {@code low} to {@code high} for which a test holds that, where it holds, holds for
     * all lesser ones.
     *
     * @param low the least to consider
     * @param high the greatest to consider, not below {@code low}
     * @param holds the test
     * @return the greatest for which it holds, or empty if it does not even hold for {@code low}
     * @throws NullPointerException if {@code holds} is null
     * @throws IllegalArgumentException if {@code high < low}
     */
    public static OptionalLong greatest(long low, long high, LongPredicate holds) {
        Objects.requireNonNull(holds, "holds");
        if (high < low) {
            throw new IllegalArgumentException("high must not be below low " + low + ", was " + high);
        }
        // Read backwards: ~n falls as n rises and never overflows.
        OptionalLong mirrored = least(~high, ~low, n -> holds.test(~n));
        return mirrored.isPresent() ? OptionalLong.of(~mirrored.getAsLong()) : mirrored;
    }
}
