package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A speed.
 *
 * <p>A finite {@code double} of metres a second; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Speed.ofMetresPerSecond(40);   // = 40.0 m/s
 * }</pre>
 */
public final class Speed implements Comparable<Speed> {

    /** No speed. */
    public static final Speed ZERO = new Speed(0);

    /** A mile of 1609.344 m in an hour. */
    private static final double MILE_PER_HOUR = 0.44704;

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "m/s"), DoubleText.unit(MILE_PER_HOUR, 1, "mph"));

    private final double metresPerSecond;

    private Speed(double metresPerSecond) {
        this.metresPerSecond = metresPerSecond;
    }

    /**
     * The value of a number of metres a second.
     *
     * @param metresPerSecond a finite number of metres a second
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return new Speed(Checks.finite("metresPerSecond", metresPerSecond));
    }

    /**
     * The value of a number of miles an hour.
     *
     * @param milesPerHour a finite number of miles an hour
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Speed ofMilesPerHour(double milesPerHour) {
        return new Speed(Checks.inRange("milesPerHour", Checks.finite("milesPerHour", milesPerHour) * MILE_PER_HOUR));
    }

    /**
     * Reads a speed such as {@code 20.0 m/s}; units {@code m/s}, {@code mph}.
     *
     * @param text number and unit
     * @return the speed
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Speed parse(String text) {
        return new Speed(TEXT.parse(text));
    }

    /**
     * The value in metres a second.
     *
     * @return metres a second
     */
    public double metresPerSecond() {
        return metresPerSecond;
    }

    /**
     * The value in miles an hour.
     *
     * @return miles an hour
     */
    public double milesPerHour() {
        return Checks.inRange("milesPerHour", metresPerSecond / MILE_PER_HOUR);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Speed plus(Speed other) {
        Objects.requireNonNull(other, "other");
        return new Speed(Checks.inRange("other", metresPerSecond + other.metresPerSecond));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Speed minus(Speed other) {
        Objects.requireNonNull(other, "other");
        return new Speed(Checks.inRange("other", metresPerSecond - other.metresPerSecond));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Speed scaledBy(double ratio) {
        return new Speed(Checks.inRange("ratio", metresPerSecond * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Speed other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", metresPerSecond / Checks.divisor("other", other.metresPerSecond, other));
    }

    @Override
    public int compareTo(Speed other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Speed other && metresPerSecond == other.metresPerSecond;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(metresPerSecond);
    }

    /** The number with its unit, {@code m/s}. */
    @Override
    public String toString() {
        return metresPerSecond + " m/s";
    }
}
