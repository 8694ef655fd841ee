package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * What a raw shaft weighs and where it balances.
 *
 * @param mass as weighed, raw; above zero
 * @param balance balance point from the raw tip; above zero
 * @param along mass along the shaft where it has been found out; unknown means it is taken from mass and balance
 */
public record ShaftMass(Mass mass, Length balance, Reading<LineDensityProfile> along) {

    /**
     * Checks the values.
     *
     * @param mass as weighed, raw; above zero
     * @param balance balance point from the raw tip; above zero
     * @param along mass along the shaft where it has been found out; unknown means it is taken from mass and
     *     balance
     */
    public ShaftMass {
        Require.positive("mass", mass);
        Require.positive("balance", balance);
        Require.given("along", along);
    }

    /**
     * A raw shaft that was weighed and balanced.
     *
     * @param mass as weighed; above zero
     * @param balance balance point from the raw tip; above zero
     * @return the mass, its spread to be taken from the balance point
     */
    public static ShaftMass of(Mass mass, Length balance) {
        return new ShaftMass(mass, balance, Reading.unknown("weigh the offcuts"));
    }

    /**
     * This one with another value in one place.
     *
     * @param mass as weighed, raw; above zero
     * @return a copy that differs in that alone
     */
    public ShaftMass withMass(Mass mass) {
        return new ShaftMass(mass, balance, along);
    }

    /**
     * This one with another value in one place.
     *
     * @param balance balance point from the raw tip; above zero
     * @return a copy that differs in that alone
     */
    public ShaftMass withBalance(Length balance) {
        return new ShaftMass(mass, balance, along);
    }

    /**
     * This one with another value in one place.
     *
     * @param along mass along the shaft where it has been found out; unknown means it is taken from mass and balance
     * @return a copy that differs in that alone
     */
    public ShaftMass withAlong(Reading<LineDensityProfile> along) {
        return new ShaftMass(mass, balance, along);
    }
}
