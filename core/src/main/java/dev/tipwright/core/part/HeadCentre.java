package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The centre of mass of a head.
 *
 * @param along along the shaft axis from the hosel mouth towards the ground; -500 mm to 500 mm
 * @param off off the axis, at right angles to it; zero to 500 mm
 */
public record HeadCentre(Length along, Length off) {

    /**
     * Checks the values.
     *
     * @param along along the shaft axis from the hosel mouth towards the ground; -500 mm to 500 mm
     * @param off off the axis, at right angles to it; zero to 500 mm
     */
    public HeadCentre {
        Require.within("along", along, -500, 500);
        Require.within("off", off, 0, 500);
    }

    /**
     * This one with another value in one place.
     *
     * @param along along the shaft axis from the hosel mouth towards the ground; -500 mm to 500 mm
     * @return a copy that differs in that alone
     */
    public HeadCentre withAlong(Length along) {
        return new HeadCentre(along, off);
    }

    /**
     * This one with another value in one place.
     *
     * @param off off the axis, at right angles to it; zero to 500 mm
     * @return a copy that differs in that alone
     */
    public HeadCentre withOff(Length off) {
        return new HeadCentre(along, off);
    }
}
