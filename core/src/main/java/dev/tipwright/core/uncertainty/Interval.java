package dev.tipwright.core.uncertainty;

/**
 * A coverage interval: two limits and the probability with which the quantity lies between them.
 *
 * @param probability the coverage probability, between 0 and 1
 * @param low the lower limit, in the unit of the output
 * @param high the upper limit, in the unit of the output, not below {@code low}
 */
public record Interval(double probability, double low, double high) {

    /**
     * Checks each part.
     *
     * @param probability the coverage probability, between 0 and 1, both excluded
     * @param low the lower limit, finite
     * @param high the upper limit, finite, not below {@code low}
     * @throws IllegalArgumentException if the probability is outside its range or the limits are the wrong way round
     * @throws ArithmeticException if a limit is not finite
     */
    public Interval {
        Check.share("probability", probability);
        low = Check.result("low", low);
        high = Check.result("high", high);
        if (high < low) {
            throw new IllegalArgumentException("high must not lie below low " + low + ", was " + high);
        }
    }

    /**
     * The distance between the limits.
     *
     * @return {@code high - low}
     * @throws ArithmeticException if it overflows
     */
    public double width() {
        return Check.result("width", high - low);
    }
}
