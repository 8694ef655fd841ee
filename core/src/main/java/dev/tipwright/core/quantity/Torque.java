package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A torque: force times lever.
 *
 * <p>A finite {@code double} of newton metres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Torque.ofNewtonMetres(12);   // = 12.0 N m
 * }</pre>
 */
public final class Torque implements Comparable<Torque> {

    /** No torque. */
    public static final Torque ZERO = new Torque(0);

    /** A pound-force at an inch. */
    private static final double INCH_POUND = 4.4482216152605 * 0.0254;

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "N m"), DoubleText.unit(INCH_POUND, 1, "in lbf"));

    private final double newtonMetres;

    private Torque(double newtonMetres) {
        this.newtonMetres = newtonMetres;
    }

    /**
     * The value of a number of newton metres.
     *
     * @param newtonMetres a finite number of newton metres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Torque ofNewtonMetres(double newtonMetres) {
        return new Torque(Checks.finite("newtonMetres", newtonMetres));
    }

    /**
     * The value of a number of inch pounds-force.
     *
     * @param inchPounds a finite number of inch pounds-force
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Torque ofInchPounds(double inchPounds) {
        return new Torque(Checks.inRange("inchPounds", Checks.finite("inchPounds", inchPounds) * INCH_POUND));
    }

    /**
     * Reads a torque such as {@code 20.0 N m}; units {@code N m}, {@code in lbf}.
     *
     * @param text number and unit
     * @return the torque
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Torque parse(String text) {
        return new Torque(TEXT.parse(text));
    }

    /**
     * The value in newton metres.
     *
     * @return newton metres
     */
    public double newtonMetres() {
        return newtonMetres;
    }

    /**
     * The value in inch pounds-force.
     *
     * @return inch pounds-force
     */
    public double inchPounds() {
        return Checks.inRange("inchPounds", newtonMetres / INCH_POUND);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Torque plus(Torque other) {
        Objects.requireNonNull(other, "other");
        return new Torque(Checks.inRange("other", newtonMetres + other.newtonMetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Torque minus(Torque other) {
        Objects.requireNonNull(other, "other");
        return new Torque(Checks.inRange("other", newtonMetres - other.newtonMetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Torque scaledBy(double ratio) {
        return new Torque(Checks.inRange("ratio", newtonMetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Torque other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", newtonMetres / Checks.divisor("other", other.newtonMetres, other));
    }

    @Override
    public int compareTo(Torque other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(newtonMetres, other.newtonMetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Torque other && newtonMetres == other.newtonMetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(newtonMetres);
    }

    /** The number with its unit, {@code N m}. */
    @Override
    public String toString() {
        return newtonMetres + " N m";
    }
}
