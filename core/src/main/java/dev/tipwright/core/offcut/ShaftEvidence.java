package dev.tipwright.core.offcut;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Puts what an offcut tells into the shaft it came from.
 *
 * <pre>{@code
 * Shaft shaft = Samples.shaft();    // 39 in, 84.1 g, balances 20.25 in from its tip
 * WeighedPiece offcut = new WeighedPiece(Length.ZERO, Length.parse("2 in"), Mass.ofGrams(4.3));
 * ShaftReading reading = ShaftEvidence.weighed(shaft, List.of(offcut));
 * Shaft known = reading.shaft();
 * new ShaftCut(known, Length.ZERO, Length.parse("2 in")).mass();                     // = 4.3 g
 * new ShaftCut(known, Length.parse("2 in"), Length.parse("39 in")).mass();           // = 79.8 g
 * reading.findings().get(0).severity();                                              // = NOTE
 * }</pre>
 */
public final class ShaftEvidence {

    /** A reading is called unlike what was expected when it is over a quarter more, or over a fifth less: an assumption of this library. */
    private static final double UNLIKE = 1.25;

    private ShaftEvidence() {}

    /**
     * A shaft of which pieces were weighed.
     *
     * <p>Pieces must not overlap and must leave some of the shaft unweighed, since the saw does. The offcuts and the raw mass settle
     * what is left exactly, whatever shape the line density is given inside an offcut.
     *
     * @param shaft as it is known so far, weighed and balanced raw
     * @param pieces one or more, within the raw length, none over another
     * @return the shaft with a measured line density; unchanged, with a stop finding, if no line density above zero gives every mass
     */
    public static ShaftReading weighed(Shaft shaft, List<WeighedPiece> pieces) {
        Require.given("shaft", shaft);
        List<WeighedPiece> given = Require.someOf("pieces", pieces);
        checkPlaces(shaft, given);
        Optional<LineDensityProfile> along = along(shaft, given);
        if (along.isEmpty()) {
            Mass sum = given.stream().map(WeighedPiece::mass).reduce(Mass.ZERO, Mass::plus);
            return new ShaftReading(
                    shaft,
                    List.of(Finding.stop(
                            OffcutCode.DOES_NOT_ADD_UP,
                            Term.of("sum", "pieces together", sum),
                            Term.of("M", "raw mass", shaft.mass().mass()),
                            Term.of("b", "balance from the tip", shaft.mass().balance()))));
        }
        List<Finding> findings =
                given.stream().map(piece -> weight(shaft, piece)).toList();
        return new ShaftReading(shaft.withMass(shaft.mass().withAlong(Reading.measured(along.get()))), findings);
    }

    private static void checkPlaces(Shaft shaft, List<WeighedPiece> pieces) {
        List<WeighedPiece> sorted = new ArrayList<>(pieces);
        sorted.sort((a, b) -> a.from().compareTo(b.from()));
        Length end = Length.ZERO;
        Length weighed = Length.ZERO;
        for (WeighedPiece piece : sorted) {
            Require.that(
                    !piece.from().lessThan(end) && !piece.to().moreThan(shaft.length()),
                    "pieces",
                    "must lie within the shaft's " + shaft.length() + " and not overlap",
                    piece);
            end = piece.to();
            weighed = weighed.plus(piece.length());
        }
        Require.that(weighed.lessThan(shaft.length()), "pieces", "must leave some of the shaft unweighed", pieces);
    }

    private static Finding weight(Shaft shaft, WeighedPiece piece) {
        Mass expected = new ShaftCut(shaft, piece.from(), piece.to()).mass();
        return new Finding(
                unlike(piece.mass().grams(), expected.grams()) ? OffcutCode.WEIGHED_UNLIKE : OffcutCode.WEIGHED,
                severity(piece.mass().grams(), expected.grams()),
                List.of(
                        Term.of("from", "from the raw tip", piece.from()),
                        Term.of("to", "from the raw tip", piece.to()),
                        Term.of("m", "as weighed", piece.mass()),
                        Term.of("e", "expected", expected)));
    }

    private static boolean unlike(double read, double expected) {
        return read > expected * UNLIKE || expected > read * UNLIKE;
    }

    private static Severity severity(double read, double expected) {
        return unlike(read, expected) ? Severity.CAUTION : Severity.NOTE;
    }

    /** In parts of the raw length and of the raw mass, so that the conditions are of one size. */
    private static Optional<LineDensityProfile> along(Shaft shaft, List<WeighedPiece> pieces) {
        Length raw = shaft.length();
        TreeSet<Length> bends = new TreeSet<>(List.of(Length.ZERO, raw));
        pieces.forEach(piece -> bends.add(bend(piece, raw)));
        BentLine line = new BentLine(bends.stream().map(at -> at.ratioTo(raw)).toList());
        List<double[]> conditions = new ArrayList<>();
        conditions.add(row(line.mass(0, 1), 1));
        conditions.add(row(line.moment(0, 1), shaft.mass().balance().ratioTo(raw)));
        for (WeighedPiece piece : pieces) {
            double[] weights = line.mass(piece.from().ratioTo(raw), piece.to().ratioTo(raw));
            conditions.add(row(weights, piece.mass().ratioTo(shaft.mass().mass())));
        }
        double mean = shaft.mass().mass().grams() / raw.millimetres();
        List<Length> places = List.copyOf(bends);
        return BentLine.solve(conditions.toArray(double[][]::new)).flatMap(shares -> {
            List<LineDensityProfile.Knot> knots = new ArrayList<>();
            for (int i = 0; i < shares.length; i++) {
                if (!(shares[i] > 0 && shares[i] < 1e6)) {
                    return Optional.empty();
                }
                knots.add(
                        new LineDensityProfile.Knot(places.get(i), LineDensity.ofGramsPerMillimetre(shares[i] * mean)));
            }
            return Optional.of(new LineDensityProfile(knots));
        });
    }

    private static Length bend(WeighedPiece piece, Length raw) {
        if (piece.from().equals(Length.ZERO)) {
            return piece.to();
        }
        return piece.to().equals(raw)
                ? piece.from()
                : piece.from().plus(piece.length().half());
    }

    private static double[] row(double[] weights, double sum) {
        double[] row = Arrays.copyOf(weights, weights.length + 1);
        row[weights.length] = sum;
        return row;
    }

    /**
     * A shaft whose wall was read on a cut face. A reading replaces an assumption as a whole and joins earlier readings.
     *
     * @param shaft as it is known so far
     * @param at where, from the raw tip; within the raw length
     * @param thickness radial, finish included; above zero
     * @return the shaft with the wall read there; unchanged, with a stop finding, if no hole would be left
     */
    public static ShaftReading wall(Shaft shaft, Length at, Length thickness) {
        checkPlace(shaft, at, thickness);
        Length radius = widest(shaft).half();
        if (!thickness.lessThan(radius)) {
            return impossible(shaft, "wall", at, thickness, Term.fine("l", "radius", radius));
        }
        Reading<Wall> known = shaft.section().wall();
        ThicknessProfile profile = joined(known, Wall::thickness, at, thickness);
        Wall wall = known.known()
                .map(before -> before.withThickness(profile))
                .orElseGet(() -> new Wall(profile, Reading.unknown("the shaft's maker")));
        Shaft after = shaft.withSection(shaft.section().withWall(Reading.measured(wall)));
        return read(
                after,
                "wall",
                at,
                thickness,
                known.known().map(before -> before.thickness().at(at)));
    }

    /**
     * A shaft whose finish was read: over it and under it, halved, or on a cut face. A reading replaces an assumption as a whole and
     * joins earlier readings.
     *
     * @param shaft as it is known so far
     * @param at where, from the raw tip; within the raw length
     * @param thickness radial; above zero
     * @return the shaft with the finish read there; unchanged, with a stop finding, if it would be as thick as the wall
     */
    public static ShaftReading finish(Shaft shaft, Length at, Length thickness) {
        checkPlace(shaft, at, thickness);
        Length most = shaft.section()
                .wall()
                .known()
                .map(wall -> wall.thickness().at(at))
                .orElse(widest(shaft).half());
        if (!thickness.lessThan(most)) {
            return impossible(shaft, "finish", at, thickness, Term.fine("l", "wall", most));
        }
        Reading<Finish> known = shaft.section().finish();
        ThicknessProfile profile = joined(known, Finish::thickness, at, thickness);
        Finish finish = known.known()
                .map(before -> before.withThickness(profile))
                .orElseGet(() -> new Finish(profile, Reading.unknown("the shaft's maker")));
        Shaft after = shaft.withSection(shaft.section().withFinish(Reading.measured(finish)));
        return read(
                after,
                "finish",
                at,
                thickness,
                known.known().map(before -> before.thickness().at(at)));
    }

    private static void checkPlace(Shaft shaft, Length at, Length thickness) {
        Require.given("shaft", shaft);
        Require.between("at", at, Length.ZERO, shaft.length());
        Require.someUpTo("thickness", thickness, 100);
    }

    private static Length widest(Shaft shaft) {
        Length widest = shaft.section().butt();
        for (Station station : shaft.section().outside().stations()) {
            widest = widest.max(station.mean());
        }
        return widest;
    }

    private static <T> ThicknessProfile joined(
            Reading<T> known, Function<T, ThicknessProfile> profile, Length at, Length thickness) {
        List<ThicknessProfile.Knot> knots = new ArrayList<>();
        if (known instanceof Reading.Measured<T> measured) {
            profile.apply(measured.value()).knots().stream()
                    .filter(knot -> !knot.at().equals(at))
                    .forEach(knots::add);
        }
        knots.add(new ThicknessProfile.Knot(at, thickness));
        knots.sort((a, b) -> a.at().compareTo(b.at()));
        return new ThicknessProfile(knots);
    }

    private static ShaftReading impossible(Shaft shaft, String what, Length at, Length thickness, Term limit) {
        return new ShaftReading(
                shaft,
                List.of(Finding.stop(
                        OffcutCode.THICKNESS_IMPOSSIBLE,
                        Term.of("what", "what was read", what),
                        Term.fine("t", "thickness", thickness),
                        Term.of("z", "from the raw tip", at),
                        Term.of("limit", "what it must be less than", limit.meaning()),
                        limit)));
    }

    private static ShaftReading read(Shaft after, String what, Length at, Length thickness, Optional<Length> expected) {
        Term name = Term.of("what", "what was read", what);
        Term reading = Term.fine("t", "thickness", thickness);
        Term place = Term.of("z", "from the raw tip", at);
        Finding finding = expected.map(before -> {
                    boolean unlike = unlike(thickness.millimetres(), before.millimetres());
                    return new Finding(
                            unlike ? OffcutCode.THICKNESS_UNLIKE : OffcutCode.THICKNESS_READ,
                            severity(thickness.millimetres(), before.millimetres()),
                            List.of(name, reading, place, Term.fine("e", "expected", before)));
                })
                .orElseGet(() -> Finding.note(OffcutCode.THICKNESS_LEARNT, name, reading, place));
        return new ShaftReading(after, List.of(finding));
    }
}
