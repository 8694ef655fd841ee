package dev.tipwright.core.internal.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;

/** A page as plain text and as Markdown. */
class PageProperties {

    private static final Page PAGE = new Page()
            .heading(1, "Plan")
            .paragraph("Words.")
            .heading(3, "Numbers")
            .table(List.of(
                    List.of("club", "7", "8"), List.of("length, in", "37.5", "37"), List.of("trim", "1", "11.5")))
            .item("STOP", "one", "")
            .item("", "two", "First: look.")
            .paragraph("End.");

    @Example
    void plain() {
        assertThat(PAGE.plain()).isEqualTo("""
                        PLAN
                        ====

                        Words.

                        Numbers

                          club           7     8
                          length, in  37.5    37
                          trim           1  11.5

                          STOP  one
                          -  two
                             First: look.

                        End.
                        """);
    }

    @Example
    void markdown() {
        assertThat(PAGE.markdown()).isEqualTo("""
                        # Plan

                        Words.

                        ### Numbers

                        | club | 7 | 8 |
                        |---|---:|---:|
                        | length, in | 37.5 | 37 |
                        | trim | 1 | 11.5 |

                        - **STOP** one
                        - two

                          *First: look.*


                        End.
                        """);
    }

    @Example
    void aBarInACellDoesNotMakeAColumn() {
        assertThat(new Page().table(List.of(List.of("a|b", "c"))).markdown()).startsWith("| a\\|b | c |\n");
    }

    @Example
    void secondHeadingsAreUnderlinedWithDashes() {
        assertThat(new Page().heading(2, "Club 7").plain()).isEqualTo("CLUB 7\n------\n");
        assertThat(new Page().plain()).isEmpty();
        assertThat(new Page().markdown()).isEmpty();
    }

    /** No word that fits a line is lost, broken or moved; no line is over a hundred characters. */
    @Property
    void wrappingKeepsTheWords(
            @ForAll @Size(min = 1, max = 60) List<@AlphaChars @StringLength(min = 1, max = 94) String> words) {
        String text = new Page().item("1.", String.join(" ", words), "").plain();
        assertThat(List.of(text.strip().split("\\s+")).subList(1, words.size() + 1))
                .isEqualTo(words);
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    }

    /** A word longer than a line goes on in the next. */
    @Property
    void aWordLongerThanALineIsBrokenAndKept(@ForAll @AlphaChars @StringLength(min = 95, max = 400) String word) {
        String text = new Page().item("1.", word, "").plain();
        assertThat(text.replaceAll("\\s+", "")).isEqualTo("1." + word);
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    }
}
