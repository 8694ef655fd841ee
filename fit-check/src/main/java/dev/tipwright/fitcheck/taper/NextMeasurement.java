package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact;
import java.util.ArrayList;
import java.util.List;

/**
 * What to measure next while a tip is worked down, and what it should read when the work is done.
 *
 * @param means the kind of measurement
 * @param wanted finished diameters at the stations to caliper, up from the end of the tip; empty when depth is what to read
 */
public record NextMeasurement(Means means, List<Station> wanted) {

    /** A kind of measurement. */
    public enum Means {
        /** Push the tip in and read how far it goes. */
        DEPTH,
        /** Caliper the tip at marked stations. */
        CALIPER,
        /** Caliper the tip at marked stations, or seat it and read how far the grip end sweeps from side to side. */
        CALIPER_OR_SWEEP,
        /** Measure tip, bore and depth again: they disagree. */
        MEASURE_AGAIN
    }

    /**
     * Checks the values.
     *
     * @param means the kind of measurement
     * @param wanted finished diameters at the stations to caliper
     */
    public NextMeasurement {
        Require.given("means", means);
        wanted = Require.list("wanted", wanted);
    }

    static NextMeasurement after(StockLeft known, StagedTip tip) {
        return switch (known.kind()) {
            case READING -> new NextMeasurement(Means.DEPTH, List.of());
            case NOT_ENTERED -> new NextMeasurement(Means.CALIPER, ends(tip));
            case BOTTOMED -> new NextMeasurement(Means.CALIPER_OR_SWEEP, ends(tip));
            case JUMP -> new NextMeasurement(Means.CALIPER, List.of(binding(known, tip)));
            case DISAGREES -> new NextMeasurement(Means.MEASURE_AGAIN, ends(tip));
        };
    }

    /** The finished stations that are worked: those at which the tip as it is is wider, or the end of the tip. */
    private static List<Station> ends(StagedTip tip) {
        List<Station> stations = new ArrayList<>();
        for (Station station : tip.finished().stations()) {
            Length at = station.at().minus(tip.finished().from());
            boolean inside = at.nanometres() >= 0 && !at.moreThan(tip.insertion());
            if (inside && station.greatest().lessThan(tip.tip().diameterAt(at))) {
                stations.add(station.withAt(at));
            }
        }
        return stations.isEmpty() ? List.of(finishedAt(tip, Length.ZERO)) : stations;
    }

    private static Station binding(StockLeft known, StagedTip tip) {
        FirstContact contact = tip.contact(known.most());
        return finishedAt(tip, contact.tipStation());
    }

    private static Station finishedAt(StagedTip tip, Length at) {
        return Station.of(at, tip.finished().diameterAt(at));
    }
}
