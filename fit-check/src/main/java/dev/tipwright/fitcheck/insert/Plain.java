package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;

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
        Stations stations = Stations.of(profile.stations());
        int last = stations.size() - 1;
        return last < FEW
                && endsWell(stations, 0, 1, profile.from())
                && endsWell(stations, last, last - 1, profile.to())
                && stations.atNanometres(1) > profile.from().nanometres()
                && stations.atNanometres(last - 1) < profile.to().nanometres();
    }

    /** Whether a domain ends at its outermost station, or between that and the next on a cylinder. */
    private static boolean endsWell(Stations stations, int outermost, int next, Length end) {
        return stations.atNanometres(outermost) == end.nanometres()
                || (stations.leastNanometres(outermost) == stations.leastNanometres(next)
                        && stations.greatestNanometres(outermost) == stations.greatestNanometres(next));
    }

    static FirstContact contact(DiameterProfile tip, Bore bore) {
        Stations up = Stations.of(tip.stations());
        Stations down = Stations.of(bore.profile().stations());
        long end = tip.from().nanometres();
        long depth = bore.depth().nanometres();
        long insertion = depth;
        long tipStation = 0;
        for (int k = 0; k < up.size() && place(up, k, end) < insertion; k++) {
            long z = place(up, k, end);
            long y = firstPast(down, BORE, -size(up, k, TIP), 0);
            if (z + y < insertion) {
                insertion = z + y;
                tipStation = z;
            }
        }
        for (int k = 0; k < down.size() && place(down, k, 0) <= insertion; k++) {
            long y = place(down, k, 0);
            long z = firstPast(up, TIP, -size(down, k, BORE), end);
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
    private static long firstPast(Stations stations, boolean tip, long limit, long from) {
        long left = limit - size(stations, 0, tip);
        if (left < 0) {
            return 0;
        }
        for (int k = 1; k < stations.size(); k++) {
            long over = size(stations, k, tip) - limit;
            if (over > 0) {
                long start = stations.atNanometres(k - 1);
                return start - from + left * (stations.atNanometres(k) - start) / (left + over);
            }
            left = -over;
        }
        return NOWHERE;
    }

    private static long size(Stations stations, int k, boolean tip) {
        return tip ? stations.greatestNanometres(k) : -stations.leastNanometres(k);
    }

    /** The place of a station from the start of the domain; of one before it, the start. */
    private static long place(Stations stations, int k, long from) {
        return Math.max(0, stations.atNanometres(k) - from);
    }
}
