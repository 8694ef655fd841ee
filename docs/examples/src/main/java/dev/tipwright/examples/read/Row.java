package dev.tipwright.examples.read;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of a file: its cells by column. A read that fails reports the problem and gives a stand-in, so that the reading goes on and
 * finds the rest; nothing is made of a row that is not sound.
 */
final class Row {
    private static final int LONGEST_LABEL = 80;
    private static final Pattern REASON = Pattern.compile("text (.*), was .*");

    private final Cell place;
    private final Map<String, Cell> cells;
    private final Problems problems;
    private boolean sound = true;
    private boolean silent;

    /** A row at a place: the line as a whole. */
    Row(Cell place, Map<String, Cell> cells, Problems problems) {
        this.place = place;
        this.cells = cells;
        this.problems = problems;
    }

    /** Says no more of this row: it has a problem as a whole, and others would only follow from it. */
    Row silenced() {
        sound = false;
        silent = true;
        return this;
    }

    boolean sound() {
        return sound;
    }

    boolean has(String column) {
        return cells.containsKey(column) && !cell(column).blank();
    }

    Cell cell(String column) {
        return cells.getOrDefault(column, new Cell(place.file(), place.line(), column, ""));
    }

    void problem(String column, String expected) {
        sound = false;
        // A column that is missing altogether was reported once, for the whole file.
        if (!silent && cells.containsKey(column)) {
            problems.add(cell(column).problem(expected));
        }
    }

    /** Reports a problem unless a rule holds; says nothing of a row that has problems already. */
    void require(boolean holds, String column, String expected) {
        if (sound && !holds) {
            problem(column, expected);
        }
    }

    void warn(String column, String expected) {
        if (sound) {
            problems.warn(cell(column).problem(expected));
        }
    }

    /** What people call the thing. */
    String label(String column) {
        String text = cell(column).text();
        if (text.isEmpty() || text.length() > LONGEST_LABEL || text.chars().anyMatch(Character::isISOControl)) {
            problem(column, "a label of 1 to " + LONGEST_LABEL + " characters");
        }
        return text;
    }

    /** A quantity within its limits. */
    <Q extends Comparable<Q>> Q read(String column, Limit<Q> limit) {
        String text = cell(column).text();
        if (!holds(column, limit)) {
            problem(column, limit.kind().words() + why(text, limit));
            return limit.parse(limit.usualLeast());
        }
        Q value = limit.parse(text);
        if (!limit.possible(value)) {
            problem(column, limit.possibleRange());
        } else if (!limit.usual(value)) {
            warn(column, limit.usualRange());
        }
        return value;
    }

    /** What the library says of a text it cannot read, and what it does not. */
    private static String why(String text, Limit<?> limit) {
        if (text.contains(",")) {
            return "; decimals have a point";
        }
        try {
            limit.parse(text);
            return "";
        } catch (IllegalArgumentException | ArithmeticException e) {
            Matcher matcher = REASON.matcher(String.valueOf(e.getMessage()));
            return !text.isEmpty() && matcher.matches() ? " (it " + matcher.group(1) + ")" : "";
        }
    }

    /** Whether a cell can be read as such a quantity at all. */
    <Q extends Comparable<Q>> boolean holds(String column, Limit<Q> limit) {
        try {
            limit.parse(cell(column).text());
            return true;
        } catch (IllegalArgumentException | ArithmeticException e) {
            return false;
        }
    }

    /** A quantity that may have been left blank. */
    <Q extends Comparable<Q>> Optional<Q> readIfAny(String column, Limit<Q> limit) {
        if (!cells.containsKey(column)) {
            sound = false;
            return Optional.empty();
        }
        return has(column) ? Optional.of(read(column, limit)) : Optional.empty();
    }

    /** One of a few words; capitals do not matter. */
    String choice(String column, List<String> words) {
        for (String word : words) {
            if (word.equalsIgnoreCase(cell(column).text())) {
                return word;
            }
        }
        problem(column, String.join(" or ", words));
        return words.get(0);
    }

    /** One of an enum, written in small letters. */
    <E extends Enum<E>> E choice(String column, Class<E> type) {
        List<E> all = List.of(type.getEnumConstants());
        List<String> words =
                all.stream().map(one -> one.name().toLowerCase(Locale.ROOT)).toList();
        return all.get(words.indexOf(choice(column, words)));
    }

    /** What the row describes, if it is sound. Should the library see something wrong that the reading did not, that is a problem too. */
    <T> Optional<T> make(Supplier<T> maker) {
        if (!sound) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException | ArithmeticException e) {
            sound = false;
            problems.add(new Problem(
                    place.file(), place.line(), "", "values that do not go together", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }
}
