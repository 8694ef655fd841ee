package dev.tipwright.core.uncertainty;

/**
 * The measurement model {@code Y = f(X1 .. Xn)} (JCGM 100:2008, 4.1): a pure function of the input values.
 *
 * <p>It is called many times, about the estimates and, by {@link MonteCarlo}, perhaps on several threads at once. It
 * must give the same value for the same inputs, a finite one, for every input within several standard uncertainties of
 * the estimate.
 */
@FunctionalInterface
public interface Model {

    /**
     * The value of the output quantity.
     *
     * @param inputs one value per input, in the order of {@link Inputs} and in the unit of each; lent for the call, not
     *     to be kept; changing it has no effect
     * @return the value, finite, in the unit of the {@link Measurand}
     */
    double value(double[] inputs);
}
