package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
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
 * <p>Where a value could not be smaller (a finish that is not there, a butt that is not cut), the nudge leaves it.
 */
public final class Nudges {

    private static final double FARTHEST = 1e4;

    private Nudges() {}

    /** Mass of the head, g. */
    public static final Nudge HEAD_MASS = head(
            (head, g) -> head.withMass(head.mass().withMass(head.mass().mass().plus(grams(g)))));

    /** Hosel mouth to ground, mm. */
    public static final Nudge MOUTH_TO_GROUND = head((head, mm) -> head.withGeometry(
            head.geometry().withMouthToGround(head.geometry().mouthToGround().plus(mm(mm)))));

    /** Lie of the head, degrees. */
    public static final Nudge LIE = head((head, degrees) -> head.withGeometry(
            head.geometry().withLie(Angle.ofDegrees(head.geometry().lie().degrees() + degrees(degrees)))));

    /** Outside of the hosel, mm; the height of the shaft axis over a level plane counts as half of it. */
    public static final Nudge HOSEL_OUTSIDE = head((head, mm) ->
            head.withHosel(head.hosel().withOutside(head.hosel().outside().plus(mm(mm)))));

    /** Where the sole touches the ground, toe-ward of the axis, mm; nothing where the sole was not measured. */
    public static final Nudge SOLE_LOWEST =
            sole((sole, mm) -> sole.withLowest(sole.lowest().plus(mm(mm))));

    /** Radius of the sole, mm; nothing where the sole was not measured. */
    public static final Nudge SOLE_RADIUS =
            sole((sole, mm) -> sole.withRadius(atLeastZero(sole.radius().plus(mm(mm)))));

    /** The head's centre of mass along the axis, mm; one that is not known counts as {@link HeadCentreRule} has it. */
    public static final Nudge HEAD_CENTRE = head(Nudges::centre);

    /** The depth of the bore, mm: its last reading, and the tip with it if that sits on the bottom. */
    public static final Nudge BORE_DEPTH = Nudges::depth;

    /** All diameters of the bore, mm: what the set of pins is off. */
    public static final Nudge BORE_DIAMETERS = bore((profile, mm) -> profile.widenedBy(mm(mm)));

    /** Raw length of the shaft, mm; it is cut to the same length all the same, so the butt offcut takes it up. */
    public static final Nudge RAW_LENGTH = Nudges::rawLength;

    /** Mass of the raw shaft, g. */
    public static final Nudge SHAFT_MASS = shaft((shaft, g) ->
            shaft.withMass(shaft.mass().withMass(shaft.mass().mass().plus(grams(g)))));

    /** Balance point of the raw shaft from its tip, mm. */
    public static final Nudge BALANCE_POINT = shaft((shaft, mm) ->
            shaft.withMass(shaft.mass().withBalance(shaft.mass().balance().plus(mm(mm)))));

    /** All frequencies timed on the raw shaft, cycles a minute; nothing where none was timed. */
    public static final Nudge TIMED_FREQUENCY = timed((timed, perMinute) ->
            timed.withFrequency(timed.frequency().plus(Frequency.ofPerMinute(perMinute(perMinute)))));

    /** Length held in the clamp while the raw shaft was timed, mm; nothing where it was not timed. */
    public static final Nudge TIMED_CLAMP =
            timed((timed, mm) -> timed.withClamp(atLeastZero(timed.clamp().plus(mm(mm)))));

    /** All diameters of the raw tip, over the finish, mm. */
    public static final Nudge TIP_DIAMETERS = tip(station -> true);

    /** Thickness of the finish, radial, mm; none where there is none. */
    public static final Nudge FINISH = shaft((shaft, mm) -> shaft.section()
            .finish()
            .known()
            .map(finish -> shaft.withSection(shaft.section()
                    .withFinish(Reading.measured(finish.withThickness(thicker(finish.thickness(), mm))))))
            .orElse(shaft));

    /** Thickness of the wall, finish included, mm. */
    public static final Nudge WALL = shaft((shaft, mm) -> shaft.section()
            .wall()
            .known()
            .map(wall -> shaft.withSection(
                    shaft.section().withWall(Reading.measured(wall.withThickness(thicker(wall.thickness(), mm))))))
            .orElse(shaft));

    /** Mass of the grip, g. */
    public static final Nudge GRIP_MASS =
            grip((grip, g) -> grip.withMass(grip.mass().plus(grams(g))));

    /** The grip's cap, mm. */
    public static final Nudge GRIP_CAP =
            grip((grip, mm) -> grip.withCap(atLeastZero(grip.cap().plus(mm(mm)))));

    /** The grip's centre of mass from its top, mm. */
    public static final Nudge GRIP_CENTRE =
            grip((grip, mm) -> grip.withCentre(grip.centre().plus(mm(mm))));

    /** The tip cut too long ({@code delta > 0}) or too short, mm; the butt is marked from the hosel, so it follows. */
    public static final Nudge TIP_CUT = (build, mm) -> {
        Work work = Require.given("build", build).work();
        Length trim = atLeastZero(work.tipTrim().plus(mm(mm)));
        return build.withWork(work.withTipTrim(trim)
                .withButtTrim(buttTaking(work, work.tipTrim().minus(trim))));
    };

    /** The shaft cut too long ({@code delta > 0}) or too short at the butt, mm; nothing where the butt is not cut. */
    public static final Nudge BUTT_CUT = (build, mm) ->
            Require.given("build", build).withWork(build.work().withButtTrim(buttTaking(build.work(), mm(-mm))));

    /** The finished tip left too wide ({@code delta > 0}) or too narrow all along, mm. */
    public static final Nudge FINISHED_TIP = (build, mm) -> {
        TipWork tip = Require.given("build", build).work().tip();
        Length by = mm(mm);
        return build.withWork(
                build.work().withTip(tip.withFinished(each(tip.finished(), station -> station.widenedBy(by)))));
    };

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
        return bore((profile, mm) ->
                station <= 0 || station >= profile.stations().size() - 1
                        ? profile
                        : at(
                                profile,
                                station,
                                one -> one.withAt(between(
                                        profile.stations(), station, one.at().plus(mm(mm))))));
    }

    /**
     * One reading of the tip's diameter, mm: all stations that hold the same one.
     *
     * @param reading the diameter, as a station holds it
     * @return the nudge
     */
    public static Nudge tipDiameter(Station reading) {
        Length least = Require.given("reading", reading).least();
        Length greatest = reading.greatest();
        return tip(
                station -> station.least().equals(least) && station.greatest().equals(greatest));
    }

    @FunctionalInterface
    private interface Move<T> {
        T by(T value, double delta);
    }

    private static Nudge head(Move<Head> move) {
        return (build, delta) -> {
            Parts parts = Require.given("build", build).parts();
            return build.withParts(parts.withHead(move.by(parts.head(), delta)));
        };
    }

    private static Nudge bore(Move<DiameterProfile> move) {
        return head((head, delta) ->
                head.withBore(head.bore().withProfile(move.by(head.bore().profile(), delta))));
    }

    private static Nudge shaft(Move<Shaft> move) {
        return (build, delta) -> {
            Parts parts = Require.given("build", build).parts();
            return build.withParts(parts.withShaft(move.by(parts.shaft(), delta)));
        };
    }

    private static Nudge sole(Move<SoleShape> move) {
        return head((head, delta) -> head.geometry()
                .sole()
                .known()
                .map(sole -> head.withGeometry(head.geometry().withSole(Reading.measured(move.by(sole, delta)))))
                .orElse(head));
    }

    private static Nudge timed(Move<ShaftFlex.Timed> move) {
        return shaft((shaft, delta) -> shaft.flex()
                .known()
                .map(flex -> shaft.withFlex(Reading.measured(flex.withMeasured(flex.measured().stream()
                        .map(timed -> move.by(timed, delta))
                        .toList()))))
                .orElse(shaft));
    }

    private static Nudge grip(Move<Grip> move) {
        return (build, delta) -> {
            Parts parts = Require.given("build", build).parts();
            return build.withParts(parts.withGrip(move.by(parts.grip(), delta)));
        };
    }

    private static Nudge tip(Predicate<Station> which) {
        return shaft((shaft, mm) -> {
            DiameterProfile outside = shaft.section().outside();
            Length by = mm(mm);
            List<Station> moved =
                    each(outside.stations(), station -> which.test(station) ? station.widenedBy(by) : station);
            return shaft.withSection(shaft.section().withOutside(outside.withStations(moved)));
        });
    }

    private static Head centre(Head head, double mm) {
        HeadCentre centre = head.mass().centre().known().orElseGet(() -> HeadCentreRule.of(head));
        HeadCentre moved = centre.withAlong(centre.along().plus(mm(mm)));
        return head.withMass(head.mass().withCentre(Reading.measured(moved)));
    }

    private static Build depth(Build build, double mm) {
        Head head = Require.given("build", build).parts().head();
        Bore bore = head.bore();
        DiameterProfile profile = bore.profile();
        Station[] moved = profile.stations().toArray(Station[]::new);
        int last = moved.length - 1;
        boolean readAtBottom = profile.to().equals(moved[last].at());
        Length bottom = profile.to().plus(mm(mm));
        if (readAtBottom) {
            bottom = between(profile.stations(), last, bottom);
            moved[last] = moved[last].withAt(bottom);
        } else {
            bottom = bottom.min(moved[last].at());
        }
        Bore deeper = bore.withProfile(new DiameterProfile(List.of(moved), profile.from(), bottom));
        Length by = bottom.minus(profile.to());
        Parts parts = build.parts().withHead(head.withBore(deeper));
        Work work = build.work();
        Length seated = work.seat().insertion();
        boolean onBottom = work.seat().stop() == Stop.BORE_BOTTOM;
        Length insertion = onBottom ? seated.plus(by) : seated.min(deeper.depth());
        return new Build(parts, work.withSeat(work.seat().withInsertion(insertion)));
    }

    private static Build rawLength(Build build, double mm) {
        Shaft shaft = Require.given("build", build).parts().shaft();
        Length by = mm(mm);
        Length length = shaft.length().plus(by);
        Shaft moved = new Shaft(
                shaft.label(),
                shaft.blank(),
                length,
                reaching(shaft.mass(), length),
                shaft.section().withOutside(reaching(shaft.section().outside(), shaft.length(), length)),
                reaching(shaft.flex(), length));
        Parts parts = build.parts().withShaft(moved);
        return new Build(parts, build.work().withButtTrim(buttTaking(build.work(), by)));
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
        List<Station> stations = new ArrayList<>(outside.stations());
        Station last = stations.remove(stations.size() - 1);
        stations.add(last.withAt(last.at().max(length)));
        return new DiameterProfile(stations, outside.from(), length);
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
    private static Length buttTaking(Work work, Length change) {
        Length butt = work.buttTrim();
        return butt.equals(Length.ZERO) ? butt : atLeastZero(butt.plus(change));
    }

    private static DiameterProfile at(DiameterProfile profile, int station, UnaryOperator<Station> move) {
        if (station < 0 || station >= profile.stations().size()) {
            return profile;
        }
        Station[] moved = profile.stations().toArray(Station[]::new);
        moved[station] = move.apply(moved[station]);
        return profile.withStations(List.of(moved));
    }

    /** A place that stays strictly between its neighbours', where it was so. */
    private static Length between(List<Station> stations, int station, Length place) {
        Length one = Length.ofNanometres(1);
        Length at = stations.get(station).at();
        Length least =
                station == 0 ? place : at.min(stations.get(station - 1).at().plus(one));
        Length most = station == stations.size() - 1
                ? place.max(least)
                : at.max(stations.get(station + 1).at().minus(one));
        return place.max(least).min(most);
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

    /** Every station moved; a loop, not a stream, since trials come this way a million times. */
    private static List<Station> each(List<Station> stations, UnaryOperator<Station> move) {
        Station[] moved = stations.toArray(Station[]::new);
        for (int i = 0; i < moved.length; i++) {
            moved[i] = move.apply(moved[i]);
        }
        return List.of(moved);
    }

    private static Length mm(double delta) {
        Require.that(Math.abs(delta) <= FARTHEST, "delta", "must be from -10000 to 10000 mm", delta);
        return Length.ofMillimetres(delta);
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
