package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * The bending stiffness EI of a shaft at a station.
 *
 * <p>A finite {@code double} of newton square metres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * BendingStiffness.ofNewtonSquareMillimetres(2_000_000);   // = 2.0 N m2
 * }</pre>
 */
public final class BendingStiffness implements Comparable<BendingStiffness> {

    /** The stiffness of nothing. */
    public static final BendingStiffness ZERO = new BendingStiffness(0);

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "N m2", "N m²"), DoubleText.unit(1, 1e6, "N mm2", "N mm²"));

    private final double newtonSquareMetres;

    private BendingStiffness(double newtonSquareMetres) {
        this.newtonSquareMetres = newtonSquareMetres;
    }

    /**
     * The value of a number of newton square metres.
     *
     * @param newtonSquareMetres a finite number of newton square metres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static BendingStiffness ofNewtonSquareMetres(double newtonSquareMetres) {
        return new BendingStiffness(Checks.finite("newtonSquareMetres", newtonSquareMetres));
    }

    /**
     * The value of a number of newton square millimetres.
     *
     * @param newtonSquareMillimetres a finite number of newton square millimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static BendingStiffness ofNewtonSquareMillimetres(double newtonSquareMillimetres) {
        return new BendingStiffness(Checks.inRange(
                "newtonSquareMillimetres", Checks.finite("newtonSquareMillimetres", newtonSquareMillimetres) / 1e6));
    }

    /**
     * Reads a stiffness such as {@code 24.0 N m2}; units {@code N m2}, {@code N mm2}.
     *
     * @param text number and unit
     * @return the stiffness
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static BendingStiffness parse(String text) {
        return new BendingStiffness(TEXT.parse(text));
    }

    /**
     * The value in newton square metres.
     *
     * @return newton square metres
     */
    public double newtonSquareMetres() {
        return newtonSquareMetres;
    }

    /**
     * The value in newton square millimetres.
     *
     * @return newton square millimetres
     */
    public double newtonSquareMillimetres() {
        return Checks.inRange("newtonSquareMillimetres", newtonSquareMetres * 1e6);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public BendingStiffness plus(BendingStiffness other) {
        Objects.requireNonNull(other, "other");
        return new BendingStiffness(Checks.inRange("other", newtonSquareMetres + other.newtonSquareMetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public BendingStiffness minus(BendingStiffness other) {
        Objects.requireNonNull(other, "other");
        return new BendingStiffness(Checks.inRange("other", newtonSquareMetres - other.newtonSquareMetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public BendingStiffness scaledBy(double ratio) {
        return new BendingStiffness(Checks.inRange("ratio", newtonSquareMetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(BendingStiffness other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", newtonSquareMetres / Checks.divisor("other", other.newtonSquareMetres, other));
    }

    @Override
    public int compareTo(BendingStiffness other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(newtonSquareMetres, other.newtonSquareMetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof BendingStiffness other && newtonSquareMetres == other.newtonSquareMetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(newtonSquareMetres);
    }

    /** The number with its unit, {@code N m2}. */
    @Override
    public String toString() {
        return newtonSquareMetres + " N m2";
    }
}
