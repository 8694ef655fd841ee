package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One number worked out independently of the library; where from stands at the top of its file. */
record Expected(String where, String quantity, String unit, String club, String value, int decimals) {

    static List<Expected> in(String table) throws IOException {
        List<Expected> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(Path.of("src/test/resources/expected", table))) {
            for (NamedCsvRecord row : reader) {
                rows.add(new Expected(
                        table + ", line " + row.getStartingLineNumber(),
                        row.getField("quantity"),
                        row.getField("unit"),
                        row.getField("club"),
                        row.getField("value"),
                        Integer.parseInt(row.getField("decimals"))));
            }
        }
        return rows;
    }

    /** Holds a number against the digits that are printed: half a unit of the last one, so that a tie may go either way. */
    void matches(double number) {
        assertThat(Math.abs(number - Double.parseDouble(value)))
                .as("%s: %s of club %s is %s, printed %s %s", where, quantity, club, number, value, unit)
                .isLessThanOrEqualTo(0.5 * Math.pow(10, -decimals) + grid());
    }

    void matches(String reading) {
        assertThat(reading).as("%s: %s of club %s", where, quantity, club).isEqualTo(value);
    }

    /**
     * Lengths are whole nanometres and a first contact is rounded down to one, so nine printed decimals of an inch (0.025 nm) ask for more
     * than there is: a nanometre. All else is worked in doubles: 1e-9 for a tie that falls on the wrong side of its binary fraction.
     */
    private double grid() {
        return switch (unit) {
            case "in" -> 1 / 25.4e6;
            case "0.001 in" -> 1 / 25.4e3;
            default -> 1e-9;
        };
    }
}
