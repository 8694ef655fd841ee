package dev.tipwright.core.internal.shape;

/**
 * A solid of revolution by its volume and the first and second moment of it about a place on the axis: a sum of rings, each between two
 * cones.
 */
public final class Solid {

    /** A thousandth of a nanometre: readings are never that close and different, but sums of doubles are. */
    private static final double NOISE = 1e-9;

    /** The sums hold sixty of what they are sums of, so that nothing is divided on the way. */
    private static final double SHARE = Math.PI / 4 / 60;

    private double volume;
    private double first;
    private double second;

    Solid() {}

    /**
     * Adds a ring. With {@code p = D - d} and {@code s = D + d} the area is {@code pi / 4 p s}, which is exactly nothing where the two
     * are one, and keeps its digits where they are close; a difference of two solids would not.
     *
     * @param z where it starts
     * @param h how high it is
     * @param outer0 outer diameter where it starts
     * @param outer1 where it ends
     * @param inner0 inner diameter where it starts
     * @param inner1 where it ends
     */
    void add(double z, double h, double outer0, double outer1, double inner0, double inner1) {
        double apart0 = apart(outer0 - inner0);
        double apart1 = apart(outer1 - inner1);
        double low = apart0 * (outer0 + inner0);
        double cross = apart0 * (outer1 + inner1) + apart1 * (outer0 + inner0);
        double high = apart1 * (outer1 + inner1);
        double squares = 10 * h * (2 * low + cross + 2 * high);
        double outward = 5 * h * h * (low + cross + 3 * high);
        volume += squares;
        first += z * squares + outward;
        second += z * z * squares + 2 * z * outward + h * h * h * (2 * low + 3 * cross + 12 * high);
    }

    private static double apart(double gap) {
        return Math.abs(gap) < NOISE ? 0 : gap;
    }

    /**
     * The volume.
     *
     * @return mm3
     */
    public double volume() {
        return SHARE * volume;
    }

    /**
     * Its first moment about the place 0.
     *
     * @return mm4
     */
    public double first() {
        return SHARE * first;
    }

    /**
     * Its second moment about the place 0.
     *
     * @return mm5
     */
    public double second() {
        return SHARE * second;
    }
}
