package dev.tipwright.fitcheck.insert;

/**
 * The search for the least {@code z + y} at which tip and bore meet. Each knot of one side that is the widest tip (or the narrowest
 * bore) so far is matched with the first place of the other side that stops it. Both lists of records run one way only, so the
 * match is a merge.
 */
final class Nearest {

    static final int KNOTS_OF_TIP = 1;
    static final int KNOTS_OF_BORE = -1;

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

    /**
     * Matches the knots of one side with the other side.
     *
     * @param sign whose knots they are: a tip stops where the bore is narrower, a bore where the tip is wider
     * @param records room for the indices of the other side
     */
    void match(Side knots, Side other, int sign, int[] records) {
        int all = records(other, -sign, records);
        int stops = all;
        int best = knots.first();
        for (int k = knots.first(); k <= knots.last(); k++) {
            if (k > best && sign * knots.compare(k, knots, best) <= 0) {
                continue;
            }
            best = k;
            while (stops > 0 && sign * other.compare(records[stops - 1], knots, k) < 0) {
                stops--;
            }
            if (stops < all) {
                meet(knots, k, other, records[stops], sign);
            }
        }
    }

    /** The knots past every one before, upwards or downwards by sign. */
    private static int records(Side side, int sign, int[] records) {
        int count = 0;
        for (int k = side.first(); k <= side.last(); k++) {
            if (count == 0 || sign * side.compare(k, side, records[count - 1]) > 0) {
                records[count++] = k;
            }
        }
        return count;
    }

    /** The other side's knot is the first that stops this one; the place where it begins to is just before it. */
    private void meet(Side knots, int knot, Side other, int stop, int sign) {
        long place = stop == other.first() ? 0 : other.crossing(stop, knots, knot);
        long sum = knots.at(knot) + place;
        long tip = sign == KNOTS_OF_TIP ? knots.at(knot) : place;
        if (sum < insertion || (sum == insertion && sum < depth && tip < tipStation)) {
            insertion = sum;
            tipStation = tip;
        }
    }
}
