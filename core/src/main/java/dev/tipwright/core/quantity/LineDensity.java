package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * Mass for a length of a shaft.
 *
 * <p>A finite {@code double} of grams per millimetre; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * LineDensity.ofGramsPerInch(2.54);   // = 0.1 g/mm
 * }</pre>
 */
public final class LineDensity implements Comparable<LineDensity> {

    /** The line density of nothing. */
    public static final LineDensity ZERO = new LineDensity(0);

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "g/mm"), DoubleText.unit(1, 25.4, "g/in"), DoubleText.unit(1, 1, "kg/m"));

    private final double gramsPerMillimetre;

    private LineDensity(double gramsPerMillimetre) {
        this.gramsPerMillimetre = gramsPerMillimetre;
    }

    /**
     * The value of a number of grams per millimetre.
     *
     * @param gramsPerMillimetre a finite number of grams per millimetre
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static LineDensity ofGramsPerMillimetre(double gramsPerMillimetre) {
        return new LineDensity(Checks.finite("gramsPerMillimetre", gramsPerMillimetre));
    }

    /**
     * The value of a number of grams per inch.
     *
     * @param gramsPerInch a finite number of grams per inch
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static LineDensity ofGramsPerInch(double gramsPerInch) {
        return new LineDensity(Checks.inRange("gramsPerInch", Checks.finite("gramsPerInch", gramsPerInch) / 25.4));
    }

    /**
     * The value of a number of kilograms per metre.
     *
     * @param kilogramsPerMetre a finite number of kilograms per metre
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static LineDensity ofKilogramsPerMetre(double kilogramsPerMetre) {
        return new LineDensity(Checks.finite("kilogramsPerMetre", kilogramsPerMetre));
    }

    /**
     * Reads a line density such as {@code 0.085 g/mm}; units {@code g/mm}, {@code g/in}, {@code kg/m}.
     *
     * @param text number and unit
     * @return the line density
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static LineDensity parse(String text) {
        return new LineDensity(TEXT.parse(text));
    }

    /**
     * The value in grams per millimetre.
     *
     * @return grams per millimetre
     */
    public double gramsPerMillimetre() {
        return gramsPerMillimetre;
    }

    /**
     * The value in grams per inch.
     *
     * @return grams per inch
     */
    public double gramsPerInch() {
        return Checks.inRange("gramsPerInch", gramsPerMillimetre * 25.4);
    }

    /**
     * The value in kilograms per metre.
     *
     * @return kilograms per metre
     */
    public double kilogramsPerMetre() {
        return gramsPerMillimetre;
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public LineDensity plus(LineDensity other) {
        Objects.requireNonNull(other, "other");
        return new LineDensity(Checks.inRange("other", gramsPerMillimetre + other.gramsPerMillimetre));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public LineDensity minus(LineDensity other) {
        Objects.requireNonNull(other, "other");
        return new LineDensity(Checks.inRange("other", gramsPerMillimetre - other.gramsPerMillimetre));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public LineDensity scaledBy(double ratio) {
        return new LineDensity(Checks.inRange("ratio", gramsPerMillimetre * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(LineDensity other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", gramsPerMillimetre / Checks.divisor("other", other.gramsPerMillimetre, other));
    }

    @Override
    public int compareTo(LineDensity other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(gramsPerMillimetre, other.gramsPerMillimetre);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof LineDensity other && gramsPerMillimetre == other.gramsPerMillimetre;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(gramsPerMillimetre);
    }

    /** The number with its unit, {@code g/mm}. */
    @Override
    public String toString() {
        return gramsPerMillimetre + " g/mm";
    }
}
