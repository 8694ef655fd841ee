package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * Force for an area: a stress, a strength or a modulus.
 *
 * <p>A finite {@code double} of megapascals; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Stress.ofGigapascals(207);   // = 207000.0 MPa
 * }</pre>
 */
public final class Stress implements Comparable<Stress> {

    /** No stress. */
    public static final Stress ZERO = new Stress(0);

    /** 4.4482216152605 N over 645.16 mm2. */
    private static final double POUND_PER_SQUARE_INCH = 4.4482216152605 / 645.16;

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "MPa"),
            DoubleText.unit(1000, 1, "GPa"),
            DoubleText.unit(POUND_PER_SQUARE_INCH, 1, "psi"));

    private final double megapascals;

    private Stress(double megapascals) {
        this.megapascals = megapascals;
    }

    /**
     * The value of a number of megapascals.
     *
     * @param megapascals a finite number of megapascals
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Stress ofMegapascals(double megapascals) {
        return new Stress(Checks.finite("megapascals", megapascals));
    }

    /**
     * The value of a number of gigapascals.
     *
     * @param gigapascals a finite number of gigapascals
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Stress ofGigapascals(double gigapascals) {
        return new Stress(Checks.inRange("gigapascals", Checks.finite("gigapascals", gigapascals) * 1000));
    }

    /**
     * The value of a number of pounds-force per square inch.
     *
     * @param poundsPerSquareInch a finite number of pounds-force per square inch
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Stress ofPoundsPerSquareInch(double poundsPerSquareInch) {
        return new Stress(Checks.inRange(
                "poundsPerSquareInch",
                Checks.finite("poundsPerSquareInch", poundsPerSquareInch) * POUND_PER_SQUARE_INCH));
    }

    /**
     * Reads a stress such as {@code 20.0 MPa}; units {@code MPa}, {@code GPa}, {@code psi}.
     *
     * @param text number and unit
     * @return the stress
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Stress parse(String text) {
        return new Stress(TEXT.parse(text));
    }

    /**
     * The value in megapascals.
     *
     * @return megapascals
     */
    public double megapascals() {
        return megapascals;
    }

    /**
     * The value in gigapascals.
     *
     * @return gigapascals
     */
    public double gigapascals() {
        return Checks.inRange("gigapascals", megapascals / 1000);
    }

    /**
     * The value in pounds-force per square inch.
     *
     * @return pounds-force per square inch
     */
    public double poundsPerSquareInch() {
        return Checks.inRange("poundsPerSquareInch", megapascals / POUND_PER_SQUARE_INCH);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Stress plus(Stress other) {
        Objects.requireNonNull(other, "other");
        return new Stress(Checks.inRange("other", megapascals + other.megapascals));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Stress minus(Stress other) {
        Objects.requireNonNull(other, "other");
        return new Stress(Checks.inRange("other", megapascals - other.megapascals));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Stress scaledBy(double ratio) {
        return new Stress(Checks.inRange("ratio", megapascals * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Stress other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", megapascals / Checks.divisor("other", other.megapascals, other));
    }

    @Override
    public int compareTo(Stress other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(megapascals, other.megapascals);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Stress other && megapascals == other.megapascals;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(megapascals);
    }

    /** The number with its unit, {@code MPa}. */
    @Override
    public String toString() {
        return megapascals + " MPa";
    }
}
