package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleBinaryOperator;
import java.util.function.UnaryOperator;

/**
 * A ready nudge for each measured input of a club and for each cut: lengths move by millimetres, masses by grams,
 * angles by degrees, frequencies by cycles a minute.
 *
 * <p>The moved value is worked out in doubles and rounded once, to the nanometre or picogram that a {@link Length} or
 * {@link Mass} counts. A first-order budget steps by an eighth of a standard uncertainty, so a sensitivity is good to
 * about {@code 4 nm / u}: one part in six hundred for a gauge pin of 0.0001 in, finer for every other instrument of a
 * bench, and far below the doubt about {@code u} itself.
 *
 * <p>Where a value could not be smaller (a finish that is not there, a tip or a butt that is not cut), the nudge leaves it.
 */
public final class Nudges {

    private static final double FARTHEST = 1e4;

    private Nudges() {}

    /** Mass of the head, g. */
    public static final Nudge HEAD_MASS = part((club, g) ->
            club.headMass = club.headMass.withMass(club.headMass.mass().plus(grams(g))));

    /** Hosel mouth to ground, mm. */
    public static final Nudge MOUTH_TO_GROUND = part(
            (club, mm) -> club.geometry = club.geometry.withMouthToGround(moved(club.geometry.mouthToGround(), mm)));

    /** Lie of the head, degrees. */
    public static final Nudge LIE = part((club, degrees) -> club.geometry =
            club.geometry.withLie(Angle.ofDegrees(club.geometry.lie().degrees() + degrees(degrees))));

    /** Outside of the hosel, mm; the height of the shaft axis over a level plane counts as half of it. */
    public static final Nudge HOSEL_OUTSIDE =
            part((club, mm) -> club.hosel = club.hosel.withOutside(moved(club.hosel.outside(), mm)));

    /** Where the sole touches the ground, toe-ward of the axis, mm; nothing where the sole was not measured. */
    public static final Nudge SOLE_LOWEST = sole((sole, mm) -> sole.withLowest(moved(sole.lowest(), mm)));

    /** Radius of the sole, mm; nothing where the sole was not measured. */
    public static final Nudge SOLE_RADIUS = sole((sole, mm) -> sole.withRadius(atLeastZero(moved(sole.radius(), mm))));

    /** The head's centre of mass along the axis, mm; one that is not known counts as {@link HeadCentreRule} has it. */
    public static final Nudge HEAD_CENTRE = part(Nudges::centre);

    /** The depth of the bore, mm: its last reading, and the tip with it if that sits on the bottom. */
    public static final Nudge BORE_DEPTH = part(Nudges::depth);

    /** All diameters of the bore, mm: what the set of pins is off. */
    public static final Nudge BORE_DIAMETERS = bore((profile, mm) -> profile.widenedBy(mm(mm)));

    /** Raw length of the shaft, mm; it is cut to the same length all the same, so the butt offcut takes it up. */
    public static final Nudge RAW_LENGTH = part(Nudges::rawLength);

    /** Mass of the raw shaft, g; what is known of the mass along it goes with it in proportion. */
    public static final Nudge SHAFT_MASS = part((club, g) -> {
        Mass before = club.shaftMass.mass();
        Mass after = before.plus(grams(g));
        double ratio = after.ratioTo(before);
        club.shaftMass =
                along(club.shaftMass, (place, density) -> ratio * density).withMass(after);
    });

    /**
     * Balance point of the raw shaft from its tip, mm; what is known of the mass along it is tilted about its middle, so that it weighs the
     * same and balances there.
     */
    public static final Nudge BALANCE_POINT = part((club, mm) -> {
        double length = club.length.millimetres();
        double tilt = 12 * club.shaftMass.mass().grams() * mm / (length * length * length);
        club.shaftMass = along(club.shaftMass, (place, density) -> density + tilt * (place - length / 2))
                .withBalance(moved(club.shaftMass.balance(), mm));
    });

    /** All frequencies timed on the raw shaft, cycles a minute; nothing where none was timed. */
    public static final Nudge TIMED_FREQUENCY = timed((timed, perMinute) ->
            timed.withFrequency(timed.frequency().plus(Frequency.ofPerMinute(perMinute(perMinute)))));

    /** Length held in the clamp while the raw shaft was timed, mm; nothing where it was not timed. */
    public static final Nudge TIMED_CLAMP =
            timed((timed, mm) -> timed.withClamp(atLeastZero(moved(timed.clamp(), mm))));

    /** All diameters of the raw tip, over the finish, mm. */
    public static final Nudge TIP_DIAMETERS = tip(Stations::widenedBy);

    /** Thickness of the finish, radial, mm; none where there is none. */
    public static final Nudge FINISH = part((club, mm) -> club.finish
            .known()
            .map(finish -> finish.withThickness(thicker(finish.thickness(), mm)))
            .ifPresent(moved -> club.finish = Reading.measured(moved)));

    /** Thickness of the wall, finish included, mm. */
    public static final Nudge WALL = part((club, mm) -> club.wall
            .known()
            .map(wall -> wall.withThickness(thicker(wall.thickness(), mm)))
            .ifPresent(moved -> club.wall = Reading.measured(moved)));

    /** Mass of the grip, g. */
    public static final Nudge GRIP_MASS =
            part((club, g) -> club.grip = club.grip.withMass(club.grip.mass().plus(grams(g))));

    /** The grip's cap, mm. */
    public static final Nudge GRIP_CAP =
            part((club, mm) -> club.grip = club.grip.withCap(atLeastZero(moved(club.grip.cap(), mm))));

    /** The grip's centre of mass from its top, mm. */
    public static final Nudge GRIP_CENTRE =
            part((club, mm) -> club.grip = club.grip.withCentre(moved(club.grip.centre(), mm)));

    /**
     * Too much cut off the tip ({@code delta > 0}) or too little, mm; the butt is marked from the hosel, so it follows. Nothing where the tip
     * is not cut.
     */
    public static final Nudge TIP_CUT = part((club, mm) -> {
        Length trim = club.tipTrim.equals(Length.ZERO) ? club.tipTrim : atLeastZero(moved(club.tipTrim, mm));
        club.buttTrim = buttTaking(club, club.tipTrim.minus(trim));
        club.tipTrim = trim;
    });

    /** The shaft cut too long ({@code delta > 0}) or too short at the butt, mm; nothing where the butt is not cut. */
    public static final Nudge BUTT_CUT = part((club, mm) -> club.buttTrim = buttTaking(club, mm(-mm)));

    /** The finished tip left too wide ({@code delta > 0}) or too narrow all along, mm. */
    public static final Nudge FINISHED_TIP = part((club, mm) -> {
        Length by = mm(mm);
        club.tip = club.tip.withFinished(Stations.of(club.tip.finished()).widenedBy(by));
    });

    /**
     * One diameter of the bore, mm.
     *
     * @param station which of the bore's stations, 0 being the mouth; one that the bore has not moves nothing
     * @return the nudge
     */
    public static Nudge boreDiameter(int station) {
        return bore((profile, mm) -> at(profile, station, one -> one.widenedBy(mm(mm))));
    }

    /**
     * How far one pin goes in, mm; it does not pass the reading before it or after it.
     *
     * @param station which of the bore's stations, 0 being the mouth; the mouth, the last and one that the bore has
     *     not move nothing: the last is {@link #BORE_DEPTH}
     * @return the nudge
     */
    public static Nudge boreStation(int station) {
        return bore((profile, mm) -> station <= 0
                        || station >= profile.stations().size() - 1
                ? profile
                : at(
                        profile,
                        station,
                        one -> one.withAt(between(Stations.of(profile.stations()), station, moved(one.at(), mm)))));
    }

    /**
     * One reading of the tip's diameter, mm: all stations that hold the same one.
     *
     * @param reading the diameter, as a station holds it
     * @return the nudge
     */
    public static Nudge tipDiameter(Station reading) {
        Require.given("reading", reading);
        return tip((stations, by) -> stations.widenedBy(reading, by));
    }

    @FunctionalInterface
    private interface Move<T> {
        T by(T value, double delta);
    }

    private static Nudge part(PartNudge nudge) {
        return nudge;
    }

    private static Nudge bore(Move<DiameterProfile> move) {
        return part((club, delta) -> club.bore = club.bore.withProfile(move.by(club.bore.profile(), delta)));
    }

    private static Nudge sole(Move<SoleShape> move) {
        return part((club, delta) -> club.geometry
                .sole()
                .known()
                .map(sole -> move.by(sole, delta))
                .ifPresent(moved -> club.geometry = club.geometry.withSole(Reading.measured(moved))));
    }

    private static Nudge timed(Move<ShaftFlex.Timed> move) {
        return part((club, delta) -> club.flex
                .known()
                .map(flex -> flex.withMeasured(flex.measured().stream()
                        .map(timed -> move.by(timed, delta))
                        .toList()))
                .ifPresent(moved -> club.flex = Reading.measured(moved)));
    }

    private static Nudge tip(BiFunction<Stations, Length, Stations> move) {
        return part((club, mm) ->
                club.outside = club.outside.withStations(move.apply(Stations.of(club.outside.stations()), mm(mm))));
    }

    private static void centre(Draft club, double mm) {
        HeadCentre centre = club.headMass.centre().known().orElseGet(() -> HeadCentreRule.of(club.head()));
        HeadCentre moved = centre.withAlong(moved(centre.along(), mm));
        club.headMass = club.headMass.withCentre(Reading.measured(moved));
    }

    private static void depth(Draft club, double mm) {
        DiameterProfile profile = club.bore.profile();
        Length before = profile.to();
        Length bottom = moved(before, mm);
        Stations stations = Stations.of(profile.stations());
        int last = stations.size() - 1;
        if (before.nanometres() == stations.atNanometres(last)) {
            bottom = between(stations, last, bottom);
            stations = stations.with(last, stations.get(last).withAt(bottom));
        } else {
            bottom = bottom.min(stations.at(last));
        }
        club.bore = club.bore.withProfile(new DiameterProfile(stations, profile.from(), bottom));
        Length seated = club.seat.insertion();
        boolean onBottom = club.seat.stop() == Stop.BORE_BOTTOM || club.seat.stop() == Stop.FLANGE;
        club.seat = club.seat.withInsertion(onBottom ? seated.plus(bottom.minus(before)) : seated.min(bottom));
    }

    private static void rawLength(Draft club, double mm) {
        Length by = mm(mm);
        Length before = club.length;
        club.length = before.plus(by);
        club.shaftMass = reaching(club.shaftMass, club.length);
        club.outside = reaching(club.outside, before, club.length);
        club.flex = reaching(club.flex, club.length);
        club.buttTrim = buttTaking(club, by);
    }

    /** What is known of the mass along a shaft, its line density in g/mm another one by place in mm and line density. */
    private static ShaftMass along(ShaftMass mass, DoubleBinaryOperator density) {
        return mass.along()
                .known()
                .map(along -> along.withKnots(along.knots().stream()
                        .map(knot -> new LineDensityProfile.Knot(
                                knot.at(),
                                LineDensity.ofGramsPerMillimetre(density.applyAsDouble(
                                        knot.at().millimetres(), knot.density().gramsPerMillimetre()))))
                        .toList()))
                .map(along -> mass.withAlong(Reading.measured(along)))
                .orElse(mass);
    }

    /** What is known of the mass along a shaft must reach its end: the last knot goes along when it has to. */
    private static ShaftMass reaching(ShaftMass mass, Length length) {
        return mass.along()
                .known()
                .filter(along -> along.end().lessThan(length))
                .map(along -> {
                    List<LineDensityProfile.Knot> knots = new ArrayList<>(along.knots());
                    LineDensityProfile.Knot last = knots.remove(knots.size() - 1);
                    knots.add(new LineDensityProfile.Knot(length, last.density()));
                    return mass.withAlong(Reading.measured(along.withKnots(knots)));
                })
                .orElse(mass);
    }

    /** A diameter read at the very end goes along with it. */
    private static DiameterProfile reaching(DiameterProfile outside, Length before, Length length) {
        if (!outside.to().equals(before)) {
            return outside;
        }
        Stations stations = Stations.of(outside.stations());
        int last = stations.size() - 1;
        Station farthest = stations.get(last);
        return new DiameterProfile(
                stations.with(last, farthest.withAt(farthest.at().max(length))), outside.from(), length);
    }

    /** So does a stiffness. */
    private static Reading<ShaftFlex> reaching(Reading<ShaftFlex> flex, Length length) {
        return flex.known()
                .flatMap(known -> known.shape()
                        .known()
                        .filter(StiffnessShape.AtStations.class::isInstance)
                        .map(shape -> Reading.measured(known.withShape(
                                Reading.measured(reaching((StiffnessShape.AtStations) shape, length))))))
                .orElse(flex);
    }

    private static StiffnessShape reaching(StiffnessShape.AtStations shape, Length length) {
        List<StiffnessShape.Knot> knots = new ArrayList<>(shape.knots());
        StiffnessShape.Knot last = knots.remove(knots.size() - 1);
        knots.add(new StiffnessShape.Knot(last.at().max(length), last.stiffness()));
        return new StiffnessShape.AtStations(knots);
    }

    /** The butt trim when it takes up a change in what stands above the mark; a butt that is not cut takes up none. */
    private static Length buttTaking(Draft club, Length change) {
        Length butt = club.buttTrim;
        return butt.equals(Length.ZERO) ? butt : atLeastZero(butt.plus(change));
    }

    private static DiameterProfile at(DiameterProfile profile, int station, UnaryOperator<Station> move) {
        Stations stations = Stations.of(profile.stations());
        return station < 0 || station >= stations.size()
                ? profile
                : profile.withStations(stations.with(station, move.apply(stations.get(station))));
    }

    /** A place that stays strictly between its neighbours', where it was so. */
    private static Length between(Stations stations, int station, Length place) {
        long at = stations.atNanometres(station);
        long moved = place.nanometres();
        if (station > 0) {
            moved = Math.max(moved, Math.min(at, stations.atNanometres(station - 1) + 1));
        }
        if (station < stations.size() - 1) {
            moved = Math.min(moved, Math.max(at, stations.atNanometres(station + 1) - 1));
        }
        return Length.ofNanometres(moved);
    }

    private static ThicknessProfile thicker(ThicknessProfile profile, double mm) {
        Length by = mm(mm);
        ThicknessProfile.Knot[] knots = profile.knots().toArray(ThicknessProfile.Knot[]::new);
        for (int i = 0; i < knots.length; i++) {
            Length thickness = knots[i].thickness();
            if (!thickness.equals(Length.ZERO)) {
                knots[i] = new ThicknessProfile.Knot(knots[i].at(), atLeastZero(thickness.plus(by)));
            }
        }
        return profile.withKnots(List.of(knots));
    }

    private static Length mm(double delta) {
        return moved(Length.ZERO, delta);
    }

    private static Length moved(Length length, double mm) {
        Require.that(Math.abs(mm) <= FARTHEST, "delta", "must be from -10000 to 10000 mm", mm);
        return length.plus(Length.ofMillimetres(mm));
    }

    private static Mass grams(double delta) {
        Require.that(Math.abs(delta) <= FARTHEST, "delta", "must be from -10000 to 10000 g", delta);
        return Mass.ofGrams(delta);
    }

    private static double degrees(double delta) {
        Require.that(Math.abs(delta) <= FARTHEST, "delta", "must be from -10000 to 10000 deg", delta);
        return delta;
    }

    private static double perMinute(double delta) {
        Require.that(Math.abs(delta) <= FARTHEST, "delta", "must be from -10000 to 10000 /min", delta);
        return delta;
    }

    private static Length atLeastZero(Length length) {
        return length.max(Length.ZERO);
    }
}
