package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;

/**
 * How far the tip goes into the bore, and what stops it there.
 *
 * @param insertion tip end below the hosel mouth ({@code i}); 0 to 3 m, zero while apart and only then
 * @param stop what stops it; nothing while apart and only then
 */
public record Seat(Length insertion, Stop stop) {

    /**
     * Checks the values.
     *
     * @param insertion tip end below the hosel mouth ({@code i}); 0 to 3 m, zero while apart and only then
     * @param stop what stops it; nothing while apart and only then
     */
    public Seat {
        Require.within("insertion", insertion, 0, 3000);
        Require.given("stop", stop);
        Require.that(
                insertion.equals(Length.ZERO) == (stop == Stop.NOTHING),
                "stop",
                "must be NOTHING just when the insertion is zero",
                stop);
    }

    /** Shaft and head lie apart. */
    public static final Seat APART = new Seat(Length.ZERO, Stop.NOTHING);

    /**
     * Seated on the bottom of a bore.
     *
     * @param bore a blind bore
     * @return the seat, as deep as the bore
     */
    public static Seat onBottomOf(Bore bore) {
        Require.given("bore", bore);
        Require.that(bore.end() != BoreEnd.THROUGH, "bore", "must be blind", bore.end());
        return new Seat(bore.depth(), Stop.BORE_BOTTOM);
    }

    /**
     * This one with another value in one place.
     *
     * @param insertion tip end below the hosel mouth ({@code i}); 0 to 3 m, zero while apart and only then
     * @return a copy that differs in that alone
     */
    public Seat withInsertion(Length insertion) {
        return new Seat(insertion, stop);
    }

    /**
     * This one with another value in one place.
     *
     * @param stop what stops it; nothing while apart and only then
     * @return a copy that differs in that alone
     */
    public Seat withStop(Stop stop) {
        return new Seat(insertion, stop);
    }
}
