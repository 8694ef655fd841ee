package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.Optional;

/**
 * A number held against the caller's limit for it.
 *
 * @param what which number
 * @param value the number
 * @param limit the limit; above zero, or unknown if the caller gave none, with whom to ask
 */
public record Margin(What what, Length value, Reading<Length> limit) {

    /** Which number. */
    public enum What {
        /** Wall of structure left on the tip; the limit is the least. */
        TIP_WALL(true),
        /** Wall left on the hosel; the limit is the least. */
        HOSEL_WALL(true),
        /** Clearance left at the loosest place; the limit is the greatest. */
        CLEARANCE(false);

        private final boolean atLeast;

        What(boolean atLeast) {
            this.atLeast = atLeast;
        }
    }

    /**
     * Checks the values.
     *
     * @param what which number
     * @param value the number
     * @param limit the limit; above zero where it is known
     */
    public Margin {
        Require.given("what", what);
        Require.given("value", value);
        Require.given("limit", limit);
        limit.known().ifPresent(known -> Require.positive("limit", known));
    }

    /**
     * How the number stands to its limit: 1 is just allowed, more is better.
     *
     * @return value over limit for a least, 2 less that for a greatest; empty if the limit is unknown
     */
    public Optional<Double> ratio() {
        return limit.known().map(known -> what.atLeast ? value.ratioTo(known) : 2 - value.ratioTo(known));
    }
}
