package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A volume.
 *
 * <p>A finite {@code double} of cubic millimetres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * Volume.ofCubicInches(1.0);   // = 16387.064 mm3
 * }</pre>
 */
public final class Volume implements Comparable<Volume> {

    /** No volume. */
    public static final Volume ZERO = new Volume(0);

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "mm3", "mm³"),
            DoubleText.unit(1000, 1, "cm3", "cm³"),
            DoubleText.unit(16387.064, 1, "in3", "in³"));

    private final double cubicMillimetres;

    private Volume(double cubicMillimetres) {
        this.cubicMillimetres = cubicMillimetres;
    }

    /**
     * The value of a number of cubic millimetres.
     *
     * @param cubicMillimetres a finite number of cubic millimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static Volume ofCubicMillimetres(double cubicMillimetres) {
        return new Volume(Checks.finite("cubicMillimetres", cubicMillimetres));
    }

    /**
     * The value of a number of cubic centimetres.
     *
     * @param cubicCentimetres a finite number of cubic centimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Volume ofCubicCentimetres(double cubicCentimetres) {
        return new Volume(
                Checks.inRange("cubicCentimetres", Checks.finite("cubicCentimetres", cubicCentimetres) * 1000));
    }

    /**
     * The value of a number of cubic inches.
     *
     * @param cubicInches a finite number of cubic inches
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static Volume ofCubicInches(double cubicInches) {
        return new Volume(Checks.inRange("cubicInches", Checks.finite("cubicInches", cubicInches) * 16387.064));
    }

    /**
     * Reads a volume such as {@code 193.61 mm3}; units {@code mm3}, {@code cm3}, {@code in3}.
     *
     * @param text number and unit
     * @return the volume
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static Volume parse(String text) {
        return new Volume(TEXT.parse(text));
    }

    /**
     * The value in cubic millimetres.
     *
     * @return cubic millimetres
     */
    public double cubicMillimetres() {
        return cubicMillimetres;
    }

    /**
     * The value in cubic centimetres.
     *
     * @return cubic centimetres
     */
    public double cubicCentimetres() {
        return Checks.inRange("cubicCentimetres", cubicMillimetres / 1000);
    }

    /**
     * The value in cubic inches.
     *
     * @return cubic inches
     */
    public double cubicInches() {
        return Checks.inRange("cubicInches", cubicMillimetres / 16387.064);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public Volume plus(Volume other) {
        Objects.requireNonNull(other, "other");
        return new Volume(Checks.inRange("other", cubicMillimetres + other.cubicMillimetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public Volume minus(Volume other) {
        Objects.requireNonNull(other, "other");
        return new Volume(Checks.inRange("other", cubicMillimetres - other.cubicMillimetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public Volume scaledBy(double ratio) {
        return new Volume(Checks.inRange("ratio", cubicMillimetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(Volume other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", cubicMillimetres / Checks.divisor("other", other.cubicMillimetres, other));
    }

    /**
     * The mass of this volume of a material: volume times density, rounded to the picogram.
     *
     * @param density of the material
     * @return the mass
     * @throws ArithmeticException if it is out of range
     */
    public Mass of(Density density) {
        Objects.requireNonNull(density, "density");
        return Mass.ofGrams(Checks.inRange("mass", cubicMillimetres * density.gramsPerCubicCentimetre() / 1000));
    }

    @Override
    public int compareTo(Volume other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(cubicMillimetres, other.cubicMillimetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Volume other && cubicMillimetres == other.cubicMillimetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(cubicMillimetres);
    }

    /** The number with its unit, {@code mm3}. */
    @Override
    public String toString() {
        return cubicMillimetres + " mm3";
    }
}
