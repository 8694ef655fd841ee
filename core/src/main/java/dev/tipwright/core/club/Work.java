package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Attachments;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * What is to be done to the parts. {@link #NONE} is as true of untouched parts as any other value is of worked ones,
 * so nothing here is optional.
 *
 * <pre>{@code
 * Parts parts = Samples.build().parts();   // a raw shaft of 39 in
 * Work work = Work.NONE
 *         .withTipTrim(Length.parse("1/2 in"))
 *         .withButtTrim(Length.parse("2 1/8 in"))
 *         .withSeat(Seat.onBottomOf(parts.head().bore()));
 * new Build(parts, work).cutLength().inches();   // = 36.375
 * }</pre>
 *
 * @param tipTrim cut off the tip ({@code T}); zero or more
 * @param buttTrim cut off the butt ({@code U}); zero or more
 * @param tip what is done to the outside of the tip
 * @param seat how far the tip goes in, and what stops it
 * @param attached what is put on or in
 */
public record Work(Length tipTrim, Length buttTrim, TipWork tip, Seat seat, List<Attachment> attached) {

    /**
     * Checks the values.
     *
     * @param tipTrim cut off the tip ({@code T}); zero or more
     * @param buttTrim cut off the butt ({@code U}); zero or more
     * @param tip what is done to the outside of the tip
     * @param seat how far the tip goes in, and what stops it
     * @param attached what is put on or in
     */
    public Work {
        Require.notNegative("tipTrim", tipTrim);
        Require.notNegative("buttTrim", buttTrim);
        Require.given("tip", tip);
        Require.given("seat", seat);
        attached = Attachments.of(attached);
    }

    /** Nothing done: parts as they lie on the bench. */
    public static final Work NONE = new Work(Length.ZERO, Length.ZERO, TipWork.NONE, Seat.APART, List.of());

    /**
     * This work with one thing more put on or in.
     *
     * @param attachment what is added
     * @return a copy with it at the end of the list
     */
    public Work plus(Attachment attachment) {
        return withAttached(Attachments.of(attached).plus(attachment));
    }

    /**
     * This one with another value in one place.
     *
     * @param tipTrim cut off the tip ({@code T}); zero or more
     * @return a copy that differs in that alone
     */
    public Work withTipTrim(Length tipTrim) {
        return new Work(tipTrim, buttTrim, tip, seat, attached);
    }

    /**
     * This one with another value in one place.
     *
     * @param buttTrim cut off the butt ({@code U}); zero or more
     * @return a copy that differs in that alone
     */
    public Work withButtTrim(Length buttTrim) {
        return new Work(tipTrim, buttTrim, tip, seat, attached);
    }

    /**
     * This one with another value in one place.
     *
     * @param tip what is done to the outside of the tip
     * @return a copy that differs in that alone
     */
    public Work withTip(TipWork tip) {
        return new Work(tipTrim, buttTrim, tip, seat, attached);
    }

    /**
     * This one with another value in one place.
     *
     * @param seat how far the tip goes in, and what stops it
     * @return a copy that differs in that alone
     */
    public Work withSeat(Seat seat) {
        return new Work(tipTrim, buttTrim, tip, seat, attached);
    }

    /**
     * This one with another value in one place.
     *
     * @param attached what is put on or in
     * @return a copy that differs in that alone
     */
    public Work withAttached(List<Attachment> attached) {
        return new Work(tipTrim, buttTrim, tip, seat, attached);
    }
}
