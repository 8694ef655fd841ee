package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * An area.
 *
 * <p>A finite {@code double} of square millimetres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Area.ofSquareInches(1.0);   // = 645.16 mm2
 * }</pre>
 */
public final class Area implements Comparable<Area> {

    /** No area. */
    public static final Area ZERO = new Area(0);

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "mm2", "mm²"), DoubleText.unit(645.16, 1, "in2", "in²"));

    private final double squareMillimetres;

    private Area(double squareMillimetres) {
        this.squareMillimetres = squareMillimetres;
    }

    /**
     * The value of a number of square millimetres.
     *
     * @param squareMillimetres a finite number of square millimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Area ofSquareMillimetres(double squareMillimetres) {
        return new Area(Checks.finite("squareMillimetres", squareMillimetres));
    }

    /**
     * The value of a number of square inches.
     *
     * @param squareInches a finite number of square inches
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Area ofSquareInches(double squareInches) {
        return new Area(Checks.inRange("squareInches", Checks.finite("squareInches", squareInches) * 645.16));
    }

    /**
     * Reads an area such as {@code 645.16 mm2}; units {@code mm2}, {@code in2}.
     *
     * @param text number and unit
     * @return the area
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Area parse(String text) {
        return new Area(TEXT.parse(text));
    }

    /**
     * The value in square millimetres.
     *
     * @return square millimetres
     */
    public double squareMillimetres() {
        return squareMillimetres;
    }

    /**
     * The value in square inches.
     *
     * @return square inches
     */
    public double squareInches() {
        return Checks.inRange("squareInches", squareMillimetres / 645.16);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Area plus(Area other) {
        Objects.requireNonNull(other, "other");
        return new Area(Checks.inRange("other", squareMillimetres + other.squareMillimetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Area minus(Area other) {
        Objects.requireNonNull(other, "other");
        return new Area(Checks.inRange("other", squareMillimetres - other.squareMillimetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Area scaledBy(double ratio) {
        return new Area(Checks.inRange("ratio", squareMillimetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Area other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", squareMillimetres / Checks.divisor("other", other.squareMillimetres, other));
    }

    @Override
    public int compareTo(Area other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(squareMillimetres, other.squareMillimetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Area other && squareMillimetres == other.squareMillimetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(squareMillimetres);
    }

    /** The number with its unit, {@code mm2}. */
    @Override
    public String toString() {
        return squareMillimetres + " mm2";
    }
}
