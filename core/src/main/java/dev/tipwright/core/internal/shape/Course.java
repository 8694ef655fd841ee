package dev.tipwright.core.internal.shape;

import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import java.util.List;

/**
 * A diameter or a thickness along a tip, walked up from its end one span between two knots after the other. In nanometres, so that
 * the whole ones of a reading are taken where they are and as they are: nothing is made of them, and nothing is rounded.
 */
abstract class Course {

    private int next;
    private double to = Double.NEGATIVE_INFINITY;
    private double valueTo;

    /** The mean diameter through stations, places counted from one of them on. */
    static Course of(Stations stations, long from) {
        return new OfStations(stations, from);
    }

    /** A thickness, the same before its first knot and beyond its last as there; places counted from one of them on. */
    static Course of(ThicknessProfile thickness, long from) {
        return new OfThickness(thickness.knots(), from);
    }

    /** The place of a knot. */
    abstract double place(int knot);

    /** The value there. */
    abstract double value(int knot);

    /** The value at the end of the tip. */
    final double start() {
        double value = goUp(0, value(0));
        return next < 2 ? value : between(place(next - 2), value, to, valueTo, 0);
    }

    /**
     * Goes up until the span ends beyond a place.
     *
     * @param place where to
     * @param value what it is there, coming from below
     * @return what it is there, going on from there: another only where there is a step
     */
    final double goUp(double place, double value) {
        double here = value;
        while (to <= place) {
            here = next == 0 ? here : valueTo;
            to = place(next);
            valueTo = value(next);
            next++;
        }
        return here;
    }

    /** Where the span ends. */
    final double to() {
        return to;
    }

    /** The value further up in the span, from that at a place in it. */
    final double further(double place, double value, double further) {
        return between(place, value, to, valueTo, further);
    }

    /** A value on the straight line from one place and value to another, exactly the other there. */
    private static double between(double from, double value, double to, double valueTo, double place) {
        return place == to || value == valueTo ? valueTo : value + (place - from) / (to - from) * (valueTo - value);
    }

    private static final class OfStations extends Course {

        private final Stations stations;
        private final long start;

        OfStations(Stations stations, long start) {
            this.stations = stations;
            this.start = start;
        }

        @Override
        double place(int knot) {
            return (double) (stations.atNanometres(knot) - start);
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
            this.knots = knots;
            this.start = start;
        }

        @Override
        double place(int knot) {
            return knot == knots.size()
                    ? Double.POSITIVE_INFINITY
                    : (double) (knots.get(knot).at().nanometres() - start);
        }

        @Override
        double value(int knot) {
            return (double)
                    knots.get(Math.min(knot, knots.size() - 1)).thickness().nanometres();
        }
    }
}
