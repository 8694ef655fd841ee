package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * A ferrule, seated on the hosel mouth.
 *
 * @param label how the bench calls it
 * @param mass what it weighs; above zero
 * @param bore its inner diameter; above zero
 * @param length its length; above zero
 * @param centre its centre of mass above the hosel mouth; zero to its length
 */
public record Ferrule(String label, Mass mass, Length bore, Length length, Length centre) implements Attachment {

    /**
     * Checks the values.
     *
     * @param label how the bench calls it
     * @param mass what it weighs; above zero
     * @param bore its inner diameter; above zero
     * @param length its length; above zero
     * @param centre its centre of mass above the hosel mouth; zero to its length
     */
    public Ferrule {
        Require.label("label", label);
        Require.positive("mass", mass);
        Require.positive("bore", bore);
        Require.positive("length", length);
        Require.atMost("centre", Require.notNegative("centre", centre), "length", length);
    }

    @Override
    public Place place() {
        return new Place(Anchor.HOSEL_MOUTH, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls it
     * @return a copy that differs in that alone
     */
    public Ferrule withLabel(String label) {
        return new Ferrule(label, mass, bore, length, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass what it weighs; above zero
     * @return a copy that differs in that alone
     */
    public Ferrule withMass(Mass mass) {
        return new Ferrule(label, mass, bore, length, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param bore its inner diameter; above zero
     * @return a copy that differs in that alone
     */
    public Ferrule withBore(Length bore) {
        return new Ferrule(label, mass, bore, length, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param length its length; above zero
     * @return a copy that differs in that alone
     */
    public Ferrule withLength(Length length) {
        return new Ferrule(label, mass, bore, length, centre);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre its centre of mass above the hosel mouth; zero to its length
     * @return a copy that differs in that alone
     */
    public Ferrule withCentre(Length centre) {
        return new Ferrule(label, mass, bore, length, centre);
    }
}
