package dev.tipwright.core.internal.shape;

import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A value in millimetres along an axis in millimetres, straight between knots; two knots at one place make a step. The working
 * form of profiles: places are never falling, and nothing is known outside the first and the last knot.
 */
public final class Polyline {

    /** Which diameter of an out-of-round reading counts. */
    public enum Diameter {
        /** The least, which stops a tip in a bore. */
        LEAST,
        /** The mean, which counts for volume. */
        MEAN,
        /** The greatest, which stops a tip in a bore. */
        GREATEST
    }

    private static final double NANOMETRES = 1e6;

    private final double[] at;
    private final double[] value;

    private Polyline(double[] at, double[] value) {
        this.at = at;
        this.value = value;
    }

    /**
     * A polyline through knots.
     *
     * @param at places, never falling, two or more
     * @param value values there
     * @return the polyline, on copies of the arrays
     */
    public static Polyline of(double[] at, double[] value) {
        return new Polyline(at.clone(), value.clone());
    }

    /**
     * A constant.
     *
     * @param value everywhere
     * @param from first place
     * @param to last place
     * @return the polyline
     */
    public static Polyline constant(double value, double from, double to) {
        return new Polyline(new double[] {from, to}, new double[] {value, value});
    }

    /**
     * A diameter profile over its domain, places counted from the start of the domain.
     *
     * @param profile the profile
     * @param which diameter counts
     * @return the polyline from 0 to the profile's length
     */
    public static Polyline of(DiameterProfile profile, Diameter which) {
        return over(profile.stations(), profile.from(), profile.length(), which);
    }

    /**
     * The diameter over a span of what was read, places counted from its start.
     *
     * @param stations in order of their place
     * @param from where the span starts, not before the first station
     * @param length how long it is, above zero and not past the last station
     * @param which diameter counts
     * @return the polyline from 0 to the length
     */
    public static Polyline over(List<Station> stations, Length from, Length length, Diameter which) {
        Stations all = Stations.of(stations);
        long start = from.nanometres();
        long end = start + length.nanometres();
        int first = 0;
        while (all.atNanometres(first) <= start) {
            first++;
        }
        int last = first;
        while (all.atNanometres(last) < end) {
            last++;
        }
        double[] at = new double[last - first + 2];
        double[] value = new double[at.length];
        for (int i = 1; i < at.length - 1; i++) {
            at[i] = (all.atNanometres(first + i - 1) - start) / NANOMETRES;
            value[i] = diameter(all, first + i - 1, which);
        }
        at[at.length - 1] = length.millimetres();
        value[0] = diameter(all, first, start, which);
        value[at.length - 1] = diameter(all, last, end, which);
        return new Polyline(at, value);
    }

    /** The diameter at a place between a station and the one before it, or at one of the two. */
    private static double diameter(Stations all, int station, long place, Diameter which) {
        double beyond = diameter(all, station, which);
        long here = all.atNanometres(station);
        if (here == place) {
            return beyond;
        }
        double before = diameter(all, station - 1, which);
        long there = all.atNanometres(station - 1);
        return before + (double) (place - there) / (here - there) * (beyond - before);
    }

    /**
     * The diameter through stations.
     *
     * @param stations in order of their place, two or more
     * @param from the place to count from
     * @param which diameter counts
     * @return the polyline from the first station to the last
     */
    public static Polyline through(List<Station> stations, Length from, Diameter which) {
        Stations through = Stations.of(stations);
        double[] at = new double[through.size()];
        double[] value = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = (through.atNanometres(i) - from.nanometres()) / NANOMETRES;
            value[i] = diameter(through, i, which);
        }
        return new Polyline(at, value);
    }

    private static double diameter(Stations all, int station, Diameter which) {
        long least = all.leastNanometres(station);
        long greatest = all.greatestNanometres(station);
        if (least == greatest) {
            return least / NANOMETRES;
        }
        return switch (which) {
            case LEAST -> least / NANOMETRES;
            case GREATEST -> greatest / NANOMETRES;
            case MEAN -> (least / NANOMETRES + greatest / NANOMETRES) / 2;
        };
    }

    /**
     * A thickness over part of a shaft, places counted from the start of that part.
     *
     * @param thickness the profile, from the raw tip
     * @param from where the part starts, from the raw tip
     * @param length how long the part is
     * @return the polyline from 0 to the length
     */
    public static Polyline of(ThicknessProfile thickness, Length from, double length) {
        return through(thickness, from, length).between(0, length);
    }

    /**
     * A thickness over part of a shaft and wherever else it was read, places counted from the start of that part.
     *
     * @param thickness the profile, from the raw tip
     * @param from where the part starts, from the raw tip
     * @param length how long the part is
     * @return the polyline from 0 or before it to the length or beyond it
     */
    public static Polyline through(ThicknessProfile thickness, Length from, double length) {
        List<ThicknessProfile.Knot> knots = thickness.knots();
        int n = knots.size();
        if (n == 1) {
            return constant(knots.get(0).thickness().millimetres(), 0, length);
        }
        double[] at = new double[n + 2];
        double[] value = new double[n + 2];
        for (int i = 0; i < n; i++) {
            at[i + 1] = (knots.get(i).at().nanometres() - from.nanometres()) / NANOMETRES;
            value[i + 1] = knots.get(i).thickness().millimetres();
        }
        at[0] = Math.min(0, at[1]);
        value[0] = value[1];
        at[n + 1] = Math.max(length, at[n]);
        value[n + 1] = value[n];
        return new Polyline(at, value);
    }

    /**
     * As a person is to read and make it: stations in whole nanometres. Of several knots within one nanometre the first and the last
     * stay, which make a step: what lies between them has no length.
     *
     * @param greatest greatest diameters, on the same places as these, the least; or this one, for round ones
     * @return the stations
     */
    public Stations rounded(Polyline greatest) {
        Stations all = Stations.ofMillimetres(at, value, greatest.value);
        for (int i = 2; i < all.size(); i++) {
            if (all.atNanometres(i) == all.atNanometres(i - 2)) {
                return twoToAPlace(all);
            }
        }
        return all;
    }

    private static Stations twoToAPlace(Stations all) {
        List<Station> some = new ArrayList<>();
        for (Station station : all) {
            int count = some.size();
            if (count >= 2 && some.get(count - 2).at().equals(station.at())) {
                some.set(count - 1, station);
            } else {
                some.add(station);
            }
        }
        return Stations.of(some);
    }

    /**
     * How many knots there are.
     *
     * @return two or more
     */
    public int size() {
        return at.length;
    }

    /**
     * The place of a knot.
     *
     * @param knot its index
     * @return the place
     */
    public double at(int knot) {
        return at[knot];
    }

    /**
     * The value at a knot.
     *
     * @param knot its index
     * @return the value
     */
    public double value(int knot) {
        return value[knot];
    }

    /**
     * The first place.
     *
     * @return where it starts
     */
    public double from() {
        return at[0];
    }

    /**
     * The last place.
     *
     * @return where it ends
     */
    public double to() {
        return at[at.length - 1];
    }

    /**
     * The value at a place; at a step the value beyond it, at the last place the last value.
     *
     * @param place between the ends
     * @return the value
     */
    public double after(double place) {
        return after(place, firstBeyond(place));
    }

    /**
     * The values at many places, each as {@link #after(double)} has it, in one walk.
     *
     * @param places between the ends, never falling
     * @return a value for each
     */
    public double[] after(double[] places) {
        double[] values = new double[places.length];
        int knot = 1;
        for (int i = 0; i < places.length; i++) {
            while (knot < at.length && at[knot] <= places[i]) {
                knot++;
            }
            values[i] = after(places[i], knot);
        }
        return values;
    }

    private double after(double place, int firstBeyond) {
        return firstBeyond == at.length ? value[firstBeyond - 1] : inSegment(firstBeyond, place);
    }

    /**
     * The value at a place; at a step the value before it, at the first place the first value.
     *
     * @param place between the ends
     * @return the value
     */
    public double before(double place) {
        return before(place, firstAtOrBeyond(place));
    }

    /**
     * The values at many places, each as {@link #before(double)} has it, in one walk.
     *
     * @param places between the ends, never falling
     * @return a value for each
     */
    public double[] before(double[] places) {
        double[] values = new double[places.length];
        int knot = 0;
        for (int i = 0; i < places.length; i++) {
            while (knot < at.length - 1 && at[knot] < places[i]) {
                knot++;
            }
            values[i] = before(places[i], knot);
        }
        return values;
    }

    private double before(double place, int firstAtOrBeyond) {
        boolean knot = firstAtOrBeyond == 0 || at[firstAtOrBeyond] == place;
        return knot ? value[firstAtOrBeyond] : inSegment(firstAtOrBeyond, place);
    }

    /** The value at a place inside the segment that ends at a knot, or at one of its ends. */
    double inSegment(int end, double place) {
        if (place == at[end] || value[end] == value[end - 1]) {
            return value[end];
        }
        double part = (place - at[end - 1]) / (at[end] - at[end - 1]);
        return value[end - 1] + part * (value[end] - value[end - 1]);
    }

    private int firstBeyond(double place) {
        int low = 1;
        int high = at.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (at[middle] > place) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private int firstAtOrBeyond(double place) {
        int low = 0;
        int high = at.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (at[middle] >= place) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /**
     * The part between two places.
     *
     * @param from where it is to start, not before this one
     * @param to where it is to end, not past this one, beyond the start
     * @return that part
     */
    public Polyline between(double from, double to) {
        if (from == at[0] && to == at[at.length - 1] && from < at[1] && to > at[at.length - 2]) {
            return this;
        }
        int first = firstBeyond(from);
        int last = firstAtOrBeyond(to);
        int inside = Math.max(0, last - first);
        double[] places = new double[inside + 2];
        double[] values = new double[inside + 2];
        places[0] = from;
        values[0] = after(from, first);
        System.arraycopy(at, first, places, 1, inside);
        System.arraycopy(value, first, values, 1, inside);
        places[inside + 1] = to;
        values[inside + 1] = before(to, last);
        return new Polyline(places, values);
    }

    /**
     * This one up to a place, and another beyond it.
     *
     * @param other what to go on with
     * @param place where, inside the other and not past this one's end
     * @return the two joined by a step
     */
    public Polyline joined(Polyline other, double place) {
        Polyline low = between(from(), place);
        Polyline high = other.between(place, other.to());
        double[] places = Arrays.copyOf(low.at, low.at.length + high.at.length);
        double[] values = Arrays.copyOf(low.value, places.length);
        System.arraycopy(high.at, 0, places, low.at.length, high.at.length);
        System.arraycopy(high.value, 0, values, low.at.length, high.at.length);
        return new Polyline(places, values);
    }

    /**
     * Seen from the other end: the value at {@code x} goes to {@code about - x}, to the nearest nanometre. A station is a whole
     * number of them, so it meets a station of another profile to the last bit: off by one, two steps at one place would leave a
     * sliver between them.
     *
     * @param about the sum of old and new place
     * @return the mirrored polyline
     */
    public Polyline mirrored(double about) {
        int n = at.length;
        double[] places = new double[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            places[i] = Math.rint((about - at[n - 1 - i]) * NANOMETRES) / NANOMETRES;
            values[i] = value[n - 1 - i];
        }
        return new Polyline(places, values);
    }

    /**
     * The least value from each place on: how wide a thing may be there that went in past all that lies beyond.
     *
     * @return the never falling polyline, with a knot where this one rises past the least that lies beyond
     */
    public Polyline leastAhead() {
        if (neverFalls()) {
            return this;
        }
        int n = at.length;
        double[] places = new double[2 * n];
        double[] values = new double[2 * n];
        double least = value[n - 1];
        int first = 2 * n;
        for (int i = n - 1; i >= 0; i--) {
            if (value[i] < least && value[i + 1] > least && at[i] < at[i + 1]) {
                double part = (least - value[i]) / (value[i + 1] - value[i]);
                places[--first] = at[i] + part * (at[i + 1] - at[i]);
                values[first] = least;
            }
            least = Math.min(least, value[i]);
            places[--first] = at[i];
            values[first] = least;
        }
        return new Polyline(Arrays.copyOfRange(places, first, 2 * n), Arrays.copyOfRange(values, first, 2 * n));
    }

    private boolean neverFalls() {
        for (int i = 1; i < value.length; i++) {
            if (value[i] < value[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /**
     * With a constant added.
     *
     * @param offset what to add
     * @return the raised polyline
     */
    public Polyline plus(double offset) {
        double[] values = value.clone();
        for (int i = 0; i < values.length; i++) {
            values[i] += offset;
        }
        return new Polyline(at, values);
    }

    /**
     * This one plus a multiple of another, on the same places.
     *
     * @param other a polyline with the same ends
     * @param factor of the other
     * @return {@code this + factor * other}
     */
    public Polyline plus(Polyline other, double factor) {
        boolean straight = other.size() == 2 && other.from() == from() && other.to() == to();
        return straight ? plusLine(other, factor) : new Pairing(this, other).sum(factor);
    }

    /**
     * This one plus a multiple of a thickness over the same part of a shaft.
     *
     * @param thickness the profile, from the raw tip
     * @param from where this one's 0 is, from the raw tip
     * @param factor of the thickness
     * @return {@code this + factor * thickness}
     */
    public Polyline plus(ThicknessProfile thickness, Length from, double factor) {
        List<ThicknessProfile.Knot> knots = thickness.knots();
        return knots.size() == 1
                ? plus(factor * knots.get(0).thickness().millimetres())
                : plus(of(thickness, from, to()), factor);
    }

    /** This one plus a multiple of one without a knot between the ends, so that no knot is added. */
    private Polyline plusLine(Polyline line, double factor) {
        double[] values = new double[value.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = value[i] + factor * line.inSegment(1, at[i]);
        }
        return new Polyline(at, values);
    }

    /**
     * The lesser of two on the same places, with a knot where they cross.
     *
     * @param other a polyline with the same ends
     * @return the lower envelope
     */
    public Polyline min(Polyline other) {
        return new Pairing(this, other).least();
    }

    /**
     * The greater of two on the same places, with a knot where they cross.
     *
     * @param other a polyline with the same ends
     * @return the upper envelope
     */
    public Polyline max(Polyline other) {
        return new Pairing(this, other).greatest();
    }

    /**
     * The solid of revolution, the value being a diameter.
     *
     * @return volume and moments about the place 0
     */
    public Solid solid() {
        return around(constant(0, from(), to()));
    }

    /**
     * What lies between this one and another inside it, both taken as diameters and turned about the axis.
     *
     * @param inner a polyline with the same ends, nowhere above this one
     * @return volume and moments about the place 0
     */
    public Solid around(Polyline inner) {
        return at == inner.at ? Rings.between(at, value, inner.value, at.length) : new Pairing(this, inner).between();
    }

    /**
     * The integral of the value.
     *
     * @return value times place
     */
    public double integral() {
        double sum = 0;
        for (int i = 1; i < at.length; i++) {
            sum += (at[i] - at[i - 1]) * (value[i] + value[i - 1]) / 2;
        }
        return sum;
    }

    /**
     * The knot with the least value, the first of several.
     *
     * @return its index
     */
    public int least() {
        int least = 0;
        for (int i = 1; i < value.length; i++) {
            if (value[i] < value[least]) {
                least = i;
            }
        }
        return least;
    }

    /**
     * The knot with the greatest value, the first of several.
     *
     * @return its index
     */
    public int greatest() {
        int greatest = 0;
        for (int i = 1; i < value.length; i++) {
            if (value[i] > value[greatest]) {
                greatest = i;
            }
        }
        return greatest;
    }

    /**
     * The least value over a part.
     *
     * @param from where the part starts, between the ends
     * @param to where it ends, not before its start
     * @return the least
     */
    public double least(double from, double to) {
        int first = firstBeyond(from);
        double least = Math.min(after(from, first), before(to));
        for (int i = first; i < at.length && at[i] < to; i++) {
            least = Math.min(least, value[i]);
        }
        return least;
    }

    /**
     * The greatest value over a part.
     *
     * @param from where the part starts, between the ends
     * @param to where it ends, not before its start
     * @return the greatest
     */
    public double greatest(double from, double to) {
        int first = firstBeyond(from);
        double greatest = Math.max(after(from, first), before(to));
        for (int i = first; i < at.length && at[i] < to; i++) {
            greatest = Math.max(greatest, value[i]);
        }
        return greatest;
    }

    /** Adopts arrays made for it alone. */
    static Polyline adopt(double[] at, double[] value) {
        return new Polyline(at, value);
    }
}
