package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.Optional;

/**
 * What a measured insertion says of the stock still to come off: an interval, never a point, and why it is as wide as it is.
 *
 * @param kind what depth can say here
 * @param least the least stock that agrees with the measurement; empty where depth cannot tell, so that too much may be off
 * @param most the greatest stock that agrees with it
 */
public record StockLeft(Kind kind, Optional<Length> least, Length most) {

    /** What depth can say. */
    public enum Kind {
        /** Depth is a micrometer here: each bit of stock off shows. */
        READING,
        /** Held at the mouth or at a shoulder: until the tip has entered, depth stays as it is whatever comes off. */
        NOT_ENTERED,
        /** Seated: what comes off from here on does not show, and neither does too much. */
        BOTTOMED,
        /** No stock makes the tip stop here: it drops past this depth all at once. The stock is that at which it drops. */
        JUMP,
        /** The tip is in less far than it would go untouched: tip, bore or depth was misread. */
        DISAGREES
    }

    /**
     * Checks the values.
     *
     * @param kind what depth can say here
     * @param least the least stock that agrees with the measurement
     * @param most the greatest stock that agrees with it
     */
    public StockLeft {
        Require.given("kind", kind);
        Require.given("least", least);
        Require.given("most", most);
        least.ifPresent(low -> Require.atMost("least", low, "most", most));
    }

    /**
     * Whether a stock agrees with the measurement.
     *
     * @param stock on the diameter
     * @return true if it lies in the interval, ends included
     */
    public boolean holds(Length stock) {
        Require.given("stock", stock);
        return !stock.moreThan(most) && least.map(low -> !stock.lessThan(low)).orElse(true);
    }
}
