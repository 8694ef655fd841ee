package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/** Puts terms into a template by their symbols in braces. */
public final class Templates {

    private Templates() {}

    /**
     * The template with each {@code {symbol}} replaced by that term's value in the units asked for.
     *
     * @param template text with symbols in braces
     * @param terms the terms it may name
     * @param units inch or metric
     * @return the sentence
     * @throws IllegalArgumentException if the template names a term that is not there
     */
    public static String fill(String template, List<Term> terms, Units units) {
        Require.given("template", template);
        List<Term> known = Require.list("terms", terms);
        Require.given("units", units);
        StringBuilder sentence = new StringBuilder();
        int at = 0;
        for (int open = template.indexOf('{'); open >= 0; open = template.indexOf('{', at)) {
            int close = template.indexOf('}', open);
            Require.that(close > open, "template", "must close each brace", template);
            sentence.append(template, at, open)
                    .append(find(template.substring(open + 1, close), known, template)
                            .text(units));
            at = close + 1;
        }
        return sentence.append(template.substring(at)).toString();
    }

    private static Term find(String symbol, List<Term> terms, String template) {
        for (Term term : terms) {
            if (term.symbol().equals(symbol)) {
                return term;
            }
        }
        throw new IllegalArgumentException(
                "template must name only its terms, but has no {" + symbol + "}: " + template);
    }
}
