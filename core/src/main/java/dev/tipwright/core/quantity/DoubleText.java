package dev.tipwright.core.quantity;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a quantity that is a {@code double} in its first unit. */
final class DoubleText {

    private static final int LONGEST = 80;

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:E-?[0-9]{1,3})?) *([^0-9 .,+-].*)?");

    private final List<Unit> units;

    /** A unit and how many of the first unit it holds, as multiplier and divisor so that exact units stay exact. */
    record Unit(double times, double over, List<String> names) {}

    DoubleText(Unit... units) {
        this.units = List.of(units);
    }

    static Unit unit(double times, double over, String... names) {
        return new Unit(times, over, List.of(names));
    }

    double parse(String text) {
        Objects.requireNonNull(text, "text");
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("text must be at most " + LONGEST + " characters, was " + text.length());
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("text must be a number and a unit such as \"12.5 "
                    + units.get(0).names().get(0) + "\", was \"" + text + "\""
                    + (text.indexOf(',') >= 0 ? " (write decimals with a point)" : ""));
        }
        if (matcher.group(2) == null) {
            throw new IllegalArgumentException("text must name its unit (" + unitNames() + "), was \"" + text + "\"");
        }
        for (Unit unit : units) {
            if (unit.names().contains(matcher.group(2))) {
                return Checks.inRange("text", Double.parseDouble(matcher.group(1)) * unit.times() / unit.over());
            }
        }
        throw new IllegalArgumentException("text must be in one of " + unitNames() + ", was \"" + text + "\"");
    }

    private String unitNames() {
        StringBuilder names = new StringBuilder();
        for (Unit unit : units) {
            names.append(names.length() == 0 ? "" : ", ").append(unit.names().get(0));
        }
        return names.toString();
    }
}
