package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * The adhesive in a joint, taken to be centred halfway down the insertion.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 */
public record Adhesive(String label, Mass mass) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     */
    public Adhesive {
        Require.label("label", label);
        Require.positive("mass", mass);
    }

    @Override
    public Place place() {
        return new Place(Anchor.MID_INSERTION, Length.ZERO);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public Adhesive withLabel(String label) {
        return new Adhesive(label, mass);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public Adhesive withMass(Mass mass) {
        return new Adhesive(label, mass);
    }
}
