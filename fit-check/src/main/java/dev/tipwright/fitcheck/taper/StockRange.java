package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * Stock still to come off, as far as it is known, on the diameter.
 *
 * @param least the least it can be; below zero too much may be off
 * @param most the greatest it can be; below zero too much is off
 */
public record StockRange(Length least, Length most) {

    /**
     * Checks the values.
     *
     * @param least the least it can be
     * @param most the greatest it can be
     */
    public StockRange {
        Require.given("least", least);
        Require.given("most", most);
        Require.atMost("least", least, "most", most);
    }

    /**
     * A stock that is known.
     *
     * @param stock on the diameter
     * @return a range of no width
     */
    public static StockRange exactly(Length stock) {
        Require.given("stock", stock);
        return new StockRange(stock, stock);
    }
}
