package dev.tipwright.core.uncertainty;

import java.util.Objects;

/**
 * One line of a {@link Budget}: what one input adds to the uncertainty of the output.
 *
 * @param input the input
 * @param sensitivity the sensitivity {@code c}, output unit per input unit; 0 for an input without uncertainty, where
 *     it is not worked out
 * @param uncertainty the contribution {@code c u}, in the unit of the output, with the sign of {@code c}
 * @param share the part of the output's variance that goes with this input; all add up to 1 (or are 0 where the output
 *     has no uncertainty). Half of each covariance goes to either input, so a correlated input's share may be negative
 */
public record Contribution(Input input, double sensitivity, double uncertainty, double share) {

    /**
     * Checks each part.
     *
     * @param input the input
     * @param sensitivity the sensitivity, finite
     * @param uncertainty the contribution, finite
     * @param share the part of the variance, finite
     * @throws NullPointerException if the input is null
     * @throws ArithmeticException if a number is not finite
     */
    public Contribution {
        Objects.requireNonNull(input, "input");
        sensitivity = Check.result("sensitivity to " + input.name(), sensitivity);
        uncertainty = Check.result("uncertainty contributed by " + input.name(), uncertainty);
        share = Check.result("share of " + input.name(), share);
    }
}
