package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Works each printed formula with the printed numbers by a general expression library. Half a unit of the last printed digit is
 * rounding; the inputs carry five digits more than one reads at the bench, so near a tie the digit may go either way: a hundredth.
 */
public final class PrintedWorking {

    private static final int EXTRA = 5;

    private PrintedWorking() {}

    public static void isTrue(Working working) {
        assertThat(working.lines()).isNotEmpty();
        assertThat(working.text(Units.METRIC)).contains(working.title());
        for (Units units : Units.values()) {
            for (Working.Line line : working.lines()) {
                BigDecimal printed = new BigDecimal(line.result().number(units, 0));
                assertThat(worked(line, units).subtract(printed).abs())
                        .as("%s = %s, %s", line.result().symbol(), line.formula(), units)
                        .isLessThanOrEqualTo(new BigDecimal("0.51").movePointLeft(Math.max(0, printed.scale())));
            }
        }
    }

    /** The library does not tell D from d, so that each symbol gets a name of its own first. */
    private static BigDecimal worked(Working.Line line, Units units) {
        List<String> symbols = line.inputs().stream().map(Term::symbol).toList();
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < symbols.size(); i++) {
            values.put("v_" + i, new BigDecimal(line.inputs().get(i).number(units, EXTRA)));
        }
        Matcher words = Pattern.compile("[A-Za-z][A-Za-z0-9_]*").matcher(line.formula());
        String renamed = words.replaceAll(
                word -> symbols.contains(word.group()) ? "v_" + symbols.indexOf(word.group()) : word.group());
        try {
            return new Expression(renamed).withValues(values).evaluate().getNumberValue();
        } catch (EvaluationException | ParseException e) {
            throw new AssertionError(line.formula(), e);
        }
    }
}
