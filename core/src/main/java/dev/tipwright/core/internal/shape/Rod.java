package dev.tipwright.core.internal.shape;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;

/**
 * A piece of a shaft as mass along a line, in doubles: its mass and the first and second moment of it about its own tip end. Line
 * density is straight between knots, or from the raw tip to the butt.
 *
 * @param mass in g
 * @param first moment in g mm
 * @param second moment in g mm2
 */
public record Rod(double mass, double first, double second) {

    private static final Rod NOTHING = new Rod(0, 0, 0);

    /**
     * The piece between two places.
     *
     * @param shaft the raw shaft
     * @param from where the piece starts, from the raw tip
     * @param to where it ends, not before its start
     * @return mass and moments
     */
    public static Rod of(Shaft shaft, Length from, Length to) {
        return shaft.mass().along() instanceof Reading.Unknown<LineDensityProfile>
                ? straight(shaft, from.millimetres(), to.millimetres())
                : alongKnots(shaft.mass().along().known().orElseThrow().knots(), from.millimetres(), to.millimetres());
    }

    /** The straight line density that has the shaft's mass and balance point. */
    private static Rod straight(Shaft shaft, double from, double to) {
        double length = shaft.length().millimetres();
        ShaftMass mass = shaft.mass();
        double slope = 6
                * mass.mass().grams()
                / (length * length * length)
                * (2 * mass.balance().millimetres() - length);
        return NOTHING.plus(atTip(shaft) + slope * from, slope, to - from, 0);
    }

    /**
     * What it weighs.
     *
     * @return its mass, rounded to the picogram
     * @throws ArithmeticException if it is out of range
     */
    public Mass weight() {
        double picograms = Math.rint(mass * 1e12);
        if (!(Math.abs(picograms) < Long.MAX_VALUE)) {
            throw new ArithmeticException("mass is out of range, was " + mass + " g");
        }
        return Mass.ofPicograms((long) picograms);
    }

    /**
     * The straight line density at the raw tip, {@code (2 m / R^2) (2 R - 3 b)}.
     *
     * @param shaft the raw shaft
     * @return g for mm
     */
    public static double atTip(Shaft shaft) {
        double length = shaft.length().millimetres();
        double balance = shaft.mass().balance().millimetres();
        return 2 * shaft.mass().mass().grams() / (length * length) * (2 * length - 3 * balance);
    }

    private static Rod alongKnots(List<LineDensityProfile.Knot> knots, double from, double to) {
        Rod rod = NOTHING;
        for (int i = 1; i < knots.size(); i++) {
            double start = knots.get(i - 1).at().millimetres();
            double end = knots.get(i).at().millimetres();
            double mu = knots.get(i - 1).density().gramsPerMillimetre();
            double slope = (knots.get(i).density().gramsPerMillimetre() - mu) / (end - start);
            double low = Math.max(start, from);
            double high = Math.min(end, to);
            if (low < high) {
                rod = rod.plus(mu + slope * (low - start), slope, high - low, low - from);
            }
        }
        return rod;
    }

    /** This with a span more, written from its middle so that short spans keep their digits. */
    private Rod plus(double density, double slope, double h, double from) {
        double c = from + h / 2;
        double mu = density + slope * h / 2;
        double third = h * h / 12;
        return new Rod(
                mass + mu * h,
                first + h * (mu * c + slope * third),
                second + h * (mu * (c * c + third) + 2 * slope * c * third));
    }
}
