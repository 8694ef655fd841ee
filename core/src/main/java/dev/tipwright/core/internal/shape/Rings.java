package dev.tipwright.core.internal.shape;

/** A sum of rings between two cones on one axis, with moments about the place 0. */
final class Rings {

    /** A thousandth of a nanometre: readings are never that close and different, but sums of doubles are. */
    private static final double NOISE = 1e-9;

    /** The sums hold sixty of what they are sums of, so that nothing is divided on the way. */
    private static final double SHARE = Math.PI / 4 / 60;

    private final double unit;
    private final double noise;
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
        this.noise = NOISE / unit;
    }

    /** The solid between two diameters through as many knots, in mm. */
    static Solid between(double[] at, double[] outer, double[] inner, int knots) {
        Rings rings = new Rings(1);
        for (int i = 1; i < knots; i++) {
            rings.add(1, at[i - 1], at[i] - at[i - 1], outer[i - 1], outer[i], inner[i - 1], inner[i]);
        }
        return rings.solid();
    }

    /**
     * Adds a ring. With {@code p = D - d} and {@code s = D + d} the area is {@code pi / 4 p s}, which is exactly nothing where the two
     * are one, and keeps its digits where they are close; a difference of two solids would not.
     *
     * @param weight what it counts
     * @param z where it starts
     * @param h how high it is
     * @param outer0 outer diameter where it starts
     * @param outer1 where it ends
     * @param inner0 inner diameter where it starts
     * @param inner1 where it ends
     */
    void add(double weight, double z, double h, double outer0, double outer1, double inner0, double inner1) {
        double apart0 = apart(outer0 - inner0);
        double apart1 = apart(outer1 - inner1);
        double low = apart0 * (outer0 + inner0);
        double cross = apart0 * (outer1 + inner1) + apart1 * (outer0 + inner0);
        double high = apart1 * (outer1 + inner1);
        double share = weight * h;
        double squares = 10 * share * (2 * low + cross + 2 * high);
        double outward = 5 * share * h * (low + cross + 3 * high);
        volume += squares;
        first += z * squares + outward;
        second += z * (z * squares + 2 * outward) + share * h * h * (2 * low + 3 * cross + 12 * high);
    }

    private double apart(double gap) {
        return Math.abs(gap) < noise ? 0 : gap;
    }

    Solid solid() {
        double cube = unit * unit * unit;
        return new Solid(SHARE * cube * volume, SHARE * cube * unit * first, SHARE * cube * unit * unit * second);
    }
}
