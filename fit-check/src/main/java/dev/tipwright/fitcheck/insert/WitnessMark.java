package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * A stretch over which tip and bore touch, as it shows on both. Where a shoulder meets a shoulder it has no length.
 *
 * @param tipFrom where it begins on the tip, up from its end ({@code z}); zero or more
 * @param tipTo where it ends on the tip
 * @param boreFrom where it begins in the bore, down from the mouth ({@code y}); zero or more
 * @param boreTo where it ends in the bore
 */
public record WitnessMark(Length tipFrom, Length tipTo, Length boreFrom, Length boreTo) {

    /**
     * Checks the values.
     *
     * @param tipFrom where it begins on the tip
     * @param tipTo where it ends on the tip; no lower
     * @param boreFrom where it begins in the bore
     * @param boreTo where it ends in the bore; no higher
     */
    public WitnessMark {
        Require.notNegative("tipFrom", tipFrom);
        Require.given("tipTo", tipTo);
        Require.atMost("tipFrom", tipFrom, "tipTo", tipTo);
        Require.notNegative("boreFrom", boreFrom);
        Require.given("boreTo", boreTo);
        Require.atMost("boreFrom", boreFrom, "boreTo", boreTo);
    }

    /**
     * How long it is.
     *
     * @return the length along the axis
     */
    public Length length() {
        return tipTo.minus(tipFrom);
    }
}
