package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.BoreReading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;

/**
 * Random tips and bores: rising, falling, barrelled, bell-mouthed, stepped, out of round, with a domain that may start and end
 * between two stations. Half of them have the size of the bench; the other half live on a lattice of a few nanometres, where
 * equal diameters, parallel stretches and coinciding stations are common and where every rounding shows.
 */
public final class Shapes {

    /** A tip and a bore of one size. */
    public record Pair(DiameterProfile tip, Bore bore) {}

    private record Knot(int gap, int least, int outOfRound) {}

    private Shapes() {}

    /** Pairs on the lattice and pairs of the bench, as often. */
    public static Arbitrary<Pair> pairs() {
        return Arbitraries.oneOf(lattice(), bench());
    }

    /** The same pairs over all of their stations: none starts or ends between two. */
    public static Arbitrary<Pair> wholePairs() {
        return pairs().map(pair -> new Pair(
                whole(pair.tip()), new Bore(whole(pair.bore().profile()), BoreEnd.FLAT, BoreReading.AT_STATIONS)));
    }

    /** Pairs that end inside a segment as wide at its one end as at the other by the diameter of one side or of both. */
    public static Arbitrary<Pair> cutOnCylinders() {
        Arbitrary<Integer> kinds = Arbitraries.integers().between(0, 3);
        return Combinators.combine(pairs(), kinds, kinds)
                .as((pair, up, down) -> new Pair(
                        levelEnds(pair.tip(), up),
                        new Bore(levelEnds(pair.bore().profile(), down), BoreEnd.FLAT, BoreReading.AT_STATIONS)));
    }

    /** The outermost stations given the least diameter of the next, the greatest, or both. */
    private static DiameterProfile levelEnds(DiameterProfile profile, int kind) {
        List<Station> stations = new ArrayList<>(profile.stations());
        int last = stations.size() - 1;
        stations.set(0, level(stations.get(0), stations.get(1), kind));
        stations.set(last, level(stations.get(last), stations.get(last - 1), kind));
        return profile.withStations(stations);
    }

    private static Station level(Station outer, Station inner, int kind) {
        Length least = (kind & 1) == 0 ? outer.least() : inner.least();
        Length greatest = (kind & 2) == 0 ? outer.greatest() : inner.greatest();
        return new Station(outer.at(), least.min(greatest), greatest);
    }

    private static DiameterProfile whole(DiameterProfile profile) {
        Length first = profile.stations().get(0).at();
        return DiameterProfile.of(profile.stations().stream()
                .map(station -> station.withAt(station.at().minus(first)))
                .toList());
    }

    /** A handful of nanometres long and wide. */
    public static Arbitrary<Pair> lattice() {
        return pairs(
                Arbitraries.integers().between(0, 6), 1, Arbitraries.integers().between(1, 9), 2);
    }

    /** Stations up to 15 mm apart, diameters from 9 to 9.6 mm. */
    public static Arbitrary<Pair> bench() {
        Arbitrary<Integer> gaps = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0)),
                Tuple.of(5, Arbitraries.integers().between(1, 15_000_000)));
        return pairs(gaps, 1, Arbitraries.integers().between(9_000_000, 9_600_000), 30_000);
    }

    /** As a bench has them: steps, but no slope steeper than six to one, so that a nanometre of place is worth few of diameter. */
    public static Arbitrary<Pair> gentle() {
        Arbitrary<Integer> gaps = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0)),
                Tuple.of(5, Arbitraries.integers().between(100_000, 15_000_000)));
        return pairs(gaps, 100_000, Arbitraries.integers().between(9_000_000, 9_600_000), 30_000);
    }

    private static Arbitrary<Pair> pairs(
            Arbitrary<Integer> gaps, int least, Arbitrary<Integer> diameters, int outOfRound) {
        Arbitrary<Integer> ovality = Arbitraries.frequencyOf(
                Tuple.of(2, Arbitraries.just(0)),
                Tuple.of(1, Arbitraries.integers().between(0, outOfRound)));
        Arbitrary<List<Knot>> knots = Combinators.combine(gaps, diameters, ovality)
                .as(Knot::new)
                .list()
                .ofMinSize(2)
                .ofMaxSize(7);
        Arbitrary<Tuple2<Integer, Integer>> cuts = Combinators.combine(
                        Arbitraries.integers().between(0, 40),
                        Arbitraries.integers().between(0, 40))
                .as(Tuple::of);
        return Combinators.combine(knots, cuts, knots, cuts)
                .as((up, upCuts, down, downCuts) -> new Pair(
                        profile(up, upCuts, least, false),
                        new Bore(profile(down, downCuts, least, true), BoreEnd.FLAT, BoreReading.AT_STATIONS)));
    }

    /** Cuts are in hundredths of the length; a bore's stations are moved so that its domain starts at 0. */
    private static DiameterProfile profile(
            List<Knot> knots, Tuple2<Integer, Integer> cuts, int least, boolean fromZero) {
        long[] at = new long[knots.size()];
        for (int i = 1; i < at.length; i++) {
            boolean third = i > 1 && at[i - 1] == at[i - 2];
            int wanted = knots.get(i).gap();
            long gap = wanted == 0 && (third || at.length == 2) ? least : wanted;
            at[i] = at[i - 1] + gap;
        }
        long length = at[at.length - 1];
        long from = length * cuts.get1() / 100;
        long to = length - length * cuts.get2() / 100;
        long shift = fromZero ? from : 0;
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            Knot knot = knots.get(i);
            stations.add(new Station(nm(at[i] - shift), nm(knot.least()), nm((long) knot.least() + knot.outOfRound())));
        }
        return new DiameterProfile(stations, nm(from - shift), nm(to - shift));
    }

    private static Length nm(long nanometres) {
        return Length.ofNanometres(nanometres);
    }
}
