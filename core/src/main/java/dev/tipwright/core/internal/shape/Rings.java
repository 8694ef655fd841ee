package dev.tipwright.core.internal.shape;

/** A sum of rings between two cones on one axis, with moments about the place 0. */
final class Rings {

    /** A thousandth of a nanometre: readings are never that close and different, but sums of doubles are. */
    private static final double NOISE = 1e-9;

    /** The sums hold sixty of what they are sums of, so that nothing is divided on the way. */
    private static final double SHARE = Math.PI / 4 / 60;

    private final double unit;
    private double volume;
    private double first;
    private double second;

    /**
     * None yet.
     *
     * @param unit that lengths will be in, in mm
     */
    Rings(double unit) {
        this.unit = unit;
    }

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

    private double apart(double gap) {
        return Math.abs(gap) * unit < NOISE ? 0 : gap;
    }

    Solid solid() {
        double cube = unit * unit * unit;
        return new Solid(SHARE * cube * volume, SHARE * cube * unit * first, SHARE * cube * unit * unit * second);
    }
}
