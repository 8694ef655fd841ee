package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What an instrument of the bench is used for, and so which inputs of a club its uncertainty is that of. */
public enum BenchInput {
    /** Diameters of the bore, one input a reading. */
    BORE_DIAMETER("mm"),
    /** How deep each pin goes, the last being the depth of the bore; the foot of the chamfer counts as known. */
    BORE_DEPTH("mm"),
    /** Diameters of the raw tip, one input a reading; stations that hold the same diameter are one reading. */
    TIP_DIAMETER("mm"),
    /** Thickness of the finish. */
    FINISH("mm"),
    /** Thickness of the wall. */
    WALL("mm"),
    /** Raw length of the shaft. */
    RAW_LENGTH("mm"),
    /** Hosel mouth to ground. */
    MOUTH_TO_GROUND("mm"),
    /** Lie of the head. */
    LIE("deg"),
    /** Outside of the hosel, which the length by the 60 degree plane rests on. */
    HOSEL_OUTSIDE("mm"),
    /** Lowest point and radius of the sole, where they were measured. */
    SOLE("mm"),
    /** The frequencies timed on the raw shaft, one error for all, where there are any. */
    TIMED_FREQUENCY("/min"),
    /** How far the raw shaft was clamped for them. */
    TIMED_CLAMP("mm"),
    /** How well the cuts at tip and butt are made. */
    CUTS("mm"),
    /** How well the tip is finished. */
    FINISHED_TIP("mm"),
    /** Masses of head, shaft and grip, one input each. */
    MASS("g"),
    /** Balance point of the raw shaft. */
    BALANCE_POINT("mm"),
    /** Centre of mass of the head, where it was measured. */
    HEAD_CENTRE("mm");

    private static final double STEEP = 0.5;

    /** A nudge and what it is called. */
    record Named(String name, Nudge nudge) {}

    static final Named HEAD_CENTRE_INPUT = new Named(Measure.HEAD_CENTRE, Nudges.HEAD_CENTRE);

    private final String unit;

    BenchInput(String unit) {
        this.unit = unit;
    }

    /**
     * The unit of these inputs.
     *
     * @return mm, g, deg or /min
     */
    public String unit() {
        return unit;
    }

    /** The inputs of this kind that a club has. */
    List<Named> of(Build build) {
        return switch (this) {
            case BORE_DIAMETER -> boreDiameters(build);
            case BORE_DEPTH -> boreDepths(build);
            case TIP_DIAMETER -> tipDiameters(build);
            case FINISH -> List.of(new Named("finish", Nudges.FINISH));
            case WALL -> List.of(new Named("wall", Nudges.WALL));
            case RAW_LENGTH -> List.of(new Named("raw length", Nudges.RAW_LENGTH));
            case MOUTH_TO_GROUND -> List.of(new Named("mouth to ground", Nudges.MOUTH_TO_GROUND));
            case LIE -> List.of(new Named("lie", Nudges.LIE));
            case HOSEL_OUTSIDE -> List.of(new Named("hosel outside", Nudges.HOSEL_OUTSIDE));
            case SOLE ->
                build.parts().head().geometry().sole().known().isPresent()
                        ? List.of(
                                new Named("lowest point of the sole", Nudges.SOLE_LOWEST),
                                new Named("radius of the sole", Nudges.SOLE_RADIUS))
                        : List.of();
            case TIMED_FREQUENCY ->
                timed(build) ? List.of(new Named("timed frequency", Nudges.TIMED_FREQUENCY)) : List.of();
            case TIMED_CLAMP -> timed(build) ? List.of(new Named("timed clamp", Nudges.TIMED_CLAMP)) : List.of();
            case CUTS -> List.of(new Named("tip trim cut", Nudges.TIP_CUT), new Named("cut length", Nudges.BUTT_CUT));
            case FINISHED_TIP -> List.of(new Named("finished tip diameter", Nudges.FINISHED_TIP));
            case MASS ->
                List.of(
                        new Named("head mass", Nudges.HEAD_MASS),
                        new Named("shaft mass", Nudges.SHAFT_MASS),
                        new Named("grip mass", Nudges.GRIP_MASS));
            case BALANCE_POINT -> List.of(new Named("balance point", Nudges.BALANCE_POINT));
            case HEAD_CENTRE -> centreMeasured(build) ? List.of(HEAD_CENTRE_INPUT) : List.of();
        };
    }

    static boolean centreMeasured(Build build) {
        return build.parts().head().mass().centre() instanceof Reading.Measured;
    }

    private static boolean timed(Build build) {
        return build.parts()
                .shaft()
                .flex()
                .known()
                .filter(flex -> !flex.measured().isEmpty())
                .isPresent();
    }

    private static List<Named> boreDiameters(Build build) {
        List<Named> inputs = new ArrayList<>();
        int count = build.parts().head().bore().profile().stations().size();
        for (int i = 0; i < count; i++) {
            inputs.add(new Named("bore diameter " + (i + 1), Nudges.boreDiameter(i)));
        }
        return inputs;
    }

    private static List<Named> boreDepths(Build build) {
        List<Station> stations = build.parts().head().bore().profile().stations();
        List<Named> inputs = new ArrayList<>();
        boolean chamfer = true;
        for (int i = 1; i < stations.size() - 1; i++) {
            chamfer = chamfer && steep(stations.get(i - 1), stations.get(i));
            if (!chamfer) {
                inputs.add(new Named("pin depth " + (i + 1), Nudges.boreStation(i)));
            }
        }
        inputs.add(new Named("bore depth", Nudges.BORE_DEPTH));
        return inputs;
    }

    /** A chamfer narrows by more than half of what it goes down; no pin finds its foot. */
    private static boolean steep(Station above, Station below) {
        Length narrowing = above.mean().minus(below.mean());
        return narrowing.moreThan(below.at().minus(above.at()).scaledBy(STEEP));
    }

    private static List<Named> tipDiameters(Build build) {
        List<Station> readings = new ArrayList<>();
        for (Station station : build.parts().shaft().section().outside().stations()) {
            if (readings.stream().noneMatch(one -> sameDiameter(one, station))) {
                readings.add(station);
            }
        }
        if (readings.size() == 1) {
            return List.of(new Named("tip diameter", Nudges.TIP_DIAMETERS));
        }
        List<Named> inputs = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            inputs.add(new Named("tip diameter " + (i + 1), Nudges.tipDiameter(readings.get(i))));
        }
        return inputs;
    }

    private static boolean sameDiameter(Station one, Station other) {
        return one.least().equals(other.least()) && one.greatest().equals(other.greatest());
    }
}
