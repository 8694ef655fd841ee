package dev.tipwright.core.internal.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A page that fits the wall whatever is written on it. */
class PageTest {

    private static Page page() {
        return new Page()
                .heading(1, "A plan")
                .paragraph("word ".repeat(30).strip())
                .item("1.", "Cut at " + "on and on ".repeat(8) + "1.531 in (1 17/32) from the tip", "First: measure")
                .table(List.of(List.of("club", "6"), List.of("tip trim, in", "0.500")));
    }

    @Test
    void wrapsAndAligns() {
        assertThat(page().plain()).isEqualTo("""
                        A PLAN
                        ======

                        %s
                        %s

                          1.  Cut at on and on on and on on and on on and on on and on on and on on and on on and on
                              1.531 in (1 17/32) from the tip
                              First: measure

                          club              6
                          tip trim, in  0.500
                        """.formatted(
                        "word ".repeat(20).strip(), "word ".repeat(10).strip()));
    }

    @Test
    void aNumberIsNeverBrokenFromItsUnitAndFraction() {
        Random random = new Random(7);
        for (int k = 0; k < 500; k++) {
            String filler = "x".repeat(1 + random.nextInt(90));
            String plain = new Page()
                    .paragraph(filler + " 34.959 in (under 34 31/32) up and 62.4 mm (rounded down) off, 4.00 g")
                    .plain();
            assertThat(plain)
                    .contains("34.959 in (under 34 31/32)")
                    .contains("62.4 mm (rounded down)")
                    .contains("4.00 g");
            assertThat(plain.lines()).allMatch(line -> line.length() <= 100);
        }
    }

    @Test
    void whatIsTooLongIsBrokenAndNothingIsLost() {
        String label = "x".repeat(80);
        Page page = new Page()
                .heading(1, "ß".repeat(80))
                .heading(3, "h".repeat(150))
                .paragraph("y".repeat(250))
                .item(label, "words of a list", "below")
                .table(List.of(
                        List.of("club", label, label, label),
                        List.of("a meaning that is longer than any the library has itself", "1", "2", "3")));
        assertThat(page.plain().lines()).allMatch(line -> line.length() <= 100);
        assertThat(page.plain().replaceAll("[^y]", "")).hasSizeGreaterThanOrEqualTo(250);
        assertThat(page.plain().replaceAll("[^x]", "")).hasSize(4 * 80);
    }

    @Test
    void aWideTableComesInPartsWithItsFirstColumnEachTime() {
        List<String> head = List.of("club", "a".repeat(40), "b".repeat(40), "c".repeat(40));
        String plain =
                new Page().table(List.of(head, List.of("trim", "1", "2", "3"))).plain();
        assertThat(plain.lines().filter(line -> line.startsWith("  trim"))).hasSize(2);
        assertThat(plain.lines()).allMatch(line -> line.length() <= 100);
    }

    /** Two blanks before each column: 2 + 20 + 2 + 37 + 2 + 37 is a hundred; a letter more, and the last column goes below. */
    @Test
    void aTableOfAHundredColumnsIsInOnePart() {
        List<String> fits = List.of("c".repeat(20), "a".repeat(37), "b".repeat(37));
        assertThat(new Page().table(List.of(fits)).plain())
                .isEqualTo("  " + fits.get(0) + "  " + fits.get(1) + "  " + fits.get(2) + "\n");
        List<String> wide = List.of("c".repeat(20), "a".repeat(37), "b".repeat(38));
        assertThat(new Page().table(List.of(wide)).plain())
                .isEqualTo(
                        "  " + wide.get(0) + "  " + wide.get(1) + "\n\n  " + wide.get(0) + "  " + wide.get(2) + "\n");
    }

    /** A word that fills the line after its indent is broken in itself; a line is never empty. */
    @Test
    void aWordLongerThanALineIsBrokenInItself() {
        assertThat(new Page().item("1.", "z".repeat(96), "").plain())
                .isEqualTo("  1.  " + "z".repeat(94) + "\n" + "      zz\n");
        assertThat(new Page().item("1.", "a " + "z".repeat(96), "").plain())
                .isEqualTo("  1.  a\n      " + "z".repeat(94) + "\n      zz\n");
    }

    @Test
    void marksOfMarkdownInALabelAreOnlyLetters() {
        String markdown = new Page()
                .heading(2, "a*b")
                .item("", "x_y|z", "")
                .item(" 2.", "w", "First: <b>")
                .table(List.of(List.of("a|b", "c"), List.of("d", "e")))
                .markdown();
        assertThat(markdown)
                .isEqualTo(
                        "## a\\*b\n\n- x\\_y\\|z\n- **2.** w\n\n  *First: \\<b\\>*\n\n\n| a\\|b | c |\n|---|---:|\n| d | e |\n");
    }
}
