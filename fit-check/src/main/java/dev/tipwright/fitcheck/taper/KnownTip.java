package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a stop tells of the tip, with no shape assumed. A witness mark at {@code z} with insertion {@code i} means the tip has the
 * diameter of the bore there, {@code d(z) = D(i - z)}; that it went in at all means that it is nowhere wider than the narrowest place it
 * has passed, {@code d(z) <= D(y)} for all {@code y} up to {@code i - z}.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * StopReading stop = StopReading.ofDepth(Length.parse("5/8 in")).withMarks(List.of(Length.parse("1/8 in")));
 * KnownTip known = KnownTip.of(bore, stop, Length.ZERO, Length.ZERO);
 * known.readings().get(0).greatest().inches();   // = 0.3598
 * known.atMost().get(0).greatest().inches();     // = 0.359
 * }</pre>
 *
 * @param readings least and greatest diameter where it was read, up from the end of the tip: caliper readings, then witness marks
 * @param atMost diameters it cannot exceed, straight between them, over what went in; empty if nothing did
 */
public record KnownTip(List<Station> readings, List<Station> atMost) {

    /**
     * Checks the values.
     *
     * @param readings least and greatest diameter where it was read
     * @param atMost diameters it cannot exceed
     */
    public KnownTip {
        readings = Require.list("readings", readings);
        atMost = Require.list("atMost", atMost);
    }

    /**
     * What a stop tells.
     *
     * @param bore the bore it was tried in
     * @param stop what was measured; an insertion at most the depth of the bore
     * @param depthTolerance how far wrong depth and marks may be, either way; zero to 100 mm
     * @param caliperTolerance how far wrong a diameter may be, either way; zero or more, less than each diameter read
     * @return readings and upper envelope
     */
    public static KnownTip of(Bore bore, StopReading stop, Length depthTolerance, Length caliperTolerance) {
        Require.given("bore", bore);
        Require.given("stop", stop);
        Require.within("depthTolerance", depthTolerance, 0, 100);
        Require.within("caliperTolerance", caliperTolerance, 0, 100);
        List<Station> readings = new ArrayList<>();
        for (Station caliper : stop.calipers()) {
            Require.that(
                    caliperTolerance.lessThan(caliper.least()),
                    "caliperTolerance",
                    "must be less than the diameter read, " + caliper.least(),
                    caliperTolerance);
            readings.add(new Station(
                    caliper.at(),
                    caliper.least().minus(caliperTolerance),
                    caliper.greatest().plus(caliperTolerance).min(Length.ofMillimetres(100))));
        }
        Optional<Length> insertion = stop.insertion();
        insertion.ifPresent(depth -> Require.that(
                !depth.moreThan(bore.depth()),
                "stop",
                "must go in at most the depth of the bore, " + bore.depth(),
                stop));
        insertion.ifPresent(
                depth -> stop.marks().forEach(mark -> readings.add(mark(bore, depth, mark, depthTolerance))));
        return new KnownTip(
                readings,
                insertion
                        .map(depth -> envelope(bore, depth.minus(depthTolerance)))
                        .orElse(List.of()));
    }

    /** The bore over all places that may have left the mark. */
    private static Station mark(Bore bore, Length insertion, Length mark, Length tolerance) {
        Length place = insertion.minus(mark);
        Fraction from = Fraction.of(place.minus(tolerance).max(Length.ZERO).nanometres());
        Fraction to = Fraction.of(place.plus(tolerance).min(bore.depth()).nanometres());
        ExactLine around =
                ExactLine.of(bore.profile(), Station::least, bore.depth()).between(from, to);
        Fraction least = around.knots().get(0).value();
        Fraction greatest = least;
        for (ExactLine.Knot knot : around.knots()) {
            least = least.min(knot.value());
            greatest = greatest.max(knot.value());
        }
        return new Station(mark, Length.ofNanometres(least.floor()), Length.ofNanometres(greatest.ceiling()));
    }

    /** Runs up with {@code z}, so a place rounded down and a value rounded up keep it an upper bound. */
    private static List<Station> envelope(Bore bore, Length insertion) {
        if (insertion.nanometres() <= 0) {
            return List.of();
        }
        ExactLine passed = ExactLine.of(bore.profile(), Station::least, insertion)
                .runningLeast()
                .mirrored(Fraction.of(insertion.nanometres()));
        List<Station> stations = new ArrayList<>();
        for (ExactLine.Knot knot : passed.knots()) {
            stations.add(Station.of(
                    Length.ofNanometres(knot.at().floor()),
                    Length.ofNanometres(knot.value().ceiling())));
        }
        return stations;
    }

    /**
     * The stock left where the tip was read, for a wanted shape: at each reading {@code d - f}.
     *
     * @param finished diameter it is to have, up from the end of the tip; readings past its end are left out
     * @return least over all readings and greatest over all; empty if none falls on the finished shape
     */
    public Optional<StockRange> stock(DiameterProfile finished) {
        Require.given("finished", finished);
        return readings.stream()
                .filter(reading -> !reading.at().moreThan(finished.length()))
                .map(reading -> {
                    Length wanted = finished.diameterAt(reading.at());
                    return new StockRange(
                            reading.least().minus(wanted), reading.greatest().minus(wanted));
                })
                .reduce((a, b) ->
                        new StockRange(a.least().min(b.least()), a.most().max(b.most())));
    }
}
