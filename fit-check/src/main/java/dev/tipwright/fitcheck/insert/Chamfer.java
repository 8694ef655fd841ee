package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;

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
        Stations stations = Stations.of(bore.profile().stations());
        int last = 0;
        while (last + 1 < stations.size() && steep(stations, last)) {
            last++;
        }
        return stations.at(last).min(bore.depth());
    }

    /** Twice the mean diameter narrows by more than the span: the diameter by more than half of it. */
    private static boolean steep(Stations stations, int above) {
        return twiceMean(stations, above) - twiceMean(stations, above + 1)
                > stations.atNanometres(above + 1) - stations.atNanometres(above);
    }

    private static long twiceMean(Stations stations, int k) {
        return stations.leastNanometres(k) + stations.greatestNanometres(k);
    }
}
