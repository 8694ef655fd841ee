package dev.tipwright.core.evidence;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as decimal numbers, from their exact nanometres. */
final class Lengths {

    private static final BigDecimal PER_INCH = BigDecimal.valueOf(25_400_000);
    private static final BigDecimal PER_MILLIMETRE = BigDecimal.valueOf(1_000_000);

    private Lengths() {}

    static String number(Length length, Units units, int places, int extra) {
        return BigDecimal.valueOf(length.nanometres())
                .divide(units == Units.INCH ? PER_INCH : PER_MILLIMETRE, places + extra, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
