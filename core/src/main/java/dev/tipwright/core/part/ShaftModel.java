package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import java.util.List;

/**
 * A shaft model and the blanks it comes in.
 *
 * @param label name of the model
 * @param blanks its blanks, labels distinct
 */
public record ShaftModel(String label, List<Blank> blanks) {

    /**
     * Checks the values.
     *
     * @param label name of the model
     * @param blanks its blanks, labels distinct
     */
    public ShaftModel {
        Require.label("label", label);
        blanks = Require.distinct("blanks", Require.someOf("blanks", blanks), Blank::label);
    }

    /**
     * One of the blanks.
     *
     * @param label of the blank
     * @return the blank
     * @throws IllegalArgumentException if the model has no such blank
     */
    public Blank blank(String label) {
        Require.given("label", label);
        for (Blank blank : blanks) {
            if (blank.label().equals(label)) {
                return blank;
            }
        }
        throw new IllegalArgumentException(
                "label must be one of the blanks of " + this.label + ", was \"" + label + "\"");
    }

    /**
     * This one with another value in one place.
     *
     * @param label name of the model
     * @return a copy that differs in that alone
     */
    public ShaftModel withLabel(String label) {
        return new ShaftModel(label, blanks);
    }

    /**
     * This one with another value in one place.
     *
     * @param blanks its blanks, labels distinct
     * @return a copy that differs in that alone
     */
    public ShaftModel withBlanks(List<Blank> blanks) {
        return new ShaftModel(label, blanks);
    }
}
