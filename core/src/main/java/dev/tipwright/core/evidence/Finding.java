package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/**
 * Something a builder must know before the step: a code, how much it matters, and the numbers. The sentence is made
 * only when asked for. A club that cannot be built yields findings; it never throws.
 *
 * <pre>{@code
 * enum Rack implements FindingCode {
 *     TOO_LONG;
 *     public String template() {
 *         return "a shaft of {R} is longer than the rack";
 *     }
 * }
 * Finding finding = Finding.caution(Rack.TOO_LONG, Term.of("R", "raw shaft", Length.parse("39 in")));
 * finding.message(Units.METRIC);          // = a shaft of 990.6 mm is longer than the rack
 * finding.term("R").text(Units.INCH);     // = 39.000 in (39)
 * }</pre>
 *
 * @param code what kind of thing
 * @param severity how much it matters
 * @param terms the numbers, by symbol
 */
public record Finding(FindingCode code, Severity severity, List<Term> terms) {

    /**
     * Checks the values.
     *
     * @param code what kind of thing
     * @param severity how much it matters
     * @param terms the numbers, by symbol
     */
    public Finding {
        Require.given("code", code);
        Require.given("severity", severity);
        terms = Require.list("terms", terms);
    }

    /**
     * Worth knowing.
     *
     * @param code what kind of thing
     * @param terms the numbers
     * @return the finding
     */
    public static Finding note(FindingCode code, Term... terms) {
        return new Finding(code, Severity.NOTE, Require.all("terms", terms));
    }

    /**
     * To be looked at before going on.
     *
     * @param code what kind of thing
     * @param terms the numbers
     * @return the finding
     */
    public static Finding caution(FindingCode code, Term... terms) {
        return new Finding(code, Severity.CAUTION, Require.all("terms", terms));
    }

    /**
     * Reason not to take the step.
     *
     * @param code what kind of thing
     * @param terms the numbers
     * @return the finding
     */
    public static Finding stop(FindingCode code, Term... terms) {
        return new Finding(code, Severity.STOP, Require.all("terms", terms));
    }

    /**
     * The finding in a sentence.
     *
     * @param units inch or metric
     * @return the code's template with the terms put in
     */
    public String message(Units units) {
        return Templates.fill(code.template(), terms, units);
    }

    /**
     * The value of one term, by its symbol.
     *
     * @param symbol of the term
     * @return the term
     * @throws IllegalArgumentException if there is none
     */
    public Term term(String symbol) {
        Require.given("symbol", symbol);
        for (Term term : terms) {
            if (term.symbol().equals(symbol)) {
                return term;
            }
        }
        throw new IllegalArgumentException("symbol must be one of this finding's terms, was \"" + symbol + "\"");
    }
}
