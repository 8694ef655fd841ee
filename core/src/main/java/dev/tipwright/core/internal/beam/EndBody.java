package dev.tipwright.core.internal.beam;

/**
 * A rigid body at the free end of a beam.
 *
 * @param massKg its mass in kilograms, 0 or more
 * @param inertiaKgM2 its moment of inertia about its centre of mass, for turning with the bending, in kilogram metres
 *     squared, 0 or more
 * @param offsetM how far its centre of mass lies beyond the end of the beam, along the beam, in metres; negative when it lies
 *     short of the end
 */
public record EndBody(double massKg, double inertiaKgM2, double offsetM) {

    /** Nothing at the end. */
    public static final EndBody NONE = new EndBody(0, 0, 0);

    /**
     * A rigid body.
     *
     * @param massKg its mass in kilograms
     * @param inertiaKgM2 its moment of inertia about its centre of mass, in kilogram metres squared
     * @param offsetM how far its centre of mass lies beyond the end of the beam, in metres
     * @throws IllegalArgumentException if the mass or the inertia is negative, or any of the three is not finite
     */
    public EndBody {
        // Each condition is written so that NaN fails too.
        if (!(massKg >= 0 && massKg < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("massKg must be 0 or more and finite, was " + massKg + " kg");
        }
        if (!(inertiaKgM2 >= 0 && inertiaKgM2 < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "inertiaKgM2 must be 0 or more and finite, was " + inertiaKgM2 + " kg m2");
        }
        if (!Double.isFinite(offsetM)) {
            throw new IllegalArgumentException("offsetM must be finite, was " + offsetM + " m");
        }
    }

    /**
     * A mass without extent, right at the end of the beam.
     *
     * @param massKg its mass in kilograms, 0 or more
     * @return the body
     * @throws IllegalArgumentException if the mass is negative or not finite
     */
    public static EndBody point(double massKg) {
        return new EndBody(massKg, 0, 0);
    }
}
