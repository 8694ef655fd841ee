package dev.tipwright.evidence;

import java.math.BigDecimal;
import java.util.function.Function;

/** How far a number may be from the one expected, and why no nearer can be asked. */
record Bound(Function<BigDecimal, BigDecimal> give, String reason) {

    /** A printed number is good to half a unit in its last digit. */
    static final Bound PRINTED = new Bound(Bound::halfLastDigit, "half the last digit printed");

    /** Sums of whole nanometres, or of whole picograms, and words. */
    static final Bound EXACT = new Bound(expected -> BigDecimal.ZERO, "exact");

    /** Formulas without a search in them, worked in doubles. */
    static final Bound DOUBLES = relative(1e-12, "the arithmetic of doubles");

    /** A length is a whole number of nanometres; in the unit of the table. */
    static Bound grid(String stepInUnit) {
        BigDecimal half = new BigDecimal(stepInUnit).divide(BigDecimal.valueOf(2));
        return new Bound(
                expected -> halfLastDigit(expected).add(half), "half the last digit, and half a step of the grid");
    }

    /** A fixed amount, in the unit of the table. */
    static Bound of(double give, String reason) {
        return new Bound(expected -> BigDecimal.valueOf(give), reason);
    }

    /** A fixed amount beyond what the printed digits leave open. */
    static Bound printedAnd(double give, String reason) {
        return new Bound(expected -> halfLastDigit(expected).add(BigDecimal.valueOf(give)), reason);
    }

    /** A part of the value, for numbers that are exact but for the arithmetic of doubles. */
    static Bound relative(double part, String reason) {
        return new Bound(expected -> expected.abs().multiply(BigDecimal.valueOf(part)), reason);
    }

    private static BigDecimal halfLastDigit(BigDecimal printed) {
        return printed.ulp().divide(BigDecimal.valueOf(2));
    }
}
