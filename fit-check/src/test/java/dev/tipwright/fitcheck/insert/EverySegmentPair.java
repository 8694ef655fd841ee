package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * First contact straight from its definition and in exact rationals, without knots, records or running extremes: for each segment
 * of the tip and each of the bore, {@code d(z) > D(y)} is a half-plane over the rectangle of the two; where it is not empty, the
 * least {@code z + y} of its closure is at a corner of the polygon that is left of the rectangle. All in nanometres.
 */
final class EverySegmentPair {

    /** A straight piece of a profile, longer than nothing, places counted from the start of the domain. */
    record Segment(BigFraction from, BigFraction to, BigFraction atFrom, BigFraction atTo) {

        BigFraction value(BigFraction place) {
            BigFraction part = place.subtract(from).divide(to.subtract(from));
            return atFrom.add(part.multiply(atTo.subtract(atFrom)));
        }
    }

    /** By the sign of the difference: {@code BigFraction.compareTo} of Commons Numbers 1.2 puts two negative values the wrong way. */
    static final Comparator<BigFraction> ORDER = (a, b) -> a.subtract(b).signum();

    private EverySegmentPair() {}

    /** The least of the bore's depth and every {@code z + y} with {@code d(z) > D(y)}. */
    static BigFraction insertion(DiameterProfile tip, Bore bore) {
        BigFraction least = BigFraction.of(bore.depth().nanometres());
        for (Segment up : segments(tip, true)) {
            for (Segment down : segments(bore.profile(), false)) {
                Optional<BigFraction> sum = leastSum(up, down);
                if (sum.isPresent() && ORDER.compare(sum.get(), least) < 0) {
                    least = sum.get();
                }
            }
        }
        return least;
    }

    static long floor(BigFraction notNegative) {
        return notNegative.getNumerator().divide(notNegative.getDenominator()).longValueExact();
    }

    private static Optional<BigFraction> leastSum(Segment up, Segment down) {
        BigFraction[][] corners = {
            {up.from(), down.from()}, {up.to(), down.from()}, {up.to(), down.to()}, {up.from(), down.to()}
        };
        BigFraction[] overlap = new BigFraction[4];
        boolean wider = false;
        for (int i = 0; i < 4; i++) {
            overlap[i] = up.value(corners[i][0]).subtract(down.value(corners[i][1]));
            wider |= overlap[i].signum() > 0;
        }
        if (!wider) {
            return Optional.empty();
        }
        List<BigFraction> sums = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            BigFraction here = corners[i][0].add(corners[i][1]);
            if (overlap[i].signum() >= 0) {
                sums.add(here);
            }
            int j = (i + 1) % 4;
            if (overlap[i].signum() * overlap[j].signum() < 0) {
                BigFraction part = overlap[i].divide(overlap[i].subtract(overlap[j]));
                BigFraction there = corners[j][0].add(corners[j][1]);
                sums.add(here.add(part.multiply(there.subtract(here))));
            }
        }
        return sums.stream().min(ORDER);
    }

    /** The pieces of a profile inside its domain; a step has no length and is none. */
    static List<Segment> segments(DiameterProfile profile, boolean greatest) {
        List<Segment> segments = new ArrayList<>();
        BigFraction start = BigFraction.of(profile.from().nanometres());
        BigFraction end = BigFraction.of(profile.to().nanometres());
        List<Station> stations = profile.stations();
        for (int i = 1; i < stations.size(); i++) {
            Station a = stations.get(i - 1);
            Station b = stations.get(i);
            if (a.at().equals(b.at())) {
                continue;
            }
            Segment whole = new Segment(
                    BigFraction.of(a.at().nanometres()),
                    BigFraction.of(b.at().nanometres()),
                    BigFraction.of((greatest ? a.greatest() : a.least()).nanometres()),
                    BigFraction.of((greatest ? b.greatest() : b.least()).nanometres()));
            BigFraction from = ORDER.compare(whole.from(), start) < 0 ? start : whole.from();
            BigFraction to = ORDER.compare(whole.to(), end) > 0 ? end : whole.to();
            if (ORDER.compare(from, to) < 0) {
                segments.add(new Segment(from.subtract(start), to.subtract(start), whole.value(from), whole.value(to)));
            }
        }
        return segments;
    }
}
