package dev.tipwright.core.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/**
 * How well a standard uncertainty is itself known: a number {@code nu} of at least 1, not necessarily whole, or
 * infinite for an uncertainty taken as known exactly (JCGM 100:2008, G.3 and G.4).
 */
public final class DegreesOfFreedom {

    /**
     * An uncertainty taken as known exactly: limits set so that a value outside them is ruled out (JCGM 100:2008,
     * G.4.3).
     */
    public static final DegreesOfFreedom INFINITE = new DegreesOfFreedom(Double.POSITIVE_INFINITY);

    /** Tells a whole number that lost its last digits to rounding from one just below it. */
    private static final double ROUNDING = 1 + 1e-12;

    private final double nu;

    private DegreesOfFreedom(double nu) {
        this.nu = nu;
    }

    /**
     * A finite number of degrees of freedom.
     *
     * @param nu the number, at least 1 and finite
     * @return the value
     * @throws IllegalArgumentException if {@code nu} is below 1, infinite or not a number
     */
    public static DegreesOfFreedom of(double nu) {
        if (!(nu >= 1 && nu < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("nu must be finite and at least 1, was " + nu);
        }
        return new DegreesOfFreedom(nu);
    }

    /**
     * The degrees of freedom of an uncertainty judged to be right within a share of itself: {@code nu = 1 / (2 r^2)}
     * (JCGM 100:2008, G.4.2, equation G.3).
     *
     * @param relativeDoubt the share {@code r}, for example 0.25 for a quarter, which gives 8; above 0 and at most
     *     {@code sqrt(1/2)}, which gives 1
     * @return the value
     * @throws IllegalArgumentException if {@code relativeDoubt} is not above 0 or the result would be below 1
     */
    public static DegreesOfFreedom ofRelativeDoubt(double relativeDoubt) {
        Check.share("relativeDoubt", relativeDoubt);
        double nu = 0.5 / relativeDoubt / relativeDoubt;
        return nu < Double.POSITIVE_INFINITY ? of(nu) : INFINITE;
    }

    static DegreesOfFreedom ofReciprocal(double reciprocal) {
        double nu = 1 / reciprocal;
        // Welch-Satterthwaite never falls below the least of its inputs, so below 1 is rounding.
        return nu < Double.POSITIVE_INFINITY ? new DegreesOfFreedom(Math.max(1, nu)) : INFINITE;
    }

    /**
     * The number, or empty when it is infinite.
     *
     * @return {@code nu}, at least 1
     */
    public OptionalDouble count() {
        return nu == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(nu);
    }

    /**
     * Cut down to a whole number, as JCGM 100:2008, G.4.1, allows where a table holds whole numbers only. A number that
     * lies within one part in 1e12 below a whole one counts as that one.
     *
     * @return the next lower whole number, or infinite as it is
     */
    public DegreesOfFreedom truncated() {
        return nu == Double.POSITIVE_INFINITY ? INFINITE : new DegreesOfFreedom(Math.floor(nu * ROUNDING));
    }

    /**
     * The coverage factor {@code t_p(nu)}: Student's t lies within plus and minus this factor with the probability
     * given; for infinite degrees of freedom the normal deviate does. The number is used as it is, whole or not.
     * Relative error below 1e-12.
     *
     * <p>For example 2.92 for 16 degrees of freedom and a probability of 0.99 (JCGM 100:2008, table G.2).
     *
     * @param probability the coverage probability, at least 0.5 and below 1
     * @return the factor, above 0.67
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public double coverageFactor(double probability) {
        Check.coverageProbability(probability);
        return StudentT.twoSided(probability, nu);
    }

    double reciprocal() {
        return 1 / nu;
    }

    /**
     * Compares the number.
     *
     * @param other the other object
     * @return true for the same degrees of freedom
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof DegreesOfFreedom that && nu == that.nu;
    }

    /**
     * A hash of the number.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return Double.hashCode(nu);
    }

    /**
     * The number to four figures, or {@code infinite}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        if (nu == Double.POSITIVE_INFINITY) {
            return "infinite";
        }
        return new BigDecimal(nu).round(new MathContext(4)).stripTrailingZeros().toPlainString();
    }
}
