package dev.tipwright.core.internal.shape;

import java.util.Arrays;

/**
 * Two polylines on the same places, walked together: at each place of either, the values of both before and after it. Where
 * neither has a step there, before and after are the same and one knot is enough.
 */
final class Pairing {

    private final double[] at;
    private final double[] one;
    private final double[] two;
    private int size;

    Pairing(Polyline a, Polyline b) {
        if (a.from() != b.from() || a.to() != b.to()) {
            throw new IllegalArgumentException(
                    "other must run from " + a.from() + " to " + a.to() + ", was from " + b.from() + " to " + b.to());
        }
        // A place with two knots here has two on one side at least, and the ends are places of both.
        int most = a.size() + b.size() - 2;
        at = new double[most];
        one = new double[most];
        two = new double[most];
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            double place = i == a.size() ? b.at(j) : j == b.size() ? a.at(i) : Math.min(a.at(i), b.at(j));
            int nextI = pastPlace(a, i, place);
            int nextJ = pastPlace(b, j, place);
            add(place, before(a, i, nextI, place), before(b, j, nextJ, place));
            if (nextI - i > 1 || nextJ - j > 1) {
                add(place, beyond(a, i, nextI, place), beyond(b, j, nextJ, place));
            }
            i = nextI;
            j = nextJ;
        }
    }

    private static int pastPlace(Polyline line, int from, double place) {
        int next = from;
        while (next < line.size() && line.at(next) == place) {
            next++;
        }
        return next;
    }

    private static double before(Polyline line, int here, int next, double place) {
        return next > here ? line.value(here) : between(line, here, place);
    }

    private static double beyond(Polyline line, int here, int next, double place) {
        return next > here ? line.value(next - 1) : between(line, here, place);
    }

    /** The value inside the segment that ends at a knot. */
    private static double between(Polyline line, int end, double place) {
        double part = (place - line.at(end - 1)) / (line.at(end) - line.at(end - 1));
        return line.value(end - 1) + part * (line.value(end) - line.value(end - 1));
    }

    private void add(double place, double valueOne, double valueTwo) {
        at[size] = place;
        one[size] = valueOne;
        two[size] = valueTwo;
        size++;
    }

    Polyline sum(double factor) {
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            values[i] = one[i] + factor * two[i];
        }
        return Polyline.adopt(size == at.length ? at : Arrays.copyOf(at, size), values);
    }

    Polyline least() {
        return envelope(1);
    }

    Polyline greatest() {
        return envelope(-1);
    }

    private Polyline envelope(int sign) {
        double[] places = new double[size + crossings()];
        double[] values = new double[places.length];
        int n = 0;
        for (int i = 0; i < size; i++) {
            double gap = one[i] - two[i];
            if (crosses(i)) {
                double gapBefore = one[i - 1] - two[i - 1];
                double part = gapBefore / (gapBefore - gap);
                places[n] = at[i - 1] + part * (at[i] - at[i - 1]);
                values[n++] = one[i - 1] + part * (one[i] - one[i - 1]);
            }
            places[n] = at[i];
            values[n++] = sign * gap < 0 ? one[i] : two[i];
        }
        return Polyline.adopt(places, values);
    }

    private int crossings() {
        int crossings = 0;
        for (int i = 1; i < size; i++) {
            crossings += crosses(i) ? 1 : 0;
        }
        return crossings;
    }

    /** Whether the two cross between a knot and the one before it. */
    private boolean crosses(int i) {
        return i > 0 && (one[i - 1] - two[i - 1]) * (one[i] - two[i]) < 0 && at[i] > at[i - 1];
    }

    /** The solid between the two as diameters. */
    Solid between() {
        return Rings.between(at, one, two, size);
    }
}
