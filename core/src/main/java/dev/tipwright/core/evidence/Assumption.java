package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import java.util.List;
import java.util.function.Function;

/**
 * An assumed reading that a result touched.
 *
 * @param value what was assumed
 * @param source why
 */
public record Assumption(Term value, Source source) {

    /**
     * Checks the values.
     *
     * @param value what was assumed
     * @param source why
     */
    public Assumption {
        Require.given("value", value);
        Require.given("source", source);
    }

    /**
     * The assumption behind a reading, if it is one.
     *
     * @param reading what was read or assumed
     * @param term makes the term for its value
     * @param <Q> what is read
     * @return the assumption in a list, or an empty list
     */
    public static <Q> List<Assumption> of(Reading<Q> reading, Function<? super Q, Term> term) {
        Require.given("reading", reading);
        Require.given("term", term);
        return reading instanceof Reading.Assumed<Q> assumed
                ? List.of(new Assumption(term.apply(assumed.value()), assumed.source()))
                : List.of();
    }
}
