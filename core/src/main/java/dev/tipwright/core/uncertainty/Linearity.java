package dev.tipwright.core.uncertainty;

/** What {@link LinearityCheck} found, mildest first. */
public enum Linearity {
    /** A straight line describes the model within the tolerance: first order is good enough. */
    STRAIGHT,

    /**
     * The model curves, or two inputs multiply each other, by more than the tolerance. {@link SecondOrder} or {@link
     * MonteCarlo} describes it better.
     */
    CURVED,

    /**
     * The slope changes at a point within two standard uncertainties. Derivatives mislead there: use {@link
     * MonteCarlo}.
     */
    KINKED,

    /**
     * The value jumps at a point within two standard uncertainties. Derivatives mislead there: use {@link MonteCarlo}.
     */
    JUMPS
}
