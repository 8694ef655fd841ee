package dev.tipwright.evidence;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One row of a table: what goes in, and what is expected to come out. The unit is the end of a column's name. */
final class Case {

    static final String WORDS = "words";

    /** The words of status, as the tables have them. */
    static final List<String> STATUSES = List.of("read", "from memory", "common practice, no source", "computed");

    private static final Pattern UNIT =
            Pattern.compile("(.+?)_(mm|um|in|deg|g|kg_m2|g_mm2|g_mm|oz_in|kg_cm2|mm3|mm2|mm4|N|N_mm"
                    + "|MPa|per_min|Hz|points|percent|nm)");

    private final CheckTable table;
    private final CheckTable.Row row;
    private final Consumer<Check> checks;

    Case(CheckTable table, CheckTable.Row row, Consumer<Check> checks) {
        this.table = table;
        this.row = row;
        this.checks = checks;
    }

    double number(String column) {
        return row.number(column);
    }

    String text(String column) {
        return row.text(column);
    }

    boolean has(String column) {
        return row.has(column);
    }

    /** Columns {@code ..._in} and {@code ..._mm}. */
    Length length(String column) {
        return length(column, row.text(column));
    }

    Mass grams(String column) {
        return Mass.ofGrams(row.number(column));
    }

    Angle degrees(String column) {
        return Angle.ofDegrees(row.number(column));
    }

    /** A cell with several words, parted by blanks. */
    List<String> words(String column) {
        return row.has(column) ? List.of(row.text(column).split(" +", -1)) : List.of();
    }

    /** A cell with several lengths, parted by blanks. */
    List<Length> lengths(String column) {
        return words(column).stream().map(word -> length(column, word)).toList();
    }

    /** Stations {@code place:diameter}, parted by blanks. */
    List<Station> stations(String column) {
        return words(column).stream()
                .map(word -> word.split(":", -1))
                .map(pair -> Station.of(length(column, pair[0]), length(column, pair[1])))
                .toList();
    }

    DiameterProfile profile(String column) {
        return DiameterProfile.of(stations(column));
    }

    static Station station(double placeMm, double diameterMm) {
        return Station.of(Length.ofMillimetres(placeMm), Length.ofMillimetres(diameterMm));
    }

    /** Pairs {@code place:number}, parted by blanks. */
    List<double[]> pairs(String column) {
        return words(column).stream()
                .map(word -> Stream.of(word.split(":", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    private static Length length(String column, String number) {
        double value = Double.parseDouble(number);
        return column.endsWith("_in") ? Length.ofInches(value) : Length.ofMillimetres(value);
    }

    /** A number in the unit that its column names. */
    void check(String column, double found, Bound bound) {
        Matcher unit = UNIT.matcher(column);
        boolean named = unit.matches();
        check(column, named ? unit.group(1) : column, named ? unit.group(2) : "", found, bound);
    }

    /** A number in a table that has it under another name. */
    void check(String column, String what, String unit, double found, Bound bound) {
        BigDecimal expected = row.decimal(column);
        add(what, unit, expected, expected.subtract(new BigDecimal(found)).abs(), bound);
    }

    /** A length in inches or millimetres, compared by its whole nanometres. */
    void check(String column, Length found, Bound bound) {
        check(column, column.substring(0, column.length() - 3), found, bound);
    }

    private void check(String column, String what, Length found, Bound bound) {
        BigDecimal expected = row.decimal(column);
        BigDecimal unit = BigDecimal.valueOf(column.endsWith("_in") ? 25_400_000 : 1_000_000);
        BigDecimal nanometres = expected.multiply(unit).subtract(BigDecimal.valueOf(found.nanometres()));
        add(
                what,
                column.substring(column.length() - 2),
                expected,
                nanometres.abs().divide(unit, Figures.PART),
                bound);
    }

    /** A length where the cell has one, and none where it is empty. */
    void check(String column, Optional<Length> found, Bound bound) {
        if (row.has(column) && found.isPresent()) {
            check(column, found.get(), bound);
        } else {
            says(column, found.map(Length::toString).orElse(""));
        }
    }

    /** A length that is a sum of whole nanometres: not one of them may be off. */
    void same(String column, Length found) {
        check(column, found, Bound.EXACT);
    }

    /** Such a length in a table that has it under another name. */
    void same(String column, String what, Length found) {
        check(column, what, found, Bound.EXACT);
    }

    /** A word, a label or a code: it is the same or it is not. */
    void says(String column, Object found) {
        boolean same = row.text(column).equals(String.valueOf(found));
        BigDecimal error = same ? BigDecimal.ZERO : BigDecimal.ONE;
        Matcher unit = UNIT.matcher(column);
        String what = unit.matches() ? unit.group(1) + " or none" : column;
        add(what + (same ? "" : ": the library says " + found), WORDS, BigDecimal.ONE, error, Bound.EXACT);
    }

    private void add(String what, String unit, BigDecimal expected, BigDecimal error, Bound bound) {
        checks.accept(new Check(
                table.name(),
                what.replace('_', ' '),
                unit.replace('_', ' '),
                status(),
                row.toString(),
                expected,
                error,
                bound.give().apply(expected),
                bound.reason()));
    }

    private String status() {
        boolean own = table.columns().contains("status") && row.has("status");
        return own ? row.text("status") : firstWord(table.header("status"));
    }

    private static String firstWord(String status) {
        return STATUSES.stream().filter(status::startsWith).findFirst().orElse(status);
    }
}
