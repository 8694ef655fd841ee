package dev.tipwright.fitcheck.limits;

/**
 * The normal distribution function, by its power series in the middle and Laplace's continued fraction in the tails (Abramowitz and
 * Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14; from memory).
 */
final class Normal {

    private static final double MIDDLE = 3;
    private static final double FARTHEST = 40;
    private static final int TERMS = 100;

    private Normal() {}

    /** The share that lies below a value. */
    static double below(double x) {
        double size = Math.min(Math.abs(x), FARTHEST);
        double density = StrictMath.exp(-size * size / 2) / Math.sqrt(2 * Math.PI);
        if (size < MIDDLE) {
            double half = density * series(size);
            return x < 0 ? 0.5 - half : 0.5 + half;
        }
        double tail = density / fraction(size);
        return x < 0 ? tail : 1 - tail;
    }

    /** {@code x + x^3/3 + x^5/(3 5) + ...} */
    private static double series(double x) {
        double term = x;
        double sum = x;
        for (int n = 1; n < TERMS; n++) {
            term *= x * x / (2 * n + 1);
            sum += term;
        }
        return sum;
    }

    /** {@code x + 1/(x + 2/(x + 3/(x + ...)))} */
    private static double fraction(double x) {
        double value = x;
        for (int n = TERMS; n > 0; n--) {
            value = x + n / value;
        }
        return value;
    }
}
