package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Mass;

/**
 * Anything else with a mass and a place.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param place where its mass is centred
 */
public record OtherMass(String label, Mass mass, Place place) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param place where its mass is centred
     */
    public OtherMass {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.given("place", place);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public OtherMass withLabel(String label) {
        return new OtherMass(label, mass, place);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public OtherMass withMass(Mass mass) {
        return new OtherMass(label, mass, place);
    }

    /**
     * This one with another value in one place.
     *
     * @param place where its mass is centred
     * @return a copy that differs in that alone
     */
    public OtherMass withPlace(Place place) {
        return new OtherMass(label, mass, place);
    }
}
