package dev.tipwright.checkvalues;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.checkvalues.CheckTable.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTableTest {
    private static final CheckTable SAMPLE = CheckTable.named("sample-for-tests");

    @Test
    void saysWhereItWasRead() {
        assertThat(SAMPLE.name()).isEqualTo("sample-for-tests");
        assertThat(SAMPLE.source()).isEqualTo("Arithmetic: quarters of an inch");
        assertThat(SAMPLE.header("status")).isEqualTo("arithmetic");
        assertThat(SAMPLE.header("note")).isEqualTo("Read by the tests of this module alone, on two lines.");
        assertThat(SAMPLE.header("edition")).isEmpty();
        assertThat(SAMPLE).hasToString("sample-for-tests (Arithmetic: quarters of an inch, none)");
    }

    @Test
    void leavesOutAPlaceThatIsNotGiven() {
        assertThat(table("a", "1")).hasToString("t (s)");
    }

    @Test
    void givesCellsAsTextAndNumbers() {
        assertThat(SAMPLE.columns()).containsExactly("name", "inch", "remark");
        assertThat(SAMPLE.rows()).hasSize(2);
        Row quarter = SAMPLE.rows().get(0);
        assertThat(quarter.text("name")).isEqualTo("1/4");
        assertThat(quarter.text("remark")).isEqualTo("a \"quarter\", in words");
        assertThat(quarter.number("inch")).isEqualTo(0.25);
        assertThat(quarter.decimal("inch")).isEqualTo(new BigDecimal("0.250"));
        assertThat(quarter.has("remark")).isTrue();
        assertThat(SAMPLE.rows().get(1).has("remark")).isFalse();
    }

    @Test
    void printsARowWithItsLine() {
        assertThat(SAMPLE.rows().get(1)).hasToString("sample-for-tests, line 9: name=1/2, inch=0.500, remark=");
    }

    @Test
    void findsTheOneRowThatHoldsAText() {
        assertThat(SAMPLE.row("name", "1/2").number("inch")).isEqualTo(0.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SAMPLE.row("name", "3/4"))
                .withMessage("sample-for-tests: 0 rows with name=3/4, not one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table("a", "1", "1").row("a", "1"))
                .withMessage("t: 2 rows with a=1, not one");
    }

    @Test
    void keepsEmptyAndQuotedCellsApart() {
        assertThat(table("a,b,c", ",\"\",\" x \"").rows().get(0)).hasToString("t, line 4: a=, b=, c= x ");
    }

    @Test
    void namesTheTableThatIsMissing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CheckTable.named("no-such-table"))
                .withMessage("name must be that of a table among the check values: no-such-table");
        assertThatNullPointerException()
                .isThrownBy(() -> CheckTable.named(null))
                .withMessage("name");
    }

    @Test
    void namesTheColumnThatIsMissing() {
        Row row = SAMPLE.rows().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> row.text("mm"))
                .withMessage("sample-for-tests, line 8: no column mm among [name, inch, remark]");
    }

    @Test
    void namesTheCellThatIsNotANumber() {
        Row row = SAMPLE.rows().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> row.number("name"))
                .withMessage("sample-for-tests, line 8: name is not a number: '1/4'");
    }

    @Test
    void cannotBeChanged() {
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> SAMPLE.rows().clear());
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> SAMPLE.columns().clear());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a,b       | 1         | t, line 4: 1 cells under 2 columns",
                "a         | 1,2       | t, line 4: 2 cells under 1 columns",
                "a,        | 1,2       | t, line 3: every column has a name",
                "a,a       | 1,2       | t, line 3: no column name comes twice",
                "a,b       | \"1,2     | t, line 4: a quote is closed on its own line",
                "a,b       | \"1\"x,2  | t, line 4: a comma follows a closing quote",
                "a,b       | 1\"\",2   | t, line 4: a quote stands at the start of its cell",
                "# no key  | a         | t, line 3: a line at the top reads '# key: value'",
            })
    void rejectsALineThatIsNotWellFormed(String columns, String row, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(columns, row))
                .withMessage(message);
    }

    @Test
    void rejectsATableWithoutSourceStatusColumnsOrRows() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CheckTable("t", List.of("# status: s", "a", "1")))
                .withMessage("t: a table names its source");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CheckTable("t", List.of("# source: s", "# status:", "a", "1")))
                .withMessage("t: a table names its status");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table("a"))
                .withMessage("t: a table has column names and rows");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table(""))
                .withMessage("t: a table has column names and rows");
    }

    private static CheckTable table(String... lines) {
        List<String> all = new ArrayList<>(List.of("# source: s", "# status: s"));
        all.addAll(List.of(lines));
        return new CheckTable("t", all);
    }
}
