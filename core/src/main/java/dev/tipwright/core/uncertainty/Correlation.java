package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * How two inputs go together: {@code r = u(x, y) / (u(x) u(y))} (JCGM 100:2008, 5.2.2). Pairs not named are
 * uncorrelated.
 *
 * @param first the name of one input
 * @param second the name of another input
 * @param coefficient the coefficient {@code r}, from -1 to 1
 */
public record Correlation(String first, String second, double coefficient) {

    /**
     * Checks each part.
     *
     * @param first the name of one input
     * @param second the name of another input
     * @param coefficient the coefficient {@code r}, from -1 to 1
     * @throws NullPointerException if a name is null
     * @throws IllegalArgumentException if both names are the same or the coefficient is outside its range
     */
    public Correlation {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        if (first.equals(second)) {
            throw new IllegalArgumentException(
                    "first and second must be two different inputs, was " + first + " twice");
        }
        if (!(coefficient >= -1 && coefficient <= 1)) {
            throw new IllegalArgumentException(
                    "coefficient of " + first + " and " + second + " must lie between -1 and 1, was " + coefficient);
        }
        coefficient += 0.0;
    }
}
