package dev.tipwright.core.internal.beam;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * A quantity along a shaft, given at stations and linear from each to the next.
 *
 * <p>Two values at one station are a step: the first holds just before it, the second just after.
 */
public final class Polyline {

    private final double[] stationsM;
    private final double[] values;

    private Polyline(double[] stationsM, double[] values) {
        this.stationsM = stationsM;
        this.values = values;
    }

    /**
     * A quantity through values at stations. The arrays are copied.
     *
     * @param stationsM stations in metres; at least two, finite, never falling, no more than two equal, the first before
     *     the last
     * @param values the values there, in one unit of the caller's, finite; as many as stations
     * @return the quantity
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a station or a value is out of range
     */
    public static Polyline of(double[] stationsM, double[] values) {
        double[] s = Objects.requireNonNull(stationsM, "stationsM").clone();
        double[] v = Objects.requireNonNull(values, "values").clone();
        if (s.length < 2 || s.length != v.length) {
            throw new IllegalArgumentException(
                    "stationsM and values must be equally many, at least 2, was " + s.length + " and " + v.length);
        }
        for (int i = 0; i < s.length; i++) {
            boolean follows = i == 0 || s[i - 1] <= s[i];
            boolean third = i > 1 && s[i - 2] >= s[i];
            if (!Double.isFinite(s[i]) || !follows || third) {
                throw bad(
                        "stationsM[%d] must be finite, not before the last and no third of one place, was %s m",
                        i, s[i]);
            }
            if (!Double.isFinite(v[i])) {
                throw bad("values[%d] must be finite, was %s", i, v[i]);
            }
        }
        if (!(s[0] < s[s.length - 1])) {
            throw bad("stationsM[%d] must be after the first, was %s m", s.length - 1, s[0]);
        }
        return new Polyline(s, v);
    }

    /**
     * The same value from 0 to a length.
     *
     * @param lengthM the length in metres, positive and finite
     * @param value the value, finite
     * @return the quantity
     * @throws IllegalArgumentException if the length or the value is out of range
     */
    public static Polyline constant(double lengthM, double value) {
        return of(new double[] {0, lengthM}, new double[] {value, value});
    }

    /**
     * The part between two places, measured from the first of them.
     *
     * <p>With {@code fromM > toM} it is read backwards: a shaft described from its tip up becomes a beam described from its
     * clamp on. At a step at either end the value inside the part counts.
     *
     * @param fromM where the part starts and its stations are 0, in metres
     * @param toM where it ends, in metres, another place
     * @return the part, with stations from 0 to {@code |toM - fromM|}
     * @throws IllegalArgumentException if either place is outside the stations, or both are the same
     */
    public Polyline between(double fromM, double toM) {
        double low = Math.min(fromM, toM);
        double high = Math.max(fromM, toM);
        // Written so that NaN fails too.
        if (!(stationsM[0] <= low && low < high && high <= stationsM[stationsM.length - 1])) {
            throw new IllegalArgumentException("fromM and toM must be two places from " + stationsM[0] + " m to "
                    + stationsM[stationsM.length - 1] + " m, was " + fromM + " m and " + toM + " m");
        }
        int first = 0;
        while (stationsM[first] <= low) {
            first++;
        }
        int last = stationsM.length - 1;
        while (stationsM[last] >= high) {
            last--;
        }
        int size = last - first + 3;
        double[] s = new double[size];
        double[] v = new double[size];
        boolean backwards = fromM > toM;
        for (int i = 0; i < size; i++) {
            double z = i == 0 ? low : i == size - 1 ? high : stationsM[first + i - 1];
            int k = backwards ? size - 1 - i : i;
            s[k] = Math.abs(z - fromM);
            v[k] = i == 0 ? valueIn(first, low) : i == size - 1 ? valueIn(last + 1, high) : values[first + i - 1];
        }
        return new Polyline(s, v);
    }

    /** The number of stations. */
    int size() {
        return stationsM.length;
    }

    /** A station, in metres. */
    double stationM(int index) {
        return stationsM[index];
    }

    /** The last station, in metres. */
    double lastM() {
        return stationsM[stationsM.length - 1];
    }

    /** The least of the values. */
    double least() {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    /** The greatest of the values. */
    double greatest() {
        double greatest = values[0];
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }

    /** The value at a place on the line that ends at the station {@code end}. */
    double valueIn(int end, double z) {
        double before = stationsM[end - 1];
        double share = (z - before) / (stationsM[end] - before);
        // Exact at both ends, and never outside the two values.
        return (1 - share) * values[end - 1] + share * values[end];
    }

    private static IllegalArgumentException bad(String rule, int index, double was) {
        return new IllegalArgumentException(String.format(Locale.ROOT, rule, index, was));
    }

    /** Gives stations and values, for a person to read. */
    @Override
    public String toString() {
        return "stations m " + Arrays.toString(stationsM) + ", values " + Arrays.toString(values);
    }
}
