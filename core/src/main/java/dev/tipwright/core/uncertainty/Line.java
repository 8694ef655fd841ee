package dev.tipwright.core.uncertainty;

/** The model along one input, from two standard uncertainties below its estimate to two above, judged by its shape. */
record Line(Input input, Linearity kind, double bend, double slopeBelow, double slopeAbove, double jump) {

    private static final int QUARTERS = 8;
    private static final int HALVINGS = 8;

    /** Midway, by ratio, between the 2^-16, 2^-8 and 1 of a curve, a kink and a jump after eight halvings. */
    private static final double SHRINKS_LIKE_A_KINK = 0x1p-12;

    private static final double SHRINKS_LIKE_A_JUMP = 0x1p-4;

    static Line along(Measurand measurand, FirstOrder first, int index, double tolerance) {
        Input input = measurand.inputs().at(index);
        if (input.standardUncertainty() == 0) {
            return new Line(input, Linearity.STRAIGHT, 0, 0, 0, 0);
        }
        Walk walk = new Walk(measurand, index);
        double[] g = walk.quarters();
        double stray = stray(g, first.contribution(index));
        double bend = stray <= first.noise() ? 0 : stray / Math.max(stray, 2 * first.combined());
        double slopeBelow = g[QUARTERS] - g[QUARTERS - 4];
        double slopeAbove = g[QUARTERS + 4] - g[QUARTERS];
        if (bend <= tolerance) {
            return new Line(input, Linearity.STRAIGHT, bend, slopeBelow, slopeAbove, 0);
        }
        Corner wide = Corner.sharpest(g);
        double narrow = walk.sharpen(wide).size();
        Linearity kind = kind(wide.size(), narrow, first.noise());
        return new Line(input, kind, bend, slopeBelow, slopeAbove, kind == Linearity.JUMPS ? narrow : 0);
    }

    private static double stray(double[] g, double contribution) {
        double stray = 0;
        for (int k = 0; k < g.length; k++) {
            double tangent = contribution * (k - QUARTERS) / 4;
            stray = Math.max(stray, Math.abs(g[k] - g[QUARTERS] - tangent));
        }
        return stray;
    }

    private static Linearity kind(double wide, double narrow, double noise) {
        if (narrow > SHRINKS_LIKE_A_JUMP * wide) {
            return Linearity.JUMPS;
        }
        return narrow > SHRINKS_LIKE_A_KINK * wide && narrow > noise ? Linearity.KINKED : Linearity.CURVED;
    }

    /** Three neighbouring values about {@code z}; their second difference is the corner they make. */
    private record Corner(double z, double left, double middle, double right) {

        static Corner sharpest(double[] g) {
            Corner sharpest = about(g, 1);
            for (int k = 2; k < g.length - 1; k++) {
                sharpest = sharpest.orSharper(about(g, k));
            }
            return sharpest;
        }

        private static Corner about(double[] g, int k) {
            return new Corner((k - QUARTERS) / 4.0, g[k - 1], g[k], g[k + 1]);
        }

        double size() {
            return Math.abs((left - middle) + (right - middle));
        }

        Corner orSharper(Corner other) {
            return other.size() > size() ? other : this;
        }
    }

    /** Steps along the line in standard uncertainties of the input. */
    private record Walk(Measurand measurand, int index) {

        double at(double z) {
            double[] x = measurand.inputs().estimates();
            x[index] += z * measurand.inputs().at(index).standardUncertainty();
            return measurand.at(x);
        }

        double[] quarters() {
            double[] g = new double[2 * QUARTERS + 1];
            for (int k = 0; k < g.length; k++) {
                g[k] = at((k - QUARTERS) / 4.0);
            }
            return g;
        }

        /** Halves the step again and again and keeps the sharpest of the three corners inside the last one. */
        Corner sharpen(Corner start) {
            Corner c = start;
            double h = 1 / 4.0;
            for (int i = 0; i < HALVINGS; i++) {
                h /= 2;
                double left = at(c.z() - h);
                double right = at(c.z() + h);
                c = new Corner(c.z(), left, c.middle(), right)
                        .orSharper(new Corner(c.z() - h, c.left(), left, c.middle()))
                        .orSharper(new Corner(c.z() + h, c.middle(), right, c.right()));
            }
            return c;
        }
    }
}
