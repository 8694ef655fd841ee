package dev.tipwright.core.mass;

import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import java.util.List;
import java.util.Optional;

/** Mass along a raw shaft in doubles: grams and millimetres from the raw tip, line density straight between knots. */
final class LineMass {

    private LineMass() {}

    /**
     * Mass between two places with its first and second moment about the raw tip, {@code integral of mu, z mu, z^2 mu}.
     *
     * @return g, g mm, g mm2
     */
    static double[] between(Shaft shaft, double from, double to) {
        Optional<LineDensityProfile> known = shaft.mass().along().known();
        return known.isPresent() ? alongKnots(known.get().knots(), from, to) : linear(shaft, from, to);
    }

    /** The straight line density that has the shaft's mass and balance point. */
    private static double[] linear(Shaft shaft, double from, double to) {
        double length = shaft.length().millimetres();
        double mass = shaft.mass().mass().grams();
        double balance = shaft.mass().balance().millimetres();
        double atTip = atTip(shaft);
        double slope = 6 * mass / (length * length * length) * (2 * balance - length);
        double[] moments = new double[3];
        add(moments, atTip, slope, from, to);
        return moments;
    }

    /** The straight line density at the raw tip, {@code (2 m / R^2) (2 R - 3 b)}. */
    static double atTip(Shaft shaft) {
        double length = shaft.length().millimetres();
        double balance = shaft.mass().balance().millimetres();
        return 2 * shaft.mass().mass().grams() / (length * length) * (2 * length - 3 * balance);
    }

    private static double[] alongKnots(List<LineDensityProfile.Knot> knots, double from, double to) {
        double[] moments = new double[3];
        for (int i = 1; i < knots.size(); i++) {
            double start = knots.get(i - 1).at().millimetres();
            double end = knots.get(i).at().millimetres();
            double mu = knots.get(i - 1).density().gramsPerMillimetre();
            double slope = (knots.get(i).density().gramsPerMillimetre() - mu) / (end - start);
            double low = Math.max(start, from);
            double high = Math.min(end, to);
            if (low < high) {
                add(moments, mu - slope * start, slope, low, high);
            }
        }
        return moments;
    }

    /** Adds the integrals of {@code (a + s z) z^k}, written from the middle of the span so that short spans keep their digits. */
    private static void add(double[] moments, double a, double s, double from, double to) {
        double h = to - from;
        double c = from + h / 2;
        double mu = a + s * c;
        double third = h * h / 12;
        moments[0] += mu * h;
        moments[1] += h * (mu * c + s * third);
        moments[2] += h * (mu * (c * c + third) + 2 * s * c * third);
    }
}
