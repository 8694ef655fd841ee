package dev.tipwright.core;

import static org.assertj.core.api.Assertions.assertThat;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** Evaluates each printed formula with the printed numbers by EvalEx, a general expression library. */
public final class PrintedFormula {

    /** Lengths print with nine digits or more: exact to the nanometre, so nothing is lost in printing them. */
    private static final int DIGITS = 9;

    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    private PrintedFormula() {}

    /** Each line's formula gives each line's value, to a hundred-millionth of it. */
    public static void check(Working working) throws EvaluationException, ParseException {
        assertThat(working.lines()).isNotEmpty();
        for (Working.Line line : working.lines()) {
            // The library takes D and d for one name: number the symbols.
            List<String> symbols = line.inputs().stream().map(Term::symbol).toList();
            Expression expression = new Expression(NAME.matcher(line.formula())
                    .replaceAll(name ->
                            symbols.contains(name.group()) ? "v" + symbols.indexOf(name.group()) : name.group()));
            for (Term input : line.inputs()) {
                expression.with(
                        "v" + symbols.indexOf(input.symbol()), new BigDecimal(input.number(Units.METRIC, DIGITS)));
            }
            BigDecimal value = expression.evaluate().getNumberValue();
            BigDecimal printed = new BigDecimal(line.result().number(Units.METRIC, DIGITS));
            assertThat(value.subtract(printed).abs())
                    .as(line.formula())
                    .isLessThanOrEqualTo(printed.abs().movePointLeft(8));
        }
    }
}
