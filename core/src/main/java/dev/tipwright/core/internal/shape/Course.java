package dev.tipwright.core.internal.shape;

import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * A diameter or a thickness along a tip, walked up from its end one span between two knots after the other. In nanometres, so that
 * the whole ones of a reading are taken where they are and as they are: nothing is made of them, and nothing is rounded.
 */
abstract class Course {

    /** In a millimetre. */
    private static final double NANOMETRES = 1e6;

    /** As little is nothing: readings are whole nanometres, and doubles keep a sixteenth digit of what they are added to. */
    static final double NOISE = 1e-5;

    private int knots;
    private double from;
    private double valueFrom;
    private double to = Double.NEGATIVE_INFINITY;
    private double valueTo;

    /** A course that has a value before its first knot. */
    private Course(double before) {
        valueTo = before;
    }

    /** The mean diameter through stations, places counted from one of them on. */
    static Course of(Stations stations, Length from) {
        return new OfStations(stations, from.nanometres());
    }

    /** A thickness, the same before its first knot and beyond its last as there; places counted from one of them on. */
    static Course of(ThicknessProfile thickness, Length from) {
        return new OfThickness(thickness.knots(), from.nanometres());
    }

    /** A diameter in millimetres, places counted from its own 0. */
    static Course of(Polyline line) {
        return new OfLine(line);
    }

    /** A place in millimetres; a whole number of nanometres to the last bit where it is meant to be one, so that knots meet. */
    static double nanometres(double millimetres) {
        double place = millimetres * NANOMETRES;
        double whole = Math.rint(place);
        return Math.abs(place - whole) < NOISE ? whole : place;
    }

    /** The place of a knot. */
    abstract double place(int knot);

    /** The value there. */
    abstract double value(int knot);

    /** Goes up until the span ends beyond a place. */
    final void goBeyond(double place) {
        while (to <= place) {
            from = to;
            valueFrom = valueTo;
            to = place(knots);
            valueTo = value(knots);
            knots++;
        }
    }

    /** Where the span ends. */
    final double to() {
        return to;
    }

    /** The value at a place in the span, or at one of its ends. */
    final double at(double place) {
        if (place == to) {
            return valueTo;
        }
        if (place == from || valueTo == valueFrom) {
            return valueFrom;
        }
        return valueFrom + (place - from) / (to - from) * (valueTo - valueFrom);
    }

    private static final class OfStations extends Course {

        private final Stations stations;
        private final long start;

        OfStations(Stations stations, long start) {
            super(Double.NaN);
            this.stations = stations;
            this.start = start;
        }

        @Override
        double place(int knot) {
            return stations.atNanometres(knot) - start;
        }

        @Override
        double value(int knot) {
            return (stations.leastNanometres(knot) + stations.greatestNanometres(knot)) / 2.0;
        }
    }

    private static final class OfThickness extends Course {

        private final List<ThicknessProfile.Knot> knots;
        private final long start;

        OfThickness(List<ThicknessProfile.Knot> knots, long start) {
            super((double) knots.get(0).thickness().nanometres());
            this.knots = knots;
            this.start = start;
        }

        @Override
        double place(int knot) {
            return knot == knots.size()
                    ? Double.POSITIVE_INFINITY
                    : knots.get(knot).at().nanometres() - start;
        }

        @Override
        double value(int knot) {
            return knots.get(Math.min(knot, knots.size() - 1)).thickness().nanometres();
        }
    }

    private static final class OfLine extends Course {

        private final Polyline line;

        OfLine(Polyline line) {
            super(Double.NaN);
            this.line = line;
        }

        @Override
        double place(int knot) {
            return nanometres(line.at(knot));
        }

        @Override
        double value(int knot) {
            return line.value(knot) * NANOMETRES;
        }
    }
}
