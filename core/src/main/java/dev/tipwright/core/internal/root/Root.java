package dev.tipwright.core.internal.root;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * A place where a continuous function crosses zero, with what is known of how near it is.
 *
 * @param x the end of the last bracket at which the function is nearer to zero; the root is within {@code width} of it
 * @param residual the function at {@code x}
 * @param width how far apart the two ends of the last bracket are; 0 when {@code residual} is 0
 * @param iterations how often the function was called after the two calls at the ends
 * @param settled true when the bracket is no wider than was asked for (or than {@code double} can resolve), false when the
 *     limit of iterations came first
 */
public record Root(double x, double residual, double width, int iterations, boolean settled) {

    private static final int NO_LIMIT = Integer.MAX_VALUE;

    /** Keeps the width of a bracket, and twice it, finite. */
    private static final double FARTHEST = 1e300;

    /** How much of the bracket the first step off the chord is, as in the paper. */
    private static final double NUDGE = 0.2;

    /**
     * The root in a bracket, within a tolerance.
     *
     * <p>At most {@code 2 + ceil(log2((high - low) / tolerance))} iterations, two more than halving would take (one for the
     * method, one for rounding); far fewer for smooth functions. See {@link #between(DoubleUnaryOperator, double, double, double, int)}.
     *
     * @param f the function; continuous, finite and of opposite signs (or zero) at the ends
     * @param low lower end of the bracket, within 1e300 of zero
     * @param high upper end of the bracket, within 1e300 of zero and greater than {@code low}
     * @param tolerance how wide the last bracket may be, in the unit of {@code x}; from 0 (the finest there is) to 1e300
     * @return the root
     * @throws NullPointerException if {@code f} is null
     * @throws IllegalArgumentException if the bracket or the tolerance is out of its range, or both ends have one sign
     * @throws ArithmeticException if {@code f} gives NaN or infinity
     */
    public static Root between(DoubleUnaryOperator f, double low, double high, double tolerance) {
        return between(f, low, high, tolerance, NO_LIMIT);
    }

    /**
     * The root in a bracket, within a tolerance, or how far a limited number of iterations has come.
     *
     * <p>Interpolate, truncate, project: the chord between the ends proposes a place; that is moved a little towards the
     * middle, so that the bracket shrinks from both sides; and it is kept so near the middle that halving would not have
     * been ahead by more than one step, or two where rounding has a hand in it. The bracket always holds a change of sign. A tolerance finer than two units in
     * the last place of the larger end is raised to that. The function is called once at each end and once an iteration.
     * Where it crosses zero more than once, one of the crossings is given.
     *
     * <p>Source: I. F. D. Oliveira, R. H. C. Takahashi, An enhancement of the bisection method average performance
     * preserving minmax optimality, ACM Transactions on Mathematical Software 47 (2020), article 5, with
     * {@code kappa1 = 0.2 / (high - low)}, {@code kappa2 = 2}, {@code n0 = 1} (from memory).
     *
     * @param f the function; continuous, finite and of opposite signs (or zero) at the ends
     * @param low lower end of the bracket, within 1e300 of zero
     * @param high upper end of the bracket, within 1e300 of zero and greater than {@code low}
     * @param tolerance how wide the last bracket may be, in the unit of {@code x}; from 0 (the finest there is) to 1e300
     * @param limit the most iterations to make, 0 or more
     * @return the root
     * @throws NullPointerException if {@code f} is null
     * @throws IllegalArgumentException if the bracket, the tolerance or the limit is out of its range, or both ends have
     *     one sign
     * @throws ArithmeticException if {@code f} gives NaN or infinity
     */
    public static Root between(DoubleUnaryOperator f, double low, double high, double tolerance, int limit) {
        Objects.requireNonNull(f, "f");
        checkRanges(low, high, tolerance, limit);
        double a = low;
        double b = high;
        double fa = valueAt(f, a);
        double fb = valueAt(f, b);
        if (Math.signum(fa) * Math.signum(fb) > 0) {
            throw new IllegalArgumentException("f must differ in sign at low and high, was " + fa + " and " + fb);
        }

        double target = Math.max(tolerance, 2 * Math.ulp(Math.max(Math.abs(a), Math.abs(b))));
        double slack = target;
        while (slack < b - a) {
            slack *= 2;
        }
        double chordNudge = NUDGE / (b - a);
        int iterations = 0;
        while (b - a > target && fa != 0 && fb != 0 && iterations < limit) {
            double x = step(a, b, fa, fb, chordNudge, slack - (b - a) / 2);
            slack /= 2;
            iterations++;
            double fx = valueAt(f, x);
            if (Math.signum(fx) == Math.signum(fa)) {
                a = x;
                fa = fx;
            } else {
                b = x;
                fb = fx;
            }
        }
        boolean atLow = Math.abs(fa) < Math.abs(fb);
        double residual = atLow ? fa : fb;
        double width = residual == 0 ? 0 : b - a;
        return new Root(atLow ? a : b, residual, width, iterations, width <= target);
    }

    /** The next place to look at, strictly between {@code a} and {@code b}. */
    private static double step(double a, double b, double fa, double fb, double chordNudge, double reach) {
        double width = b - a;
        double middle = a + width / 2;
        // The quotient cannot overflow to NaN as (fb a - fa b) / (fb - fa) can.
        double chord = a + width / (1 - fb / fa);
        double towardsMiddle = Math.signum(middle - chord);
        double nudge = chordNudge * width * width;
        double truncated = nudge <= Math.abs(middle - chord) ? chord + towardsMiddle * nudge : middle;
        double x = Math.abs(truncated - middle) <= reach ? truncated : middle - towardsMiddle * reach;
        return a < x && x < b ? x : middle;
    }

    private static double valueAt(DoubleUnaryOperator f, double x) {
        double value = f.applyAsDouble(x);
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("f(" + x + ") must be finite, was " + value);
        }
        return value;
    }

    // Each condition is written so that NaN fails too.
    private static void checkRanges(double low, double high, double tolerance, int limit) {
        if (!(low < high && low >= -FARTHEST && high <= FARTHEST)) {
            throw new IllegalArgumentException(
                    "low must be below high, both within 1e300 of zero, was " + low + " and " + high);
        }
        if (!(tolerance >= 0 && tolerance <= FARTHEST)) {
            throw new IllegalArgumentException("tolerance must be from 0 to 1e300, was " + tolerance);
        }
        if (limit < 0) {
            throw new IllegalArgumentException("limit must be 0 or more, was " + limit);
        }
    }
}
