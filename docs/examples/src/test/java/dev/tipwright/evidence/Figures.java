package dev.tipwright.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers of the page. Two digits, rounded up, so that what is printed is never less than what was seen; and what is under a
 * twentieth of its bound is printed as that, so that another order of adding up does not make another page.
 */
final class Figures {

    static final MathContext PART = new MathContext(6, RoundingMode.UP);

    private static final MathContext TWO = new MathContext(2, RoundingMode.UP);
    private static final BigDecimal LITTLE = new BigDecimal("0.05");

    private Figures() {}

    static String of(BigDecimal value) {
        BigDecimal short_ = value.round(TWO).stripTrailingZeros();
        int power = short_.precision() - short_.scale() - 1;
        if (value.signum() == 0) {
            return "none";
        }
        return power >= -4 && power < 6
                ? short_.toPlainString()
                : short_.movePointLeft(power).stripTrailingZeros().toPlainString() + "e" + power;
    }

    /** An error beside its bound. */
    static String error(BigDecimal error, BigDecimal bound) {
        BigDecimal little = bound.multiply(LITTLE);
        return error.signum() > 0 && error.compareTo(little) <= 0 ? "under " + of(little) : of(error);
    }

    /** An error as a part of the value. */
    static String part(BigDecimal part) {
        BigDecimal little = new BigDecimal("1e-12");
        return part.signum() > 0 && part.compareTo(little) <= 0 ? "under 1e-12" : of(part);
    }
}
