package dev.tipwright.core.uncertainty;

import dev.tipwright.core.internal.arg.Require;

/**
 * One uncertain input of a club: how far it may be off, and what it moves.
 *
 * @param input the error, about zero, in the unit of the nudge
 * @param nudge what it moves
 */
public record BuildInput(Input input, Nudge nudge) {

    /**
     * Checks the values.
     *
     * @param input the error, about zero, in the unit of the nudge
     * @param nudge what it moves
     * @throws IllegalArgumentException if the estimate of the error is not zero: the club already holds the value
     */
    public BuildInput {
        Require.given("input", input);
        Require.given("nudge", nudge);
        Require.that(input.estimate() == 0, "input", "must be an error about 0", input);
    }
}
