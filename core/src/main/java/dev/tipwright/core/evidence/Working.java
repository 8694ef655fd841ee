package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/**
 * How a number came about: one line a formula, with the numbers put in. Made on request from the inputs a result
 * keeps, through the same functions as the result itself.
 *
 * @param title what is worked out
 * @param lines the lines, in the order of working
 */
public record Working(String title, List<Line> lines) {

    /**
     * Checks the values.
     *
     * @param title what is worked out
     * @param lines the lines, in the order of working
     */
    public Working {
        Require.label("title", title);
        lines = Require.list("lines", lines);
    }

    /**
     * One line of a working.
     *
     * @param result symbol, meaning and value of what the line gives
     * @param formula in the symbols of the inputs, such as {@code "chart + (G + B - i) - G_ref"}
     * @param inputs what was put in
     * @param source where the formula or its constants come from
     */
    public record Line(Term result, String formula, List<Term> inputs, Source source) {

        /**
         * Checks the values.
         *
         * @param result symbol, meaning and value of what the line gives
         * @param formula in the symbols of the inputs
         * @param inputs what was put in
         * @param source where the formula or its constants come from
         */
        public Line {
            Require.given("result", result);
            Require.given("formula", formula);
            inputs = Require.list("inputs", inputs);
            Require.given("source", source);
        }
    }

    /**
     * The working as plain text: each line as symbol, formula, result, meaning and source, with the inputs below it.
     *
     * @param units inch or metric
     * @return lines ended by line feeds
     */
    public String text(Units units) {
        Require.given("units", units);
        StringBuilder text = new StringBuilder(title).append('\n');
        for (Line line : lines) {
            text.append("  ")
                    .append(line.result().symbol())
                    .append(" = ")
                    .append(line.formula())
                    .append(" = ")
                    .append(line.result().text(units))
                    .append("   ")
                    .append(line.result().meaning())
                    .append("   [")
                    .append(line.source().text())
                    .append("]\n");
            for (Term input : line.inputs()) {
                text.append("      ")
                        .append(input.symbol())
                        .append(" = ")
                        .append(input.text(units))
                        .append("   ")
                        .append(input.meaning())
                        .append('\n');
            }
        }
        return text.toString();
    }
}
