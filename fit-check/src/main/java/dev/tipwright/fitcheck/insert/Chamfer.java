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

    private static final double STEEP = 0.5;

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
        Length depth = Length.ZERO;
        for (int i = 1; i < stations.size(); i++) {
            Length narrowing = stations.get(i - 1).mean().minus(stations.get(i).mean());
            Length span = stations.get(i).at().minus(stations.get(i - 1).at());
            if (narrowing.compareTo(span.scaledBy(STEEP)) <= 0) {
                break;
            }
            depth = stations.get(i).at();
        }
        return depth.min(bore.depth());
    }
}
