package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A moment of inertia: mass times distance squared.
 *
 * <p>A finite {@code double} of kilogram square centimetres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Inertia.ofGramSquareMillimetres(100_000);   // = 1.0 kg cm2
 * }</pre>
 */
public final class Inertia implements Comparable<Inertia> {

    /** No inertia. */
    public static final Inertia ZERO = new Inertia(0);

    /** 0.028349523125 kg times 2.54 cm squared. */
    private static final double OUNCE_SQUARE_INCH = 0.1828997833932500;

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "kg cm2", "kg cm²"),
            DoubleText.unit(1, 1e5, "g mm2", "g mm²"),
            DoubleText.unit(OUNCE_SQUARE_INCH, 1, "oz in2", "oz in²"));

    private final double kilogramSquareCentimetres;

    private Inertia(double kilogramSquareCentimetres) {
        this.kilogramSquareCentimetres = kilogramSquareCentimetres;
    }

    /**
     * The value of a number of kilogram square centimetres.
     *
     * @param kilogramSquareCentimetres a finite number of kilogram square centimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Inertia ofKilogramSquareCentimetres(double kilogramSquareCentimetres) {
        return new Inertia(Checks.finite("kilogramSquareCentimetres", kilogramSquareCentimetres));
    }

    /**
     * The value of a number of gram square millimetres.
     *
     * @param gramSquareMillimetres a finite number of gram square millimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Inertia ofGramSquareMillimetres(double gramSquareMillimetres) {
        return new Inertia(Checks.inRange(
                "gramSquareMillimetres", Checks.finite("gramSquareMillimetres", gramSquareMillimetres) / 1e5));
    }

    /**
     * The value of a number of avoirdupois ounce square inches.
     *
     * @param ounceSquareInches a finite number of avoirdupois ounce square inches
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Inertia ofOunceSquareInches(double ounceSquareInches) {
        return new Inertia(Checks.inRange(
                "ounceSquareInches", Checks.finite("ounceSquareInches", ounceSquareInches) * OUNCE_SQUARE_INCH));
    }

    /**
     * Reads an inertia such as {@code 2750.0 kg cm2}; units {@code kg cm2}, {@code g mm2}, {@code oz in2}.
     *
     * @param text number and unit
     * @return the inertia
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Inertia parse(String text) {
        return new Inertia(TEXT.parse(text));
    }

    /**
     * The value in kilogram square centimetres.
     *
     * @return kilogram square centimetres
     */
    public double kilogramSquareCentimetres() {
        return kilogramSquareCentimetres;
    }

    /**
     * The value in gram square millimetres.
     *
     * @return gram square millimetres
     */
    public double gramSquareMillimetres() {
        return Checks.inRange("gramSquareMillimetres", kilogramSquareCentimetres * 1e5);
    }

    /**
     * The value in avoirdupois ounce square inches.
     *
     * @return avoirdupois ounce square inches
     */
    public double ounceSquareInches() {
        return Checks.inRange("ounceSquareInches", kilogramSquareCentimetres / OUNCE_SQUARE_INCH);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Inertia plus(Inertia other) {
        Objects.requireNonNull(other, "other");
        return new Inertia(Checks.inRange("other", kilogramSquareCentimetres + other.kilogramSquareCentimetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Inertia minus(Inertia other) {
        Objects.requireNonNull(other, "other");
        return new Inertia(Checks.inRange("other", kilogramSquareCentimetres - other.kilogramSquareCentimetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Inertia scaledBy(double ratio) {
        return new Inertia(Checks.inRange("ratio", kilogramSquareCentimetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Inertia other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange(
                "other", kilogramSquareCentimetres / Checks.divisor("other", other.kilogramSquareCentimetres, other));
    }

    @Override
    public int compareTo(Inertia other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(kilogramSquareCentimetres, other.kilogramSquareCentimetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Inertia other && kilogramSquareCentimetres == other.kilogramSquareCentimetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(kilogramSquareCentimetres);
    }

    /** The number with its unit, {@code kg cm2}. */
    @Override
    public String toString() {
        return kilogramSquareCentimetres + " kg cm2";
    }
}
