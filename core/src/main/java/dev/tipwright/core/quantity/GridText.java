package dev.tipwright.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and prints a quantity that is a whole number of grid steps, exactly. */
final class GridText {

    private static final int LONGEST = 80;

    /** Sign, then {@code 37.5}, {@code .5}, {@code 1/2}, {@code 37 1/2} or {@code 37-1/2}, then the unit. */
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([+-]?)(?:"
            + "(?<decimal>[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?![0-9/])"
            + "|(?:(?<whole>[0-9]+)(?: +|-))?(?<numerator>[0-9]+)/(?<denominator>[0-9]+)"
            + ") *(?<unit>[^0-9 .,+/-][^ ]*)?");

    private final String kind;
    private final String grid;
    private final List<Unit> units;

    record Unit(long steps, List<String> names) {}

    GridText(String kind, String grid, Unit... units) {
        this.kind = kind;
        this.grid = grid;
        this.units = List.of(units);
    }

    static Unit unit(long steps, String... names) {
        return new Unit(steps, List.of(names));
    }

    long parse(String text) {
        Objects.requireNonNull(text, "text");
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("text must be at most " + LONGEST + " characters, was " + text.length());
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(writtenOut(text.strip()));
        if (!matcher.matches()) {
            throw new IllegalArgumentException("text must be a number and a unit such as \"" + example() + "\", was \""
                    + text + "\"" + (text.indexOf(',') >= 0 ? " (write decimals with a point)" : ""));
        }
        if (matcher.group("unit") == null) {
            throw new IllegalArgumentException("text must name its unit (" + unitNames() + "), was \"" + text + "\"");
        }
        BigInteger[] steps = value(matcher, text);
        BigInteger[] wholeAndRest = steps[0].multiply(BigInteger.valueOf(stepsOf(matcher.group("unit"), text)))
                .divideAndRemainder(steps[1]);
        if (wholeAndRest[1].signum() != 0) {
            throw new IllegalArgumentException("text must be a whole number of " + grid + ", was \"" + text + "\"");
        }
        BigInteger signed = matcher.group(1).equals("-") ? wholeAndRest[0].negate() : wholeAndRest[0];
        if (signed.bitLength() > 63) {
            throw new ArithmeticException("text is out of range for " + kind + ", was \"" + text + "\"");
        }
        return signed.longValue();
    }

    /** Fractions that have a sign of their own, such as {@code ½}, in figures, and apart from any others. */
    private static String writtenOut(String text) {
        StringBuilder written = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            String fraction = switch (sign) {
                case '½' -> "1/2 ";
                case '¼' -> "1/4 ";
                case '¾' -> "3/4 ";
                case '⅛' -> "1/8 ";
                case '⅜' -> "3/8 ";
                case '⅝' -> "5/8 ";
                case '⅞' -> "7/8 ";
                default -> "";
            };
            boolean hung = i > 0 && "+-".indexOf(text.charAt(i - 1)) >= 0;
            written.append(fraction.isEmpty() ? String.valueOf(sign) : hung ? fraction : " " + fraction);
        }
        return written.toString().strip();
    }

    /** The number as numerator and denominator. */
    private static BigInteger[] value(Matcher matcher, String text) {
        if (matcher.group("decimal") != null) {
            BigDecimal decimal = new BigDecimal(matcher.group("decimal"));
            return new BigInteger[] {decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale())};
        }
        BigInteger denominator = new BigInteger(matcher.group("denominator"));
        if (denominator.signum() == 0) {
            throw new IllegalArgumentException("text must not divide by zero, was \"" + text + "\"");
        }
        BigInteger whole = matcher.group("whole") == null ? BigInteger.ZERO : new BigInteger(matcher.group("whole"));
        return new BigInteger[] {
            whole.multiply(denominator).add(new BigInteger(matcher.group("numerator"))), denominator
        };
    }

    private long stepsOf(String name, String text) {
        for (Unit unit : units) {
            if (unit.names().contains(name)) {
                return unit.steps();
            }
        }
        throw new IllegalArgumentException("text must be in one of " + unitNames() + ", was \"" + text + "\"");
    }

    private String example() {
        return "12.5 " + units.get(0).names().get(0);
    }

    private String unitNames() {
        StringBuilder names = new StringBuilder();
        for (Unit unit : units) {
            names.append(names.length() == 0 ? "" : ", ").append(unit.names().get(0));
        }
        return names.toString();
    }

    /** Exact decimal text of a number of steps, {@code decimals} of them to the unit. */
    String print(long steps, int decimals, String unit) {
        BigDecimal value = BigDecimal.valueOf(steps, decimals);
        return (steps == 0 ? "0" : value.stripTrailingZeros().toPlainString()) + " " + unit;
    }
}
