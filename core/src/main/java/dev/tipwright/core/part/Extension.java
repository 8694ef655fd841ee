package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * An extension glued into the butt; it lengthens the shaft.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param added length it adds above the cut butt; above zero
 * @param centre its centre of mass from the top of the grip; zero or more
 */
public record Extension(String label, Mass mass, Length added, Length centre) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param added length it adds above the cut butt; above zero
     * @param centre its centre of mass from the top of the grip; zero or more
     */
    public Extension {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.positive("added", added);
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
    public Extension withLabel(String label) {
        return new Extension(label, mass, added, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public Extension withMass(Mass mass) {
        return new Extension(label, mass, added, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param added length it adds above the cut butt; above zero
     * @return a copy that differs in that alone
     */
    public Extension withAdded(Length added) {
        return new Extension(label, mass, added, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre its centre of mass from the top of the grip; zero or more
     * @return a copy that differs in that alone
     */
    public Extension withCentre(Length centre) {
        return new Extension(label, mass, added, centre);
    }
}
