package dev.tipwright.core.internal.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Sums, envelopes, cuts and joints of polylines against their values place by place, and their integrals against the
 * Gauss-Legendre quadrature of Commons Math. Values are whole numbers up to 20, so 1e-12 leaves room for a few roundings.
 */
class PolylineProperties {

    private static final double ROUNDING = 1e-12;

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    @Provide
    Arbitrary<Polyline> lines() {
        return Lines.any();
    }

    @Provide
    Arbitrary<Double> places() {
        return Lines.placesBetweenKnots();
    }

    @Property
    void valuesAreThoseOfTheSegment(@ForAll("lines") Polyline line, @ForAll("places") double place) {
        double expected = Lines.valueAt(line, place);
        assertThat(line.after(place)).isCloseTo(expected, within(ROUNDING));
        assertThat(line.before(place)).isCloseTo(expected, within(ROUNDING));
    }

    @Property
    void beforeAndAfterAreTheSidesOfAStep(@ForAll("lines") Polyline line) {
        for (int i = 0; i < line.size(); i++) {
            boolean first = i == 0 || line.at(i - 1) < line.at(i);
            boolean last = i == line.size() - 1 || line.at(i) < line.at(i + 1);
            if (first) {
                assertThat(line.before(line.at(i))).isEqualTo(line.value(i));
            }
            if (last) {
                assertThat(line.after(line.at(i))).isEqualTo(line.value(i));
            }
        }
    }

    @Property
    void aSumIsTheSumOfTheValues(
            @ForAll("lines") Polyline a,
            @ForAll("lines") Polyline b,
            @ForAll("places") double place,
            @ForAll @IntRange(min = -3, max = 3) int factor) {
        double expected = Lines.valueAt(a, place) + factor * Lines.valueAt(b, place);
        assertThat(Lines.valueAt(a.plus(b, factor), place)).isCloseTo(expected, within(ROUNDING));
        assertThat(Lines.valueAt(a.plus(factor), place)).isCloseTo(Lines.valueAt(a, place) + factor, within(ROUNDING));
    }

    @Property
    void theLowerEnvelopeIsTheLesserValue(
            @ForAll("lines") Polyline a, @ForAll("lines") Polyline b, @ForAll("places") double place) {
        double expected = Math.min(Lines.valueAt(a, place), Lines.valueAt(b, place));
        Polyline least = a.min(b);
        assertThat(valueIn(least, place)).isCloseTo(expected, within(ROUNDING));
        assertThat(valueIn(b.min(a), place)).isCloseTo(expected, within(ROUNDING));
        assertThat(valueIn(a.min(a), place)).isCloseTo(Lines.valueAt(a, place), within(ROUNDING));
        assertThat(least.from()).isEqualTo(a.from());
        assertThat(least.to()).isEqualTo(a.to());
    }

    @Property
    void theUpperEnvelopeIsTheGreaterValueAndMakesUpTheSum(
            @ForAll("lines") Polyline a, @ForAll("lines") Polyline b, @ForAll("places") double place) {
        double one = Lines.valueAt(a, place);
        double other = Lines.valueAt(b, place);
        assertThat(valueIn(a.max(b), place)).isCloseTo(Math.max(one, other), within(ROUNDING));
        assertThat(valueIn(a.max(b), place) + valueIn(a.min(b), place)).isCloseTo(one + other, within(ROUNDING));
    }

    /** Where two lines cross there may be a knot just at the place asked for. */
    private static double valueIn(Polyline line, double place) {
        return line.after(place);
    }

    @Property
    void aPartHasTheSameValues(
            @ForAll("lines") Polyline line,
            @ForAll @IntRange(min = 0, max = 59) int from,
            @ForAll @IntRange(min = 1, max = 60) int length,
            @ForAll("places") double place) {
        int to = Math.min(60, from + length);
        Polyline part = line.between(from, to);
        assertThat(part.from()).isEqualTo(from);
        assertThat(part.to()).isEqualTo(to);
        if (from < place && place < to) {
            assertThat(Lines.valueAt(part, place)).isCloseTo(Lines.valueAt(line, place), within(ROUNDING));
        }
    }

    @Property
    void thePartFromEndToEndIsTheWhole(@ForAll("lines") Polyline line, @ForAll("places") double place) {
        Polyline part = line.between(0, 60);
        assertThat(part.from()).isZero();
        assertThat(part.to()).isEqualTo(60);
        assertThat(part.before(0)).isEqualTo(line.after(0));
        assertThat(part.after(60)).isEqualTo(line.before(60));
        assertThat(Lines.valueAt(part, place)).isCloseTo(Lines.valueAt(line, place), within(ROUNDING));
    }

    @Property
    void aConstantAddedAsALineIsAddedEverywhere(
            @ForAll("lines") Polyline line,
            @ForAll("places") double place,
            @ForAll @IntRange(min = 1, max = 9) int value) {
        Polyline sum = line.plus(Polyline.constant(value, 0, 60), -2);
        assertThat(Lines.valueAt(sum, place)).isCloseTo(Lines.valueAt(line, place) - 2 * value, within(ROUNDING));
        assertThat(sum.size()).isEqualTo(line.size());
        assertThatIllegalArgumentException().isThrownBy(() -> line.plus(Polyline.constant(value, 0, 59), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> line.plus(Polyline.constant(value, 1, 60), 1));
    }

    /** A straight line has its least and greatest value at one of its ends, so the knots of a part tell them. */
    @Property
    void leastAndGreatestOfAPartAreThoseOfItsKnots(
            @ForAll("lines") Polyline line,
            @ForAll @IntRange(min = 0, max = 59) int from,
            @ForAll @IntRange(min = 1, max = 60) int length) {
        Polyline part = line.between(from, Math.min(60, from + length));
        assertThat(line.least(part.from(), part.to())).isEqualTo(part.value(part.least()));
        assertThat(line.greatest(part.from(), part.to())).isEqualTo(part.value(part.greatest()));
    }

    /** From each place on, what lies beyond is nowhere narrower, and somewhere as narrow. */
    @Property
    void theLeastAheadIsTheLeastOfWhatLiesBeyond(@ForAll("lines") Polyline line, @ForAll("places") double place) {
        Polyline ahead = line.leastAhead();
        assertThat(ahead.from()).isZero();
        assertThat(ahead.to()).isEqualTo(60);
        assertThat(atOrInside(ahead, place)).isCloseTo(leastFrom(line, place), within(ROUNDING));
        for (int i = 1; i < ahead.size(); i++) {
            assertThat(ahead.value(i)).isGreaterThanOrEqualTo(ahead.value(i - 1));
            assertThat(ahead.at(i)).isGreaterThanOrEqualTo(ahead.at(i - 1));
        }
    }

    /** Where the line rises past the least beyond, halfway between two places as well as anywhere, there is a new knot. */
    private static double atOrInside(Polyline line, double place) {
        for (int i = 0; i < line.size(); i++) {
            if (line.at(i) == place) {
                return line.value(i);
            }
        }
        return Lines.valueAt(line, place);
    }

    private static double leastFrom(Polyline line, double place) {
        double least = Lines.valueAt(line, place);
        for (int i = 0; i < line.size(); i++) {
            least = line.at(i) > place ? Math.min(least, line.value(i)) : least;
        }
        return least;
    }

    @Property
    void joinedLinesAreTheOneAndThenTheOther(
            @ForAll("lines") Polyline low,
            @ForAll("lines") Polyline high,
            @ForAll @IntRange(min = 1, max = 59) int joint,
            @ForAll("places") double place) {
        Polyline both = low.joined(high, joint);
        assertThat(Lines.valueAt(both, place))
                .isCloseTo(Lines.valueAt(place < joint ? low : high, place), within(ROUNDING));
        assertThat(both.before(joint)).isEqualTo(low.before(joint));
        assertThat(both.after(joint)).isEqualTo(high.after(joint));
    }

    @Property
    void aMirrorImageMirroredIsTheLineAgain(@ForAll("lines") Polyline line, @ForAll("places") double place) {
        Polyline mirrored = line.mirrored(60);
        assertThat(Lines.valueAt(mirrored, place)).isCloseTo(Lines.valueAt(line, 60 - place), within(ROUNDING));
        Polyline back = mirrored.mirrored(60);
        for (int i = 0; i < line.size(); i++) {
            assertThat(back.at(i)).isEqualTo(line.at(i));
            assertThat(back.value(i)).isEqualTo(line.value(i));
        }
    }

    @Property
    void leastAndGreatestAreTheFirstOfTheirKind(@ForAll("lines") Polyline line) {
        for (int i = 0; i < line.size(); i++) {
            assertThat(line.value(line.least())).isLessThanOrEqualTo(line.value(i));
            assertThat(line.value(line.greatest())).isGreaterThanOrEqualTo(line.value(i));
            assertThat(i < line.least() && line.value(i) == line.value(line.least()))
                    .isFalse();
            assertThat(i < line.greatest() && line.value(i) == line.value(line.greatest()))
                    .isFalse();
        }
    }

    /**
     * Five Gauss points integrate these polynomials of the fourth degree and less exactly, unit span by unit span; sixty spans of
     * up to 60^2 times 20^2 sum to 1e8, where a double has 1e-8 left, so 1e-12 of the sum.
     */
    @Property(tries = 200)
    void volumeMomentsAndIntegralAreThoseOfQuadrature(@ForAll("lines") Polyline line) {
        Solid solid = line.solid();
        double quarter = Math.PI / 4;
        check(solid.volume(), quadrature(line, z -> quarter * Math.pow(Lines.valueAt(line, z), 2)));
        check(solid.first(), quadrature(line, z -> quarter * z * Math.pow(Lines.valueAt(line, z), 2)));
        check(solid.second(), quadrature(line, z -> quarter * z * z * Math.pow(Lines.valueAt(line, z), 2)));
        check(line.integral(), quadrature(line, z -> Lines.valueAt(line, z)));
    }

    private static double quadrature(Polyline line, UnivariateFunction function) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            if (line.at(i - 1) < line.at(i)) {
                sum += GAUSS.legendre(5, line.at(i - 1), line.at(i)).integrate(function);
            }
        }
        return sum;
    }

    private static void check(double ours, double expected) {
        assertThat(ours).isCloseTo(expected, within(1e-12 * Math.abs(expected)));
    }

    /** What lies between two solids and the inner one make up the outer one. */
    @Property
    void solidsTakenApartAddUp(@ForAll("lines") Polyline a, @ForAll("lines") Polyline b) {
        Polyline inner = a.min(b);
        Solid between = a.around(inner);
        assertThat(between.volume() + inner.solid().volume())
                .isCloseTo(a.solid().volume(), within(1e-9));
        assertThat(between.first() + inner.solid().first()).isCloseTo(a.solid().first(), within(1e-7));
        assertThat(between.second() + inner.solid().second())
                .isCloseTo(a.solid().second(), within(1e-5));
    }
}
