package dev.tipwright.core.grip;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * Layers of tape under a grip.
 *
 * @param count how many, one over the other; 0 to 100
 * @param thickness of one, radial; zero or more, at most 10 mm
 * @param mass of one; zero or more
 */
public record TapeLayers(int count, Length thickness, Mass mass) {

    /**
     * Checks the values.
     *
     * @param count how many, one over the other; 0 to 100
     * @param thickness of one, radial; zero or more, at most 10 mm
     * @param mass of one; zero or more
     */
    public TapeLayers {
        Require.that(count >= 0 && count <= 100, "count", "must be from 0 to 100", count);
        Require.within("thickness", thickness, 0, 10);
        Require.notNegative("mass", mass);
    }

    /** No tape: a grip that is glued or blown on. */
    public static final TapeLayers NONE = new TapeLayers(0, Length.ZERO, Mass.ZERO);

    /**
     * What they add to a diameter.
     *
     * @return twice the thickness of all layers
     */
    public Length onDiameter() {
        return thickness.times(2L * count);
    }

    /**
     * What they weigh.
     *
     * @return the mass of all layers
     */
    public Mass total() {
        return mass.times(count);
    }
}
