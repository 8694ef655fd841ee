package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import java.math.BigInteger;
import java.util.Arrays;

/**
 * A tip or a bore as contact sees it: its knots over its domain in whole nanometres. A domain may start or end between two
 * stations; the diameter there is a fraction, kept as one.
 */
final class Side {

    private final Stations stations;
    private final boolean tip;
    private final long from;
    private final long to;
    private final int first;
    private final int last;

    /** The diameter as numerator over a denominator above zero. */
    private record Ratio(BigInteger over, BigInteger under) {

        int compare(Ratio other) {
            return over.multiply(other.under).compareTo(other.over.multiply(under));
        }
    }

    private Side(DiameterProfile profile, boolean tip) {
        this.stations = Stations.of(profile.stations());
        this.tip = tip;
        this.from = profile.from().nanometres();
        this.to = profile.to().nanometres();
        int start = 0;
        while (place(start + 1) <= from) {
            start++;
        }
        int end = stations.size() - 1;
        while (place(end - 1) >= to) {
            end--;
        }
        this.first = start;
        this.last = end;
    }

    /** A tip: where it is out of round, the greatest diameter binds. */
    static Side tip(DiameterProfile tip) {
        return new Side(tip, true);
    }

    /** A bore: where it is out of round, the least diameter binds. */
    static Side bore(DiameterProfile bore) {
        return new Side(bore, false);
    }

    boolean ofTip() {
        return tip;
    }

    /** The place of a knot from the start of the domain. */
    long at(int knot) {
        return Math.min(Math.max(place(knot), from), to) - from;
    }

    /** The knots past every one before. */
    int[] records() {
        int[] records = new int[stations.size()];
        int count = 0;
        for (int k = first; k <= last; k++) {
            if (count == 0 || past(k, this, records[count - 1])) {
                records[count++] = k;
            }
        }
        return Arrays.copyOf(records, count);
    }

    /** Whether a knot goes beyond another: a tip is wider there, a bore narrower. */
    boolean past(int knot, Side other, int otherKnot) {
        int wider = whole(knot) && other.whole(otherKnot)
                ? Long.compare(diameter(knot), other.diameter(otherKnot))
                : ratio(knot).compare(other.ratio(otherKnot));
        return (tip ? wider : -wider) > 0;
    }

    /** Where this first stops another's knot, if it does so at this knot and at none before; rounded down; at a step, the step. */
    long firstStopping(int knot, Side other, int otherKnot) {
        if (knot == first) {
            return 0;
        }
        long start = place(knot - 1);
        long span = place(knot) - start;
        long atStart = diameter(knot - 1);
        long rise = diameter(knot) - atStart;
        if (other.whole(otherKnot)) {
            return start - from + (other.diameter(otherKnot) - atStart) * span / rise;
        }
        Ratio wanted = other.ratio(otherKnot);
        BigInteger over = wanted.over.subtract(wanted.under.multiply(BigInteger.valueOf(atStart)));
        BigInteger under = wanted.under.multiply(BigInteger.valueOf(rise));
        return start
                - from
                + over.multiply(BigInteger.valueOf(span)).divide(under).longValueExact();
    }

    private long place(int knot) {
        return stations.atNanometres(knot);
    }

    private long diameter(int knot) {
        return tip ? stations.greatestNanometres(knot) : stations.leastNanometres(knot);
    }

    /** Whether the knot is a station inside the domain and not the domain's end between two. */
    private boolean whole(int knot) {
        return at(knot) == place(knot) - from;
    }

    private Ratio ratio(int knot) {
        if (whole(knot)) {
            return new Ratio(BigInteger.valueOf(diameter(knot)), BigInteger.ONE);
        }
        int low = Math.min(knot, last - 1);
        long start = place(low);
        long span = place(low + 1) - start;
        long over = diameter(low) * span + (diameter(low + 1) - diameter(low)) * (from + at(knot) - start);
        return new Ratio(BigInteger.valueOf(over), BigInteger.valueOf(span));
    }
}
