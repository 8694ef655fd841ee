package dev.tipwright.fitcheck.internal;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;
import java.util.Arrays;

/** A shape as a person is to read and make it: in whole nanometres. */
public final class Rounded {

    private Rounded() {}

    /**
     * The stations of a shape. Of several knots within one nanometre the first and the last stay, which make a step: what lies
     * between them has no length.
     *
     * @param least least diameters
     * @param greatest greatest diameters, on the same places as the least
     * @return the stations
     */
    public static Stations stations(Polyline least, Polyline greatest) {
        boolean round = least == greatest;
        long[] at = new long[least.size()];
        long[] narrow = new long[at.length];
        long[] wide = round ? narrow : new long[at.length];
        int count = 0;
        for (int i = 0; i < at.length; i++) {
            long place = nanometres(least.at(i));
            int next = count >= 2 && at[count - 2] == place ? count - 1 : count;
            at[next] = place;
            narrow[next] = nanometres(least.value(i));
            wide[next] = nanometres(greatest.value(i));
            count = next + 1;
        }
        if (count == at.length) {
            return Stations.ofNanometres(at, narrow, wide);
        }
        return Stations.ofNanometres(
                Arrays.copyOf(at, count), Arrays.copyOf(narrow, count), Arrays.copyOf(wide, count));
    }

    private static long nanometres(double millimetres) {
        return Length.ofMillimetres(millimetres).nanometres();
    }
}
