package dev.tipwright.core.flex;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.quantity.Frequency;

/**
 * A frequency timed on a raw shaft beside the one its stiffness gives under the same clamp and mass.
 *
 * @param timed what was timed
 * @param predicted what the stiffness gives; above zero
 */
public record ShapeCheck(ShaftFlex.Timed timed, Frequency predicted) {

    /**
     * Checks the values.
     *
     * @param timed what was timed
     * @param predicted what the stiffness gives; above zero
     */
    public ShapeCheck {
        Require.given("timed", timed);
        Require.given("predicted", predicted);
        Require.that(predicted.perMinute() > 0, "predicted", "must be above zero", predicted);
    }

    /**
     * How far the timing is from what the stiffness gives.
     *
     * @return timed less predicted
     */
    public Frequency residual() {
        return timed.frequency().minus(predicted);
    }
}
