package dev.tipwright.core.length;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The playing length one club is to have, and what it is measured by.
 *
 * @param club label of the club
 * @param length the length; above zero, at most 3 m
 * @param measure what it is measured by
 */
public record LengthTarget(String club, Length length, LengthMeasure measure) {

    /**
     * Checks the values.
     *
     * @param club label of the club
     * @param length the length; above zero, at most 3 m
     * @param measure what it is measured by
     */
    public LengthTarget {
        Require.label("club", club);
        Require.someUpTo("length", length, 3000);
        Require.given("measure", measure);
    }

    /**
     * This one with another value in one place.
     *
     * @param club label of the club
     * @return a copy that differs in that alone
     */
    public LengthTarget withClub(String club) {
        return new LengthTarget(club, length, measure);
    }

    /**
     * This one with another value in one place.
     *
     * @param length the length; above zero, at most 3 m
     * @return a copy that differs in that alone
     */
    public LengthTarget withLength(Length length) {
        return new LengthTarget(club, length, measure);
    }

    /**
     * This one with another value in one place.
     *
     * @param measure what it is measured by
     * @return a copy that differs in that alone
     */
    public LengthTarget withMeasure(LengthMeasure measure) {
        return new LengthTarget(club, length, measure);
    }
}
