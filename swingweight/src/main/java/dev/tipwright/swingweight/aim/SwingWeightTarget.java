package dev.tipwright.swingweight.aim;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.swingweight.scale.SwingWeight;

/**
 * The swing weight one club is to have, and how near is near enough.
 *
 * @param club label of the club
 * @param wanted what the scale is to read
 * @param within points either way that still do; zero or more
 */
public record SwingWeightTarget(String club, SwingWeight wanted, double within) {

    /**
     * Checks the values.
     *
     * @param club label of the club
     * @param wanted what the scale is to read
     * @param within points either way that still do; zero or more
     */
    public SwingWeightTarget {
        Require.label("club", club);
        Require.given("wanted", wanted);
        Require.that(Double.isFinite(within) && within >= 0, "within", "must be zero or more points", within);
    }

    /**
     * Whether a reading is near enough.
     *
     * @param reading on the same scale
     * @return true if it is within the tolerance
     */
    public boolean metBy(SwingWeight reading) {
        Require.given("reading", reading);
        return Math.abs(reading.over(wanted)) <= within;
    }
}
