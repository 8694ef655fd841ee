package dev.tipwright.core.internal.arg;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Argument checks shared by the three modules; each message names the argument, the rule and the value. */
public final class Require {

    private static final int LONGEST_LABEL = 80;

    /** Below a space and here lie the control characters of ISO 6429. */
    private static final char FIRST_HIGH_CONTROL = 0x7f;

    private static final char LAST_HIGH_CONTROL = 0x9f;

    /** In nanometres. */
    private static final long MILLIMETRE = 1_000_000;

    private Require() {}

    /**
     * The argument, if it is there.
     *
     * @param name of the argument
     * @param value of the argument
     * @param <T> its type
     * @return the value
     */
    public static <T> T given(String name, T value) {
        if (value == null) {
            throw new NullPointerException(name + " must not be null");
        }
        return value;
    }

    /**
     * A label: one to eighty characters, not blank, none of them a control character.
     *
     * @param name of the argument
     * @param label its value
     * @return the label
     */
    public static String label(String name, String label) {
        given(name, label);
        if (label.isBlank() || label.length() > LONGEST_LABEL || holdsControl(label)) {
            throw new IllegalArgumentException(name + " must be 1 to " + LONGEST_LABEL + " printable characters, was \""
                    + label.replaceAll("\\p{Cntrl}", "?") + "\"");
        }
        return label;
    }

    /**
     * An immutable copy of a list without null elements.
     *
     * @param name of the argument
     * @param list its value
     * @param <T> element type
     * @return the copy
     */
    public static <T> List<T> list(String name, List<? extends T> list) {
        given(name, list);
        try {
            if (list instanceof ArrayList && list.size() == 1) {
                return List.of(list.get(0)); // which needs no array, where a copy makes two on the way
            }
            return List.copyOf(list);
        } catch (NullPointerException hole) {
            throw hole(name, list, hole);
        }
    }

    private static NullPointerException hole(String name, List<?> list, NullPointerException hole) {
        int first = new ArrayList<Object>(list).indexOf(null);
        return first < 0 ? hole : new NullPointerException(name + " must not hold null, but element " + first + " is");
    }

    /**
     * An immutable list of an array without null elements.
     *
     * @param name of the argument
     * @param array its value
     * @param <T> element type
     * @return the list
     */
    public static <T> List<T> all(String name, T[] array) {
        given(name, array);
        try {
            return List.of(array);
        } catch (NullPointerException hole) {
            throw hole(name, Arrays.asList(array), hole);
        }
    }

    /**
     * An immutable copy of a list with at least one element and no null.
     *
     * @param name of the argument
     * @param list its value
     * @param <T> element type
     * @return the copy
     */
    public static <T> List<T> someOf(String name, List<? extends T> list) {
        List<T> copy = list(name, list);
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(name + " must not be empty, was " + copy);
        }
        return copy;
    }

    /**
     * A list in which no two elements have the same key.
     *
     * @param name of the argument
     * @param list its value
     * @param key of an element
     * @param <T> element type
     * @return the list
     */
    public static <T> List<T> distinct(String name, List<T> list, Function<? super T, ?> key) {
        Set<Object> seen = new HashSet<>();
        List<Object> twice = new ArrayList<>();
        for (T element : list) {
            Object of = key.apply(element);
            if (!seen.add(of)) {
                twice.add(of);
            }
        }
        if (!twice.isEmpty()) {
            throw new IllegalArgumentException(name + " must name each one once, but has more than one of " + twice);
        }
        return list;
    }

    /**
     * A length above zero.
     *
     * @param name of the argument
     * @param length its value
     * @return the length
     */
    public static Length positive(String name, Length length) {
        if (given(name, length).nanometres() <= 0) {
            throw new IllegalArgumentException(name + " must be above zero, was " + length);
        }
        return length;
    }

    /**
     * A length of zero or more.
     *
     * @param name of the argument
     * @param length its value
     * @return the length
     */
    public static Length notNegative(String name, Length length) {
        if (given(name, length).nanometres() < 0) {
            throw new IllegalArgumentException(name + " must not be negative, was " + length);
        }
        return length;
    }

    /**
     * A mass above zero.
     *
     * @param name of the argument
     * @param mass its value
     * @return the mass
     */
    public static Mass positive(String name, Mass mass) {
        if (given(name, mass).picograms() <= 0) {
            throw new IllegalArgumentException(name + " must be above zero, was " + mass);
        }
        return mass;
    }

    /**
     * A mass of zero or more.
     *
     * @param name of the argument
     * @param mass its value
     * @return the mass
     */
    public static Mass notNegative(String name, Mass mass) {
        if (given(name, mass).picograms() < 0) {
            throw new IllegalArgumentException(name + " must not be negative, was " + mass);
        }
        return mass;
    }

    /**
     * A value no greater than another argument.
     *
     * @param name of the argument
     * @param value its value
     * @param limitName name of the other argument
     * @param limit value of the other
     * @param <T> a type with an order
     * @return the value
     */
    public static <T extends Comparable<T>> T atMost(String name, T value, String limitName, T limit) {
        if (given(name, value).compareTo(given(limitName, limit)) > 0) {
            throw broken(name, "must be at most " + limitName + ", " + limit, value);
        }
        return value;
    }

    /**
     * The same for lengths, of which there are so many that comparing any two things is too slow.
     *
     * @param name of the argument
     * @param length its value
     * @param limitName of the argument that limits it
     * @param limit its value
     * @return the length
     */
    public static Length atMost(String name, Length length, String limitName, Length limit) {
        if (given(name, length).moreThan(given(limitName, limit))) {
            throw broken(name, "must be at most " + limitName + ", " + limit, length);
        }
        return length;
    }

    /**
     * A value between two limits, both allowed.
     *
     * @param name of the argument
     * @param value its value
     * @param least lowest allowed
     * @param most highest allowed
     * @param <T> a type with an order
     * @return the value
     */
    public static <T extends Comparable<T>> T between(String name, T value, T least, T most) {
        given(name, value);
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw broken(name, "must be from " + least + " to " + most, value);
        }
        return value;
    }

    /**
     * The same for lengths.
     *
     * @param name of the argument
     * @param length its value
     * @param least the least it may be
     * @param most the most it may be
     * @return the length
     */
    public static Length between(String name, Length length, Length least, Length most) {
        given(name, length);
        if (length.lessThan(least) || length.moreThan(most)) {
            throw broken(name, "must be from " + least + " to " + most, length);
        }
        return length;
    }

    /**
     * A length between two limits, both included.
     *
     * @param name of the argument
     * @param length its value
     * @param leastMm the least it may be, mm
     * @param mostMm the most it may be, mm
     * @return the length
     */
    public static Length within(String name, Length length, int leastMm, int mostMm) {
        long nanometres = given(name, length).nanometres();
        return nanometres >= leastMm * MILLIMETRE && nanometres <= mostMm * MILLIMETRE
                ? length
                : between(name, length, Length.ofMillimetres(leastMm), Length.ofMillimetres(mostMm));
    }

    /**
     * A length above zero, up to a limit.
     *
     * @param name of the argument
     * @param length its value
     * @param mostMm the most it may be, mm
     * @return the length
     */
    public static Length someUpTo(String name, Length length, int mostMm) {
        long nanometres = given(name, length).nanometres();
        return nanometres > 0 && nanometres <= mostMm * MILLIMETRE
                ? length
                : between(name, length, Length.ofNanometres(1), Length.ofMillimetres(mostMm));
    }

    /**
     * A number of digits to show beyond the usual, 0 to 9.
     *
     * @param extra its value
     */
    public static void extraDigits(int extra) {
        that(extra >= 0 && extra <= 9, "extra", "must be from 0 to 9", extra);
    }

    /**
     * Refuses an argument unless a rule holds.
     *
     * @param holds whether it does
     * @param name of the argument
     * @param rule what it must be, such as {@code "must end beyond its start"}
     * @param value its value
     */
    public static void that(boolean holds, String name, String rule, Object value) {
        if (!holds) {
            throw broken(name, rule, value);
        }
    }

    /**
     * Fails; for rules whose text costs more to make than the check, on paths that are walked a million times.
     *
     * @param name of the argument
     * @param rule that it breaks
     * @param value that it has
     * @return never; so that a caller may {@code throw} it
     */
    public static IllegalArgumentException broken(String name, String rule, Object value) {
        return new IllegalArgumentException(name + " " + rule + ", was " + value);
    }

    private static boolean holdsControl(String label) {
        for (int i = 0; i < label.length(); i++) {
            char c = label.charAt(i);
            if (c < ' ' || (c >= FIRST_HIGH_CONTROL && c <= LAST_HIGH_CONTROL)) {
                return true;
            }
        }
        return false;
    }
}
