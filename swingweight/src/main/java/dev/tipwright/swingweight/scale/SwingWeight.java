package dev.tipwright.swingweight.scale;

import dev.tipwright.core.internal.arg.Require;

/**
 * A swing weight: points above the zero of the scale it was read on. A point is what the scale says it is, so this is
 * a pure number.
 *
 * @param points above the zero of the scale; -1e9 to 1e9
 */
public record SwingWeight(double points) implements Comparable<SwingWeight> {

    /**
     * Checks the values.
     *
     * @param points above the zero of the scale; -1e9 to 1e9
     */
    public SwingWeight {
        Require.that(inRange(points), "points", "must be from -1e9 to 1e9", points);
        points = points + 0.0;
    }

    /**
     * This one with points added.
     *
     * @param more points, negative to take away
     * @return the sum
     * @throws IllegalArgumentException if the sum is out of range
     */
    public SwingWeight plus(double more) {
        Require.that(inRange(points + more), "more", "must leave the sum from -1e9 to 1e9", more);
        return new SwingWeight(points + more);
    }

    /**
     * How many points this one is over another on the same scale.
     *
     * @param other what to compare with
     * @return points, negative if it is under
     */
    public double over(SwingWeight other) {
        Require.given("other", other);
        return points - other.points;
    }

    static boolean inRange(double points) {
        return Math.abs(points) <= 1e9;
    }

    @Override
    public int compareTo(SwingWeight other) {
        Require.given("other", other);
        return Double.compare(points, other.points);
    }
}
