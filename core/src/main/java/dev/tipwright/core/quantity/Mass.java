package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A mass, held as an exact whole number of picograms.
 *
 * <p>Grams to twelve decimals, grains (64 798.91 ug), eighths of an avoirdupois ounce and thousandths of one are all whole.
 * Factories that take a {@code double} round once to the grid, ties to even; {@link #parse(String)} is exact or fails. The range
 * is that of a {@code long}, about 9.2 tonnes; leaving it is an {@link ArithmeticException}. A mass may be negative (stock taken
 * off, a difference).
 *
 * <pre>{@code
 * Mass head = Mass.parse("263.9 g");
 * head.plus(Mass.ofGrams(2));    // = 265.9 g
 * Mass.parse("1/8 oz");          // = 3.543690390625 g
 * }</pre>
 */
public final class Mass implements Comparable<Mass> {

    /** No mass at all. */
    public static final Mass ZERO = new Mass(0);

    private static final long PER_GRAM = 1_000_000_000_000L;
    private static final long PER_OUNCE = 28_349_523_125_000L;

    private static final GridText TEXT = new GridText(
            "Mass",
            "picograms",
            GridText.unit(PER_GRAM, "g"),
            GridText.unit(PER_OUNCE, "oz"),
            GridText.unit(16 * PER_OUNCE, "lb"),
            GridText.unit(64_798_910_000L, "gr"),
            GridText.unit(1000 * PER_GRAM, "kg"),
            GridText.unit(PER_GRAM / 1000, "mg"),
            GridText.unit(1, "pg"));

    private final long picograms;

    private Mass(long picograms) {
        this.picograms = picograms;
    }

    /**
     * The mass of a whole number of picograms; exact.
     *
     * @param picograms any {@code long}
     * @return the mass
     */
    public static Mass ofPicograms(long picograms) {
        return new Mass(picograms);
    }

    /**
     * The mass nearest to a number of grams; rounds to the picogram, ties to even.
     *
     * @param grams a finite number of grams
     * @return the mass
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Mass ofGrams(double grams) {
        return ofPicograms(Checks.toGrid("grams", grams, 1e12));
    }

    /**
     * The mass nearest to a number of avoirdupois ounces; rounds to the picogram, ties to even.
     *
     * @param ounces a finite number of ounces of 28.349523125 g
     * @return the mass
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Mass ofOunces(double ounces) {
        return ofPicograms(Checks.toGrid("ounces", ounces, (double) PER_OUNCE));
    }

    /**
     * The mass nearest to a number of grains; rounds to the picogram, ties to even.
     *
     * @param grains a finite number of grains of 64.79891 mg
     * @return the mass
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Mass ofGrains(double grains) {
        return ofPicograms(Checks.toGrid("grains", grains, 64_798_910_000.0));
    }

    /**
     * Reads a mass as it is written on a bench: {@code 263.9 g}, {@code 1/8 oz}, {@code 9.3 oz}.
     *
     * <p>Numbers are as for {@link Length#parse(String)}. Units: {@code g}, {@code mg}, {@code kg}, {@code pg}, {@code oz} and
     * {@code lb} (avoirdupois), {@code gr} (grain). A missing unit is an error, and so is a value that is no whole number of
     * picograms.
     *
     * @param text what was written
     * @return exactly that mass
     * @throws IllegalArgumentException if the text is no mass, has no unit, or is not exact on the grid
     * @throws ArithmeticException if it is out of range
     */
    public static Mass parse(String text) {
        return ofPicograms(TEXT.parse(text));
    }

    /**
     * This mass in picograms, exact.
     *
     * @return whole picograms
     */
    public long picograms() {
        return picograms;
    }

    /**
     * This mass in grams.
     *
     * @return grams, correctly rounded
     */
    public double grams() {
        return picograms / 1e12;
    }

    /**
     * This mass in avoirdupois ounces.
     *
     * @return ounces, correctly rounded
     */
    public double ounces() {
        return (double) picograms / PER_OUNCE;
    }

    /**
     * This mass in grains.
     *
     * @return grains, correctly rounded
     */
    public double grains() {
        return picograms / 64_798_910_000.0;
    }

    /**
     * This mass and another; exact.
     *
     * @param other the mass to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Mass plus(Mass other) {
        Objects.requireNonNull(other, "other");
        return ofPicograms(Checks.sum("other", picograms, other.picograms));
    }

    /**
     * This mass less another; exact.
     *
     * @param other the mass to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Mass minus(Mass other) {
        Objects.requireNonNull(other, "other");
        return ofPicograms(Checks.difference("other", picograms, other.picograms));
    }

    /**
     * This mass a whole number of times; exact.
     *
     * @param factor how many times
     * @return the product
     * @throws ArithmeticException if it is out of range
     */
    public Mass times(long factor) {
        return ofPicograms(Checks.product("factor", picograms, factor));
    }

    /**
     * This mass scaled by a ratio; rounds to the picogram, ties to even.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Mass scaledBy(double ratio) {
        return ofPicograms(Checks.toGrid("ratio", ratio, (double) picograms));
    }

    /**
     * This mass the other way round.
     *
     * @return its negative
     * @throws ArithmeticException if it is out of range
     */
    public Mass negated() {
        return ofPicograms(Math.negateExact(picograms));
    }

    /**
     * This mass without its sign.
     *
     * @return the absolute value
     * @throws ArithmeticException if it is out of range
     */
    public Mass abs() {
        return picograms < 0 ? negated() : this;
    }

    /**
     * How many times another mass goes into this one.
     *
     * @param other a mass other than zero
     * @return the ratio of the two, a pure number
     * @throws IllegalArgumentException if the other is zero
     */
    public double ratioTo(Mass other) {
        Objects.requireNonNull(other, "other");
        if (other.picograms == 0) {
            throw new IllegalArgumentException("other must not be zero, was " + other);
        }
        return (double) picograms / other.picograms;
    }

    /**
     * The moment of this mass at a distance; rounds as doubles do.
     *
     * @param distance the lever arm, signed
     * @return mass times distance
     */
    public FirstMoment at(Length distance) {
        Objects.requireNonNull(distance, "distance");
        return FirstMoment.ofGramMillimetres(grams() * distance.millimetres());
    }

    /**
     * The lighter of two masses.
     *
     * @param other the mass to compare with
     * @return the lesser
     */
    public Mass min(Mass other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /**
     * The heavier of two masses.
     *
     * @param other the mass to compare with
     * @return the greater
     */
    public Mass max(Mass other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * Whether this mass is under another.
     *
     * @param other the mass to compare with
     * @return true if it is strictly less
     */
    public boolean lessThan(Mass other) {
        return compareTo(other) < 0;
    }

    /**
     * Whether this mass is over another.
     *
     * @param other the mass to compare with
     * @return true if it is strictly greater
     */
    public boolean moreThan(Mass other) {
        return compareTo(other) > 0;
    }

    /**
     * Whether this mass agrees with another to within a tolerance; {@link #equals(Object)} is exact.
     *
     * @param other the mass to compare with
     * @param tolerance the largest difference allowed, not negative
     * @return true if the two differ by no more
     * @throws IllegalArgumentException if the tolerance is negative
     */
    public boolean within(Mass other, Mass tolerance) {
        Objects.requireNonNull(tolerance, "tolerance");
        Checks.notNegative("tolerance", tolerance.picograms, tolerance);
        return !minus(other).abs().moreThan(tolerance);
    }

    @Override
    public int compareTo(Mass other) {
        Objects.requireNonNull(other, "other");
        return Long.compare(picograms, other.picograms);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Mass other && picograms == other.picograms;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(picograms);
    }

    /** The exact mass in grams, such as {@code 263.9 g}; {@link #parse(String)} reads it back. */
    @Override
    public String toString() {
        return TEXT.print(picograms, 12, "g");
    }
}
