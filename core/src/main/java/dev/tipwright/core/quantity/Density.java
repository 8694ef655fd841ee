package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * Mass for a volume of a material.
 *
 * <p>A finite {@code double} of grams per cubic centimetre; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Density.ofKilogramsPerCubicMetre(7850);   // = 7.85 g/cm3
 * }</pre>
 */
public final class Density implements Comparable<Density> {

    /** The density of nothing. */
    public static final Density ZERO = new Density(0);

    private static final DoubleText TEXT =
            new DoubleText(DoubleText.unit(1, 1, "g/cm3", "g/cm³"), DoubleText.unit(1, 1000, "kg/m3", "kg/m³"));

    private final double gramsPerCubicCentimetre;

    private Density(double gramsPerCubicCentimetre) {
        this.gramsPerCubicCentimetre = gramsPerCubicCentimetre;
    }

    /**
     * The value of a number of grams per cubic centimetre.
     *
     * @param gramsPerCubicCentimetre a finite number of grams per cubic centimetre
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Density ofGramsPerCubicCentimetre(double gramsPerCubicCentimetre) {
        return new Density(Checks.finite("gramsPerCubicCentimetre", gramsPerCubicCentimetre));
    }

    /**
     * The value of a number of kilograms per cubic metre.
     *
     * @param kilogramsPerCubicMetre a finite number of kilograms per cubic metre
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Density ofKilogramsPerCubicMetre(double kilogramsPerCubicMetre) {
        return new Density(Checks.inRange(
                "kilogramsPerCubicMetre", Checks.finite("kilogramsPerCubicMetre", kilogramsPerCubicMetre) / 1000));
    }

    /**
     * Reads a density such as {@code 1.55 g/cm3}; units {@code g/cm3}, {@code kg/m3}.
     *
     * @param text number and unit
     * @return the density
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Density parse(String text) {
        return new Density(TEXT.parse(text));
    }

    /**
     * The value in grams per cubic centimetre.
     *
     * @return grams per cubic centimetre
     */
    public double gramsPerCubicCentimetre() {
        return gramsPerCubicCentimetre;
    }

    /**
     * The value in kilograms per cubic metre.
     *
     * @return kilograms per cubic metre
     */
    public double kilogramsPerCubicMetre() {
        return Checks.inRange("kilogramsPerCubicMetre", gramsPerCubicCentimetre * 1000);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Density plus(Density other) {
        Objects.requireNonNull(other, "other");
        return new Density(Checks.inRange("other", gramsPerCubicCentimetre + other.gramsPerCubicCentimetre));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Density minus(Density other) {
        Objects.requireNonNull(other, "other");
        return new Density(Checks.inRange("other", gramsPerCubicCentimetre - other.gramsPerCubicCentimetre));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Density scaledBy(double ratio) {
        return new Density(Checks.inRange("ratio", gramsPerCubicCentimetre * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Density other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange(
                "other", gramsPerCubicCentimetre / Checks.divisor("other", other.gramsPerCubicCentimetre, other));
    }

    @Override
    public int compareTo(Density other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(gramsPerCubicCentimetre, other.gramsPerCubicCentimetre);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Density other && gramsPerCubicCentimetre == other.gramsPerCubicCentimetre;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(gramsPerCubicCentimetre);
    }

    /** The number with its unit, {@code g/cm3}. */
    @Override
    public String toString() {
        return gramsPerCubicCentimetre + " g/cm3";
    }
}
