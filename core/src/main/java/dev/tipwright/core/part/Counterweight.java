package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A weight in the butt.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param depth its centre of mass from the top of the grip; zero or more
 */
public record Counterweight(String label, Mass mass, Length depth) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param depth its centre of mass from the top of the grip; zero or more
     */
    public Counterweight {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.notNegative("depth", depth);
    }

    @Override
    public Place place() {
        return new Place(Anchor.GRIP_TOP, depth);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public Counterweight withLabel(String label) {
        return new Counterweight(label, mass, depth);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public Counterweight withMass(Mass mass) {
        return new Counterweight(label, mass, depth);
    }

    /**
     * This one with another value in one place.
     *
     * @param depth its centre of mass from the top of the grip; zero or more
     * @return a copy that differs in that alone
     */
    public Counterweight withDepth(Length depth) {
        return new Counterweight(label, mass, depth);
    }
}
