package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;

/**
 * What was measured: a head, a shaft and a grip. No step changes it.
 *
 * @param head the head
 * @param shaft the raw shaft
 * @param grip the grip
 */
public record Parts(Head head, Shaft shaft, Grip grip) {

    /**
     * Checks the values.
     *
     * @param head the head
     * @param shaft the raw shaft
     * @param grip the grip
     */
    public Parts {
        Require.given("head", head);
        Require.given("shaft", shaft);
        Require.given("grip", grip);
    }

    /**
     * This one with another value in one place.
     *
     * @param head the head
     * @return a copy that differs in that alone
     */
    public Parts withHead(Head head) {
        return new Parts(head, shaft, grip);
    }

    /**
     * This one with another value in one place.
     *
     * @param shaft the raw shaft
     * @return a copy that differs in that alone
     */
    public Parts withShaft(Shaft shaft) {
        return new Parts(head, shaft, grip);
    }

    /**
     * This one with another value in one place.
     *
     * @param grip the grip
     * @return a copy that differs in that alone
     */
    public Parts withGrip(Grip grip) {
        return new Parts(head, shaft, grip);
    }
}
