package dev.tipwright.examples.read;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Length;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a row does with what the reading of its cells did not see. */
class RowTest {
    private final Problems problems = new Problems();
    private final Row row =
            new Row(new Cell("here.csv", 3, "", ""), Map.of("a", new Cell("here.csv", 3, "a", "1 in")), problems);

    @Test
    void whatTheLibraryRefusesIsAProblemOfTheLine() {
        assertThat(row.make(() -> Length.ofMillimetres(Double.NaN))).isEmpty();
        assertThat(row.sound()).isFalse();
        assertThat(problems.problems())
                .singleElement()
                .asString()
                .startsWith("here.csv, line 3: found values that do not go together, expected millimetres must be");
    }

    @Test
    void nothingIsMadeOfARowWithAProblem() {
        row.problem("a", "something else");
        assertThat(row.make(() -> "made")).isEmpty();
    }

    @Test
    void aColumnThatIsMissingAltogetherIsNotSaidAgain() {
        row.read("b", Limits.KERF);
        assertThat(row.readIfAny("c", Limits.KERF)).isEmpty();
        assertThat(row.sound()).isFalse();
        assertThat(problems.none()).isTrue();
    }

    @Test
    void onceThereIsAProblemNoRuleIsAsked() {
        row.problem("a", "something else");
        row.require(false, "a", "a rule");
        assertThat(problems.problems()).hasSize(1);
    }
}
