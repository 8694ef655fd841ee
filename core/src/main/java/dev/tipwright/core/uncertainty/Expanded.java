package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * An expanded uncertainty {@code U = k u} and what it rests on (JCGM 100:2008, clause 6).
 *
 * @param probability the coverage probability
 * @param degreesOfFreedom the degrees of freedom the factor was taken for, whole or infinite
 * @param coverageFactor the coverage factor {@code k}
 * @param uncertainty the expanded uncertainty {@code U}, in the unit of the output
 */
public record Expanded(
        double probability, DegreesOfFreedom degreesOfFreedom, double coverageFactor, double uncertainty) {

    /**
     * Checks each part.
     *
     * @param probability the coverage probability, at least 0.5 and below 1
     * @param degreesOfFreedom the degrees of freedom
     * @param coverageFactor the coverage factor, finite
     * @param uncertainty the expanded uncertainty, finite
     * @throws NullPointerException if the degrees of freedom are null
     * @throws IllegalArgumentException if the probability is outside its range
     * @throws ArithmeticException if a number is not finite
     */
    public Expanded {
        Check.coverageProbability(probability);
        Objects.requireNonNull(degreesOfFreedom, "degreesOfFreedom");
        coverageFactor = Check.result("coverageFactor", coverageFactor);
        uncertainty = Check.result("expanded uncertainty", uncertainty);
    }
}
