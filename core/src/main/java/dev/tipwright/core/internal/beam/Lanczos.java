package dev.tipwright.core.internal.beam;

import java.util.Arrays;

/**
 * The slowest swing of a beam by the Lanczos process.
 *
 * <p>Each step bends the beam once more under the inertia forces of the shape before and keeps what is new in it. The
 * largest {@code t} that a mixture of the shapes so far can have comes out of a small tridiagonal matrix. The distance to
 * the true one is at most the residual, and in effect its square over the gap to the next mode.
 *
 * <p>Source: C. Lanczos, An iteration method for the solution of the eigenvalue problem, Journal of Research of the National
 * Bureau of Standards 45 (1950); bounds: B. N. Parlett, The Symmetric Eigenvalue Problem, chapters 4 and 13 (from memory).
 */
final class Lanczos {

    /** A residual, as a part of {@code t}: its square is next to nothing, and rounding alone leaves a tenth of it. */
    private static final double SETTLED = 1e-7;

    /** Ten times what the oddest beam tried has needed; a residual that is not small tells when it did not do. */
    static final int LIMIT = 100;

    /** No round number, so that no body with measures of round numbers is at rest in the first movement. */
    private static final double ODD = 0.7390851332151607;

    private Lanczos() {}

    /** The slowest swing of a beam of the given length, by no more than {@code limit} steps, at least 1. */
    static Mode slowest(Swing swing, double lengthM, int limit) {
        double[] before = new double[swing.size()];
        double[] now = new double[swing.size()];
        double[] next = new double[swing.size()];
        Arrays.fill(now, 1);
        now[now.length - 1] = ODD / lengthM;
        scale(now, 1 / Math.sqrt(swing.product(now, now)));

        double[] diagonal = new double[limit];
        double[] beside = new double[limit];
        double coupling = 0;
        double t = 0;
        for (int step = 1; ; step++) {
            swing.bendUnderInertia(now, next);
            diagonal[step - 1] = swing.product(now, next);
            subtract(next, diagonal[step - 1], now, coupling, before);
            coupling = Math.sqrt(swing.product(next, next));
            Ritz ritz = Ritz.largest(diagonal, beside, step, t);
            t = ritz.value();
            double residual = coupling * ritz.last() / t;
            if (!(residual > SETTLED) || step == limit) {
                return Mode.of(t, residual, step);
            }
            beside[step - 1] = coupling;
            scale(next, 1 / coupling);
            double[] spare = before;
            before = now;
            now = next;
            next = spare;
        }
    }

    private static void scale(double[] vector, double factor) {
        for (int i = 0; i < vector.length; i++) {
            vector[i] *= factor;
        }
    }

    private static void subtract(double[] from, double a, double[] first, double b, double[] second) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= a * first[i] + b * second[i];
        }
    }
}
