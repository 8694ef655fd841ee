package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A force.
 *
 * <p>A finite {@code double} of newtons; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Force.ofNewtons(1500);   // = 1500.0 N
 * }</pre>
 */
public final class Force implements Comparable<Force> {

    /** No force. */
    public static final Force ZERO = new Force(0);

    /** The pound of 0.45359237 kg under the standard gravity of 9.80665 m/s2. */
    private static final double POUND_FORCE = 4.4482216152605;

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "N"), DoubleText.unit(1000, 1, "kN"), DoubleText.unit(POUND_FORCE, 1, "lbf"));

    private final double newtons;

    private Force(double newtons) {
        this.newtons = newtons;
    }

    /**
     * The value of a number of newtons.
     *
     * @param newtons a finite number of newtons
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Force ofNewtons(double newtons) {
        return new Force(Checks.finite("newtons", newtons));
    }

    /**
     * The value of a number of pounds-force.
     *
     * @param poundsForce a finite number of pounds-force
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Force ofPoundsForce(double poundsForce) {
        return new Force(Checks.inRange("poundsForce", Checks.finite("poundsForce", poundsForce) * POUND_FORCE));
    }

    /**
     * Reads a force such as {@code 20.0 N}; units {@code N}, {@code kN}, {@code lbf}.
     *
     * @param text number and unit
     * @return the force
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Force parse(String text) {
        return new Force(TEXT.parse(text));
    }

    /**
     * The value in newtons.
     *
     * @return newtons
     */
    public double newtons() {
        return newtons;
    }

    /**
     * The value in pounds-force.
     *
     * @return pounds-force
     */
    public double poundsForce() {
        return Checks.inRange("poundsForce", newtons / POUND_FORCE);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Force plus(Force other) {
        Objects.requireNonNull(other, "other");
        return new Force(Checks.inRange("other", newtons + other.newtons));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Force minus(Force other) {
        Objects.requireNonNull(other, "other");
        return new Force(Checks.inRange("other", newtons - other.newtons));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Force scaledBy(double ratio) {
        return new Force(Checks.inRange("ratio", newtons * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Force other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", newtons / Checks.divisor("other", other.newtons, other));
    }

    @Override
    public int compareTo(Force other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(newtons, other.newtons);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Force other && newtons == other.newtons;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(newtons);
    }

    /** The number with its unit, {@code N}. */
    @Override
    public String toString() {
        return newtons + " N";
    }
}
