package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The same search as {@link Nearest}, without a single object on the way, for what most benches have: a few stations, with profiles that
 * begin and end at one. Every knot is matched from the start of the other side, so it is for short lists only.
 */
final class Plain {

    /** Beyond this many stations the merge is faster. */
    private static final int FEW = 8;

    private Plain() {}

    static boolean serves(DiameterProfile profile) {
        List<Station> stations = profile.stations();
        int last = stations.size() - 1;
        return last < FEW
                && at(stations, 0) == profile.from().nanometres()
                && at(stations, last) == profile.to().nanometres()
                && at(stations, 1) > at(stations, 0)
                && at(stations, last - 1) < at(stations, last);
    }

    static FirstContact contact(DiameterProfile tip, Bore bore) {
        List<Station> up = tip.stations();
        List<Station> down = bore.profile().stations();
        long from = at(up, 0);
        long depth = at(down, down.size() - 1);
        long insertion = depth;
        long tipStation = 0;
        for (int k = 0; k < up.size() && at(up, k) - from < insertion; k++) {
            long z = at(up, k) - from;
            long y = firstNarrower(down, up.get(k).greatest().nanometres(), insertion - z);
            if (z + y < insertion) {
                insertion = z + y;
                tipStation = z;
            }
        }
        for (int k = 0; k < down.size() && at(down, k) <= insertion; k++) {
            long y = at(down, k);
            long z = firstWider(up, down.get(k).least().nanometres(), insertion - y);
            if (y + z < insertion || (y + z == insertion && insertion < depth && z < tipStation)) {
                insertion = y + z;
                tipStation = z;
            }
        }
        return insertion < depth
                ? new FirstContact(
                        Length.ofNanometres(insertion), Length.ofNanometres(tipStation), FirstContact.Kind.TOUCHES)
                : new FirstContact(bore.depth(), Length.ZERO, FirstContact.Kind.CLEARS);
    }

    /** Where the bore is first narrower, if that is short of a limit; else a place past it. */
    private static long firstNarrower(List<Station> down, long diameter, long limit) {
        long before = 0;
        long wide = 0;
        for (int k = 0; k < down.size() && before <= limit; k++) {
            long here = at(down, k);
            long narrow = down.get(k).least().nanometres();
            if (narrow < diameter) {
                return k == 0 ? 0 : crossing(before, here, wide, narrow, diameter);
            }
            before = here;
            wide = narrow;
        }
        return limit + 1;
    }

    /** Where the tip is first wider, up from its end, if that is no further than a limit; else a place past it. */
    private static long firstWider(List<Station> up, long diameter, long limit) {
        long from = at(up, 0);
        long before = 0;
        long thin = 0;
        for (int k = 0; k < up.size() && before <= limit; k++) {
            long here = at(up, k) - from;
            long thick = up.get(k).greatest().nanometres();
            if (thick > diameter) {
                return k == 0 ? 0 : crossing(before, here, thin, thick, diameter);
            }
            before = here;
            thin = thick;
        }
        return limit + 1;
    }

    /** Where a straight line reaches a diameter, rounded down; at a step, the step. */
    private static long crossing(long start, long end, long first, long last, long diameter) {
        return start + Math.floorDiv((diameter - first) * (end - start), last - first);
    }

    private static long at(List<Station> stations, int knot) {
        return stations.get(knot).at().nanometres();
    }
}
