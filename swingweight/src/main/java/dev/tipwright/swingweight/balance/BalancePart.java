package dev.tipwright.swingweight.balance;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * What one part adds to the balance of a club: its mass, and its first moment and inertia about the top of the grip.
 * Material taken off counts with its sign.
 *
 * @param label what it is
 * @param mass its mass; below zero for what was taken off
 * @param moment mass times distance from the top of the grip
 * @param inertia mass times distance squared, summed over it
 */
public record BalancePart(String label, Mass mass, FirstMoment moment, Inertia inertia) {

    /**
     * Checks the values.
     *
     * @param label what it is
     * @param mass its mass; below zero for what was taken off
     * @param moment mass times distance from the top of the grip
     * @param inertia mass times distance squared, summed over it
     */
    public BalancePart {
        Require.label("label", label);
        Require.given("mass", mass);
        Require.given("moment", moment);
        Require.given("inertia", inertia);
    }

    /**
     * A part whose mass is at one place.
     *
     * @param label what it is
     * @param mass its mass
     * @param fromTop its place from the top of the grip
     * @return the part
     */
    public static BalancePart at(String label, Mass mass, Length fromTop) {
        Require.given("mass", mass);
        Require.given("fromTop", fromTop);
        double place = fromTop.millimetres();
        return new BalancePart(
                label, mass, mass.at(fromTop), Inertia.ofGramSquareMillimetres(mass.grams() * place * place));
    }

    /**
     * The moment of this part about a fulcrum.
     *
     * @param fulcrum its distance from the top of the grip
     * @return positive where it pulls the head down
     */
    public FirstMoment about(Length fulcrum) {
        Require.given("fulcrum", fulcrum);
        return moment.minus(mass.at(fulcrum));
    }
}
