package dev.tipwright.examples.read;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One file of the input: a line of column names, then a row a line. Whatever is wrong with the file as such is found here. */
final class Sheet {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Table table;
    private final Problems problems;
    private final List<Row> rows = new ArrayList<>();
    private boolean whole = true;

    private Sheet(Table table, Problems problems) {
        this.table = table;
        this.problems = problems;
    }

    /** Reads a file; with a problem in it, as much of it as can be read. */
    static Sheet read(Path folder, Table table, Problems problems) {
        Sheet sheet = new Sheet(table, problems);
        Path file = folder.resolve(table.file());
        if (Files.notExists(file)) {
            if (!table.mayBeLeftOut()) {
                sheet.problem(0, "", "no such file", "the columns " + String.join(", ", table.columns()));
            }
            return sheet;
        }
        sheet.text(file).ifPresent(sheet::read);
        return sheet;
    }

    String file() {
        return table.file();
    }

    List<Row> rows() {
        return rows;
    }

    /** Whether every line could be taken apart; if not, a label that is not found may be in what could not be read. */
    boolean whole() {
        return whole;
    }

    private void problem(int line, String column, String found, String expected) {
        whole = false;
        problems.add(new Problem(table.file(), line, column, found, expected));
    }

    private Optional<String> text(Path file) {
        ByteBuffer bytes;
        try {
            bytes = ByteBuffer.wrap(Files.readAllBytes(file));
        } catch (IOException e) {
            problem(0, "", "a file that cannot be opened (" + e.getClass().getSimpleName() + ")", "a readable file");
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        try {
            String text = decoder.decode(bytes).toString();
            return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            problem(lineOf(bytes), "", "a byte that is not UTF-8", "the file saved as CSV in UTF-8");
            return Optional.empty();
        }
    }

    /** The decoder leaves the buffer at the bytes it could not read. */
    private static int lineOf(ByteBuffer bytes) {
        CharBuffer before = StandardCharsets.UTF_8.decode(bytes.duplicate().flip());
        return 1 + (int) before.chars().filter(c -> c == '\n').count();
    }

    private void read(String text) {
        List<CsvRecord> records = records(text);
        if (records.isEmpty()) {
            if (whole) {
                problem(0, "", "an empty file", "the columns " + String.join(", ", table.columns()));
            }
            return;
        }
        List<String> columns = columns(records.get(0));
        records.subList(1, records.size()).forEach(record -> row(columns, record));
        if (rows.isEmpty() && whole && !table.mayBeEmpty()) {
            problem(0, "", "no line below the column names", "one line or more");
        }
    }

    /** Lines that hold nothing but commas, as a spreadsheet leaves them at its end, are passed over. */
    private List<CsvRecord> records(String text) {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .allowExtraFields(true)
                .allowMissingFields(true)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                if (!record.getFields().stream().allMatch(String::isBlank)) {
                    records.add(record);
                }
            }
        } catch (CsvParseException | IOException e) {
            int last = records.isEmpty()
                    ? 0
                    : (int) records.get(records.size() - 1).getStartingLineNumber();
            problem(last + 1, "", "double quotes that do not match", "a quoted cell to end with its closing quote");
        }
        return records;
    }

    private List<String> columns(CsvRecord head) {
        List<String> columns = new ArrayList<>();
        int line = (int) head.getStartingLineNumber();
        if (head.getFieldCount() == 1 && head.getField(0).matches(".*[;\t].*")) {
            problem(line, "", "\"" + head.getField(0) + "\"", "commas between the cells");
            return columns;
        }
        for (String field : head.getFields()) {
            String column = clean(field).toLowerCase(Locale.ROOT);
            if (columns.contains(column)) {
                problem(line, column, "a column that is there twice", "each column once");
            } else if (!table.knows(column)) {
                problem(
                        line,
                        column,
                        "a column that is not known",
                        "only "
                                + Stream.concat(table.columns().stream(), table.optional().stream())
                                        .collect(Collectors.joining(", ")));
            }
            columns.add(column);
        }
        for (String column : table.columns()) {
            if (!columns.contains(column)) {
                problem(line, column, "no such column", "the columns " + String.join(", ", table.columns()));
            }
        }
        return columns;
    }

    private void row(List<String> columns, CsvRecord record) {
        if (columns.isEmpty()) {
            return;
        }
        int line = (int) record.getStartingLineNumber();
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            String text = i < record.getFieldCount() ? clean(record.getField(i)) : "";
            if (table.knows(columns.get(i))) {
                cells.putIfAbsent(columns.get(i), new Cell(table.file(), line, columns.get(i), text));
            }
        }
        for (String column : table.optional()) {
            cells.putIfAbsent(column, new Cell(table.file(), line, column, ""));
        }
        Row row = new Row(new Cell(table.file(), line, "", ""), cells, problems);
        rows.add(row);
        if (record.getFields().stream().anyMatch(field -> field.matches("(?s).*[\r\n].*"))) {
            problem(line, "", "a cell that goes on in the next line", "a quoted cell to end on its own line");
            row.silenced();
        } else if (record.getFieldCount() != columns.size()) {
            problem(
                    line,
                    "",
                    record.getFieldCount() + " cells",
                    columns.size() + "; a cell that holds a comma stands in double quotes, and decimals have a point");
            row.silenced();
        }
    }

    /** A spreadsheet may leave blanks around a text, and blanks that do not break inside it. */
    private static String clean(String field) {
        return field.replace('\u00A0', ' ').replace('\u202F', ' ').strip();
    }
}
