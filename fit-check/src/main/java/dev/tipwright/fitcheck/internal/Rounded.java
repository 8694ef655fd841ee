package dev.tipwright.fitcheck.internal;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

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
    public static List<Station> stations(Polyline least, Polyline greatest) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < least.size(); i++) {
            Station next = new Station(
                    Length.ofMillimetres(least.at(i)),
                    Length.ofMillimetres(least.value(i)),
                    Length.ofMillimetres(greatest.value(i)));
            int count = stations.size();
            if (count >= 2 && stations.get(count - 2).at().equals(next.at())) {
                stations.remove(count - 1);
            }
            stations.add(next);
        }
        return stations;
    }
}
