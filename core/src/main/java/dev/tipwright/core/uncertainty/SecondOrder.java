package dev.tipwright.core.uncertainty;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The terms of next higher order that a first-order budget leaves out (JCGM 100:2008, 5.1.2, note).
 *
 * <pre>
 * sum over i and j of [ (d2f/dxi dxj)^2 / 2 + df/dxi d3f/dxi dxj^2 ] ui^2 uj^2
 * </pre>
 *
 * <p>The note is for independent normal inputs. The terms with two different inputs hold for every symmetric
 * distribution; those with one input twice depend on its fourth moment, {@code kappa u^4}, and are taken as {@code
 * [(kappa - 1) (d2f/dx2)^2 / 4 + (kappa / 3) df/dx d3f/dx3] u^4} with {@code kappa} 3 (normal), 9/5 (rectangular) or
 * 12/5 (triangular), which is the note's own form for 3. A Student input counts as normal with its standard
 * uncertainty. Correlated inputs count as jointly normal: they are traded for independent ones by a factor of the
 * correlation matrix.
 *
 * <p>Derivatives are central differences with steps of one eighth of a standard uncertainty; differences that rounding
 * alone can explain count as nothing. About {@code 2 n^2} calls of the model for {@code n} inputs. The expansion means
 * little where the model bends or jumps: see {@link LinearityCheck}.
 *
 * @param firstOrder the first-order standard uncertainty, in the unit of the output
 * @param secondOrderVariance the sum above, in the square of the unit of the output; may be negative
 * @param shift half the sum of {@code d2f/dxi^2 ui^2}, covariances included: by how much the mean of the output lies
 *     above the value at the estimates, to second order, in the unit of the output
 */
public record SecondOrder(double firstOrder, double secondOrderVariance, double shift) {

    /**
     * Checks each part.
     *
     * @param firstOrder the first-order standard uncertainty, finite
     * @param secondOrderVariance the variance of next higher order, finite
     * @param shift the shift of the mean, finite
     * @throws ArithmeticException if a number is not finite
     */
    public SecondOrder {
        firstOrder = Check.result("firstOrder", firstOrder);
        secondOrderVariance = Check.result("secondOrderVariance", secondOrderVariance);
        shift = Check.result("shift of the mean", shift);
    }

    /**
     * Works out the terms.
     *
     * @param measurand the measurand
     * @return the terms
     * @throws NullPointerException if the measurand is null
     * @throws IllegalArgumentException if the model gives a value that is not finite
     * @throws ArithmeticException if a result overflows
     */
    public static SecondOrder of(Measurand measurand) {
        Objects.requireNonNull(measurand, "measurand");
        return new Expansion(measurand).secondOrder();
    }

    /**
     * The standard uncertainty with both orders: {@code sqrt(firstOrder^2 + secondOrderVariance)}.
     *
     * @return the uncertainty, in the unit of the output; empty where the sum is negative, which says that the
     *     expansion does not describe the model
     */
    public OptionalDouble standardUncertainty() {
        double variance = firstOrder * firstOrder + secondOrderVariance;
        return variance < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Check.result("standard uncertainty", Math.sqrt(variance)));
    }

    /**
     * How much the second order matters: {@code |u2 - u1| / max(u1, u2)}, where {@code u1} is the first-order
     * uncertainty and {@code u2} the one with both orders; 1 where there is no {@code u2}, 0 where both are 0.
     *
     * @return a share from 0 to 1
     */
    public double share() {
        OptionalDouble both = standardUncertainty();
        double larger = Math.max(firstOrder, both.orElse(0));
        if (both.isEmpty() || larger == 0) {
            return both.isEmpty() ? 1 : 0;
        }
        return Math.abs(both.getAsDouble() - firstOrder) / larger;
    }
}
