package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ezylang.evalex.Expression;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.swingweight.ClubBalance;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every printed formula, worked by a general expression library with the printed numbers, gives the printed value. */
class WorkingTest {

    private static final Pattern RESULT = Pattern.compile("  (\\S+) = (.+) = (-?[0-9.]+)( \\S.*?)?   .*");
    private static final Pattern INPUT = Pattern.compile("      (\\S+) = (-?[0-9.]+)( \\S.*?)?   .*");

    /** The root of an equation is no formula to evaluate; {@link FrequencyTest} has it solved in another way. */
    private static final String EQUATION = "slowest f for which a w exists: ";

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void printedFormulasGivePrintedValues(String scenario) {
        List<Working> workings = workings(scenario);
        assertThat(workings).hasSizeGreaterThan(25);
        for (Working working : workings) {
            for (Units units : Units.values()) {
                assertThat(check(working.text(units))).isEqualTo(working.lines().size());
            }
        }
    }

    /** The test sees a wrong digit. */
    @Test
    void aWrongNumberIsSeen() {
        Map<String, String> inputs = Map.of("d", "0.3735", "D", "0.3660");
        assertThat(evaluate("D - d", inputs)).isEqualByComparingTo("-0.0075");
        assertThat(evaluate("min(D, d) * 2", inputs)).isEqualByComparingTo("0.732");
        String wrong = "Sum\n  V = a + b = 3.01 in   a sum\n      a = 1.00 in   one\n      b = 2.00 in   two\n";
        assertThatThrownBy(() -> check(wrong)).isInstanceOf(AssertionError.class);
        assertThat(check(wrong.replace("3.01", "3.00"))).isEqualTo(1);
    }

    @Test
    void markdownHoldsTheSameNumbers() {
        Working working = workings("practice-set").get(0);
        String markdown = working.markdown(Units.INCH);
        for (Working.Line line : working.lines()) {
            assertThat(markdown).contains("`" + line.result().symbol() + " = " + line.formula() + "`");
            for (Term input : line.inputs()) {
                assertThat(markdown).contains("| `" + input.symbol() + "` | " + input.number(Units.INCH, 5));
            }
        }
    }

    private static List<Working> workings(String scenario) {
        var job = JobFolder.read(Scenario.named(scenario).folder()).job().orElseThrow();
        var bench = job.bench().orElseThrow();
        List<Working> workings = new ArrayList<>();
        for (ClubPlan club : MainJob.plan(job).clubs()) {
            club.reports().stream().map(StepReport::working).forEach(workings::add);
            workings.add(ShaftCut.of(club.after()).working());
            workings.add(new ProfileVolume(club.report(TipFit.class).removal().profile()).working());
            Stream.of(club.report(ClubBalance.class).pointsMeasure())
                    .map(measure -> measure.budget(club.after(), bench).orElseThrow())
                    .forEach(budget -> workings.add(budget.working(Measure.TWO_SIGMA)));
        }
        return workings;
    }

    /** Reads the text as a person would, and returns how many lines it checked. */
    private static int check(String text) {
        List<String> lines = text.lines().toList();
        int checked = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher result = RESULT.matcher(lines.get(i));
            if (!lines.get(i).startsWith("      ") && result.matches()) {
                checked++;
                if (result.group(2).startsWith(EQUATION)) {
                    continue;
                }
                Map<String, String> inputs = new LinkedHashMap<>();
                for (int j = i + 1; j < lines.size() && lines.get(j).startsWith("      "); j++) {
                    Matcher input = INPUT.matcher(lines.get(j));
                    if (input.matches()) {
                        inputs.put(input.group(1), input.group(2));
                    }
                }
                String printed = result.group(3);
                int places = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
                BigDecimal value = evaluate(result.group(2), inputs);
                // Half a unit of the last printed digit; the inputs are rounded too, three digits further on or more,
                // so near a tie
                // the printed digit may go either way: a hundredth of a unit.
                assertThat(value.subtract(new BigDecimal(printed)).abs())
                        .as(lines.get(i) + "\n" + inputs + " gives " + value)
                        .isLessThanOrEqualTo(new BigDecimal("0.51").movePointLeft(places));
            }
        }
        return checked;
    }

    /** The library does not tell D from d, so that each symbol gets a name of its own first. */
    private static BigDecimal evaluate(String formula, Map<String, String> inputs) {
        Map<String, Object> values = new LinkedHashMap<>();
        List<String> symbols = List.copyOf(inputs.keySet());
        Matcher words = Pattern.compile("[A-Za-z][A-Za-z0-9_]*").matcher(formula);
        String renamed = words.replaceAll(
                word -> symbols.contains(word.group()) ? "v_" + symbols.indexOf(word.group()) : word.group());
        for (int i = 0; i < symbols.size(); i++) {
            values.put("v_" + i, new BigDecimal(inputs.get(symbols.get(i))));
        }
        try {
            return new Expression(renamed).withValues(values).evaluate().getNumberValue();
        } catch (com.ezylang.evalex.EvaluationException | com.ezylang.evalex.parser.ParseException e) {
            throw new AssertionError(formula, e);
        }
    }
}
