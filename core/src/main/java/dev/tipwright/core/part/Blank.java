package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * One of the raw blanks a shaft model comes in: for the long, the middle or the short clubs of a set.
 *
 * @param label as the trim chart calls it
 * @param parallelTip how far up from the raw tip it is parallel; 0 to 3 m, zero for a taper tip
 * @param material what it is made of
 */
public record Blank(String label, Length parallelTip, ShaftMaterial material) {

    /**
     * Checks the values.
     *
     * @param label as the trim chart calls it
     * @param parallelTip how far up from the raw tip it is parallel; 0 to 3 m, zero for a taper tip
     * @param material what it is made of
     */
    public Blank {
        Require.label("label", label);
        Require.within("parallelTip", parallelTip, 0, 3000);
        Require.given("material", material);
    }

    /**
     * This one with another value in one place.
     *
     * @param label as the trim chart calls it
     * @return a copy that differs in that alone
     */
    public Blank withLabel(String label) {
        return new Blank(label, parallelTip, material);
    }

    /**
     * This one with another value in one place.
     *
     * @param parallelTip how far up from the raw tip it is parallel; 0 to 3 m, zero for a taper tip
     * @return a copy that differs in that alone
     */
    public Blank withParallelTip(Length parallelTip) {
        return new Blank(label, parallelTip, material);
    }

    /**
     * This one with another value in one place.
     *
     * @param material what it is made of
     * @return a copy that differs in that alone
     */
    public Blank withMaterial(ShaftMaterial material) {
        return new Blank(label, parallelTip, material);
    }
}
