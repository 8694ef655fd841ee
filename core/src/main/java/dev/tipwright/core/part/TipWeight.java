package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A weight in the tip: a stem inside the shaft, and perhaps a flange under its end.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param stem diameter of the stem; above zero
 * @param flange thickness of the flange between tip and bore bottom; zero or more, zero if it has none
 * @param centre its centre of mass above the end of the tip; -500 mm to 500 mm
 */
public record TipWeight(String label, Mass mass, Length stem, Length flange, Length centre) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param stem diameter of the stem; above zero
     * @param flange thickness of the flange between tip and bore bottom; zero or more, zero if it has none
     * @param centre its centre of mass above the end of the tip; -500 mm to 500 mm
     */
    public TipWeight {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.positive("stem", stem);
        Require.notNegative("flange", flange);
        Require.within("centre", centre, -500, 500);
    }

    @Override
    public Place place() {
        return new Place(Anchor.TIP_END, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public TipWeight withLabel(String label) {
        return new TipWeight(label, mass, stem, flange, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public TipWeight withMass(Mass mass) {
        return new TipWeight(label, mass, stem, flange, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param stem diameter of the stem; above zero
     * @return a copy that differs in that alone
     */
    public TipWeight withStem(Length stem) {
        return new TipWeight(label, mass, stem, flange, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param flange thickness of the flange between tip and bore bottom; zero or more, zero if it has none
     * @return a copy that differs in that alone
     */
    public TipWeight withFlange(Length flange) {
        return new TipWeight(label, mass, stem, flange, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre its centre of mass above the end of the tip; -500 mm to 500 mm
     * @return a copy that differs in that alone
     */
    public TipWeight withCentre(Length centre) {
        return new TipWeight(label, mass, stem, flange, centre);
    }
}
