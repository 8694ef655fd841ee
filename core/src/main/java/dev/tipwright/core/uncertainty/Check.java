package dev.tipwright.core.uncertainty;

import java.util.Objects;

/** The argument and result rules of this package, each with its error text. */
final class Check {

    /** Magnitudes stay where squares and ratios of squares are ordinary doubles. */
    static final double LARGEST = 1e150;

    private static final double SMALLEST = 1e-150;

    private Check() {}

    static String text(String argument, String value) {
        Objects.requireNonNull(value, argument);
        if (value.isBlank()) {
            throw new IllegalArgumentException(argument + " must not be blank");
        }
        return value;
    }

    /** An estimate, a limit or a reading; negative zero becomes zero so that equal values are equal. */
    static double magnitude(String argument, double value, String unit) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw new IllegalArgumentException(
                    argument + " must lie between -1e150 and 1e150, was " + value + " " + unit);
        }
        return value + 0.0;
    }

    static double uncertainty(String argument, double value, String unit) {
        if (value == 0 || (value >= SMALLEST && value <= LARGEST)) {
            return value + 0.0;
        }
        throw new IllegalArgumentException(
                argument + " must be 0 or lie between 1e-150 and 1e150, was " + value + " " + unit);
    }

    /** Strictly inside 0 to 1. */
    static double share(String argument, double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(argument + " must lie between 0 and 1, both excluded, was " + value);
        }
        return value;
    }

    static double coverageProbability(double probability) {
        if (!(probability >= 0.5 && probability < 1)) {
            throw new IllegalArgumentException("probability must be at least 0.5 and less than 1, was " + probability);
        }
        return probability;
    }

    /** A value this package worked out and is about to hand back. */
    static double result(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException(what + " overflows the range of a double");
        }
        return value + 0.0;
    }
}
