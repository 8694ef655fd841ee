package dev.tipwright.examples.read;

import java.util.function.Function;

/**
 * How big something on the bench can be, and how big it usually is. Beyond the first a cell is wrong, most often in its unit or its
 * decimal point; beyond the second it is read, with a warning.
 */
record Limit<Q extends Comparable<Q>>(
        Kind<Q> kind, String least, String usualLeast, String usualMost, String most, String what) {

    /** What is written in a cell: in words with an example, and how it is read. */
    record Kind<Q>(String words, Function<String, Q> parse) {}

    Q parse(String text) {
        return kind.parse().apply(text);
    }

    boolean possible(Q value) {
        return value.compareTo(parse(least)) >= 0 && value.compareTo(parse(most)) <= 0;
    }

    boolean usual(Q value) {
        return value.compareTo(parse(usualLeast)) >= 0 && value.compareTo(parse(usualMost)) <= 0;
    }

    String possibleRange() {
        return least + " to " + most + " (" + what + ")";
    }

    String usualRange() {
        return "usually " + usualLeast + " to " + usualMost + " (" + what + ")";
    }
}
