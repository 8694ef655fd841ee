package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;

/**
 * What a head weighs, where its mass is centred and how it is spread.
 *
 * @param mass as weighed, clean and bare; above zero
 * @param centre its centre of mass
 * @param inertia its own inertia about its centre of mass, for an axis square to the shaft
 */
public record HeadMass(Mass mass, Reading<HeadCentre> centre, Reading<Inertia> inertia) {

    /**
     * Checks the values.
     *
     * @param mass as weighed, clean and bare; above zero
     * @param centre its centre of mass
     * @param inertia its own inertia about its centre of mass, for an axis square to the shaft
     */
    public HeadMass {
        Require.positive("mass", mass);
        Require.given("centre", centre);
        Require.given("inertia", inertia);
    }

    private static final Source POINT = Source.assumption("head taken as a point; its own inertia was not measured");

    /**
     * A head of which only the mass is known.
     *
     * @param mass as weighed; above zero
     * @return mass alone, centre and inertia unknown
     */
    public static HeadMass of(Mass mass) {
        return new HeadMass(
                mass,
                Reading.unknown("balance the head on a dowel in its bore"),
                Reading.unknown("the head's maker, or a pendulum"));
    }

    /**
     * The head's own inertia as it was read; where it is unknown, none, as of a point, as an assumption.
     *
     * @return measured or assumed
     */
    public Reading<Inertia> inertiaOrNone() {
        return inertia instanceof Reading.Unknown<Inertia> ? Reading.assumed(Inertia.ZERO, POINT) : inertia;
    }

    /**
     * This one with another value in one place.
     *
     * @param mass as weighed, clean and bare; above zero
     * @return a copy that differs in that alone
     */
    public HeadMass withMass(Mass mass) {
        return new HeadMass(mass, centre, inertia);
    }

    /**
     * This one with another value in one place.
     *
     * @param centre its centre of mass
     * @return a copy that differs in that alone
     */
    public HeadMass withCentre(Reading<HeadCentre> centre) {
        return new HeadMass(mass, centre, inertia);
    }

    /**
     * This one with another value in one place.
     *
     * @param inertia its own inertia about its centre of mass, for an axis square to the shaft
     * @return a copy that differs in that alone
     */
    public HeadMass withInertia(Reading<Inertia> inertia) {
        return new HeadMass(mass, centre, inertia);
    }
}
