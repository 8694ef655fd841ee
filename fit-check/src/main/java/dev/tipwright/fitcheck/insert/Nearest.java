package dev.tipwright.fitcheck.insert;

/**
 * The search for the least {@code z + y} at which tip and bore meet. Each knot of one side that is the widest tip (or the narrowest
 * bore) so far is matched with the first place of the other side that stops it. Both lists of records run one way only, so the
 * match is a merge.
 */
final class Nearest {

    private final long depth;
    private long insertion;
    private long tipStation;

    Nearest(long depth) {
        this.depth = depth;
        this.insertion = depth;
    }

    boolean touches() {
        return insertion < depth;
    }

    long insertion() {
        return insertion;
    }

    long tipStation() {
        return tipStation;
    }

    /** Matches the knots of each side with the places of the other. */
    void match(Side tip, Side bore) {
        int[] wider = tip.records();
        int[] narrower = bore.records();
        match(tip, wider, bore, narrower);
        match(bore, narrower, tip, wider);
    }

    private void match(Side side, int[] knots, Side other, int[] stops) {
        int stop = stops.length;
        for (int knot : knots) {
            while (stop > 0 && side.past(knot, other, stops[stop - 1])) {
                stop--;
            }
            if (stop < stops.length) {
                long place = other.firstStopping(stops[stop], side, knot);
                long here = side.at(knot);
                meet(here + place, side.ofTip() ? here : place);
            }
        }
    }

    /** Of several places with the same insertion, the one nearest to the end of the tip. */
    private void meet(long sum, long tip) {
        if (sum <= insertion) {
            tipStation = sum < insertion ? tip : Math.min(tip, tipStation);
            insertion = sum;
        }
    }
}
