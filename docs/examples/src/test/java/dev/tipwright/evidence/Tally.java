package dev.tipwright.evidence;

import dev.tipwright.checkvalues.CheckTable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The checks of one headline function as they are made. */
final class Tally {

    private final List<Check> checks = new ArrayList<>();

    /** The rows of a table. */
    Stream<Case> cases(String table) {
        CheckTable read = CheckTable.named(table);
        return read.rows().stream().map(row -> new Case(read, row, checks::add));
    }

    /** One row of a table. */
    Case only(String table, String column, String text) {
        CheckTable read = CheckTable.named(table);
        return new Case(read, read.row(column, text), checks::add);
    }

    List<Check> checks() {
        return List.copyOf(checks);
    }
}
