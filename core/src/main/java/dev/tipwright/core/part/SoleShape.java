package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The sole of a head as the 60 degree plane of the Rules meets it.
 *
 * @param lowest from the shaft axis, at the ground, to the lowest point of the sole, towards the toe ({@code u}); -300 mm to 300 mm
 * @param radius radius of the sole from heel to toe ({@code r}); zero or more, at most 3 m
 */
public record SoleShape(Length lowest, Length radius) {

    /**
     * Checks the values.
     *
     * @param lowest from the shaft axis, at the ground, to the lowest point of the sole, towards the toe ({@code
     *     u})
     * @param radius radius of the sole from heel to toe ({@code r}); zero or more, at most 3 m
     */
    public SoleShape {
        Require.within("lowest", lowest, -300, 300);
        Require.within("radius", radius, 0, 3000);
    }

    /**
     * This one with another value in one place.
     *
     * @param lowest from the shaft axis, at the ground, to the lowest point of the sole, towards the toe ({@code u}); -300 mm to 300 mm
     * @return a copy that differs in that alone
     */
    public SoleShape withLowest(Length lowest) {
        return new SoleShape(lowest, radius);
    }

    /**
     * This one with another value in one place.
     *
     * @param radius radius of the sole from heel to toe ({@code r}); zero or more, at most 3 m
     * @return a copy that differs in that alone
     */
    public SoleShape withRadius(Length radius) {
        return new SoleShape(lowest, radius);
    }
}
