package dev.tipwright.core.evidence;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/**
 * How a number came about: one line a formula, with the numbers put in. Made on request from the inputs a result
 * keeps, through the same functions as the result itself.
 *
 * <pre>{@code
 * TipTrim trim = new TipTrim(
 *         Length.parse("1/2 in"), Length.parse("1.28125 in"), Length.parse("1 in"),
 *         Length.parse("1 in"), Length.parse("1 in"), Length.parse("1/16 in"));
 * Working.Line line = trim.working().lines().get(0);
 * line.formula();                      // = chart + (G + B - i) - G_ref
 * line.inputs().size();                // = 5
 * line.result().text(Units.METRIC);    // = 19.8 mm
 * }</pre>
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

    /** Digits beyond the usual, so that a line can be worked again from what is printed. */
    static final int MORE_FOR_INPUTS = 5;

    static final int MORE_FOR_RESULT = 1;

    /**
     * The working as plain text: each line as symbol, formula, result, meaning and source, with the inputs below it. Inputs are
     * printed with enough digits to come to the printed result by the formula.
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
                    .append(printed(line.result(), units, MORE_FOR_RESULT))
                    .append("   ")
                    .append(line.result().meaning())
                    .append('\n');
            for (Term input : line.inputs()) {
                text.append("      ")
                        .append(input.symbol())
                        .append(" = ")
                        .append(printed(input, units, MORE_FOR_INPUTS))
                        .append("   ")
                        .append(input.meaning())
                        .append('\n');
            }
            text.append("      by ").append(line.source().text()).append('\n');
        }
        return text.toString();
    }

    /**
     * The working as Markdown: a heading, and for each line the formula, a table of its inputs, and its source.
     *
     * @param units inch or metric
     * @return lines ended by line feeds
     */
    public String markdown(Units units) {
        Require.given("units", units);
        StringBuilder text = new StringBuilder("### ").append(title).append('\n');
        for (Line line : lines) {
            text.append("\n`")
                    .append(line.result().symbol())
                    .append(" = ")
                    .append(line.formula())
                    .append("` = **")
                    .append(printed(line.result(), units, MORE_FOR_RESULT))
                    .append("**, ")
                    .append(line.result().meaning())
                    .append("\n\n| symbol | number | meaning |\n|---|---:|---|\n");
            for (Term input : line.inputs()) {
                text.append("| `")
                        .append(input.symbol())
                        .append("` | ")
                        .append(printed(input, units, MORE_FOR_INPUTS))
                        .append(" | ")
                        .append(input.meaning())
                        .append(" |\n");
            }
            text.append("\n*By ").append(line.source().text()).append(".*\n");
        }
        return text.toString();
    }

    private static String printed(Term term, Units units, int extra) {
        String unit = term.unit(units);
        return unit.isEmpty() ? term.number(units, extra) : term.number(units, extra) + " " + unit;
    }
}
