package dev.tipwright.core.internal.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimal text of doubles, the same in every locale and on every JVM. */
public final class Decimals {

    private Decimals() {}

    /**
     * A number with so many decimals, ties of the exact binary value to even.
     *
     * @param value a finite number
     * @param places decimals to show, not negative
     * @return plain text without exponent, never {@code -0}
     */
    public static String fixed(double value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
    }

    /**
     * A number with all its digits and no exponent.
     *
     * @param value finite
     * @return the shortest decimal that is this number
     */
    public static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
