package dev.tipwright.core.profile;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A diameter along an axis: straight between measured stations, on a domain, never beyond it. Places on a profile are
 * counted from the start of its domain. Trimming moves the domain and keeps every reading; no station is invented.
 *
 * <p>Two stations may share a place and make a step (a counterbore, a shoulder); three at one place, or stations out of
 * order, are errors. A bore is a profile counted down from the hosel mouth, a tip one counted up from its end.
 *
 * <pre>{@code
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".3735 in"), Length.parse("8 in"));
 * DiameterProfile trimmed = tip.trimmedFromStart(Length.parse("1/2 in"));
 * trimmed.length().inches();                                // = 7.5
 * trimmed.diameterAt(Length.parse("1 1/4 in")).inches();    // = 0.3735
 * }</pre>
 *
 * @param stations two or more readings in order of their place
 * @param from where the domain starts; not before the first station
 * @param to where it ends; beyond its start, not past the last station
 */
public record DiameterProfile(List<Station> stations, Length from, Length to) {

    /**
     * Checks the values.
     *
     * @param stations two or more readings in order of their place
     * @param from where the domain starts; not before the first station
     * @param to where it ends; beyond its start, not past the last station
     */
    public DiameterProfile {
        Stations some = Stations.of("stations", stations);
        Require.that(some.size() >= 2, "stations", "must be two or more", some);
        checkOrder("stations", some);
        Length last = some.at(some.size() - 1);
        Require.between("from", from, some.at(0), last);
        Require.between("to", to, from, last);
        if (!from.lessThan(to)) {
            throw Require.broken("to", "must be beyond the start of the domain " + from, to);
        }
        stations = some;
    }

    private static void checkOrder(String name, Stations stations) {
        for (int k = 1; k < stations.size(); k++) {
            long here = stations.atNanometres(k);
            if (here < stations.atNanometres(k - 1)) {
                throw Require.broken(name, "must be in order of their place", stations.at(k));
            }
            if (k >= 2 && here == stations.atNanometres(k - 2)) {
                throw Require.broken(name, "must be at most two at one place", "three at " + stations.at(k));
            }
        }
    }

    /** A profile over all its stations, whose argument has a name of its own. */
    static DiameterProfile named(String name, List<Station> stations) {
        Stations some = Stations.of(name, stations);
        Require.that(!some.isEmpty(), name, "must not be empty", some);
        Require.that(some.size() >= 2, name, "must be two or more", some);
        checkOrder(name, some);
        Length first = some.at(0);
        Length last = some.at(some.size() - 1);
        Require.that(first.lessThan(last), name, "must span some length", some);
        return new DiameterProfile(some, first, last);
    }

    /**
     * A profile over all its stations.
     *
     * @param stations two or more readings in order of their place
     * @return the profile
     */
    public static DiameterProfile of(List<Station> stations) {
        return named("stations", stations);
    }

    /**
     * A profile over all its stations.
     *
     * @param stations two or more readings in order of their place
     * @return the profile
     */
    public static DiameterProfile of(Station... stations) {
        return of(Arrays.asList(Require.given("stations", stations)));
    }

    /**
     * The same diameter from zero to a length.
     *
     * @param diameter the diameter; above zero, at most 100 mm
     * @param length the length; above zero, at most 3 m
     * @return the profile
     */
    public static DiameterProfile cylinder(Length diameter, Length length) {
        Require.someUpTo("length", length, 3000);
        return of(Station.of(Length.ZERO, diameter), Station.of(length, diameter));
    }

    /**
     * How long the domain is.
     *
     * @return end less start
     */
    public Length length() {
        return to.minus(from);
    }

    /**
     * The profile with its start moved on, as a cut leaves it; places are then counted from the new start.
     *
     * @param by how far; zero or more, less than the length
     * @return the shorter profile, with the same readings
     */
    public DiameterProfile trimmedFromStart(Length by) {
        Require.between("by", by, Length.ZERO, length().minus(Length.ofNanometres(1)));
        return new DiameterProfile(stations, from.plus(by), to);
    }

    /**
     * The profile ended sooner.
     *
     * @param length where to end it, from its start; above zero, at most its length
     * @return the shorter profile, with the same readings
     */
    public DiameterProfile endedAt(Length length) {
        Require.between("length", length, Length.ofNanometres(1), length());
        return new DiameterProfile(stations, from, from.plus(length));
    }

    /**
     * The profile carried on past its last station at the diameter it ends with. That is an assumption, and is given as one.
     *
     * @param length how long it is to be, from its start; more than its length
     * @param why the source of the assumption
     * @return the longer profile, as an assumed reading
     */
    public Reading<DiameterProfile> extendedTo(Length length, Source why) {
        Require.given("length", length);
        Require.given("why", why);
        Require.between("length", length, length(), Bounds.FARTHEST);
        Require.that(length.moreThan(length()), "length", "must be more than " + length(), length);
        Station last = stations.get(stations.size() - 1);
        Require.that(
                to.equals(last.at()),
                "length",
                "can carry on only a profile that ends at its last station, " + last.at() + ", and this one ends at "
                        + to,
                length);
        List<Station> longer = new ArrayList<>(stations);
        longer.add(new Station(from.plus(length), last.least(), last.greatest()));
        return Reading.assumed(new DiameterProfile(longer, from, from.plus(length)), why);
    }

    /**
     * The profile with every diameter changed by as much, as by a shared error of the instrument or a coat of paint.
     *
     * @param by what to add to each diameter; negative makes them smaller
     * @return the changed profile
     */
    public DiameterProfile widenedBy(Length by) {
        return new DiameterProfile(Stations.of(stations).widenedBy(by), from, to);
    }

    /**
     * The mean diameter at a place; at a step, the one beyond it, and at the end the one before it.
     *
     * @param place from the start of the domain; zero to its length
     * @return the diameter, rounded to the nanometre
     */
    public Length diameterAt(Length place) {
        Require.between("place", place, Length.ZERO, length());
        Length at = from.plus(place);
        int next = firstBeyond(at);
        if (next == stations.size()
                || (at.equals(to) && stations.get(next - 1).at().equals(at))) {
            int same = next - 1;
            while (same > 0 && stations.get(same - 1).at().equals(at)) {
                same--;
            }
            return stations.get(same).mean();
        }
        Station low = stations.get(next - 1);
        Station high = stations.get(next);
        double part = at.minus(low.at()).ratioTo(high.at().minus(low.at()));
        return low.mean().plus(high.mean().minus(low.mean()).scaledBy(part));
    }

    /** Index of the first station past a place. */
    private int firstBeyond(Length at) {
        int low = 0;
        int high = stations.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (stations.get(middle).at().moreThan(at)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /**
     * This one with another value in one place.
     *
     * @param stations two or more readings in order of their place
     * @return a copy that differs in that alone
     */
    public DiameterProfile withStations(List<Station> stations) {
        return new DiameterProfile(stations, from, to);
    }

    /**
     * This one with another value in one place.
     *
     * @param from where the domain starts; not before the first station
     * @return a copy that differs in that alone
     */
    public DiameterProfile withFrom(Length from) {
        return new DiameterProfile(stations, from, to);
    }

    /**
     * This one with another value in one place.
     *
     * @param to where it ends; beyond its start, not past the last station
     * @return a copy that differs in that alone
     */
    public DiameterProfile withTo(Length to) {
        return new DiameterProfile(stations, from, to);
    }
}
