package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * How often something happens, such as the bending of a clamped shaft.
 *
 * <p>A finite {@code double} of cycles a minute; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Frequency.ofHertz(4.5);   // = 270.0 /min
 * }</pre>
 */
public final class Frequency implements Comparable<Frequency> {

    /** Never. */
    public static final Frequency ZERO = new Frequency(0);

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "/min", "cpm"), DoubleText.unit(60, 1, "Hz"));

    private final double perMinute;

    private Frequency(double perMinute) {
        this.perMinute = perMinute;
    }

    /**
     * The value of a number of cycles a minute.
     *
     * @param perMinute a finite number of cycles a minute
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Frequency ofPerMinute(double perMinute) {
        return new Frequency(Checks.finite("perMinute", perMinute));
    }

    /**
     * The value of a number of cycles a second.
     *
     * @param hertz a finite number of cycles a second
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Frequency ofHertz(double hertz) {
        return new Frequency(Checks.inRange("hertz", Checks.finite("hertz", hertz) * 60));
    }

    /**
     * Reads a frequency such as {@code 270.0 /min}; units {@code /min}, {@code Hz}.
     *
     * @param text number and unit
     * @return the frequency
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Frequency parse(String text) {
        return new Frequency(TEXT.parse(text));
    }

    /**
     * The value in cycles a minute.
     *
     * @return cycles a minute
     */
    public double perMinute() {
        return perMinute;
    }

    /**
     * The value in cycles a second.
     *
     * @return cycles a second
     */
    public double hertz() {
        return Checks.inRange("hertz", perMinute / 60);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Frequency plus(Frequency other) {
        Objects.requireNonNull(other, "other");
        return new Frequency(Checks.inRange("other", perMinute + other.perMinute));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Frequency minus(Frequency other) {
        Objects.requireNonNull(other, "other");
        return new Frequency(Checks.inRange("other", perMinute - other.perMinute));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Frequency scaledBy(double ratio) {
        return new Frequency(Checks.inRange("ratio", perMinute * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Frequency other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", perMinute / Checks.divisor("other", other.perMinute, other));
    }

    @Override
    public int compareTo(Frequency other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(perMinute, other.perMinute);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Frequency other && perMinute == other.perMinute;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(perMinute);
    }

    /** The number with its unit, {@code /min}. */
    @Override
    public String toString() {
        return perMinute + " /min";
    }
}
