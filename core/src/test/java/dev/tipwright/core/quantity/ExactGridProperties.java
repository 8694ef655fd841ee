package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.Set;
import java.util.function.LongSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Length and mass are whole numbers of grid steps: their arithmetic is that of {@link BigInteger}, or the range is left. */
class ExactGridProperties {

    private static final BigDecimal INCH = new BigDecimal("25.4e6");
    private static final BigDecimal OUNCE = new BigDecimal("28.349523125e12");

    @Property
    void sumsDifferencesAndProductsAreExact(@ForAll long a, @ForAll long b) {
        Length one = Length.ofNanometres(a);
        Length other = Length.ofNanometres(b);
        Mass left = Mass.ofPicograms(a);
        Mass right = Mass.ofPicograms(b);
        BigInteger x = BigInteger.valueOf(a);
        BigInteger y = BigInteger.valueOf(b);
        check(
                x.add(y),
                () -> one.plus(other).nanometres(),
                () -> left.plus(right).picograms());
        check(
                x.subtract(y),
                () -> one.minus(other).nanometres(),
                () -> left.minus(right).picograms());
        check(
                x.multiply(y),
                () -> one.times(b).nanometres(),
                () -> left.times(b).picograms());
        check(x.negate(), () -> one.negated().nanometres(), () -> left.negated().picograms());
        check(x.abs(), () -> one.abs().nanometres(), () -> left.abs().picograms());
        check(x.min(y), () -> one.min(other).nanometres(), () -> left.min(right).picograms());
        check(x.max(y), () -> one.max(other).nanometres(), () -> left.max(right).picograms());
    }

    private static void check(BigInteger expected, LongSupplier... ours) {
        for (LongSupplier own : ours) {
            if (expected.bitLength() < 64) {
                assertThat(BigInteger.valueOf(own.getAsLong())).isEqualTo(expected);
            } else {
                assertThatExceptionOfType(ArithmeticException.class).isThrownBy(own::getAsLong);
            }
        }
    }

    @Property
    void orderIsThatOfTheSteps(@ForAll long a, @ForAll long b) {
        Length one = Length.ofNanometres(a);
        Length other = Length.ofNanometres(b);
        assertThat(one.compareTo(other)).isEqualTo(Long.compare(a, b));
        assertThat(one.lessThan(other)).isEqualTo(a < b);
        assertThat(one.moreThan(other)).isEqualTo(a > b);
        assertThat(one.equals(other)).isEqualTo(a == b);
        Mass left = Mass.ofPicograms(a);
        Mass right = Mass.ofPicograms(b);
        assertThat(left.compareTo(right)).isEqualTo(Long.compare(a, b));
        assertThat(left.lessThan(right)).isEqualTo(a < b);
        assertThat(left.moreThan(right)).isEqualTo(a > b);
        assertThat(left.equals(right)).isEqualTo(a == b);
        assertThat(Length.ofNanometres(a)).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(Mass.ofPicograms(a)).isEqualTo(left).hasSameHashCodeAs(left);
    }

    @Property
    void parsingThePrintedTextIsTheIdentity(@ForAll long steps) {
        assertThat(Length.parse(Length.ofNanometres(steps).toString()).nanometres())
                .isEqualTo(steps);
        assertThat(Mass.parse(Mass.ofPicograms(steps).toString()).picograms()).isEqualTo(steps);
        // The same number in the smallest unit is the same value.
        assertThat(Length.parse(steps + " nm").nanometres()).isEqualTo(steps);
        assertThat(Mass.parse(steps + " pg").picograms()).isEqualTo(steps);
    }

    /** Millimetres and grams in a double are those of the steps, rounded once: {@link BigDecimal} rounds correctly. */
    @Property
    void everydayUnitsAreCorrectlyRounded(@ForAll long steps) {
        BigDecimal exact = new BigDecimal(steps);
        Length length = Length.ofNanometres(steps);
        // Above 2^53 steps the long itself is rounded on its way to a double: one more half unit in the last place.
        double most = Math.abs(steps) < 1L << 53 ? 0 : 1;
        assertUlps(length.millimetres(), exact.movePointLeft(6), most);
        assertUlps(length.micrometres(), exact.movePointLeft(3), most);
        assertUlps(length.metres(), exact.movePointLeft(9), most);
        assertUlps(length.inches(), exact.divide(INCH, 40, RoundingMode.HALF_EVEN), most);
        assertUlps(length.thousandths(), exact.divide(INCH.movePointLeft(3), 40, RoundingMode.HALF_EVEN), most);
        Mass mass = Mass.ofPicograms(steps);
        assertUlps(mass.grams(), exact.movePointLeft(12), most);
        assertUlps(mass.ounces(), exact.divide(OUNCE, 40, RoundingMode.HALF_EVEN), most);
        assertUlps(mass.grains(), exact.divide(new BigDecimal("64798910000"), 40, RoundingMode.HALF_EVEN), most);
    }

    private static void assertUlps(double actual, BigDecimal exact, double most) {
        double expected = exact.doubleValue();
        assertThat(Math.abs(actual - expected)).isLessThanOrEqualTo(most * Math.ulp(expected));
    }

    /** A factory that takes a double gives the step nearest to that double's exact value, ties to even. */
    @Property
    void doublesRoundOnceToTheGrid(@ForAll("sizes") double value) {
        checkNearest(
                value, new BigDecimal("1e6"), () -> Length.ofMillimetres(value).nanometres());
        checkNearest(
                value, new BigDecimal("1e3"), () -> Length.ofMicrometres(value).nanometres());
        checkNearest(value, INCH, () -> Length.ofInches(value).nanometres());
        checkNearest(
                value, INCH.movePointLeft(3), () -> Length.ofThousandths(value).nanometres());
        checkNearest(value, new BigDecimal("1e12"), () -> Mass.ofGrams(value).picograms());
        checkNearest(value, OUNCE, () -> Mass.ofOunces(value).picograms());
        checkNearest(
                value, new BigDecimal("64798910000"), () -> Mass.ofGrains(value).picograms());
        checkNearest(
                value,
                new BigDecimal(25_400_000),
                () -> Length.parse("1 in").scaledBy(value).nanometres());
    }

    private static void checkNearest(double value, BigDecimal stepsPerUnit, LongSupplier ours) {
        BigInteger nearest = new BigDecimal(value)
                .multiply(stepsPerUnit)
                .setScale(0, RoundingMode.HALF_EVEN)
                .toBigIntegerExact();
        check(nearest, ours);
    }

    /** From a nanometre to past the range, and the doubles next to ties such as 1.5 nm. */
    @Provide
    Arbitrary<Double> sizes() {
        Arbitrary<Double> anySize = Arbitraries.doubles().between(-20, 17).map(power -> Math.pow(10, power));
        Arbitrary<Double> ties = Arbitraries.integers()
                .between(-2000, 2000)
                .map(half -> (half + 0.5) / 1e6)
                .flatMap(tie -> Arbitraries.of(tie, Math.nextUp(tie), Math.nextDown(tie)));
        return Arbitraries.oneOf(anySize, anySize.map(size -> -size), ties);
    }

    /** Half of 5 is 2.5, a tie: to the even 2; half of 7 is 3.5: to the even 4. */
    @Property
    void halfRoundsTiesToEven(@ForAll long steps) {
        BigDecimal half = new BigDecimal(steps).divide(BigDecimal.valueOf(2)).setScale(0, RoundingMode.HALF_EVEN);
        assertThat(Length.ofNanometres(steps).half().nanometres()).isEqualTo(half.longValueExact());
    }

    @Example
    void halfOfFiveIsTwoAndOfSevenFour() {
        assertThat(Length.ofNanometres(5).half().nanometres()).isEqualTo(2);
        assertThat(Length.ofNanometres(7).half().nanometres()).isEqualTo(4);
        assertThat(Length.ofNanometres(-5).half().nanometres()).isEqualTo(-2);
    }

    @Property
    void withinIsADistance(@ForAll int a, @ForAll int b, @ForAll int tolerance) {
        long wide = Math.abs((long) tolerance);
        boolean near = Math.abs((long) a - b) <= wide;
        assertThat(Length.ofNanometres(a).within(Length.ofNanometres(b), Length.ofNanometres(wide)))
                .isEqualTo(near);
        assertThat(Mass.ofPicograms(a).within(Mass.ofPicograms(b), Mass.ofPicograms(wide)))
                .isEqualTo(near);
    }

    /** A moment over its mass is the distance again, over its distance the mass: two roundings of a double, then the grid. */
    @Property
    void momentMassAndDistanceGoRoundInACircle(
            @ForAll @DoubleRange(min = 1, max = 500) double grams,
            @ForAll @DoubleRange(min = 1, max = 1500) double mm) {
        Mass mass = Mass.ofGrams(grams);
        Length distance = Length.ofMillimetres(mm);
        FirstMoment moment = mass.at(distance);
        assertThat(moment.over(mass).within(distance, Length.ofNanometres(1))).isTrue();
        assertThat(moment.over(distance).within(mass, Mass.ofPicograms(1))).isTrue();
    }

    /** 213.5 oz in over 14 in is 15.25 oz: 14 times 15.25 is 213.5. */
    @Example
    void momentOverDistanceByHand() {
        FirstMoment moment = FirstMoment.ofOunceInches(213.5);
        // A double of 6 050 000 g mm has an error of 1e-9 relative to 14 in: far under a nanogram.
        assertThat(moment.over(Length.parse("14 in")).within(Mass.parse("15.25 oz"), Mass.ofPicograms(1000)))
                .isTrue();
        assertThat(Mass.parse("200 g").at(Length.parse("750 mm")).gramCentimetres())
                .isEqualTo(15_000);
        assertThat(FirstMoment.ofGramCentimetres(15_000).over(Mass.parse("200 g")))
                .isEqualTo(Length.parse("750 mm"));
    }

    /** 2 cm3 of brass at 8.53 g/cm3 (Callister, appendix B) weigh 17.06 g. */
    @Example
    void volumeOfAMaterialByHand() {
        assertThat(Volume.ofCubicCentimetres(2).of(Density.parse("8.53 g/cm3"))).isEqualTo(Mass.parse("17.06 g"));
        assertThat(Volume.parse("2000 mm3").of(Density.ofKilogramsPerCubicMetre(8530)))
                .isEqualTo(Mass.parse("17.06 g"));
    }

    /** 39 in is 2.6 times 15 in. */
    @Example
    void ratiosAndScalingByHand() {
        assertThat(Length.parse("39 in").ratioTo(Length.parse("15 in"))).isEqualTo(2.6);
        assertThat(Length.parse("15 in").scaledBy(2.6)).isEqualTo(Length.parse("39 in"));
        assertThat(Mass.parse("39 g").ratioTo(Mass.parse("15 g"))).isEqualTo(2.6);
        assertThat(Mass.parse("15 g").scaledBy(2.6)).isEqualTo(Mass.parse("39 g"));
    }

    /** A product that looks like a tie and is none: the double next to a tie, times the steps in a unit, rounds to the tie. */
    @Example
    void whatOnlyLooksLikeATieGoesWhereItLies() {
        for (int steps = -2000; steps < 2000; steps++) {
            for (double stepsPerUnit : new double[] {1e3, 1e6, 25_400, 25.4e6}) {
                double tie = (steps + 0.5) / stepsPerUnit;
                for (double value : new double[] {Math.nextDown(tie), tie, Math.nextUp(tie)}) {
                    checkNearest(
                            value, new BigDecimal(stepsPerUnit), () -> Checks.toGrid("value", value, stepsPerUnit));
                }
            }
        }
    }

    /** A hash that is the same for most values makes a list of every map that they are keys of. */
    @Example
    void hashesOfDifferentValuesDiffer() {
        Set<Integer> lengths = new HashSet<>();
        Set<Integer> masses = new HashSet<>();
        for (int steps = 1; steps <= 1000; steps++) {
            lengths.add(Length.ofMicrometres(steps).hashCode());
            masses.add(Mass.ofGrams(steps).hashCode());
        }
        assertThat(lengths).hasSizeGreaterThan(500);
        assertThat(masses).hasSizeGreaterThan(500);
    }
}
