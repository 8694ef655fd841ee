package dev.tipwright.core.uncertainty;

/**
 * Student's t for any real number of degrees of freedom {@code nu >= 1}: {@code t} such that {@code P(|T| <= t) = p}
 * for {@code 0.5 <= p < 1}.
 *
 * <p>The upper tail is half the regularised incomplete beta function {@code I_x(nu/2, 1/2)}, {@code x = nu / (nu +
 * t^2)}, by its continued fraction (NIST DLMF 8.17.22). Newton's method runs on the logarithm of the tail against the
 * logarithm of {@code t}: that curve falls and bends downwards everywhere, so from the normal deviate, which lies to
 * the left, one step overshoots at most once and the rest fall to the root. Relative error below 1e-12. From {@code nu
 * = 1e4} on the expansion in {@code 1/nu} about the normal deviate is exact to about 1e-15 (Abramowitz and Stegun
 * 26.7.5).
 */
final class StudentT {

    private static final double NEARLY_NORMAL = 1e4;

    /** Some 60 are needed at worst, where {@code nu} nears 1e4 and {@code t} the square root of 3. */
    private static final int MOST_TERMS = 200;

    private static final double CONVERGED = 4e-15;
    private static final double SQRT_PI = Math.sqrt(Math.PI);

    /** {@code Gamma(a + 1/2) / (Gamma(a) sqrt a)} in powers of {@code 1/a} (from the series of NIST DLMF 5.11.13). */
    private static final double[] GAMMA_RATIO = {
        1, -1 / 8.0, 1 / 128.0, 5 / 1024.0, -21 / 32768.0, -399 / 262144.0, 869 / 4194304.0, 39325 / 33554432.0
    };

    private StudentT() {}

    static double twoSided(double probability, double nu) {
        double z = NormalQuantile.twoSided(probability);
        return nu >= NEARLY_NORMAL ? expansion(z, nu) : newton((1 - probability) / 2, nu, z);
    }

    private static double newton(double target, double nu, double start) {
        double t = start;
        double step;
        do {
            double tail = upperTail(t, nu);
            step = StrictMath.log(tail / target) * tail / (t * density(t, nu));
            t *= StrictMath.exp(step);
            // Newton doubles the good digits: after a step of 1e-9 what is left lies far below the last digit.
        } while (Math.abs(step) > 1e-9);
        return t;
    }

    private static double density(double t, double nu) {
        return gammaRatio(nu / 2)
                / (Math.sqrt(nu) * SQRT_PI)
                * StrictMath.exp(-(nu + 1) / 2 * StrictMath.log1p(t * t / nu));
    }

    static double upperTail(double t, double nu) {
        double a = nu / 2;
        double x = nu / (nu + t * t);
        double y = t * t / (nu + t * t);
        double front = gammaRatio(a) / SQRT_PI * StrictMath.exp(-a * StrictMath.log1p(t * t / nu)) * Math.sqrt(y);
        if (x < (a + 1) / (a + 2.5)) {
            return front / a * fraction(a, 0.5, x) / 2;
        }
        return (1 - front / 0.5 * fraction(0.5, a, y)) / 2;
    }

    /**
     * The continued fraction of {@code I_x(a, b)} without its front factor, by Lentz's method as modified by Thompson.
     */
    private static double fraction(double a, double b, double x) {
        double c = 1;
        double d = 1 / (1 - (a + b) * x / (a + 1));
        double value = d;
        double change = 0;
        for (int m = 1; m <= MOST_TERMS && Math.abs(change - 1) > CONVERGED; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / (1 + even * d);
            c = 1 + even / c;
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / (1 + odd * d);
            c = 1 + odd / c;
            change = d * c;
            value *= change;
        }
        return value;
    }

    /**
     * {@code Gamma(a + 1/2) / Gamma(a)}, stepped up to {@code a >= 40} and from there by its asymptotic series, whose
     * next term is below 1e-16. As a difference of two logarithms it would lose digits with growing {@code a}.
     */
    static double gammaRatio(double a) {
        int steps = Math.max(0, (int) Math.ceil(40 - a));
        double product = 1;
        for (int k = 0; k < steps; k++) {
            product *= (a + k) / (a + k + 0.5);
        }
        double up = a + steps;
        double series = 0;
        for (int k = GAMMA_RATIO.length - 1; k >= 0; k--) {
            series = series / up + GAMMA_RATIO[k];
        }
        return product * Math.sqrt(up) * series;
    }

    private static double expansion(double z, double nu) {
        double q = z * z;
        double g1 = (q + 1) / 4;
        double g2 = ((5 * q + 16) * q + 3) / 96;
        double g3 = (((3 * q + 19) * q + 17) * q - 15) / 384;
        double g4 = ((((79 * q + 776) * q + 1482) * q - 1920) * q - 945) / 92160;
        return z * (1 + (g1 + (g2 + (g3 + g4 / nu) / nu) / nu) / nu);
    }
}
