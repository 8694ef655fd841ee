package dev.tipwright.core.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as a person reads them: two figures of the uncertainty and the value to the same place (JCGM 100:2008,
 * 7.2.6).
 */
final class Figures {

    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final MathContext MANY = new MathContext(12, RoundingMode.HALF_EVEN);

    private Figures() {}

    static String of(double value, double uncertainty, String unit) {
        if (uncertainty == 0) {
            return plain(value) + " " + unit + ", u 0 " + unit;
        }
        BigDecimal u = new BigDecimal(uncertainty).round(TWO);
        BigDecimal rounded = new BigDecimal(value).setScale(u.scale(), RoundingMode.HALF_EVEN);
        return text(rounded) + " " + unit + ", u " + text(u) + " " + unit;
    }

    /** Twelve figures without trailing zeros; the same on every Java version, as {@code Double.toString} is not. */
    static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(MANY);
        return rounded.signum() == 0 ? "0" : text(rounded.stripTrailingZeros());
    }

    private static String text(BigDecimal number) {
        boolean tooLong = Math.abs((long) number.scale()) > 15;
        return tooLong ? number.toString() : number.toPlainString();
    }
}
