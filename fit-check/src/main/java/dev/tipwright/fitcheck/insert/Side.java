package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import java.math.BigInteger;
import java.util.List;

/**
 * A tip or a bore as contact sees it: its knots over its domain in whole nanometres. A domain may start or end between two
 * stations; the diameter there is a fraction, kept as one.
 */
final class Side {

    private final List<Station> stations;
    private final boolean greatest;
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

    private Side(DiameterProfile profile, boolean greatest) {
        this.stations = profile.stations();
        this.greatest = greatest;
        this.from = profile.from().nanometres();
        this.to = profile.to().nanometres();
        int start = 0;
        while (start + 1 < stations.size() && place(start + 1) <= from) {
            start++;
        }
        int end = stations.size() - 1;
        while (end > start + 1 && place(end - 1) >= to) {
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

    int first() {
        return first;
    }

    int last() {
        return last;
    }

    /** The place of a knot from the start of the domain. */
    long at(int knot) {
        return Math.min(Math.max(place(knot), from), to) - from;
    }

    /** Sign of this diameter at a knot less another's at a knot. */
    int compare(int knot, Side other, int otherKnot) {
        return whole(knot) && other.whole(otherKnot)
                ? Long.compare(diameter(knot), other.diameter(otherKnot))
                : ratio(knot).compare(other.ratio(otherKnot));
    }

    /** Where, between the knot before and this one, the diameter passes that of another's knot; rounded down. */
    long crossing(int knot, Side other, int otherKnot) {
        long start = place(knot - 1);
        long span = place(knot) - start;
        if (span == 0) {
            return at(knot);
        }
        long atStart = diameter(knot - 1);
        long rise = diameter(knot) - atStart;
        if (other.whole(otherKnot)) {
            return start - from + Math.floorDiv((other.diameter(otherKnot) - atStart) * span, rise);
        }
        Ratio wanted = other.ratio(otherKnot);
        BigInteger over = wanted.over.subtract(wanted.under.multiply(BigInteger.valueOf(atStart)));
        BigInteger under = wanted.under.multiply(BigInteger.valueOf(rise));
        BigInteger[] parts = over.multiply(BigInteger.valueOf(span)).divideAndRemainder(under);
        boolean below = parts[1].signum() * under.signum() < 0;
        return start - from + parts[0].longValueExact() - (below ? 1 : 0);
    }

    private long place(int knot) {
        return stations.get(knot).at().nanometres();
    }

    private long diameter(int knot) {
        Station station = stations.get(knot);
        return (greatest ? station.greatest() : station.least()).nanometres();
    }

    /** Whether the knot is a station inside the domain and not the domain's end between two. */
    private boolean whole(int knot) {
        long place = place(knot);
        return place >= from && place <= to;
    }

    private Ratio ratio(int knot) {
        if (whole(knot)) {
            return new Ratio(BigInteger.valueOf(diameter(knot)), BigInteger.ONE);
        }
        int low = place(knot) < from ? knot : knot - 1;
        long end = place(knot) < from ? from : to;
        long span = place(low + 1) - place(low);
        long over = diameter(low) * span + (diameter(low + 1) - diameter(low)) * (end - place(low));
        return new Ratio(BigInteger.valueOf(over), BigInteger.valueOf(span));
    }
}
