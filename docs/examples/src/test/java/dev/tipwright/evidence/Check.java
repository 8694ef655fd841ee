package dev.tipwright.evidence;

import java.math.BigDecimal;

/**
 * One value from outside beside what the library gives.
 *
 * @param table where the value stands
 * @param what what it is of
 * @param unit its unit, empty for words and ratios
 * @param status how the value came to be known
 * @param where its row, for a failure
 * @param expected the value
 * @param error how far the library is from it
 * @param give how far it may be
 * @param reason why no less
 */
record Check(
        String table,
        String what,
        String unit,
        String status,
        String where,
        BigDecimal expected,
        BigDecimal error,
        BigDecimal give,
        String reason) {

    boolean holds() {
        return error.compareTo(give) <= 0;
    }

    /** The error as a part of the value; zero for a value of nothing. */
    BigDecimal part() {
        return expected.signum() == 0 ? BigDecimal.ZERO : error.divide(expected.abs(), Figures.PART);
    }

    @Override
    public String toString() {
        if (unit.equals(Case.WORDS)) {
            return where + "\n  " + what;
        }
        return where + "\n  " + what + " is " + error.toPlainString() + " " + unit + " from " + expected.toPlainString()
                + ", more than " + give.toPlainString() + " (" + reason + ")";
    }
}
