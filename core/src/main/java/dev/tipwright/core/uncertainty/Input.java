package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * One input of a measurement: what it is called, its estimate, how uncertain that is, how well the uncertainty is
 * known, and the shape of it.
 *
 * <p>A bias shared by several readings is an input of its own, with estimate 0, which the {@link Model} adds to each of
 * them. That says more than a {@link Correlation}, and needs no coefficient.
 *
 * @param name what the input is called; not blank
 * @param unit the unit of the estimate and its uncertainty, as text; {@code 1} for a pure number; not blank
 * @param estimate the best value, in {@code unit}, between -1e150 and 1e150
 * @param standardUncertainty the standard uncertainty, in {@code unit}: 0, or between 1e-150 and 1e150
 * @param degreesOfFreedom the degrees of freedom of the standard uncertainty; finite for {@link Distribution#STUDENT}
 * @param distribution the shape
 */
public record Input(
        String name,
        String unit,
        double estimate,
        double standardUncertainty,
        DegreesOfFreedom degreesOfFreedom,
        Distribution distribution) {

    /**
     * Checks each part.
     *
     * @param name what the input is called; not blank
     * @param unit the unit, as text; not blank
     * @param estimate the best value, in {@code unit}, between -1e150 and 1e150
     * @param standardUncertainty the standard uncertainty, in {@code unit}: 0, or between 1e-150 and 1e150
     * @param degreesOfFreedom the degrees of freedom; finite for {@link Distribution#STUDENT}
     * @param distribution the shape
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public Input {
        Check.text("name", name);
        Check.text("unit", unit);
        estimate = Check.magnitude("estimate of " + name, estimate, unit);
        standardUncertainty = Check.uncertainty("standardUncertainty of " + name, standardUncertainty, unit);
        Objects.requireNonNull(degreesOfFreedom, "degreesOfFreedom");
        Objects.requireNonNull(distribution, "distribution");
        if (distribution == Distribution.STUDENT && degreesOfFreedom.count().isEmpty()) {
            throw new IllegalArgumentException(
                    "degreesOfFreedom of " + name + " must be finite for a Student distribution, was infinite");
        }
    }

    /**
     * A value without uncertainty.
     *
     * @param name what the input is called
     * @param unit the unit
     * @param estimate the value, in {@code unit}
     * @return an input with standard uncertainty 0
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public static Input exact(String name, String unit, double estimate) {
        return ofStandard(name, unit, estimate, 0);
    }

    /**
     * A standard uncertainty as given: normal, with infinite degrees of freedom.
     *
     * @param name what the input is called
     * @param unit the unit
     * @param estimate the best value, in {@code unit}
     * @param standardUncertainty the standard uncertainty, in {@code unit}
     * @return the input
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public static Input ofStandard(String name, String unit, double estimate, double standardUncertainty) {
        return new Input(name, unit, estimate, standardUncertainty, DegreesOfFreedom.INFINITE, Distribution.NORMAL);
    }

    /**
     * Limits, with every value between them as probable as another: rectangular, {@code u = a / sqrt 3} (JCGM 100:2008,
     * 4.3.7), infinite degrees of freedom.
     *
     * @param name what the input is called
     * @param unit the unit
     * @param estimate the middle, in {@code unit}
     * @param halfWidth the distance {@code a} from the middle to either limit, in {@code unit}, not negative
     * @return the input
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public static Input ofLimits(String name, String unit, double estimate, double halfWidth) {
        double u = Check.uncertainty("halfWidth of " + name, halfWidth, unit) / Math.sqrt(3);
        return ofStandard(name, unit, estimate, u).withDistribution(Distribution.RECTANGULAR);
    }

    /**
     * Limits, with values near the middle more probable: triangular, {@code u = a / sqrt 6} (JCGM 100:2008, 4.3.9),
     * infinite degrees of freedom.
     *
     * @param name what the input is called
     * @param unit the unit
     * @param estimate the middle, in {@code unit}
     * @param halfWidth the distance {@code a} from the middle to either limit, in {@code unit}, not negative
     * @return the input
     * @throws IllegalArgumentException if an argument is outside the range of {@link Input}
     */
    public static Input ofTriangularLimits(String name, String unit, double estimate, double halfWidth) {
        double u = Check.uncertainty("halfWidth of " + name, halfWidth, unit) / Math.sqrt(6);
        return ofStandard(name, unit, estimate, u).withDistribution(Distribution.TRIANGULAR);
    }

    /**
     * An expanded uncertainty from a certificate: {@code u = U / k} (JCGM 100:2008, 4.3.3); normal, infinite degrees of
     * freedom unless the certificate says otherwise ({@link #withDegreesOfFreedom}).
     *
     * @param name what the input is called
     * @param unit the unit
     * @param estimate the best value, in {@code unit}
     * @param expandedUncertainty the expanded uncertainty {@code U}, in {@code unit}, not negative
     * @param coverageFactor the coverage factor {@code k}, from 1e-100 to 1e150
     * @return the input
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Input ofExpanded(
            String name, String unit, double estimate, double expandedUncertainty, double coverageFactor) {
        if (!(coverageFactor >= 1e-100 && coverageFactor <= Check.LARGEST)) {
            throw new IllegalArgumentException(
                    "coverageFactor of " + name + " must lie between 1e-100 and 1e150, was " + coverageFactor);
        }
        double expanded = Check.uncertainty("expandedUncertainty of " + name, expandedUncertainty, unit);
        return ofStandard(name, unit, estimate, expanded / coverageFactor);
    }

    /**
     * The mean of repeated readings: {@code u = s / sqrt n} with {@code n - 1} degrees of freedom (JCGM 100:2008, 4.2),
     * Student in shape (JCGM 101:2008, 6.4.9).
     *
     * <p>Readings that all agree give 0: what the instrument cannot show, and what it has wrong each time, are not in
     * them. Add those as inputs of their own ({@link Instrument}). Two or three readings have a Student shape without a
     * standard deviation; see {@link MonteCarloResult.Note}.
     *
     * @param name what the input is called
     * @param unit the unit
     * @param readings two or more readings, in {@code unit}
     * @return the input
     * @throws IllegalArgumentException if there are fewer than two readings or one is outside its range
     */
    public static Input ofReadings(String name, String unit, double... readings) {
        Objects.requireNonNull(readings, "readings");
        int n = readings.length;
        if (n < 2) {
            throw new IllegalArgumentException("readings of " + name + " must be two or more, was " + n);
        }
        for (double reading : readings) {
            Check.magnitude("reading of " + name, reading, unit);
        }
        Spread spread = Spread.of(readings);
        return new Input(
                name,
                unit,
                spread.mean(),
                spread.standardDeviation() / Math.sqrt(n),
                DegreesOfFreedom.of(n - 1),
                Distribution.STUDENT);
    }

    /**
     * The same under another name.
     *
     * @param name the name
     * @return the changed copy
     * @throws IllegalArgumentException if it is blank
     */
    public Input withName(String name) {
        return new Input(name, unit, estimate, standardUncertainty, degreesOfFreedom, distribution);
    }

    /**
     * The same about another estimate.
     *
     * @param estimate the estimate, in {@link #unit()}
     * @return the changed copy
     * @throws IllegalArgumentException if it is outside its range
     */
    public Input withEstimate(double estimate) {
        return new Input(name, unit, estimate, standardUncertainty, degreesOfFreedom, distribution);
    }

    /**
     * The same with another standard uncertainty.
     *
     * @param standardUncertainty the standard uncertainty, in {@link #unit()}
     * @return the changed copy
     * @throws IllegalArgumentException if it is outside its range
     */
    public Input withStandardUncertainty(double standardUncertainty) {
        return new Input(name, unit, estimate, standardUncertainty, degreesOfFreedom, distribution);
    }

    /**
     * The same with other degrees of freedom.
     *
     * @param degreesOfFreedom the degrees of freedom
     * @return the changed copy
     * @throws IllegalArgumentException if they are infinite and the shape is Student
     */
    public Input withDegreesOfFreedom(DegreesOfFreedom degreesOfFreedom) {
        return new Input(name, unit, estimate, standardUncertainty, degreesOfFreedom, distribution);
    }

    /**
     * The same with another shape.
     *
     * @param distribution the shape
     * @return the changed copy
     * @throws IllegalArgumentException if it is Student and the degrees of freedom are infinite
     */
    public Input withDistribution(Distribution distribution) {
        return new Input(name, unit, estimate, standardUncertainty, degreesOfFreedom, distribution);
    }

    /**
     * Name, estimate and standard uncertainty, rounded to two figures of the uncertainty.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return name + " = " + Figures.of(estimate, standardUncertainty, unit);
    }
}
