package dev.tipwright.fitcheck.set;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;

/**
 * A tip and the bore it goes to.
 *
 * @param tip label of the tip
 * @param bore label of the bore
 * @param structure structure that comes off the tip; zero or more
 * @param clearance mean clearance of the finished tip, on the diameter
 */
public record FittedPair(String tip, String bore, Volume structure, Length clearance) {

    /**
     * Checks the values.
     *
     * @param tip label of the tip
     * @param bore label of the bore
     * @param structure structure that comes off the tip
     * @param clearance mean clearance of the finished tip
     */
    public FittedPair {
        Require.label("tip", tip);
        Require.label("bore", bore);
        Require.given("structure", structure);
        Require.that(structure.cubicMillimetres() >= 0, "structure", "must not be negative", structure);
        Require.given("clearance", clearance);
    }
}
