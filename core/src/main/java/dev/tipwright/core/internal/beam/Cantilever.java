package dev.tipwright.core.internal.beam;

import java.util.Objects;

/** A beam clamped at one end, with a rigid body on the other. */
public final class Cantilever {

    /** How long a panel may be, as a part of the beam; the tests hold the frequency to 1e-10 with it. */
    private static final double LONGEST_PANEL = 0.125;

    private final double lengthM;
    private final Panels panels;
    private final EndBody body;

    private Cantilever(double lengthM, Panels panels, EndBody body) {
        this.lengthM = lengthM;
        this.panels = panels;
        this.body = body;
    }

    /**
     * A beam from its clamp at 0 to its free end.
     *
     * @param stiffnessNm2 bending stiffness {@code EI} in newton square metres from station 0 to the end, positive throughout
     * @param densityKgPerM line density in kilograms per metre over the same length, 0 or more throughout
     * @param body what the free end carries
     * @return the beam
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if the two do not both start at 0 and end at the same place, if a stiffness is not
     *     positive or a density negative, or if neither beam nor body has any mass or inertia
     */
    public static Cantilever of(Polyline stiffnessNm2, Polyline densityKgPerM, EndBody body) {
        return of(stiffnessNm2, densityKgPerM, body, LONGEST_PANEL);
    }

    static Cantilever of(Polyline stiffnessNm2, Polyline densityKgPerM, EndBody body, double longestPanel) {
        Objects.requireNonNull(stiffnessNm2, "stiffnessNm2");
        Objects.requireNonNull(densityKgPerM, "densityKgPerM");
        Objects.requireNonNull(body, "body");
        double lengthM = stiffnessNm2.lastM();
        if (stiffnessNm2.stationM(0) != 0
                || densityKgPerM.stationM(0) != 0
                || Double.compare(densityKgPerM.lastM(), lengthM) != 0) {
            throw new IllegalArgumentException(
                    "stiffnessNm2 and densityKgPerM must both go from 0 m to the same end, was "
                            + stiffnessNm2.stationM(0) + " m to " + lengthM + " m and " + densityKgPerM.stationM(0)
                            + " m to "
                            + densityKgPerM.lastM() + " m");
        }
        if (!(stiffnessNm2.least() > 0)) {
            throw new IllegalArgumentException(
                    "stiffnessNm2 must be positive throughout, was as little as " + stiffnessNm2.least() + " N m2");
        }
        if (!(densityKgPerM.least() >= 0)) {
            throw new IllegalArgumentException(
                    "densityKgPerM must be 0 or more throughout, was as little as " + densityKgPerM.least() + " kg/m");
        }
        if (densityKgPerM.greatest() == 0 && body.massKg() == 0 && body.inertiaKgM2() == 0) {
            throw new IllegalArgumentException(
                    "body must have mass or inertia where the beam has no mass, was " + body);
        }
        return new Cantilever(lengthM, Panels.of(stiffnessNm2, densityKgPerM, longestPanel), body);
    }

    /**
     * The slowest free swing.
     *
     * <p>For an end body of mass {@code M} on a uniform beam of mass {@code m} it is near
     * {@code sqrt(3 EI / (L^3 (M + 33/140 m))) / 2 pi}. The frequency found is within 1e-9 of that of the ideal beam, as a part of
     * it, and the error falls with the eighth power of the panel length.
     *
     * @return the frequency in hertz with the residual and the number of iterations
     * @throws ArithmeticException if the frequency is too high or too low for a {@code double}
     */
    public Mode slowestSwing() {
        return Lanczos.slowest(new Swing(panels, body), lengthM, Lanczos.LIMIT);
    }

    /**
     * How far the free end moves under a force and a couple there. The body's weight plays no part.
     *
     * <p>For a uniform beam the deflection is {@code F L^3 / 3 EI + C L^2 / 2 EI} and the slope
     * {@code F L^2 / 2 EI + C L / EI}.
     *
     * @param forceN force across the beam, in newtons, finite
     * @param coupleNm couple that bends the same way as a positive force, in newton metres, finite
     * @return deflection and slope of the end
     * @throws IllegalArgumentException if the force or the couple is not finite
     * @throws ArithmeticException if the result overflows
     */
    public EndMotion under(double forceN, double coupleNm) {
        if (!Double.isFinite(forceN) || !Double.isFinite(coupleNm)) {
            throw new IllegalArgumentException(
                    "forceN and coupleNm must be finite, was " + forceN + " N and " + coupleNm + " N m");
        }
        Swing swing = new Swing(panels, body);
        double[] bent = new double[swing.size()];
        swing.bendUnderEndLoad(forceN, coupleNm, bent);
        EndMotion end = new EndMotion(bent[bent.length - 2], bent[bent.length - 1]);
        if (!Double.isFinite(end.deflectionM()) || !Double.isFinite(end.slope())) {
            throw new ArithmeticException("The bending overflows: " + end);
        }
        return end;
    }
}
