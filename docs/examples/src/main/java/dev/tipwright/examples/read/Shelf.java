package dev.tipwright.examples.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Things of one kind by their label. A thing whose row had a problem is known by its label but cannot be taken, so that a problem is
 * said once and not again wherever the thing is named.
 */
final class Shelf<T> {
    private final Sheet sheet;
    private final Map<String, Optional<T>> things = new LinkedHashMap<>();

    Shelf(Sheet sheet) {
        this.sheet = sheet;
    }

    void put(Row row, String column, Optional<T> thing) {
        String label = row.cell(column).text();
        if (things.containsKey(label)) {
            row.problem(column, "a label that no other line of " + sheet.file() + " has");
        } else {
            things.put(label, thing);
        }
    }

    /** The thing a cell names; a problem if there is none of that label. */
    Optional<T> take(Row row, String column) {
        String label = row.cell(column).text();
        Optional<T> thing = things.getOrDefault(label, Optional.empty());
        if (sheet.whole() && !things.containsKey(label)) {
            row.problem(column, "a label in " + sheet.file());
        }
        return thing;
    }

    boolean names(String label) {
        return things.containsKey(label);
    }

    List<T> all() {
        return things.values().stream().flatMap(Optional::stream).toList();
    }
}
