package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.text.Decimals;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.quantity.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One number of a finding, a working or an operation: its symbol, what it means, and its value with unit. The symbols are those
 * of the guide, one meaning each.
 *
 * <pre>{@code
 * Term trim = Term.of("T", "tip trim", Length.parse("1 17/32 in"));
 * trim.text(Units.INCH);     // = 1.531 in (1 17/32)
 * trim.text(Units.METRIC);   // = 38.9 mm
 * }</pre>
 */
public sealed interface Term {

    /**
     * The symbol, as in the formula.
     *
     * @return a short name
     */
    String symbol();

    /**
     * What the symbol stands for.
     *
     * @return a few words
     */
    String meaning();

    /**
     * The value without its unit, rounded as one reads it at the bench, or with digits more for one who works it again.
     *
     * @param units inch or metric
     * @param extra digits more than one reads at the bench; 0 to 9
     * @return the number, or the words
     */
    String number(Units units, int extra);

    /**
     * The unit.
     *
     * @param units inch or metric
     * @return its symbol; empty for a pure number or words
     */
    String unit(Units units);

    /**
     * The value with its unit, rounded as one reads it at the bench.
     *
     * @param units inch or metric
     * @return number and unit
     */
    default String text(Units units) {
        String unit = unit(units);
        return unit.isEmpty() ? number(units, 0) : number(units, 0) + " " + unit;
    }

    /**
     * A length along a shaft or a club, read with a rule: thousandths with the nearest sixty-fourth beside them.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfLength(String symbol, String meaning, Length value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfLength {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Lengths.number(value, units, units == Units.INCH ? 3 : 1, extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "in" : "mm";
        }

        @Override
        public String text(Units units) {
            String decimal = Term.super.text(units);
            if (units == Units.METRIC) {
                return decimal;
            }
            Notation.Printed fraction = Notation.SIXTY_FOURTHS.print(value);
            return decimal
                    + (fraction.rounded() ? " (near " : " (")
                    + fraction.text().replace(" in", ")");
        }
    }

    /**
     * A diameter, a wall or a clearance, read with a micrometer: ten-thousandths of an inch, or micrometres.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfDiameter(String symbol, String meaning, Length value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfDiameter {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Lengths.number(value, units, units == Units.INCH ? 4 : 3, extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "in" : "mm";
        }
    }

    /**
     * A mass.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfMass(String symbol, String meaning, Mass value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfMass {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return BigDecimal.valueOf(value.picograms(), 12)
                    .setScale(2 + extra, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "g";
        }
    }

    /**
     * An angle.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfAngle(String symbol, String meaning, Angle value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfAngle {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.degrees(), 2 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "deg";
        }
    }

    /**
     * A length along a shaft that must not be overshot one way: rounded only towards the safe side, and said when it was.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @param towards which way it may be rounded; not to the nearest
     */
    record OfSafeLength(String symbol, String meaning, Length value, Notation.Rounding towards) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         * @param towards which way it may be rounded; not to the nearest
         */
        public OfSafeLength {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
            Lengths.oneWay(towards);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Lengths.number(value, units, units == Units.INCH ? 3 : 1, extra, towards);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "in" : "mm";
        }

        /** In inches the fraction is the next one on the safe side, {@code over} or {@code under} which the value is. */
        @Override
        public String text(Units units) {
            String decimal = Term.super.text(units);
            if (units == Units.METRIC) {
                return decimal + Lengths.said(value, number(units, 0), units, towards);
            }
            Notation.Printed fraction = Notation.SIXTY_FOURTHS.print(value, towards);
            String beside = fraction.text().replace(" in", ")");
            if (!fraction.rounded()) {
                return decimal + " (" + beside;
            }
            return decimal + (towards == Notation.Rounding.DOWN ? " (over " : " (under ") + beside;
        }
    }

    /**
     * A diameter that must not be overshot one way: rounded only towards the safe side, and said when it was.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @param towards which way it may be rounded; not to the nearest
     */
    record OfSafeDiameter(String symbol, String meaning, Length value, Notation.Rounding towards) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         * @param towards which way it may be rounded; not to the nearest
         */
        public OfSafeDiameter {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
            Lengths.oneWay(towards);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Lengths.number(value, units, units == Units.INCH ? 4 : 3, extra, towards);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "in" : "mm";
        }

        @Override
        public String text(Units units) {
            return Term.super.text(units) + Lengths.said(value, number(units, 0), units, towards);
        }
    }

    /**
     * An area.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfArea(String symbol, String meaning, Area value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfArea {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.squareMillimetres(), 1 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "mm2";
        }
    }

    /**
     * A volume.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfVolume(String symbol, String meaning, Volume value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfVolume {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.cubicMillimetres(), 1 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "mm3";
        }
    }

    /**
     * A moment.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfFirstMoment(String symbol, String meaning, FirstMoment value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfFirstMoment {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(units == Units.INCH ? value.ounceInches() : value.gramCentimetres(), 2 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "oz in" : "g cm";
        }
    }

    /**
     * An inertia.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfInertia(String symbol, String meaning, Inertia value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfInertia {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.kilogramSquareCentimetres(), 1 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "kg cm2";
        }
    }

    /**
     * A frequency.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfFrequency(String symbol, String meaning, Frequency value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfFrequency {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.perMinute(), 1 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "/min";
        }
    }

    /**
     * A stress.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfStress(String symbol, String meaning, Stress value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfStress {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.megapascals(), 2 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "MPa";
        }
    }

    /**
     * A density.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfDensity(String symbol, String meaning, Density value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfDensity {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.gramsPerCubicCentimetre(), 3 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "g/cm3";
        }
    }

    /**
     * A line density.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfLineDensity(String symbol, String meaning, LineDensity value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfLineDensity {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(
                    units == Units.INCH ? value.gramsPerInch() : value.gramsPerMillimetre() * 1000, 2 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return units == Units.INCH ? "g/in" : "g/m";
        }
    }

    /**
     * A stiffness.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfBendingStiffness(String symbol, String meaning, BendingStiffness value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfBendingStiffness {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.given("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value.newtonSquareMetres(), 2 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "N m2";
        }
    }

    /**
     * A pure number.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfNumber(String symbol, String meaning, double value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfNumber {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.that(Double.isFinite(value), "value", "must be finite", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.fixed(value, 3 + extra);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "";
        }
    }

    /**
     * A whole number of things.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfCount(String symbol, String meaning, long value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfCount {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Long.toString(value);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "";
        }
    }

    /**
     * A label or a few words.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     */
    record OfWords(String symbol, String meaning, String value) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol as in the formula
         * @param meaning in words
         * @param value the value
         */
        public OfWords {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.label("value", value);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return value;
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "";
        }
    }

    /**
     * A factor that brings units together, such as the grams in an ounce; another in inches than in millimetres.
     *
     * @param symbol the symbol
     * @param meaning what it is
     * @param inch the factor among inches, ounces and grams
     * @param metric the factor among millimetres, centimetres and grams
     */
    record OfFactor(String symbol, String meaning, double inch, double metric) implements Term {

        /**
         * Checks the values.
         *
         * @param symbol the symbol
         * @param meaning what it is
         * @param inch the factor among inches, ounces and grams
         * @param metric the factor among millimetres, centimetres and grams
         */
        public OfFactor {
            Require.label("symbol", symbol);
            Require.label("meaning", meaning);
            Require.that(Double.isFinite(inch), "inch", "must be finite", inch);
            Require.that(Double.isFinite(metric), "metric", "must be finite", metric);
        }

        @Override
        public String number(Units units, int extra) {
            Require.given("units", units);
            Require.extraDigits(extra);
            return Decimals.plain(units == Units.INCH ? inch : metric);
        }

        @Override
        public String unit(Units units) {
            Require.given("units", units);
            return "";
        }
    }

    /**
     * The factor by which grams and the length of the units make moments.
     *
     * @return grams in an ounce, or millimetres in a centimetre
     */
    static Term momentFactor() {
        return new OfFactor("c", "grams in an ounce, or millimetres in a centimetre", 28.349523125, 10);
    }

    /**
     * The factor from the cubed length of the units to cubic millimetres.
     *
     * @return cubic millimetres in a cubic inch, or 1
     */
    static Term volumeFactor() {
        return new OfFactor("c3", "cubic millimetres in a cubic inch, or in themselves", 16387.064, 1);
    }

    /**
     * A length along a shaft or a club, read with a rule.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Length value) {
        return new OfLength(symbol, meaning, value);
    }

    /**
     * A diameter, a wall or a clearance, read with a micrometer.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term fine(String symbol, String meaning, Length value) {
        return new OfDiameter(symbol, meaning, value);
    }

    /**
     * A length along a shaft that must not be exceeded, such as a trim: rounded down alone.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term atMost(String symbol, String meaning, Length value) {
        return new OfSafeLength(symbol, meaning, value, Notation.Rounding.DOWN);
    }

    /**
     * A length along a shaft that must be left, such as a cut length: rounded up alone.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term atLeast(String symbol, String meaning, Length value) {
        return new OfSafeLength(symbol, meaning, value, Notation.Rounding.UP);
    }

    /**
     * Stock on a diameter, of which no more must come off: rounded down alone.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term fineAtMost(String symbol, String meaning, Length value) {
        return new OfSafeDiameter(symbol, meaning, value, Notation.Rounding.DOWN);
    }

    /**
     * A diameter that must be left, such as that of a finished tip: rounded up alone.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term fineAtLeast(String symbol, String meaning, Length value) {
        return new OfSafeDiameter(symbol, meaning, value, Notation.Rounding.UP);
    }

    /**
     * A pure number.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value a finite number
     * @return the term
     */
    static Term number(String symbol, String meaning, double value) {
        return new OfNumber(symbol, meaning, value);
    }

    /**
     * A whole number of things.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value how many
     * @return the term
     */
    static Term count(String symbol, String meaning, long value) {
        return new OfCount(symbol, meaning, value);
    }

    /**
     * A mass.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Mass value) {
        return new OfMass(symbol, meaning, value);
    }

    /**
     * An angle.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Angle value) {
        return new OfAngle(symbol, meaning, value);
    }

    /**
     * An area.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Area value) {
        return new OfArea(symbol, meaning, value);
    }

    /**
     * A volume.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Volume value) {
        return new OfVolume(symbol, meaning, value);
    }

    /**
     * A moment.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, FirstMoment value) {
        return new OfFirstMoment(symbol, meaning, value);
    }

    /**
     * An inertia.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Inertia value) {
        return new OfInertia(symbol, meaning, value);
    }

    /**
     * A frequency.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Frequency value) {
        return new OfFrequency(symbol, meaning, value);
    }

    /**
     * A stress.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Stress value) {
        return new OfStress(symbol, meaning, value);
    }

    /**
     * A density.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, Density value) {
        return new OfDensity(symbol, meaning, value);
    }

    /**
     * A line density.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, LineDensity value) {
        return new OfLineDensity(symbol, meaning, value);
    }

    /**
     * A stiffness.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, BendingStiffness value) {
        return new OfBendingStiffness(symbol, meaning, value);
    }

    /**
     * A label or a few words.
     *
     * @param symbol as in the formula
     * @param meaning in words
     * @param value the value
     * @return the term
     */
    static Term of(String symbol, String meaning, String value) {
        return new OfWords(symbol, meaning, value);
    }
}
