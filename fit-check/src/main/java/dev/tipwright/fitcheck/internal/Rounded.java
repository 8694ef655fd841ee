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
        long[] numbers = new long[3 * least.size()];
        int end = 0;
        for (int i = 0; i < least.size(); i++) {
            long at = nanometres(least.at(i));
            if (end >= 6 && numbers[end - 6] == at) {
                end -= 3;
            }
            numbers[end++] = at;
            numbers[end++] = nanometres(least.value(i));
            numbers[end++] = nanometres(greatest.value(i));
        }
        return Stations.ofNanometres(Arrays.copyOf(numbers, end));
    }

    private static long nanometres(double millimetres) {
        return Length.ofMillimetres(millimetres).nanometres();
    }
}
