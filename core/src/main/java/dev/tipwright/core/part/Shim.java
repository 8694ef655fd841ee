package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A shim or sleeve between tip and bore, from the end of the tip up.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param wall its radial thickness; above zero
 * @param length how far up the tip it goes; above zero
 */
public record Shim(String label, Mass mass, Length wall, Length length) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param wall its radial thickness; above zero
     * @param length how far up the tip it goes; above zero
     */
    public Shim {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.positive("wall", wall);
        Require.positive("length", length);
    }

    @Override
    public Place place() {
        return new Place(Anchor.TIP_END, length.half());
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public Shim withLabel(String label) {
        return new Shim(label, mass, wall, length);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public Shim withMass(Mass mass) {
        return new Shim(label, mass, wall, length);
    }

    /**
     * This one with another value in one place.
     *
     * @param wall its radial thickness; above zero
     * @return a copy that differs in that alone
     */
    public Shim withWall(Length wall) {
        return new Shim(label, mass, wall, length);
    }

    /**
     * This one with another value in one place.
     *
     * @param length how far up the tip it goes; above zero
     * @return a copy that differs in that alone
     */
    public Shim withLength(Length length) {
        return new Shim(label, mass, wall, length);
    }
}
