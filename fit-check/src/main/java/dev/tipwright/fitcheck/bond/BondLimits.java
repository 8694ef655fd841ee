package dev.tipwright.fitcheck.bond;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;

/**
 * The caller's limits for a bond; none is the library's. Lap-shear results compare adhesives and are not design values (ASTM D4896).
 *
 * @param shear allowable shear, for the load it is held against
 * @param leastLength least bonded length
 * @param thickestLine thickest bond line, radial
 */
public record BondLimits(Reading<Stress> shear, Reading<Length> leastLength, Reading<Length> thickestLine) {

    /** Nothing is known. */
    public static final BondLimits UNKNOWN = new BondLimits(
            Reading.unknown("the adhesive's maker"),
            Reading.unknown("the makers of head and adhesive"),
            Reading.unknown("the adhesive's maker"));

    /**
     * Checks the values.
     *
     * @param shear allowable shear
     * @param leastLength least bonded length
     * @param thickestLine thickest bond line, radial
     */
    public BondLimits {
        Require.given("shear", shear);
        Require.given("leastLength", leastLength);
        Require.given("thickestLine", thickestLine);
    }
}
