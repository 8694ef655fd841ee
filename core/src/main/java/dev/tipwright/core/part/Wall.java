package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;

/**
 * The wall of a shaft, finish included.
 *
 * @param thickness radial, finish included
 * @param density density of the structure under the finish
 */
public record Wall(ThicknessProfile thickness, Reading<Density> density) {

    /**
     * Checks the values.
     *
     * @param thickness radial, finish included
     * @param density density of the structure under the finish
     */
    public Wall {
        Require.given("thickness", thickness);
        Require.given("density", density);
    }

    /**
     * This one with another value in one place.
     *
     * @param thickness radial, finish included
     * @return a copy that differs in that alone
     */
    public Wall withThickness(ThicknessProfile thickness) {
        return new Wall(thickness, density);
    }

    /**
     * This one with another value in one place.
     *
     * @param density density of the structure under the finish
     * @return a copy that differs in that alone
     */
    public Wall withDensity(Reading<Density> density) {
        return new Wall(thickness, density);
    }
}
