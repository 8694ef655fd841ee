package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The same search as {@link Nearest}, without a single object on the way, for what most benches have: a few stations, with profiles that
 * begin and end at one or on a cylinder. Every knot is matched from the start of the other side, so it is for short lists only.
 */
final class Plain {

    /** Beyond this many stations the merge is faster. */
    private static final int FEW = 8;

    private Plain() {}

    static boolean serves(DiameterProfile profile) {
        List<Station> stations = profile.stations();
        int last = stations.size() - 1;
        return last < FEW
                && endsWell(stations, 0, 1, profile.from().nanometres())
                && endsWell(stations, last, last - 1, profile.to().nanometres());
    }

    /** Whether a domain ends at its outermost station, with no step there; or short of it on a cylinder of its diameter. */
    private static boolean endsWell(List<Station> stations, int outermost, int next, long end) {
        Station outer = stations.get(outermost);
        Station inner = stations.get(next);
        boolean level = outer.least().equals(inner.least()) && outer.greatest().equals(inner.greatest());
        long whole = at(stations, next) - at(stations, outermost);
        long left = at(stations, next) - end;
        return Long.signum(left) * Long.signum(whole) > 0 && (left == whole || level);
    }

    static FirstContact contact(DiameterProfile tip, Bore bore) {
        List<Station> up = tip.stations();
        List<Station> down = bore.profile().stations();
        long depth = bore.profile().to().nanometres() - bore.profile().from().nanometres();
        long insertion = depth;
        long tipStation = 0;
        for (int k = 0; k < up.size() && place(tip, k) < insertion; k++) {
            long z = place(tip, k);
            long y = firstNarrower(bore.profile(), up.get(k).greatest().nanometres(), insertion - z);
            if (z + y < insertion) {
                insertion = z + y;
                tipStation = z;
            }
        }
        for (int k = 0; k < down.size() && place(bore.profile(), k) <= insertion; k++) {
            long y = place(bore.profile(), k);
            long z = firstWider(tip, down.get(k).least().nanometres(), insertion - y);
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
    private static long firstNarrower(DiameterProfile bore, long diameter, long limit) {
        List<Station> down = bore.stations();
        long before = 0;
        long wide = 0;
        for (int k = 0; k < down.size() && before <= limit; k++) {
            long here = place(bore, k);
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
    private static long firstWider(DiameterProfile tip, long diameter, long limit) {
        List<Station> up = tip.stations();
        long before = 0;
        long thin = 0;
        for (int k = 0; k < up.size() && before <= limit; k++) {
            long here = place(tip, k);
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

    /** The place of a station from the start of the domain; of one past its end, the end. */
    private static long place(DiameterProfile profile, int knot) {
        long from = profile.from().nanometres();
        return Math.min(
                        Math.max(at(profile.stations(), knot), from),
                        profile.to().nanometres())
                - from;
    }

    private static long at(List<Station> stations, int knot) {
        return stations.get(knot).at().nanometres();
    }
}
