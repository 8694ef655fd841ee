package dev.tipwright.lessons;

import java.util.function.DoubleUnaryOperator;

/**
 * The slowest swing of a clamped beam with a rigid body at its end, found in another way than the library's: the equation of Euler and
 * Bernoulli is integrated from the clamp by the classical Runge-Kutta rule for a trial {@code w^2}, and {@code w^2} is halved in on
 * where the end can carry the body. SI units; {@code s} runs from the clamp.
 */
final class Shooting {

    private static final int STEPS = 600;

    private final DoubleUnaryOperator stiffness;
    private final DoubleUnaryOperator lineDensity;
    private final double length;
    private final double mass;
    private final double offset;
    private final double inertia;

    Shooting(
            DoubleUnaryOperator stiffness,
            DoubleUnaryOperator lineDensity,
            double length,
            double mass,
            double offset,
            double inertia) {
        this.stiffness = stiffness;
        this.lineDensity = lineDensity;
        this.length = length;
        this.mass = mass;
        this.offset = offset;
        this.inertia = inertia;
    }

    double perMinute() {
        double low = 1;
        double high = low;
        while (Math.signum(off(high)) == Math.signum(off(low))) {
            high *= 1.2;
        }
        low = high / 1.2;
        double sign = Math.signum(off(low));
        for (int k = 0; k < 80; k++) {
            double middle = (low + high) / 2;
            if (Math.signum(off(middle)) == sign) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 60 * Math.sqrt(low) / (2 * Math.PI);
    }

    /** Zero where some start at the clamp meets both conditions at the end. */
    private double off(double w2) {
        double[] a = end(new double[] {0, 0, 1, 0}, w2);
        double[] b = end(new double[] {0, 0, 0, 1}, w2);
        return a[0] * b[1] - a[1] * b[0];
    }

    /** What is missing of shear and moment at the body. */
    private double[] end(double[] start, double w2) {
        double[] y = start;
        double h = length / STEPS;
        for (int k = 0; k < STEPS; k++) {
            double s = k * h;
            double[] k1 = slope(s, y, w2);
            double[] k2 = slope(s + h / 2, plus(y, k1, h / 2), w2);
            double[] k3 = slope(s + h / 2, plus(y, k2, h / 2), w2);
            double[] k4 = slope(s + h, plus(y, k3, h), w2);
            for (int j = 0; j < 4; j++) {
                y[j] += h / 6 * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]);
            }
        }
        double centre = y[0] + offset * y[1];
        return new double[] {
            y[3] + w2 * mass * centre, y[2] - w2 * (mass * offset * centre + inertia * y[1]),
        };
    }

    /** Of deflection, slope, moment and shear. */
    private double[] slope(double s, double[] y, double w2) {
        return new double[] {
            y[1], y[2] / stiffness.applyAsDouble(s), y[3], w2 * lineDensity.applyAsDouble(s) * y[0],
        };
    }

    private static double[] plus(double[] y, double[] k, double h) {
        double[] sum = new double[4];
        for (int j = 0; j < 4; j++) {
            sum[j] = y[j] + h * k[j];
        }
        return sum;
    }
}
