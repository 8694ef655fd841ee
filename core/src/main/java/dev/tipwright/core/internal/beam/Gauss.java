package dev.tipwright.core.internal.beam;

/**
 * Integrals over a panel of length 1 from values at its four Gauss points.
 *
 * <p>{@code once(i, j)} is the integral from 0 to point {@code i} of the cubic that is 1 at point {@code j} and 0 at the other
 * three, and {@code twice = once once}. The identity {@code w_i once_ij + w_j once_ji = w_i w_j} makes integrating forwards
 * from one end and backwards from the other adjoint to each other, to rounding.
 *
 * <p>Points and weights: M. Abramowitz, I. Stegun, Handbook of Mathematical Functions, table 25.4, n = 4 (in closed form,
 * from memory). The identity: E. Hairer, C. Lubich, G. Wanner, Geometric Numerical Integration, section VI.4 (from
 * memory).
 */
final class Gauss {

    /** Points in a panel. */
    static final int POINTS = 4;

    private static final double INNER = Math.sqrt(3.0 / 7 - 2.0 / 7 * Math.sqrt(6.0 / 5)) / 2;
    private static final double OUTER = Math.sqrt(3.0 / 7 + 2.0 / 7 * Math.sqrt(6.0 / 5)) / 2;
    private static final double HEAVY = (18 + Math.sqrt(30)) / 72;
    private static final double LIGHT = (18 - Math.sqrt(30)) / 72;

    private static final double[] POINT = {0.5 - OUTER, 0.5 - INNER, 0.5 + INNER, 0.5 + OUTER};
    private static final double[] WEIGHT = {LIGHT, HEAVY, HEAVY, LIGHT};
    private static final double[] TWICE = twice();

    private Gauss() {}

    /** Where point {@code i} lies between 0 and 1. */
    static double point(int i) {
        return POINT[i];
    }

    /** What the value at point {@code i} counts in the integral from 0 to 1. */
    static double weight(int i) {
        return WEIGHT[i];
    }

    /** What the value at point {@code j} counts in the integral from 0 to point {@code i}. */
    static double once(int i, int j) {
        // The rule itself, squeezed to the part before point i, is exact for a cubic.
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            sum += WEIGHT[k] * cubic(j, POINT[i] * POINT[k]);
        }
        return POINT[i] * sum;
    }

    /** What the value at point {@code j} counts in the integral of the integral, from 0 to point {@code i}. */
    static double twice(int i, int j) {
        return TWICE[POINTS * i + j];
    }

    /** The same from 1 back to point {@code i}: the panel read from its other end. */
    static double twiceBack(int i, int j) {
        return TWICE[POINTS * POINTS - 1 - (POINTS * i + j)];
    }

    private static double cubic(int j, double x) {
        double product = 1;
        for (int k = 0; k < POINTS; k++) {
            if (k != j) {
                product *= (x - POINT[k]) / (POINT[j] - POINT[k]);
            }
        }
        return product;
    }

    private static double[] twice() {
        double[] table = new double[POINTS * POINTS];
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                for (int k = 0; k < POINTS; k++) {
                    table[POINTS * i + j] += once(i, k) * once(k, j);
                }
            }
        }
        return table;
    }
}
