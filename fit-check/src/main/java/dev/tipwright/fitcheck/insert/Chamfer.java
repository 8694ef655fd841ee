package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The chamfer at the mouth of a bore: the part from the mouth on that narrows by more than half its depth. A bore proper tapers by
 * a hundredth or so, a chamfer of 45 degrees by twice its depth; half is an assumption of this library that keeps them apart.
 */
public final class Chamfer {

    private Chamfer() {}

    /**
     * How deep the chamfer goes.
     *
     * @param bore the bore
     * @return from the mouth to where the bore proper begins; zero if there is no chamfer
     */
    public static Length depth(Bore bore) {
        Require.given("bore", bore);
        List<Station> stations = bore.profile().stations();
        int last = 0;
        while (last + 1 < stations.size() && steep(stations.get(last), stations.get(last + 1))) {
            last++;
        }
        return stations.get(last).at().min(bore.depth());
    }

    /** Twice the mean diameter narrows by more than the span: the diameter by more than half of it. */
    private static boolean steep(Station above, Station below) {
        return twiceMean(above) - twiceMean(below)
                > below.at().nanometres() - above.at().nanometres();
    }

    private static long twiceMean(Station station) {
        return station.least().nanometres() + station.greatest().nanometres();
    }
}
