package dev.tipwright.core.quantity;

import java.util.Objects;

/**
 * A first moment of mass: mass times distance, as a swing weight scale weighs it.
 *
 * <p>A finite {@code double} of gram millimetres; equality is of that number. {@link #parse(String)} reads what
 * {@link #toString()} prints.
 *
 * <pre>{@code
 * FirstMoment.ofOunceInches(1.0);   // = 720.077887375 g mm
 * }</pre>
 */
public final class FirstMoment implements Comparable<FirstMoment> {

    /** No moment. */
    public static final FirstMoment ZERO = new FirstMoment(0);

    /** 28.349523125 g times 25.4 mm. */
    private static final double OUNCE_INCH = 720.077887375;

    private static final DoubleText TEXT = new DoubleText(
            DoubleText.unit(1, 1, "g mm"), DoubleText.unit(OUNCE_INCH, 1, "oz in"), DoubleText.unit(10, 1, "g cm"));

    private final double gramMillimetres;

    private FirstMoment(double gramMillimetres) {
        this.gramMillimetres = gramMillimetres;
    }

    /**
     * The value of a number of gram millimetres.
     *
     * @param gramMillimetres a finite number of gram millimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     */
    public static FirstMoment ofGramMillimetres(double gramMillimetres) {
        return new FirstMoment(Checks.finite("gramMillimetres", gramMillimetres));
    }

    /**
     * The value of a number of avoirdupois ounce inches.
     *
     * @param ounceInches a finite number of avoirdupois ounce inches
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static FirstMoment ofOunceInches(double ounceInches) {
        return new FirstMoment(Checks.inRange("ounceInches", Checks.finite("ounceInches", ounceInches) * OUNCE_INCH));
    }

    /**
     * The value of a number of gram centimetres.
     *
     * @param gramCentimetres a finite number of gram centimetres
     * @return the value
     * @throws IllegalArgumentException if it is not finite
     * @throws ArithmeticException if it is out of range
     */
    public static FirstMoment ofGramCentimetres(double gramCentimetres) {
        return new FirstMoment(
                Checks.inRange("gramCentimetres", Checks.finite("gramCentimetres", gramCentimetres) * 10));
    }

    /**
     * Reads a moment such as {@code 720.0779 g mm}; units {@code g mm}, {@code oz in}, {@code g cm}.
     *
     * @param text number and unit
     * @return the moment
     * @throws IllegalArgumentException if the text is no number with one of these units
     * @throws ArithmeticException if it is out of range
     */
    public static FirstMoment parse(String text) {
        return new FirstMoment(TEXT.parse(text));
    }

    /**
     * The value in gram millimetres.
     *
     * @return gram millimetres
     */
    public double gramMillimetres() {
        return gramMillimetres;
    }

    /**
     * The value in avoirdupois ounce inches.
     *
     * @return avoirdupois ounce inches
     */
    public double ounceInches() {
        return Checks.inRange("ounceInches", gramMillimetres / OUNCE_INCH);
    }

    /**
     * The value in gram centimetres.
     *
     * @return gram centimetres
     */
    public double gramCentimetres() {
        return Checks.inRange("gramCentimetres", gramMillimetres / 10);
    }

    /**
     * The sum of two.
     *
     * @param other what to add
     * @return the sum
     * @throws ArithmeticException if it is out of range
     */
    public FirstMoment plus(FirstMoment other) {
        Objects.requireNonNull(other, "other");
        return new FirstMoment(Checks.inRange("other", gramMillimetres + other.gramMillimetres));
    }

    /**
     * The difference of two.
     *
     * @param other what to take away
     * @return the difference
     * @throws ArithmeticException if it is out of range
     */
    public FirstMoment minus(FirstMoment other) {
        Objects.requireNonNull(other, "other");
        return new FirstMoment(Checks.inRange("other", gramMillimetres - other.gramMillimetres));
    }

    /**
     * This one scaled by a ratio.
     *
     * @param ratio a finite pure number
     * @return the product
     * @throws IllegalArgumentException if the ratio is not finite
     * @throws ArithmeticException if it is out of range
     */
    public FirstMoment scaledBy(double ratio) {
        return new FirstMoment(Checks.inRange("ratio", gramMillimetres * Checks.finite("ratio", ratio)));
    }

    /**
     * How many times another goes into this one.
     *
     * @param other one other than zero
     * @return the ratio, a pure number
     * @throws IllegalArgumentException if the other is zero
     * @throws ArithmeticException if the ratio is out of range
     */
    public double ratioTo(FirstMoment other) {
        Objects.requireNonNull(other, "other");
        return Checks.inRange("other", gramMillimetres / Checks.divisor("other", other.gramMillimetres, other));
    }

    /**
     * The distance at which a mass has this moment.
     *
     * @param mass a mass other than zero
     * @return moment over mass, rounded to the nanometre
     * @throws IllegalArgumentException if the mass is zero
     * @throws ArithmeticException if the distance is out of range
     */
    public Length over(Mass mass) {
        Objects.requireNonNull(mass, "mass");
        double millimetres = gramMillimetres / Checks.divisor("mass", mass.grams(), mass);
        return Length.ofNanometres(Checks.toGrid("mass", Checks.inRange("mass", millimetres), 1e6));
    }

    /**
     * The mass that has this moment at a distance.
     *
     * @param distance a lever arm other than zero
     * @return moment over distance, rounded to the picogram
     * @throws IllegalArgumentException if the distance is zero
     * @throws ArithmeticException if the mass is out of range
     */
    public Mass over(Length distance) {
        Objects.requireNonNull(distance, "distance");
        return Mass.ofPicograms(Checks.toGrid(
                "distance",
                Checks.inRange(
                        "distance", gramMillimetres / Checks.divisor("distance", distance.millimetres(), distance)),
                1e12));
    }

    @Override
    public int compareTo(FirstMoment other) {
        Objects.requireNonNull(other, "other");
        return Double.compare(gramMillimetres, other.gramMillimetres);
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof FirstMoment other && gramMillimetres == other.gramMillimetres;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(gramMillimetres);
    }

    /** The number with its unit, {@code g mm}. */
    @Override
    public String toString() {
        return gramMillimetres + " g mm";
    }
}
