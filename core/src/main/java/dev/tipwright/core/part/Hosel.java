package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;

/**
 * The outside of the hosel and what it is made of: what is left when its bore is opened.
 *
 * @param outside outside diameter at the mouth; above zero, at most 100 mm
 * @param metal density of its metal
 */
public record Hosel(Length outside, Reading<Density> metal) {

    /**
     * Checks the values.
     *
     * @param outside outside diameter at the mouth; above zero, at most 100 mm
     * @param metal density of its metal
     */
    public Hosel {
        Require.someUpTo("outside", outside, 100);
        Require.given("metal", metal);
    }

    /**
     * A hosel of which only the outside is known.
     *
     * @param outside outside diameter at the mouth
     * @return the hosel, metal unknown
     */
    public static Hosel of(Length outside) {
        return new Hosel(outside, Reading.unknown("the head's maker"));
    }

    /**
     * This one with another value in one place.
     *
     * @param outside outside diameter at the mouth; above zero, at most 100 mm
     * @return a copy that differs in that alone
     */
    public Hosel withOutside(Length outside) {
        return new Hosel(outside, metal);
    }

    /**
     * This one with another value in one place.
     *
     * @param metal density of its metal
     * @return a copy that differs in that alone
     */
    public Hosel withMetal(Reading<Density> metal) {
        return new Hosel(outside, metal);
    }
}
