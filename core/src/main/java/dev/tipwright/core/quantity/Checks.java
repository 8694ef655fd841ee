package dev.tipwright.core.quantity;

/** The argument checks of this package; each message names the argument, the rule and the value. */
final class Checks {

    private static final double LONG_LIMIT = 0x1p63;

    private Checks() {}

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, was " + value);
        }
        return value + 0.0; // -0.0 becomes 0.0, so equal values print alike
    }

    /** A finite result, or the range was left. */
    static double inRange(String name, double result) {
        if (!Double.isFinite(result)) {
            throw new ArithmeticException(name + " is out of range, was " + result);
        }
        return result + 0.0;
    }

    /**
     * The whole number of grid steps nearest to the exact product, ties to even. The product of two doubles is a double and what
     * was lost in rounding it; that loss decides what looks like a tie, and counts itself where the product is past {@code 2^53}.
     */
    static long toGrid(String name, double value, double stepsPerUnit) {
        double product = finite(name, value) * stepsPerUnit;
        double lost = Math.fma(value, stepsPerUnit, -product);
        double steps = Math.rint(product);
        if (lost != 0 && Math.abs(product - steps) >= 0.5) {
            steps = lost > 0 ? Math.ceil(product) : Math.floor(product);
        }
        if (!(Math.abs(steps) < LONG_LIMIT)) {
            throw new ArithmeticException(name + " is out of range, was " + value);
        }
        return (long) steps + (long) Math.rint(lost);
    }

    static long sum(String name, long a, long b) {
        long sum = a + b;
        if (((a ^ sum) & (b ^ sum)) < 0) {
            throw new ArithmeticException(name + " leads out of range, was " + b);
        }
        return sum;
    }

    static long difference(String name, long a, long b) {
        long difference = a - b;
        if (((a ^ b) & (a ^ difference)) < 0) {
            throw new ArithmeticException(name + " leads out of range, was " + b);
        }
        return difference;
    }

    static long product(String name, long a, long b) {
        long high = Math.multiplyHigh(a, b);
        long low = a * b;
        if (high != low >> 63) {
            throw new ArithmeticException(name + " leads out of range, was " + b);
        }
        return low;
    }

    static void atLeastZero(String name, long value) {
        notNegative(name, value, value);
    }

    static void aboveZero(String name, long value) {
        if (value <= 0) {
            throw new IllegalArgumentException(name + " must be above zero, was " + value);
        }
    }

    static void notNegative(String name, long sign, Object shown) {
        if (sign < 0) {
            throw new IllegalArgumentException(name + " must not be negative, was " + shown);
        }
    }

    /** The divisor, if it is no zero. */
    static double divisor(String name, double value, Object shown) {
        if (value == 0) {
            throw new IllegalArgumentException(name + " must not be zero, was " + shown);
        }
        return value;
    }
}
