package dev.tipwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A way to write a length for a person: fractions of an inch as a tape shows them, decimal inches, or millimetres.
 *
 * <p>{@link #print(Length, Rounding)} gives the text, the length that text stands for, and with them whether anything was
 * rounded away. The caller chooses the direction, so a limit is never rounded to the unsafe side.
 *
 * <pre>{@code
 * Length cut = Length.ofInches(36.38);
 * Notation.SIXTEENTHS.print(cut).text();                       // = 36 3/8 in
 * Notation.SIXTEENTHS.print(cut).rounded();                    // = true
 * Notation.SIXTEENTHS.print(cut, Notation.Rounding.UP).text(); // = 36 7/16 in
 * Notation.THOUSANDTHS.print(cut).text();                      // = 36.380 in
 * }</pre>
 */
public enum Notation {
    /** Fractions of an inch to the sixteenth, in lowest terms: {@code 36 3/8 in}. */
    SIXTEENTHS(25_400_000L / 16),
    /** Fractions of an inch to the thirty-second, in lowest terms. */
    THIRTY_SECONDS(25_400_000L / 32),
    /** Fractions of an inch to the sixty-fourth, in lowest terms. */
    SIXTY_FOURTHS(25_400_000L / 64),
    /** Decimal inches to a thousandth: {@code 0.355 in}. */
    THOUSANDTHS(25_400),
    /** Decimal inches to a ten-thousandth: {@code 0.3735 in}. */
    TEN_THOUSANDTHS(2_540),
    /** Millimetres to a tenth: {@code 923.9 mm}. */
    TENTHS_OF_MILLIMETRE(100_000),
    /** Millimetres to a hundredth: {@code 9.49 mm}. */
    HUNDREDTHS_OF_MILLIMETRE(10_000),
    /** Millimetres to a micrometre: {@code 9.487 mm}. */
    MICROMETRES(1_000);

    /** Which way to round what the notation cannot show. */
    public enum Rounding {
        /** To the nearest step, ties to the even one. */
        NEAREST,
        /** Towards the lesser length. */
        DOWN,
        /** Towards the greater length. */
        UP
    }

    /**
     * A length as it was printed.
     *
     * @param text the text, number and unit
     * @param shown the length the text stands for, exactly
     * @param exact the length that was to be printed
     */
    public record Printed(String text, Length shown, Length exact) {

        /**
         * Checks that all three are there.
         *
         * @param text the text, number and unit
         * @param shown the length the text stands for, exactly
         * @param exact the length that was to be printed
         */
        public Printed {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(shown, "shown");
            Objects.requireNonNull(exact, "exact");
        }

        /**
         * Whether the text stands for another length than was to be printed.
         *
         * @return true if something was rounded away
         */
        public boolean rounded() {
            return !shown.equals(exact);
        }
    }

    private static final long INCH = 25_400_000L;

    private final long step;

    Notation(long stepNanometres) {
        this.step = stepNanometres;
    }

    /**
     * The least difference this notation can show.
     *
     * @return one step
     */
    public Length step() {
        return Length.ofNanometres(step);
    }

    /**
     * Prints the nearest length this notation can show.
     *
     * @param length the length to print
     * @return text, shown length and whether it was rounded
     */
    public Printed print(Length length) {
        return print(length, Rounding.NEAREST);
    }

    /**
     * Prints the length this notation can show, on the side asked for.
     *
     * @param length the length to print
     * @param rounding the side
     * @return text, shown length and whether it was rounded
     */
    public Printed print(Length length, Rounding rounding) {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(rounding, "rounding");
        long steps = steps(length.nanometres(), rounding);
        String text = switch (this) {
            case SIXTEENTHS, THIRTY_SECONDS, SIXTY_FOURTHS -> fraction(steps, INCH / step) + " in";
            case THOUSANDTHS -> BigDecimal.valueOf(steps, 3).toPlainString() + " in";
            case TEN_THOUSANDTHS -> BigDecimal.valueOf(steps, 4).toPlainString() + " in";
            case TENTHS_OF_MILLIMETRE -> BigDecimal.valueOf(steps, 1).toPlainString() + " mm";
            case HUNDREDTHS_OF_MILLIMETRE -> BigDecimal.valueOf(steps, 2).toPlainString() + " mm";
            case MICROMETRES -> BigDecimal.valueOf(steps, 3).toPlainString() + " mm";
        };
        return new Printed(text, Length.ofNanometres(Checks.product("length", step, steps)), length);
    }

    private long steps(long nanometres, Rounding rounding) {
        RoundingMode mode = switch (rounding) {
            case NEAREST -> RoundingMode.HALF_EVEN;
            case DOWN -> RoundingMode.FLOOR;
            case UP -> RoundingMode.CEILING;
        };
        return BigDecimal.valueOf(nanometres)
                .divide(BigDecimal.valueOf(step), 0, mode)
                .longValueExact();
    }

    /** {@code -2 3/8} for -38 sixteenths; lowest terms, no fraction when whole, no whole number when under one. */
    private static String fraction(long steps, long perInch) {
        long whole = Math.abs(steps / perInch);
        long rest = Math.abs(steps % perInch);
        String sign = steps < 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        long shift = Long.numberOfTrailingZeros(rest | perInch);
        String part = (rest >> shift) + "/" + (perInch >> shift);
        return sign + (whole == 0 ? part : whole + " " + part);
    }
}
