package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A length, held as an exact whole number of nanometres.
 *
 * <p>One inch is 25 400 000 nm by definition, so 0.0001 in and 1/64 in are whole and sums of bench readings are exact.
 * Factories that take a {@code double} round once to the grid, ties to even; {@link #parse(String)} and
 * {@link #ofInchFraction(long, long, long)} are exact or fail. The range is that of a {@code long}, about 9.2 million
 * kilometres; leaving it is an {@link ArithmeticException}. A length may be negative (a difference, a trim that cannot be made).
 *
 * <pre>{@code
 * Length raw = Length.parse("39 1/32 in");
 * Length trim = Length.ofInches(1.0);
 * raw.minus(trim).inches();      // = 38.03125
 * raw.minus(trim);               // = 965.99375 mm
 * Notation.SIXTY_FOURTHS.print(raw.minus(trim)).text();   // = 38 1/32 in
 * }</pre>
 */
public final class Length implements Comparable<Length> {

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final long PER_MILLIMETRE = 1_000_000L;
    private static final long PER_INCH = 25_400_000L;

    private static final GridText TEXT = new GridText(
            "Length",
            "nanometres",
            GridText.unit(PER_MILLIMETRE, "mm"),
            GridText.unit(PER_INCH, "in", "\"", "inch", "inches", "″", "”"),
            GridText.unit(10 * PER_MILLIMETRE, "cm"),
            GridText.unit(1000 * PER_MILLIMETRE, "m"),
            GridText.unit(25_400, "thou"),
            GridText.unit(1000, "um", "µm"),
            GridText.unit(1, "nm"));

    private final long nanometres;

    private Length(long nanometres) {
        this.nanometres = nanometres;
    }

    /**
     * The length of a whole number of nanometres; exact.
     *
     * @param nanometres any {@code long}
     * @return the length
     */
    public static Length ofNanometres(long nanometres) {
        return new Length(nanometres);
    }

    /**
     * The length nearest to a number of micrometres; rounds to the nanometre, ties to even.
     *
     * @param micrometres a finite number of micrometres
     * @return the length
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Length ofMicrometres(double micrometres) {
        return ofNanometres(Checks.toGrid("micrometres", micrometres, 1e3));
    }

    /**
     * The length nearest to a number of millimetres; rounds to the nanometre, ties to even.
     *
     * @param millimetres a finite number of millimetres
     * @return the length
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Length ofMillimetres(double millimetres) {
        return ofNanometres(Checks.toGrid("millimetres", millimetres, 1e6));
    }

    /**
     * The length nearest to a number of inches; rounds to the nanometre, ties to even.
     *
     * @param inches a finite number of inches
     * @return the length
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Length ofInches(double inches) {
        return ofNanometres(Checks.toGrid("inches", inches, 25.4e6));
    }

    /**
     * The length nearest to a number of thousandths of an inch; rounds to the nanometre, ties to even.
     *
     * @param thousandths a finite number of thousandths of an inch
     * @return the length
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Length ofThousandths(double thousandths) {
        return ofNanometres(Checks.toGrid("thousandths", thousandths, 25.4e3));
    }

    /**
     * The length of a mixed number of inches, {@code whole + numerator / denominator}; exact or fails.
     *
     * @param whole whole inches, not negative
     * @param numerator numerator of the fraction, not negative
     * @param denominator denominator of the fraction, above zero
     * @return the length
     * @throws IllegalArgumentException if an argument is out of range or the fraction is no whole number of nanometres
     *     (a third of an inch is not)
     * @throws ArithmeticException if it is out of range
     */
    public static Length ofInchFraction(long whole, long numerator, long denominator) {
        Checks.atLeastZero("whole", whole);
        Checks.atLeastZero("numerator", numerator);
        Checks.aboveZero("denominator", denominator);
        long parts = Checks.product("numerator", PER_INCH, numerator);
        if (parts % denominator != 0) {
            throw new IllegalArgumentException(
                    "denominator must divide " + numerator + " in into whole nanometres, was " + denominator);
        }
        return ofNanometres(Checks.sum("whole", parts / denominator, Checks.product("whole", PER_INCH, whole)));
    }

    /**
     * Reads a length as it is written on a bench: {@code 37 1/2 in}, {@code 37-1/2"}, {@code .370 in}, {@code 9.4 mm}.
     *
     * <p>A number is an optional sign, then a decimal, a fraction or a whole number and a fraction (joined by blanks or one
     * hyphen); {@code ½}, {@code ¼}, {@code ¾} and the eighths may be written so. Units: {@code in}, {@code inch}, {@code inches}, {@code "},
     * {@code ″}, {@code ”}, {@code thou}, {@code nm}, {@code um},
     * {@code µm}, {@code mm}, {@code cm}, {@code m}. A missing unit is an error, and so is a value that is no whole number of nanometres.
     *
     * @param text what was written
     * @return exactly that length
     * @throws IllegalArgumentException if the text is no length, has no unit, or is not exact on the grid
     * @throws ArithmeticException if it is out of range
     */
    public static Length parse(String text) {
        return ofNanometres(TEXT.parse(text));
    }

    /**
     * This length in nanometres, exact.
     *
     * @return whole nanometres
     */
    public long nanometres() {
        return nanometres;
    }

    /**
     * This length in micrometres.
     *
     * @return micrometres, correctly rounded
     */
    public double micrometres() {
        return nanometres / 1e3;
    }

    /**
     * This length in millimetres.
     *
     * @return millimetres, correctly rounded
     */
    public double millimetres() {
        return nanometres / 1e6;
    }

    /**
     * This length in metres.
     *
     * @return metres, correctly rounded
     */
    public double metres() {
        return nanometres / 1e9;
    }

    /**
     * This length in inches.
     *
     * @return inches, correctly rounded
     */
    public double inches() {
        return nanometres / 25.4e6;
    }

    /**
     * This length in thousandths of an inch.
     *
     * @return thousandths, correctly rounded
     */
    public double thousandths() {
        return nanometres / 25.4e3;
    }

    /**
     * This length and another, end to end; exact.
     *
     * @param other the length to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Length plus(Length other) {
        Objects.requireNonNull(other, "other");
        return ofNanometres(Checks.sum("other", nanometres, other.nanometres));
    }

    /**
     * This length less another; exact.
     *
     * @param other the length to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Length minus(Length other) {
        Objects.requireNonNull(other, "other");
        return ofNanometres(Checks.difference("other", nanometres, other.nanometres));
    }

    /**
     * This length a whole number of times; exact.
     *
     * @param factor how many times
     * @return the product
     * @throws ArithmeticException if it is out of range
     */
    public Length times(long factor) {
        return ofNanometres(Checks.product("factor", nanometres, factor));
    }

    /**
     * This length scaled by a ratio; rounds to the nanometre, ties to even.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Length scaledBy(double ratio) {
        return ofNanometres(Checks.toGrid("ratio", ratio, (double) nanometres));
    }

    /**
     * Half this length; rounds to the nanometre, ties to even.
     *
     * @return half
     */
    public Length half() {
        long floor = Math.floorDiv(nanometres, 2L);
        return ofNanometres(floor + ((nanometres & 1) & (floor & 1)));
    }

    /**
     * This length the other way round.
     *
     * @return its negative
     * @throws ArithmeticException if it is out of range
     */
    public Length negated() {
        return ofNanometres(Math.negateExact(nanometres));
    }

    /**
     * This length without its sign.
     *
     * @return the absolute value
     * @throws ArithmeticException if it is out of range
     */
    public Length abs() {
        return nanometres < 0 ? negated() : this;
    }

    /**
     * How many times another length goes into this one.
     *
     * @param other a length other than zero
     * @return the ratio of the two, a pure number
     * @throws IllegalArgumentException if the other is zero
     */
    public double ratioTo(Length other) {
        Objects.requireNonNull(other, "other");
        if (other.nanometres == 0) {
            throw new IllegalArgumentException("other must not be zero, was " + other);
        }
        return (double) nanometres / other.nanometres;
    }

    /**
     * The shorter of two lengths.
     *
     * @param other the length to compare with
     * @return the lesser
     */
    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /**
     * The longer of two lengths.
     *
     * @param other the length to compare with
     * @return the greater
     */
    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * Whether this length is under another.
     *
     * @param other the length to compare with
     * @return true if it is strictly less
     */
    public boolean lessThan(Length other) {
        return compareTo(other) < 0;
    }

    /**
     * Whether this length is over another.
     *
     * @param other the length to compare with
     * @return true if it is strictly greater
     */
    public boolean moreThan(Length other) {
        return compareTo(other) > 0;
    }

    /**
     * Whether this length agrees with another to within a tolerance; {@link #equals(Object)} is exact.
     *
     * @param other the length to compare with
     * @param tolerance the largest difference allowed, not negative
     * @return true if the two differ by no more
     * @throws IllegalArgumentException if the tolerance is negative
     */
    public boolean within(Length other, Length tolerance) {
        Objects.requireNonNull(tolerance, "tolerance");
        Checks.notNegative("tolerance", tolerance.nanometres, tolerance);
        return !minus(other).abs().moreThan(tolerance);
    }

    @Override
    public int compareTo(Length other) {
        Objects.requireNonNull(other, "other");
        return Long.compare(nanometres, other.nanometres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Length other && nanometres == other.nanometres;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(nanometres);
    }

    /** The exact length in millimetres, such as {@code 952.5 mm}; {@link #parse(String)} reads it back. */
    @Override
    public String toString() {
        return TEXT.print(nanometres, 6, "mm");
    }
}
