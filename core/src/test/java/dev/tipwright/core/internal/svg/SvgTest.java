package dev.tipwright.core.internal.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.internal.svg.Svg.Anchor;
import dev.tipwright.core.internal.svg.Svg.Point;
import dev.tipwright.core.internal.svg.Svg.Style;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pictures as text: places to a hundredth, words that cannot be taken for marks. */
class SvgTest {

    private static Svg picture() {
        return new Svg(300, 200, "A tip", "What it shows");
    }

    @Test
    void saysItsSizeAndWhatItIs() {
        assertThat(picture().text())
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"")
                .contains("viewBox=\"0 0 300 200\">\n", "<title id=\"title\">A tip</title>")
                .contains("<desc id=\"desc\">What it shows</desc>", "<rect width=\"300\" height=\"200\"")
                .endsWith("</svg>\n");
    }

    @Test
    void linesAndAreasGoThroughTheirPoints() {
        String text = picture()
                .line(new Point(0, 0), new Point(10, 20), Style.FIRM)
                .polyline(List.of(new Point(1, 2), new Point(3, 4), new Point(5, 6)), Style.DASHED)
                .polygon(List.of(new Point(7, 8), new Point(9, 10), new Point(11, 12)), Style.PALE)
                .text();
        assertThat(text)
                .containsSubsequence(
                        "<polyline points=\"0,0 10,20\" stroke-width=\"1.6\"/>\n",
                        "<polyline points=\"1,2 3,4 5,6\" stroke-width=\"0.8\" stroke-dasharray=\"5 4\"/>\n",
                        "<polygon points=\"7,8 9,10 11,12\" stroke=\"none\" fill=\"#e4e4e4\"/>\n");
    }

    @Test
    void placesAreRoundedToAHundredthWithoutTrailingZeros() {
        String text = picture()
                .polyline(
                        List.of(
                                new Point(0.5, -0.5),
                                new Point(12.34, -12.34),
                                new Point(0.07, -0.07),
                                new Point(1.006, -1.006),
                                new Point(0.004, -0.004),
                                new Point(1234.999, -0.1)),
                        Style.THIN)
                .text();
        assertThat(text).contains("points=\"0.5,-0.5 12.34,-12.34 0.07,-0.07 1.01,-1.01 0,0 1235,-0.1\"");
    }

    @Test
    void wordsStandWhereTheyAreAnchoredAndAreNoMarks() {
        String text = picture()
                .text(new Point(1, 2), Anchor.START, "begins")
                .text(new Point(3, 4), Anchor.MIDDLE, "a < b & \"c\" > d")
                .text(new Point(5, 6), Anchor.END, "ends")
                .text();
        assertThat(text)
                .containsSubsequence(
                        "<text x=\"1\" y=\"2\" text-anchor=\"start\" stroke=\"none\" fill=\"black\">begins</text>\n",
                        "<text x=\"3\" y=\"4\" text-anchor=\"middle\" ",
                        ">a &lt; b &amp; &quot;c&quot; &gt; d</text>\n",
                        "<text x=\"5\" y=\"6\" text-anchor=\"end\" ",
                        ">ends</text>\n");
        assertThat(new Svg(1, 1, "<t>", "&").text()).contains(">&lt;t&gt;</title>", ">&amp;</desc>");
    }
}
