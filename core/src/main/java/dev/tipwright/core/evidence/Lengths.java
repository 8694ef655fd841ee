package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as decimal numbers, from their exact nanometres. */
final class Lengths {

    private static final BigDecimal PER_INCH = BigDecimal.valueOf(25_400_000);
    private static final BigDecimal PER_MILLIMETRE = BigDecimal.valueOf(1_000_000);

    private Lengths() {}

    static String number(Length length, Units units, int places, int extra) {
        return number(length, units, places + extra, RoundingMode.HALF_EVEN);
    }

    static String number(Length length, Units units, int places, int extra, Notation.Rounding towards) {
        return number(
                length,
                units,
                places + extra,
                towards == Notation.Rounding.DOWN ? RoundingMode.FLOOR : RoundingMode.CEILING);
    }

    private static String number(Length length, Units units, int places, RoundingMode mode) {
        return BigDecimal.valueOf(length.nanometres())
                .divide(perUnit(units), places, mode)
                .toPlainString();
    }

    private static BigDecimal perUnit(Units units) {
        return units == Units.INCH ? PER_INCH : PER_MILLIMETRE;
    }

    /** What to put behind a number that was rounded, nothing if it stands for the length exactly. */
    static String said(Length length, String shown, Units units, Notation.Rounding towards) {
        boolean exact =
                new BigDecimal(shown).multiply(perUnit(units)).compareTo(BigDecimal.valueOf(length.nanometres())) == 0;
        return exact ? "" : towards == Notation.Rounding.DOWN ? " (rounded down)" : " (rounded up)";
    }

    /** A direction that is safe one way. */
    static void oneWay(Notation.Rounding towards) {
        Require.given("towards", towards);
        Require.that(towards != Notation.Rounding.NEAREST, "towards", "must be DOWN or UP", towards);
    }
}
