package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * An angle.
 *
 * <p>A finite {@code double} of degrees; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Angle.ofDegrees(62);   // = 62.0 deg
 * }</pre>
 */
public final class Angle implements Comparable<Angle> {

    /** No angle. */
    public static final Angle ZERO = new Angle(0);

    private static final DoubleText TEXT = new DoubleText(DoubleText.unit(1, 1, "deg", "°"));

    private final double degrees;

    private Angle(double degrees) {
        this.degrees = degrees;
    }

    /**
     * The value of a number of degrees.
     *
     * @param degrees a finite number of degrees
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Checks.finite("degrees", degrees));
    }

    /**
     * Reads an angle such as {@code 61.5 deg}; units {@code deg}.
     *
     * @param text number and unit
     * @return the angle
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Angle parse(String text) {
        return new Angle(TEXT.parse(text));
    }

    /**
     * The value in degrees.
     *
     * @return degrees
     */
    public double degrees() {
        return degrees;
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Angle plus(Angle other) {
        Objects.requireNonNull(other, "other");
        return new Angle(Checks.inRange("other", degrees + other.degrees));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Angle minus(Angle other) {
        Objects.requireNonNull(other, "other");
        return new Angle(Checks.inRange("other", degrees - other.degrees));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Angle scaledBy(double ratio) {
        return new Angle(Checks.inRange("ratio", degrees * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Angle other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", degrees / Checks.divisor("other", other.degrees, other));
    }

    /**
     * The value of a number of radians.
     *
     * @param radians a finite number of radians
     * @return the angle
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Angle ofRadians(double radians) {
        return new Angle(Checks.inRange("radians", StrictMath.toDegrees(Checks.finite("radians", radians))));
    }

    /**
     * The value in radians.
     *
     * @return radians
     */
    public double radians() {
        return StrictMath.toRadians(degrees);
    }

    @Override
    public int compareTo(Angle other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(degrees, other.degrees);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Angle other && degrees == other.degrees;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(degrees);
    }

    /** The number with its unit, {@code deg}. */
    @Override
    public String toString() {
        return degrees + " deg";
    }
}
