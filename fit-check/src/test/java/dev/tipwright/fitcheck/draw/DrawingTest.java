package dev.tipwright.fitcheck.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The drawings are well-formed, described in words, black and white, and stay on their page; places of marks by hand. */
class DrawingTest {

    private static final Bore TAPER = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT);

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static String section(String diameter, Units units) {
        return SectionDrawing.svg(DiameterProfile.cylinder(in(diameter), in("8")), TAPER, 20, units);
    }

    private static StageTable stages(String diameter) {
        TipSection tip = TipSection.of(DiameterProfile.cylinder(in(diameter), in("8")), Finish.NONE);
        return TipFit.of(tip, TAPER, in("1.25"), in(".004")).stages();
    }

    /** Every tag is opened and closed in order with quoted attributes, and every corner is on the page. */
    private static void wellFormed(String svg) {
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = Pattern.compile("<(/?)([a-z]+)((?: [a-zA-Z:-]+=\"[^\"<&]*\")*)(/?)>")
                .matcher(svg);
        int end = 0;
        while (tag.find()) {
            assertThat(svg.substring(end, tag.start())).doesNotContain("<").doesNotContain(">");
            end = tag.end();
            if (!tag.group(1).isEmpty()) {
                assertThat(open.pop()).isEqualTo(tag.group(2));
            } else if (tag.group(4).isEmpty()) {
                open.push(tag.group(2));
            }
        }
        assertThat(open).isEmpty();
        assertThat(svg.substring(end)).isBlank();
        assertThat(svg)
                .containsPattern("<title id=\"title\">[^<]+</title>")
                .containsPattern("<desc id=\"desc\">[^<]+</desc>");
        onThePage(svg);
        assertThat(svg)
                .doesNotContain("NaN")
                .doesNotContain("E-")
                .doesNotContainPattern("#(?!e4e4e4|hatch)[0-9a-f]{6}");
    }

    private static void onThePage(String svg) {
        Matcher box = Pattern.compile("viewBox=\"0 0 ([0-9]+) ([0-9]+)\"").matcher(svg);
        assertThat(box.find()).isTrue();
        Matcher point = Pattern.compile("[ \"](-?[0-9.]+),(-?[0-9.]+)(?=[ \"])").matcher(svg);
        while (point.find()) {
            assertThat(Double.parseDouble(point.group(1))).isBetween(0.0, Double.parseDouble(box.group(1)));
            assertThat(Double.parseDouble(point.group(2))).isBetween(0.0, Double.parseDouble(box.group(2)));
        }
    }

    @Test
    void aTipHalfWayInIsMarkedWhereItBinds() {
        String svg = section(".359", Units.INCH);
        wellFormed(svg);
        assertThat(svg)
                .contains("A bore 1.250 in (1 1/4) deep with a tip 0.625 in (5/8) in.")
                .contains("Differences of diameter are drawn 20 times as large as lengths.");
        // Half way between 150 and 690 is 420: there is the end of the tip, and both arrowheads point there.
        assertThat(svg.split("<polygon points=\"420,", -1)).hasSize(1 + 3);
    }

    @Test
    void metricAndOtherShapes() {
        assertThat(section(".359", Units.METRIC)).contains("15.9 mm").doesNotContain("0.625");
        wellFormed(section(".340", Units.INCH));
        assertThat(section(".340", Units.INCH))
                .contains("Nothing binds.")
                .doesNotContain("stroke=\"none\" fill=\"black\"/>");
        wellFormed(section(".400", Units.INCH));
        Bore chamfered = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, in(".396")),
                        Station.of(in(".015"), in(".3664")),
                        Station.of(in("1.25"), in(".355"))),
                BoreEnd.FLAT);
        wellFormed(SectionDrawing.svg(
                DiameterProfile.cylinder(in(".359"), in("8")), TAPER.withEnd(BoreEnd.THROUGH), 20, Units.INCH));
        wellFormed(SectionDrawing.svg(DiameterProfile.cylinder(in(".3735"), in("8")), chamfered, 1000, Units.INCH));
    }

    @Test
    void stagesAreDrawnWithTheirNumbers() {
        String svg = StageDrawing.svg(stages(".3685"), Units.INCH);
        wellFormed(svg);
        assertThat(svg)
                .contains("From 0.0175 in still to come off, in 6 stops, to none; the tip then goes in 1.250 in.");
        // Seven stops, seven dots; pale bands at both ends.
        assertThat(svg.split("fill=\"black\"/>", -1)).hasSize(8);
        assertThat(svg.split("fill=\"#e4e4e4\"/>", -1)).hasSize(1 + 2);
        wellFormed(StageDrawing.svg(stages(".351"), Units.METRIC));
        StagedTip nothing = stages(".351").tip();
        assertThat(nothing.stock()).isEqualTo(Length.ZERO);
    }

    @Test
    void hostileInput() {
        DiameterProfile tip = DiameterProfile.cylinder(in(".359"), in("8"));
        assertThatThrownBy(() -> SectionDrawing.svg(tip, TAPER, 0, Units.INCH)).hasMessageContaining("exaggeration");
        assertThatThrownBy(() -> SectionDrawing.svg(tip, TAPER, 1001, Units.INCH))
                .hasMessageContaining("exaggeration");
    }
}
