package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * The tape under a grip.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param centre its centre of mass from the top of the grip; zero or more
 */
public record GripTape(String label, Mass mass, Length centre) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param centre its centre of mass from the top of the grip; zero or more
     */
    public GripTape {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.notNegative("centre", centre);
    }

    @Override
    public Place place() {
        return new Place(Anchor.GRIP_TOP, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public GripTape withLabel(String label) {
        return new GripTape(label, mass, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public GripTape withMass(Mass mass) {
        return new GripTape(label, mass, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre its centre of mass from the top of the grip; zero or more
     * @return a copy that differs in that alone
     */
    public GripTape withCentre(Length centre) {
        return new GripTape(label, mass, centre);
    }
}
