package dev.tipwright.checkvalues;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One published table: where it was read, and its rows.
 *
 * <p>The file opens with lines {@code # key: value}; a key that comes again continues its value. {@code source} and
 * {@code status} must be there. Then come a line of column names and the rows. Cells are parted by commas; a cell in
 * double quotes may hold commas, and a doubled quote stands for one. Blank lines are passed over. Whatever else departs
 * from this is an error that names the table and the line, because a table read wrongly would check wrongly.
 */
public final class CheckTable {
    private final String name;
    private final Map<String, String> header;
    private final List<String> columns;
    private final List<Row> rows;

    /**
     * Reads a table from the class path.
     *
     * @param name the name of the file, without {@code .csv}
     * @return the table
     * @throws IllegalArgumentException if there is no such table, or it is not well formed
     */
    public static CheckTable named(String name) {
        requireNonNull(name, "name");
        try (InputStream file = CheckTable.class.getResourceAsStream(name + ".csv")) {
            if (file == null) {
                throw new IllegalArgumentException("name must be that of a table among the check values: " + name);
            }
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return new CheckTable(name, text.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CheckTable(String name, List<String> lines) {
        this.name = name;
        this.header = new LinkedHashMap<>();
        List<String> names = null;
        List<Row> read = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String where = name + ", line " + (i + 1);
            if (line.isBlank()) {
                continue;
            }
            if (names == null && line.startsWith("#")) {
                addHeader(line, where);
            } else if (names == null) {
                names = columnNames(line, where);
            } else {
                read.add(new Row(where, names, cells(line, where)));
            }
        }
        for (String key : List.of("source", "status")) {
            require(!header(key).isEmpty(), name, "a table names its " + key);
        }
        require(names != null && !read.isEmpty(), name, "a table has column names and rows");
        this.columns = List.copyOf(names);
        this.rows = List.copyOf(read);
    }

    /**
     * Gives the name of the table.
     *
     * @return the name of its file, without {@code .csv}
     */
    public String name() {
        return name;
    }

    /**
     * Gives what the table was taken from.
     *
     * @return the title of the publication
     */
    public String source() {
        return header("source");
    }

    /**
     * Gives one of the values at the top of the file.
     *
     * @param key {@code source}, {@code edition}, {@code place}, {@code precision}, {@code status}, {@code note}
     * @return its value, empty when the file does not give it
     */
    public String header(String key) {
        return header.getOrDefault(requireNonNull(key, "key"), "");
    }

    /**
     * Gives the column names in the order of the file.
     *
     * @return the column names
     */
    public List<String> columns() {
        return columns;
    }

    /**
     * Gives the rows in the order of the file.
     *
     * @return the rows, at least one
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Gives the one row that holds a text in a column.
     *
     * @param column the name of the column
     * @param text what the cell holds
     * @return the row
     * @throws IllegalArgumentException if there is no such row, or more than one
     */
    public Row row(String column, String text) {
        requireNonNull(text, "text");
        List<Row> found =
                rows.stream().filter(row -> row.text(column).equals(text)).toList();
        require(found.size() == 1, name, found.size() + " rows with " + column + "=" + text + ", not one");
        return found.get(0);
    }

    /**
     * Gives the name and what the table was taken from.
     *
     * @return such as {@code drill-sizes (ASME B94.11M, table 1)}
     */
    @Override
    public String toString() {
        String place = header("place");
        return name + " (" + source() + (place.isEmpty() ? "" : ", " + place) + ")";
    }

    private void addHeader(String line, String where) {
        int colon = line.indexOf(':');
        require(colon > 0, where, "a line at the top reads '# key: value'");
        String value = line.substring(colon + 1).strip();
        header.merge(line.substring(1, colon).strip(), value, (before, more) -> before + " " + more);
    }

    private static List<String> columnNames(String line, String where) {
        List<String> names = cells(line, where);
        require(names.stream().noneMatch(String::isEmpty), where, "every column has a name");
        require(new HashSet<>(names).size() == names.size(), where, "no column name comes twice");
        return names;
    }

    private static List<String> cells(String line, String where) {
        List<String> cells = new ArrayList<>();
        int at = 0;
        while (at <= line.length()) {
            boolean quoted = line.startsWith("\"", at);
            int end = quoted ? afterQuotes(line, at, where) : line.indexOf(',', at);
            end = end < 0 ? line.length() : end;
            String cell = line.substring(at, end).strip();
            require(quoted || cell.indexOf('"') < 0, where, "a quote stands at the start of its cell");
            cells.add(quoted ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"") : cell);
            at = end + 1;
        }
        return Collections.unmodifiableList(cells);
    }

    /** Where the quoted cell that starts here ends: at a comma or at the end of the line. */
    private static int afterQuotes(String line, int start, String where) {
        int end = start + 1;
        while (true) {
            end = line.indexOf('"', end);
            require(end >= 0, where, "a quote is closed on its own line");
            end++;
            if (!line.startsWith("\"", end)) {
                break;
            }
            end++;
        }
        require(end == line.length() || line.charAt(end) == ',', where, "a comma follows a closing quote");
        return end;
    }

    private static void require(boolean met, String where, String rule) {
        if (!met) {
            throw new IllegalArgumentException(where + ": " + rule);
        }
    }

    /** One row of a table: its cells by the name of their column. */
    public static final class Row {
        private final String where;
        private final Map<String, String> cells;

        private Row(String where, List<String> columns, List<String> cells) {
            require(
                    cells.size() == columns.size(),
                    where,
                    cells.size() + " cells under " + columns.size() + " columns");
            this.where = where;
            this.cells = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                this.cells.put(columns.get(i), cells.get(i));
            }
        }

        /**
         * Says whether the cell holds anything.
         *
         * @param column the name of the column
         * @return false when the source leaves the cell empty
         * @throws IllegalArgumentException if there is no such column
         */
        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        /**
         * Gives a cell as it is written.
         *
         * @param column the name of the column
         * @return the text, without blanks around it
         * @throws IllegalArgumentException if there is no such column
         */
        public String text(String column) {
            String cell = cells.get(requireNonNull(column, "column"));
            if (cell == null) {
                throw new IllegalArgumentException(where + ": no column " + column + " among " + cells.keySet());
            }
            return cell;
        }

        /**
         * Gives a cell as the nearest {@code double}.
         *
         * @param column the name of the column
         * @return the number
         * @throws IllegalArgumentException if there is no such column, or the cell is not a number
         */
        public double number(String column) {
            return decimal(column).doubleValue();
        }

        /**
         * Gives a cell exactly as it is printed, with its trailing zeros.
         *
         * @param column the name of the column
         * @return the number
         * @throws IllegalArgumentException if there is no such column, or the cell is not a number
         */
        public BigDecimal decimal(String column) {
            String cell = text(column);
            try {
                return new BigDecimal(cell);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(where + ": " + column + " is not a number: '" + cell + "'", e);
            }
        }

        /**
         * Gives the place of the row and its cells.
         *
         * @return such as {@code drill-sizes, line 9: name=P, inch=0.3230}
         */
        @Override
        public String toString() {
            StringBuilder text = new StringBuilder(where).append(':');
            String separator = " ";
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                text.append(separator).append(cell.getKey()).append('=').append(cell.getValue());
                separator = ", ";
            }
            return text.toString();
        }
    }
}
