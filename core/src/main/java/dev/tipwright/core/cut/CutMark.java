package dev.tipwright.core.cut;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * A mark at which one end of a raw shaft is cut off. The saw runs on the side of the waste and touches the mark.
 *
 * @param waste the end that comes off
 * @param fromTip the mark, measured from the raw tip; zero or more
 * @param fromButt the mark, measured from the raw butt; zero or more
 * @param kerf width of the saw cut ({@code k}); zero or more
 */
public record CutMark(ShaftEnd waste, Length fromTip, Length fromButt, Length kerf) {

    /**
     * Checks the values.
     *
     * @param waste the end that comes off
     * @param fromTip the mark, measured from the raw tip; zero or more
     * @param fromButt the mark, measured from the raw butt; zero or more
     * @param kerf width of the saw cut ({@code k}); zero or more
     */
    public CutMark {
        Require.given("waste", waste);
        Require.notNegative("fromTip", fromTip);
        Require.notNegative("fromButt", fromButt);
        Require.notNegative("kerf", kerf);
    }

    /**
     * What comes off at this mark, kerf and all.
     *
     * @return the distance from the mark to the end that is waste
     */
    public Length trim() {
        return waste == ShaftEnd.TIP ? fromTip : fromButt;
    }

    /**
     * Whether the waste is ground off, because it is no wider than the kerf and leaves nothing to hold.
     *
     * @return true if there is waste, and no more of it than a kerf
     */
    public boolean ground() {
        return trim().nanometres() > 0 && !trim().moreThan(kerf);
    }

    /**
     * The piece that falls off.
     *
     * @return trim less kerf; zero where all is dust
     */
    public Length offcut() {
        return trim().minus(kerf).max(Length.ZERO);
    }

    /**
     * What turns to dust: the kerf, or all of a trim that is smaller.
     *
     * @return trim less offcut
     */
    public Length dust() {
        return trim().minus(offcut());
    }
}
