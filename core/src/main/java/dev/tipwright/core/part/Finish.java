package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;

/**
 * The paint or clear coat on a shaft. Adhesive holds the shaft only where it is off.
 *
 * @param thickness radial ({@code p})
 * @param density its density
 */
public record Finish(ThicknessProfile thickness, Reading<Density> density) {

    /**
     * Checks the values.
     *
     * @param thickness radial ({@code p})
     * @param density its density
     */
    public Finish {
        Require.given("thickness", thickness);
        Require.given("density", density);
    }

    /** A shaft without finish. */
    public static final Finish NONE =
            new Finish(ThicknessProfile.uniform(Length.ZERO), Reading.unknown("there is none"));

    /**
     * This one with another value in one place.
     *
     * @param thickness radial ({@code p})
     * @return a copy that differs in that alone
     */
    public Finish withThickness(ThicknessProfile thickness) {
        return new Finish(thickness, density);
    }

    /**
     * This one with another value in one place.
     *
     * @param density its density
     * @return a copy that differs in that alone
     */
    public Finish withDensity(Reading<Density> density) {
        return new Finish(thickness, density);
    }
}
