package dev.tipwright.core.profile;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * A gauge pin and how far it dropped into a bore: the bore is that wide at that depth, and nowhere narrower above it.
 *
 * <pre>{@code
 * Bore bore = Bore.ofPins(
 *         List.of(),
 *         List.of(
 *                 new GaugePin(Length.parse(".363 in"), Length.ZERO),
 *                 new GaugePin(Length.parse(".359 in"), Length.parse("5/8 in")),
 *                 new GaugePin(Length.parse(".355 in"), Length.parse("1 1/4 in"))),
 *         BoreEnd.FLAT);
 * bore.depth().inches();    // = 1.25
 * bore.reading();           // = BY_PINS
 * }</pre>
 *
 * @param diameter diameter of the pin; above zero, at most 100 mm
 * @param drop depth its end reached below the hosel mouth; 0 to 3 m
 */
public record GaugePin(Length diameter, Length drop) {

    /**
     * Checks the values.
     *
     * @param diameter diameter of the pin; above zero, at most 100 mm
     * @param drop depth its end reached below the hosel mouth; 0 to 3 m
     */
    public GaugePin {
        Require.someUpTo("diameter", diameter, 100);
        Require.within("drop", drop, 0, 3000);
    }

    /**
     * This one with another value in one place.
     *
     * @param diameter diameter of the pin; above zero, at most 100 mm
     * @return a copy that differs in that alone
     */
    public GaugePin withDiameter(Length diameter) {
        return new GaugePin(diameter, drop);
    }

    /**
     * This one with another value in one place.
     *
     * @param drop depth its end reached below the hosel mouth; 0 to 3 m
     * @return a copy that differs in that alone
     */
    public GaugePin withDrop(Length drop) {
        return new GaugePin(diameter, drop);
    }
}
