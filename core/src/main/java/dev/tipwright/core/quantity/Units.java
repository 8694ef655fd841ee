package dev.tipwright.core.quantity;

/** The family of units a person reads: what is printed, never what is computed. */
public enum Units {
    /** Inches, thousandths and fractions; grams, as the trade weighs in them. */
    INCH,
    /** Millimetres and grams. */
    METRIC
}
