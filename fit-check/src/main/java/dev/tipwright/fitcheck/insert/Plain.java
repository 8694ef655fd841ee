package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The same search as {@link Nearest}, without a single object on the way, for what most benches have: a few stations, with profiles that
 * begin and end at one or on a cylinder. Every knot is matched from the start of the other side, so it is for short lists only.
 *
 * <p>A size is counted so that more binds sooner: the greatest diameter of a tip, and less the least one of a bore. Two sizes overlap
 * where their sum is above zero.
 */
final class Plain {

    /** With more stations the merge is faster. */
    private static final int FEW = 8;

    /** A place past the end of every profile. */
    private static final long NOWHERE = Long.MAX_VALUE / 2;

    private static final boolean TIP = true;
    private static final boolean BORE = false;

    private Plain() {}

    static boolean serves(DiameterProfile profile) {
        List<Station> stations = profile.stations();
        int last = stations.size() - 1;
        return last < FEW
                && endsWell(stations.get(0), stations.get(1), profile.from())
                && endsWell(stations.get(last), stations.get(last - 1), profile.to())
                && stations.get(1).at().moreThan(profile.from())
                && stations.get(last - 1).at().lessThan(profile.to());
    }

    /** Whether a domain ends at its outermost station, or between that and the next on a cylinder. */
    private static boolean endsWell(Station outermost, Station next, Length end) {
        return outermost.at().equals(end)
                || (outermost.least().equals(next.least())
                        && outermost.greatest().equals(next.greatest()));
    }

    static FirstContact contact(DiameterProfile tip, Bore bore) {
        List<Station> up = tip.stations();
        List<Station> down = bore.profile().stations();
        long end = tip.from().nanometres();
        long depth = bore.depth().nanometres();
        long insertion = depth;
        long tipStation = 0;
        for (int k = 0; k < up.size() && place(up.get(k), end) < insertion; k++) {
            long z = place(up.get(k), end);
            long y = firstPast(down, BORE, -size(up.get(k), TIP), 0);
            if (z + y < insertion) {
                insertion = z + y;
                tipStation = z;
            }
        }
        for (int k = 0; k < down.size() && place(down.get(k), 0) <= insertion; k++) {
            long y = place(down.get(k), 0);
            long z = firstPast(up, TIP, -size(down.get(k), BORE), end);
            if (y + z <= insertion) {
                tipStation = y + z < insertion ? z : Math.min(z, tipStation);
                insertion = y + z;
            }
        }
        return insertion < depth
                ? new FirstContact(
                        Length.ofNanometres(insertion), Length.ofNanometres(tipStation), FirstContact.Kind.TOUCHES)
                : new FirstContact(bore.depth(), Length.ZERO, FirstContact.Kind.CLEARS);
    }

    /** Where a size is first past a limit, rounded down; at a step, the step. */
    private static long firstPast(List<Station> stations, boolean tip, long limit, long from) {
        Station above = stations.get(0);
        long left = limit - size(above, tip);
        if (left < 0) {
            return 0;
        }
        for (int k = 1; k < stations.size(); k++) {
            Station here = stations.get(k);
            long over = size(here, tip) - limit;
            if (over > 0) {
                long start = above.at().nanometres();
                return start - from + left * (here.at().nanometres() - start) / (left + over);
            }
            above = here;
            left = -over;
        }
        return NOWHERE;
    }

    private static long size(Station station, boolean tip) {
        return tip ? station.greatest().nanometres() : -station.least().nanometres();
    }

    /** The place of a station from the start of the domain; of one before it, the start. */
    private static long place(Station station, long from) {
        return Math.max(0, station.at().nanometres() - from);
    }
}
