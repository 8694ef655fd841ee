package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.BoreReading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pins clearance: to the limits of fit of ISO 286-1 for plain cylinders, to cases worked by hand, and on random shapes to least,
 * greatest and mean in exact rationals.
 */
class ClearanceTest {

    /** What is known at both ends of a straight piece of the clearance, in nanometres. */
    private record Piece(BigFraction from, BigFraction to, BigFraction atFrom, BigFraction atTo) {}

    static List<CheckTable.Row> fits() {
        return CheckTable.named("iso-286-fits-10-h7").rows();
    }

    @Provide
    Arbitrary<Shapes.Pair> pairs() {
        return Shapes.pairs();
    }

    /** Smallest hole and largest shaft have the least clearance; interference is negative. */
    @ParameterizedTest
    @MethodSource("fits")
    void limitsOfFitOfIso286(CheckTable.Row row) {
        assertThat(ofCylinders(row.number("hole_lower_mm"), row.number("shaft_upper_mm"))
                        .nanometres())
                .isEqualTo(1000 * row.decimal("least_clearance_um").longValueExact());
        assertThat(ofCylinders(row.number("hole_upper_mm"), row.number("shaft_lower_mm"))
                        .nanometres())
                .isEqualTo(1000 * row.decimal("greatest_clearance_um").longValueExact());
    }

    /** .363 less .350 at the mouth, .355 less .350 at the bottom, half way between on the mean. */
    @Test
    void aCylinderInATaper() {
        Clearance clearance = Clearance.of(cylinder(350, 8000), taper(), mil(1250));
        assertThat(clearance).isEqualTo(new Clearance(mil(5), Length.ZERO, mil(13), mil(1250), mil(9), false));
    }

    /** Half in, the end of the tip is where the bore is .359. */
    @Test
    void halfWayIn() {
        Clearance clearance = Clearance.of(cylinder(350, 8000), taper(), mil(625));
        assertThat(clearance).isEqualTo(new Clearance(mil(9), Length.ZERO, mil(13), mil(625), mil(11), false));
    }

    /** Read for .5 only, the tip is judged over that .5: from .355 at the bottom to .3582 above it. */
    @Test
    void aTipThatWasReadShorterThanItGoesInIsJudgedWhereItWasRead() {
        Clearance clearance = Clearance.of(cylinder(350, 500), taper(), mil(1250));
        assertThat(clearance.least()).isEqualTo(mil(5));
        assertThat(clearance.greatest()).isEqualTo(Length.parse(".0082 in"));
        assertThat(clearance.greatestAt()).isEqualTo(mil(500));
        assertThat(clearance.mean()).isEqualTo(Length.parse(".0066 in"));
    }

    @Test
    void outOfRoundTheWorstDiametersCount() {
        DiameterProfile oval = DiameterProfile.of(
                new Station(Length.ZERO, mil(340), mil(350)), new Station(mil(8000), mil(340), mil(350)));
        Bore bore = Bore.ofReadings(
                List.of(new Station(Length.ZERO, mil(363), mil(370)), new Station(mil(1250), mil(355), mil(370))),
                BoreEnd.FLAT);
        assertThat(Clearance.of(oval, bore, mil(1250)))
                .isEqualTo(Clearance.of(cylinder(350, 8000), taper(), mil(1250)));
    }

    @Test
    void pinsGiveALowerBound() {
        Bore pinned = taper().withReading(BoreReading.BY_PINS);
        assertThat(Clearance.of(cylinder(350, 8000), pinned, mil(1250)).lowerBound())
                .isTrue();
    }

    /**
     * A shoulder on the tip that comes to lie exactly on the step of the bore: .004 below it, .005 above, and neither the wide tip in
     * the narrow bore nor the other way about. Each depth makes other sums of decimal fractions.
     */
    @ParameterizedTest
    @MethodSource("depths")
    void aShoulderThatComesToLieOnTheStep(int depth) {
        Length step = Length.ofMicrometres(10_007);
        Length up = Length.ofMicrometres(depth).minus(step);
        DiameterProfile tip = DiameterProfile.of(
                Station.of(Length.ZERO, mil(351)),
                Station.of(up, mil(351)),
                Station.of(up, mil(365)),
                Station.of(mil(8000), mil(365)));
        Bore bore = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, mil(370)),
                        Station.of(step, mil(370)),
                        Station.of(step, mil(355)),
                        Station.of(Length.ofMicrometres(depth), mil(355))),
                BoreEnd.FLAT);
        Clearance clearance = Clearance.of(tip, bore, Length.ofMicrometres(depth));
        assertThat(clearance.least()).isEqualTo(mil(4));
        assertThat(clearance.greatest()).isEqualTo(mil(5));
    }

    static List<Integer> depths() {
        return List.of(20_100, 25_001, 28_333, 31_750, 31_757, 33_003, 36_049);
    }

    /** Half a nanometre for the rounding of each answer, and a millionth for the doubles before it. */
    @Property(tries = 3000, shrinking = ShrinkingMode.BOUNDED)
    void leastGreatestAndMeanAreThoseOfExactRationals(
            @ForAll("pairs") Shapes.Pair pair, @ForAll @IntRange(min = 0, max = 100) int part) {
        long depth = pair.bore().depth().nanometres();
        long insertion = Math.max(1, depth * part / 100);
        Clearance clearance = Clearance.of(pair.tip(), pair.bore(), Length.ofNanometres(insertion));
        List<Piece> pieces = pieces(pair, insertion);
        BigFraction least = pieces.stream()
                .flatMap(piece -> List.of(piece.atFrom(), piece.atTo()).stream())
                .min(EverySegmentPair.ORDER)
                .orElseThrow();
        BigFraction greatest = pieces.stream()
                .flatMap(piece -> List.of(piece.atFrom(), piece.atTo()).stream())
                .max(EverySegmentPair.ORDER)
                .orElseThrow();
        BigFraction area = pieces.stream()
                .map(piece -> piece.to()
                        .subtract(piece.from())
                        .multiply(piece.atFrom().add(piece.atTo())))
                .reduce(BigFraction.ZERO, BigFraction::add);
        long inserted = Math.min(insertion, pair.tip().length().nanometres());
        assertRounded(clearance.least(), least);
        assertRounded(clearance.greatest(), greatest);
        assertRounded(clearance.mean(), area.divide(2 * inserted));
        assertThat(at(pieces, clearance.leastAt())).contains(least);
        assertThat(at(pieces, clearance.greatestAt())).contains(greatest);
    }

    private static void assertRounded(Length actual, BigFraction exact) {
        assertThat(exact.subtract(BigFraction.of(actual.nanometres())).abs().doubleValue())
                .isLessThanOrEqualTo(0.500001);
    }

    /** The values just before and just after a place. */
    private static List<BigFraction> at(List<Piece> pieces, Length place) {
        BigFraction here = BigFraction.of(place.nanometres());
        List<BigFraction> values = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.from().equals(here)) {
                values.add(piece.atFrom());
            }
            if (piece.to().equals(here)) {
                values.add(piece.atTo());
            }
        }
        return values;
    }

    private static List<Piece> pieces(Shapes.Pair pair, long insertion) {
        List<EverySegmentPair.Segment> up = EverySegmentPair.segments(pair.tip(), true);
        List<EverySegmentPair.Segment> down =
                EverySegmentPair.segments(pair.bore().profile(), false);
        BigFraction i = BigFraction.of(insertion);
        BigFraction end = BigFraction.of(Math.min(insertion, pair.tip().length().nanometres()));
        TreeSet<BigFraction> places = new TreeSet<>(EverySegmentPair.ORDER);
        up.forEach(segment -> places.addAll(List.of(segment.from(), segment.to())));
        down.forEach(segment -> places.addAll(List.of(i.subtract(segment.from()), i.subtract(segment.to()))));
        places.removeIf(place -> place.signum() < 0 || EverySegmentPair.ORDER.compare(place, end) > 0);
        places.addAll(List.of(BigFraction.ZERO, end));
        List<BigFraction> sorted = new ArrayList<>(places);
        List<Piece> pieces = new ArrayList<>();
        for (int k = 1; k < sorted.size(); k++) {
            BigFraction a = sorted.get(k - 1);
            BigFraction b = sorted.get(k);
            EverySegmentPair.Segment tip = over(up, a, b);
            EverySegmentPair.Segment bore = over(down, i.subtract(b), i.subtract(a));
            pieces.add(new Piece(
                    a,
                    b,
                    bore.value(i.subtract(a)).subtract(tip.value(a)),
                    bore.value(i.subtract(b)).subtract(tip.value(b))));
        }
        return pieces;
    }

    private static EverySegmentPair.Segment over(List<EverySegmentPair.Segment> all, BigFraction a, BigFraction b) {
        return all.stream()
                .filter(segment -> EverySegmentPair.ORDER.compare(segment.from(), a) <= 0
                        && EverySegmentPair.ORDER.compare(segment.to(), b) >= 0)
                .findFirst()
                .orElseThrow();
    }

    private static Length ofCylinders(double hole, double shaft) {
        Bore bore = Bore.ofTwoDiameters(
                Length.ofMillimetres(hole), Length.ofMillimetres(hole), Length.ofMillimetres(30), BoreEnd.THROUGH);
        DiameterProfile tip = DiameterProfile.cylinder(Length.ofMillimetres(shaft), Length.ofMillimetres(200));
        Clearance clearance = Clearance.of(tip, bore, Length.ofMillimetres(30));
        assertThat(clearance.least()).isEqualTo(clearance.greatest()).isEqualTo(clearance.mean());
        return clearance.least();
    }

    private static Bore taper() {
        return Bore.ofTwoDiameters(mil(363), mil(355), mil(1250), BoreEnd.FLAT);
    }

    private static DiameterProfile cylinder(int diameter, int length) {
        return DiameterProfile.cylinder(mil(diameter), mil(length));
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
