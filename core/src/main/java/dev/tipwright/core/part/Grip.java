package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A grip: its mass, its length, and how thick its cap is.
 *
 * <pre>{@code
 * Grip grip = new Grip(
 *         "grip", Mass.parse("50 g"), Length.parse("1/8 in"), Length.parse("10 1/2 in"), Length.parse("4.4 in"),
 *         Reading.measured(new GripSize(Length.parse(".600 in"), Length.parse("1.050 in"))));
 * grip.withMass(Mass.parse("52 g")).mass();   // = 52 g
 * }</pre>
 *
 * @param label how the bench calls it
 * @param mass as weighed; above zero
 * @param cap thickness of the cap over the butt ({@code g}); zero or more
 * @param length from its top to its mouth; above zero
 * @param centre centre of mass from its top; above zero, at most its length
 * @param size its size off the shaft
 */
public record Grip(String label, Mass mass, Length cap, Length length, Length centre, Reading<GripSize> size) {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass as weighed; above zero
     * @param cap thickness of the cap over the butt ({@code g}); zero or more
     * @param length from its top to its mouth; above zero
     * @param centre centre of mass from its top; above zero, at most its length
     * @param size its size off the shaft
     */
    public Grip {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.notNegative("cap", cap);
        Require.positive("length", length);
        Require.atMost("centre", Require.positive("centre", centre), "length", length);
        Require.given("size", size);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public Grip withLabel(String label) {
        return new Grip(label, mass, cap, length, centre, size);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass as weighed; above zero
     * @return a copy that differs in that alone
     */
    public Grip withMass(Mass mass) {
        return new Grip(label, mass, cap, length, centre, size);
    }

    /**
     * This one with another value in one place.
     *
     * @param cap thickness of the cap over the butt ({@code g}); zero or more
     * @return a copy that differs in that alone
     */
    public Grip withCap(Length cap) {
        return new Grip(label, mass, cap, length, centre, size);
    }

    /**
     * This one with another value in one place.
     *
     * @param length from its top to its mouth; above zero
     * @return a copy that differs in that alone
     */
    public Grip withLength(Length length) {
        return new Grip(label, mass, cap, length, centre, size);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre centre of mass from its top; above zero, at most its length
     * @return a copy that differs in that alone
     */
    public Grip withCentre(Length centre) {
        return new Grip(label, mass, cap, length, centre, size);
    }

    /**
     * This one with another value in one place.
     *
     * @param size its size off the shaft
     * @return a copy that differs in that alone
     */
    public Grip withSize(Reading<GripSize> size) {
        return new Grip(label, mass, cap, length, centre, size);
    }
}
