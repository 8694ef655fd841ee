package dev.tipwright.core.evidence;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sources, readings, findings, workings and cautions. */
class EvidenceTest {

    private static final Term TRIM = Term.of("T", "tip trim", len("1/2 in"));
    private static final Source WHY = Source.assumption("parallel as far as the maker says");

    private enum Code implements FindingCode {
        TOO_MUCH("a trim of {T} is too much for {club}, {T} indeed"),
        BROKEN("a trim of {T"),
        STRANGER("a trim of {U}");

        private final String template;

        Code(String template) {
            this.template = template;
        }

        @Override
        public String template() {
            return template;
        }
    }

    @Test
    void aReadingIsMeasuredAssumedOrUnknown() {
        Reading<Length> measured = Reading.measured(len("1 mm"));
        Reading<Length> assumed = Reading.assumed(len("2 mm"), WHY);
        Reading<Length> unknown = Reading.unknown("the maker");
        assertThat(measured.known()).contains(len("1 mm"));
        assertThat(assumed.known()).contains(len("2 mm"));
        assertThat(unknown.known()).isEmpty();
        assertThat(measured.orElse(len("3 mm"))).isEqualTo(len("1 mm"));
        assertThat(unknown.orElse(len("3 mm"))).isEqualTo(len("3 mm"));
        assertThatNullPointerException().isThrownBy(() -> measured.orElse(null)).withMessage("other must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Reading.measured(null))
                .withMessage("value must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Reading.assumed(len("1 mm"), null))
                .withMessage("source must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Reading.assumed(null, WHY))
                .withMessage("value must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Reading.unknown(" "))
                .withMessageStartingWith("ask must be 1 to 80");
    }

    @Test
    void onlyAnAssumedReadingIsAnAssumption() {
        assertThat(Assumption.of(Reading.assumed(len("1/2 in"), WHY), value -> Term.of("T", "tip trim", value)))
                .containsExactly(new Assumption(TRIM, WHY));
        assertThat(Assumption.of(Reading.measured(len("1/2 in")), value -> TRIM))
                .isEmpty();
        assertThat(Assumption.of(Reading.<Length>unknown("the maker"), value -> TRIM))
                .isEmpty();
        assertThatNullPointerException()
                .isThrownBy(() -> Assumption.of(null, value -> TRIM))
                .withMessage("reading must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Assumption(TRIM, null))
                .withMessage("source must not be null");
    }

    @Test
    void aSourceSaysWhatSortItIs() {
        assertThat(Source.published("a standard", "table 1").text()).isEqualTo("a standard, table 1 (published)");
        assertThat(Source.commonPractice("half an inch").text()).isEqualTo("half an inch (common practice)");
        assertThat(WHY.kind()).isEqualTo(Source.Kind.ASSUMPTION);
        assertThat(Source.given("the shaft's maker").text()).isEqualTo("the shaft's maker (given)");
        assertThat(new Source(Source.Kind.FROM_MEMORY, "a book", "").text()).isEqualTo("a book (from memory)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Source.published("", "table 1"))
                .withMessageStartingWith("title must be 1 to 80");
        assertThatNullPointerException()
                .isThrownBy(() -> Source.published("a standard", null))
                .withMessage("place must not be null");
    }

    @Test
    void aFindingFillsItsSentenceWithItsTerms() {
        Finding finding = Finding.stop(Code.TOO_MUCH, TRIM, Term.of("club", "club", "{T} 7"));
        assertThat(finding.message(Units.INCH))
                .isEqualTo("a trim of 0.500 in (1/2) is too much for {T} 7, 0.500 in (1/2) indeed");
        assertThat(finding.message(Units.METRIC)).startsWith("a trim of 12.7 mm is");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(Finding.note(Code.TOO_MUCH).severity()).isEqualTo(Severity.NOTE);
        assertThat(Finding.caution(Code.TOO_MUCH).severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.term("T")).isEqualTo(TRIM);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finding.term("U"))
                .withMessage("symbol must be one of this finding's terms, was \"U\"");
        assertThatNullPointerException().isThrownBy(() -> finding.term(null)).withMessage("symbol must not be null");
        assertThatNullPointerException().isThrownBy(() -> Finding.stop(null)).withMessage("code must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Finding.stop(Code.TOO_MUCH, (Term[]) null))
                .withMessage("terms must not be null");
    }

    @Test
    void aSentenceNamesOnlyItsTerms() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Finding.stop(Code.STRANGER, TRIM).message(Units.INCH))
                .withMessage("template must name only its terms, but has no {U}: a trim of {U}");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Finding.stop(Code.BROKEN, TRIM).message(Units.INCH))
                .withMessage("template must close each brace, was a trim of {T");
        assertThatNullPointerException()
                .isThrownBy(() -> Templates.fill(null, List.of(), Units.INCH))
                .withMessage("template must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Templates.fill("", List.of(), null))
                .withMessage("units must not be null");
        assertThat(Templates.fill("", List.of(), Units.INCH)).isEmpty();
    }

    @Test
    void aWorkingShowsFormulaNumbersAndSource() {
        Working working = new Working("Tip trim", List.of(new Working.Line(TRIM, "chart", List.of(TRIM), WHY)));
        assertThat(working.text(Units.METRIC)).isEqualTo("""
                        Tip trim
                          T = chart = 12.70 mm   tip trim
                              T = 12.700000 mm   tip trim
                              by parallel as far as the maker says (assumption)
                        """);
        assertThat(working.markdown(Units.METRIC)).isEqualTo("""
                        ### Tip trim

                        `T = chart` = **12.70 mm**, tip trim

                        | symbol | number | meaning |
                        |---|---:|---|
                        | `T` | 12.700000 mm | tip trim |

                        *By parallel as far as the maker says (assumption).*
                        """);
        assertThatNullPointerException().isThrownBy(() -> working.text(null)).withMessage("units must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Working.Line(TRIM, null, List.of(), WHY))
                .withMessage("formula must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Working("", List.of()))
                .withMessageStartingWith("title must be");
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void aCautionIsASentence(Caution caution) {
        assertThat(caution.text()).endsWith(".").hasSizeGreaterThan(40);
    }

    /** Severities are in rising order: the worst of a plan is the greatest. */
    @Test
    void aStopIsWorseThanACautionAndThatThanANote() {
        assertThat(Severity.STOP).isGreaterThan(Severity.CAUTION);
        assertThat(Severity.CAUTION).isGreaterThan(Severity.NOTE);
    }
}
