package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * Where the centre of mass of a part lies, counted from something that does not move when it is fitted.
 *
 * @param anchor what it is counted from
 * @param offset how far, in the sense the anchor says; -3 m to 3 m
 */
public record Place(Anchor anchor, Length offset) {

    /**
     * Checks the values.
     *
     * @param anchor what it is counted from
     * @param offset how far, in the sense the anchor says; -3 m to 3 m
     */
    public Place {
        Require.given("anchor", anchor);
        Require.within("offset", offset, -3000, 3000);
    }

    /**
     * This one with another value in one place.
     *
     * @param anchor what it is counted from
     * @return a copy that differs in that alone
     */
    public Place withAnchor(Anchor anchor) {
        return new Place(anchor, offset);
    }

    /**
     * This one with another value in one place.
     *
     * @param offset how far, in the sense the anchor says; -3 m to 3 m
     * @return a copy that differs in that alone
     */
    public Place withOffset(Length offset) {
        return new Place(anchor, offset);
    }
}
