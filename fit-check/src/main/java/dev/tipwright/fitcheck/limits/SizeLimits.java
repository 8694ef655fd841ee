package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The least and the greatest diameter that is allowed, or that is expected.
 *
 * @param least lower limit of size; above zero
 * @param greatest upper limit of size; at most 100 mm
 */
public record SizeLimits(Length least, Length greatest) {

    /**
     * Checks the values.
     *
     * @param least lower limit of size; above zero
     * @param greatest upper limit of size; at most 100 mm
     */
    public SizeLimits {
        Require.positive("least", least);
        Require.someUpTo("greatest", greatest, 100);
        Require.atMost("least", least, "greatest", greatest);
    }

    /**
     * A size and how far it may be off, either way.
     *
     * @param size the middle of the limits
     * @param tolerance how far off; zero or more, less than the size
     * @return the limits
     */
    public static SizeLimits of(Length size, Length tolerance) {
        Require.someUpTo("size", size, 100);
        Require.notNegative("tolerance", tolerance);
        Require.that(tolerance.lessThan(size), "tolerance", "must be less than size, " + size, tolerance);
        return new SizeLimits(size.minus(tolerance), size.plus(tolerance));
    }

    /**
     * The tolerance.
     *
     * @return greatest less least
     */
    public Length width() {
        return greatest.minus(least);
    }

    /**
     * The middle of the limits.
     *
     * @return half of least and greatest
     */
    public Length middle() {
        return least.plus(greatest).half();
    }
}
