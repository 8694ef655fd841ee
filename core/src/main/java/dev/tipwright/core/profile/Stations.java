package dev.tipwright.core.profile;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.IntPredicate;

/**
 * Stations in one piece: an unchangeable list that keeps its numbers side by side and makes a {@link Station} of them when one is asked
 * for. Profiles hold their stations so. Whoever runs through many of them asks for the nanometres, and no object is made.
 *
 * <pre>{@code
 * Stations stations = Stations.of(List.of(
 *         Station.of(Length.ZERO, Length.parse(".3735 in")), Station.of(Length.parse("8 in"), Length.parse(".3750 in"))));
 * stations.atNanometres(1);            // = 203200000
 * stations.greatestNanometres(1);      // = 9525000
 * stations.areRound();                 // = true
 * }</pre>
 */
public final class Stations extends AbstractList<Station> implements RandomAccess {

    private final long[] at;
    private final long[] least;

    /** The array of the least where the two are the same. */
    private final long[] greatest;

    private Stations(long[] at, long[] least, long[] greatest) {
        this.at = at;
        this.least = least;
        this.greatest = Arrays.equals(least, greatest) ? least : greatest;
    }

    /**
     * The stations of a list; a list that is in one piece already is given back as it is.
     *
     * @param stations any number of them, in any order
     * @return the same in one piece
     */
    public static Stations of(List<Station> stations) {
        return of("stations", stations);
    }

    /** The stations of a list that its caller has a name for. */
    static Stations of(String name, List<Station> stations) {
        if (stations instanceof Stations already) {
            return already;
        }
        List<Station> list = Require.list(name, stations);
        long[] at = new long[list.size()];
        long[] least = new long[at.length];
        long[] greatest = new long[at.length];
        for (int index = 0; index < at.length; index++) {
            Station station = list.get(index);
            at[index] = station.at().nanometres();
            least[index] = station.least().nanometres();
            greatest[index] = station.greatest().nanometres();
        }
        return new Stations(at, least, greatest);
    }

    /**
     * Stations as whole nanometres, each in the ranges of a {@link Station}.
     *
     * @param at places, nm
     * @param least least diameters, nm, one for each place
     * @param greatest greatest diameters, nm, one for each place; may be the array of the least
     * @return the stations
     */
    public static Stations ofNanometres(long[] at, long[] least, long[] greatest) {
        long[] places = Require.given("at", at).clone();
        long[] narrow = Require.given("least", least).clone();
        long[] wide =
                greatest == least ? narrow : Require.given("greatest", greatest).clone();
        return checked(places, narrow, wide);
    }

    /**
     * Stations in millimetres, rounded to whole nanometres, each in the ranges of a {@link Station}.
     *
     * @param at places, mm
     * @param least least diameters, mm, one for each place
     * @param greatest greatest diameters, mm, one for each place; may be the array of the least
     * @return the stations
     */
    public static Stations ofMillimetres(double[] at, double[] least, double[] greatest) {
        long[] places = nanometres("at", at);
        long[] narrow = nanometres("least", least);
        long[] wide = greatest == least ? narrow : nanometres("greatest", greatest);
        return checked(places, narrow, wide);
    }

    private static long[] nanometres(String name, double[] millimetres) {
        long[] nanometres = new long[Require.given(name, millimetres).length];
        for (int index = 0; index < nanometres.length; index++) {
            double value = millimetres[index];
            Require.that(Math.abs(value) < 1e12, name, "must be within 1e12 of zero", value);
            nanometres[index] = Length.ofMillimetres(value).nanometres();
        }
        return nanometres;
    }

    /** Stations on arrays that nobody else has. */
    private static Stations checked(long[] at, long[] least, long[] greatest) {
        Require.that(least.length == at.length, "least", "must be as many as at", least.length);
        Require.that(greatest.length == at.length, "greatest", "must be as many as at", greatest.length);
        for (int index = 0; index < at.length; index++) {
            if (!inRange(at[index], least[index], greatest[index])) {
                station(at[index], least[index], greatest[index]); // which says itself what it will not be
            }
        }
        return new Stations(at, least, greatest);
    }

    private static Station station(long at, long least, long greatest) {
        Length narrow = Length.ofNanometres(least);
        return new Station(Length.ofNanometres(at), narrow, least == greatest ? narrow : Length.ofNanometres(greatest));
    }

    private static boolean inRange(long at, long least, long greatest) {
        return at >= -Bounds.FARTHEST.nanometres()
                && at <= Bounds.FARTHEST.nanometres()
                && least > 0
                && least <= greatest
                && greatest <= Bounds.WIDEST.nanometres();
    }

    @Override
    public int size() {
        return at.length;
    }

    @Override
    public Station get(int index) {
        return station(at[index], least[index], greatest[index]);
    }

    /**
     * The place of a station.
     *
     * @param index which
     * @return where, along the axis
     * @throws IndexOutOfBoundsException if there is no such station
     */
    public Length at(int index) {
        return Length.ofNanometres(at[index]);
    }

    /**
     * The place of a station as a number.
     *
     * @param index which
     * @return nm along the axis
     * @throws IndexOutOfBoundsException if there is no such station
     */
    public long atNanometres(int index) {
        return at[index];
    }

    /**
     * The least diameter of a station as a number.
     *
     * @param index which
     * @return nm
     * @throws IndexOutOfBoundsException if there is no such station
     */
    public long leastNanometres(int index) {
        return least[index];
    }

    /**
     * The greatest diameter of a station as a number.
     *
     * @param index which
     * @return nm
     * @throws IndexOutOfBoundsException if there is no such station
     */
    public long greatestNanometres(int index) {
        return greatest[index];
    }

    /**
     * The narrowest of all as a number.
     *
     * @return the least diameter at any station, nm; the greatest number there is if there is no station
     */
    public long narrowestNanometres() {
        long narrowest = Long.MAX_VALUE;
        for (long diameter : least) {
            narrowest = Math.min(narrowest, diameter);
        }
        return narrowest;
    }

    /**
     * The widest of all as a number.
     *
     * @return the greatest diameter at any station, nm; the least number there is if there is no station
     */
    public long widestNanometres() {
        long widest = Long.MIN_VALUE;
        for (long diameter : greatest) {
            widest = Math.max(widest, diameter);
        }
        return widest;
    }

    /**
     * Whether every reading is the same all round.
     *
     * @return whether least and greatest diameter are one at every station
     */
    public boolean areRound() {
        return least == greatest;
    }

    /**
     * These with every diameter changed by as much.
     *
     * @param by what to add to the diameters; negative makes them smaller
     * @return the changed stations
     */
    public Stations widenedBy(Length by) {
        return widened(index -> true, by);
    }

    /**
     * These with the diameters changed of all that hold the diameters of one reading, which may have been put down at several places.
     *
     * @param reading the reading
     * @param by what to add to its diameters; negative makes them smaller
     * @return the changed stations
     */
    public Stations widenedBy(Station reading, Length by) {
        long narrow = Require.given("reading", reading).least().nanometres();
        long wide = reading.greatest().nanometres();
        return widened(index -> least[index] == narrow && greatest[index] == wide, by);
    }

    private Stations widened(IntPredicate which, Length by) {
        Require.within("by", by, -100, 100);
        long[] narrow = least.clone();
        long[] wide = areRound() ? narrow : greatest.clone();
        for (int index = 0; index < at.length; index++) {
            if (which.test(index)) {
                narrow[index] = least[index] + by.nanometres();
                wide[index] = greatest[index] + by.nanometres();
                if (!inRange(at[index], narrow[index], wide[index])) {
                    throw Require.broken("by", "must leave a diameter above zero and at most " + Bounds.WIDEST, by);
                }
            }
        }
        return new Stations(at, narrow, wide);
    }

    /**
     * These with another station in the place of one.
     *
     * @param index which
     * @param station what to put there
     * @return the changed stations
     * @throws IndexOutOfBoundsException if there is no such station
     */
    public Stations with(int index, Station station) {
        Require.given("station", station);
        long[] place = at.clone();
        long[] narrow = least.clone();
        long[] wide = greatest.clone();
        place[index] = station.at().nanometres();
        narrow[index] = station.least().nanometres();
        wide[index] = station.greatest().nanometres();
        return new Stations(place, narrow, wide);
    }
}
