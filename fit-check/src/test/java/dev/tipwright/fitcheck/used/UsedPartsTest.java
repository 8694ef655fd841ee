package dev.tipwright.fitcheck.used;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pulled shafts and cleaned bores, by hand in thousandths of an inch. The raw tip is .3735 with .0025 of finish and a wall of .0905:
 * its hole is .1925.
 */
class UsedPartsTest {

    private static final ShaftSection RAW = section(Reading.measured(wall(90.5)));
    private static final ThicknessProfile CLEAN = ThicknessProfile.uniform(Length.ZERO);
    private static final DiameterProfile TAPERED = tip(0, 351, 1250, 359);
    private static final UsedTip USED = new UsedTip(RAW, mil(500), TAPERED, CLEAN);
    private static final Length HALF = mil(.5);

    @Test
    void whatIsOffCameOffFinishAndWall() {
        assertThat(USED.cleaned()).isEqualTo(TAPERED);
        assertThat(USED.mostOff()).isEqualTo(mil(22.5));
        TipSection section = USED.section();
        // (.351 - .1925) / 2 and (.359 - .1925) / 2; nothing of the finish is left.
        Wall left = section.wall().known().orElseThrow();
        assertThat(left.thickness().at(mil(0))).isEqualTo(mil(79.25));
        assertThat(left.thickness().at(mil(1250))).isEqualTo(mil(83.25));
        assertThat(section.finish().thickness().at(mil(600))).isEqualTo(Length.ZERO);
        assertThat(section.trimmed()).isEqualTo(Length.ZERO);
        assertThat(section.wall()).isInstanceOf(Reading.Measured.class);
        assertThat(section.finish().density())
                .isEqualTo(RAW.finish().orElse(Finish.NONE).density());
    }

    /** Worked in one go or pulled half way and worked on, the same wall and stiffness are left. */
    @Test
    void workedTwiceLeavesWhatWorkedOnceLeaves() {
        Bore bore = bore(363, 355, 1250);
        TipSection fresh = new TipSection(RAW.outside(), RAW.finish().orElse(Finish.NONE), RAW.wall(), Length.ZERO);
        MaterialRemoval once = MaterialRemoval.of(fresh, bore, mil(1250), mil(4));
        UsedTip pulled = new UsedTip(RAW, Length.ZERO, tip(0, 361, 1250, 365), CLEAN);
        MaterialRemoval twice = MaterialRemoval.of(pulled.section(), bore, mil(1250), mil(4));
        assertThat(twice.finished()).isEqualTo(once.finished());
        assertThat(twice.leastWall()).isEqualTo(once.leastWall());
        // Of .351 at the end .010 is left to do: all of it structure.
        assertThat(twice.stockAtEnd()).isEqualTo(mil(10));
        assertThat(twice.structureAtEnd()).isEqualTo(mil(10));
        assertThat(pulled.section().wall().known().orElseThrow().thickness().at(mil(0)))
                .isEqualTo(mil(84.25));
    }

    @Test
    void crustCountsTwiceOnTheDiameter() {
        UsedTip crusted = USED.withFound(tip(0, 355, 1250, 363)).withCrust(ThicknessProfile.uniform(mil(2)));
        assertThat(crusted.cleaned()).isEqualTo(TAPERED);
        assertThat(crusted.section()).isEqualTo(USED.section());
        assertThat(codes(crusted.findings(HALF)))
                .containsExactly(UsedCode.TIP_SHORTENED, UsedCode.CRUST_ON_TIP, UsedCode.TIP_WORKED);
        assertThat(crusted.findings(HALF).get(1).message(Units.INCH)).contains("up to 0.0020 in of crust");
        // .3735 less .351, and less twice .0025.
        assertThat(crusted.findings(HALF).get(2).message(Units.INCH))
                .contains("0.0225 in is off its diameter")
                .contains("0.0175 in of it structure");
    }

    @Test
    void aRawTipHasNothingToSay() {
        UsedTip raw = new UsedTip(RAW, Length.ZERO, RAW.outside(), CLEAN);
        assertThat(raw.findings(HALF)).isEmpty();
        TipSection section = raw.section();
        assertThat(section.outside()).isEqualTo(RAW.outside());
        assertThat(section.wall().known().orElseThrow().thickness().at(mil(3000)))
                .isEqualTo(mil(90.5));
        assertThat(section.finish().thickness().at(mil(3000))).isEqualTo(mil(2.5));
    }

    @Test
    void widerThanRawTakesNothingOff() {
        UsedTip wide = new UsedTip(RAW, Length.ZERO, tip(0, 376, 1250, 373.5), CLEAN);
        assertThat(codes(wide.findings(HALF))).containsExactly(UsedCode.WIDER_THAN_RAW);
        assertThat(wide.mostOff()).isEqualTo(Length.ZERO);
        assertThat(wide.section().wall().known().orElseThrow().thickness().at(mil(0)))
                .isEqualTo(mil(90.5));
        assertThat(wide.findings(mil(2.5))).isEmpty();
    }

    @Test
    void noWallLeftIsAStopAndTheWallIsUnknown() {
        UsedTip through = USED.withFound(tip(0, 190, 1250, 359));
        assertThat(codes(through.findings(HALF))).contains(UsedCode.NO_WALL_LEFT);
        assertThat(through.section().wall()).isInstanceOf(Reading.Unknown.class);
    }

    @Test
    void whatWasAssumedOrUnknownStaysSo() {
        Source why = Source.assumption("like its neighbour");
        TipSection assumed =
                USED.withRaw(section(Reading.assumed(wall(90.5), why))).section();
        assertThat(assumed.wall()).isInstanceOf(Reading.Assumed.class);
        assertThat(assumed.wall().known().orElseThrow().thickness().at(mil(0))).isEqualTo(mil(79.25));
        TipSection unknown = USED.withRaw(section(Reading.unknown("an offcut"))).section();
        assertThat(unknown.wall()).isInstanceOf(Reading.Unknown.class);
        UsedTip unpainted = USED.withRaw(RAW.withFinish(Reading.unknown("the maker")));
        assertThat(unpainted.section().finish().thickness().at(mil(0))).isEqualTo(Length.ZERO);
        assertThat(unpainted.findings(HALF).get(1).message(Units.INCH)).contains("0.0225 in of it structure");
    }

    /** A shoulder is a step of the outside and of the wall. */
    @Test
    void aShoulderStays() {
        UsedTip shouldered = USED.withShortened(Length.ZERO).withFound(tip(0, 351, 600, 351, 600, 373.5, 1250, 373.5));
        ThicknessProfile wall =
                shouldered.section().wall().known().orElseThrow().thickness();
        assertThat(wall.at(mil(599))).isEqualTo(mil(79.25));
        assertThat(wall.at(mil(600))).isEqualTo(mil(90.5));
        assertThat(wall.at(mil(601))).isEqualTo(mil(90.5));
    }

    @Test
    void aCleanedBoreByHand() {
        BoreCleaning cleaning = new BoreCleaning(bore(359, 352, 1150), bore(363, 355, 1250), HALF);
        // At the mouth .004, at 1.15 down .35564 - .352: the most is at the mouth.
        assertThat(cleaning.thickest()).isEqualTo(mil(2));
        assertThat(cleaning.depthGained()).isEqualTo(mil(100));
        assertThat(cleaning.volume().cubicMillimetres())
                .isCloseTo(frustum(363, 355, 1250) - frustum(359, 352, 1150), offset(1e-9));
        assertThat(cleaning.findings().get(0).message(Units.INCH))
                .startsWith("up to 0.0020 in of crust came out of the bore, 0.000 in (0) down, and 0.100 in");
        assertThat(cleaning.against(bore(363, 355, 1250))).isEmpty();
        assertThat(codes(cleaning.against(bore(362, 355, 1250)))).containsExactly(UsedCode.WIDER_THAN_KNOWN);
    }

    private static double frustum(double mouth, double bottom, double depth) {
        double top = mouth * .0254;
        double end = bottom * .0254;
        return Math.PI * depth * .0254 * (top * top + top * end + end * end) / 12;
    }

    @Test
    void whatTwoReadingsOfABoreSay() {
        Bore bore = bore(363, 355, 1250);
        assertThat(codes(new BoreCleaning(bore, bore(363.4, 355, 1250), HALF).findings()))
                .containsExactly(UsedCode.BORE_AS_BEFORE);
        assertThat(codes(new BoreCleaning(bore, bore(362, 355, 1200), HALF).findings()))
                .containsExactly(UsedCode.READS_LESS, UsedCode.READS_LESS);
        // Only deeper: no crust on the wall.
        Finding deeper = new BoreCleaning(bore(363, 363, 1200), bore(363, 363, 1250), HALF)
                .findings()
                .get(0);
        assertThat(deeper.code()).isEqualTo(UsedCode.CRUST_OUT);
        assertThat(deeper.message(Units.INCH)).contains("up to 0.0000 in of crust");
        BoreCleaning cleaning = new BoreCleaning(bore, bore, HALF);
        assertThat(cleaning.withBefore(bore).withAfter(bore).withWithin(HALF)).isEqualTo(cleaning);
    }

    @Test
    void everyFindingIsReached() {
        EnumSet<UsedCode> seen = EnumSet.noneOf(UsedCode.class);
        Bore bore = bore(363, 355, 1250);
        List<Finding> all = new ArrayList<>(USED.withFound(tip(0, 190, 1250, 380))
                .withCrust(ThicknessProfile.uniform(mil(1)))
                .findings(HALF));
        all.addAll(new BoreCleaning(bore, bore, HALF).findings());
        all.addAll(new BoreCleaning(bore, bore(364, 354, 1250), HALF).findings());
        all.addAll(new BoreCleaning(bore, bore, HALF).against(bore(360, 350, 1250)));
        for (Finding finding : all) {
            seen.add((UsedCode) finding.code());
            for (Units units : Units.values()) {
                assertThat(finding.message(units)).doesNotContain("{", "}");
            }
        }
        assertThat(seen).containsExactlyInAnyOrder(UsedCode.values());
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> USED.withShortened(mil(8000))).hasMessageContaining("shortened");
        assertThatThrownBy(() -> USED.withShortened(mil(7000))).hasMessageContaining("found");
        assertThatThrownBy(() -> USED.withCrust(ThicknessProfile.uniform(mil(176))))
                .hasMessageContaining("crust");
        assertThatThrownBy(() -> USED.findings(mil(-1))).hasMessageContaining("within");
    }

    private static List<FindingCode> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    private static ShaftSection section(Reading<Wall> wall) {
        return new ShaftSection(
                DiameterProfile.cylinder(mil(373.5), mil(8000)),
                mil(600),
                wall,
                Reading.measured(Finish.NONE.withThickness(ThicknessProfile.uniform(mil(2.5)))));
    }

    private static Wall wall(double thickness) {
        return new Wall(ThicknessProfile.uniform(mil(thickness)), Reading.unknown("a weighed offcut"));
    }

    private static DiameterProfile tip(double... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < placesAndDiameters.length; k += 2) {
            stations.add(Station.of(mil(placesAndDiameters[k]), mil(placesAndDiameters[k + 1])));
        }
        return DiameterProfile.of(stations);
    }

    private static Bore bore(double mouth, double bottom, double depth) {
        return Bore.ofTwoDiameters(mil(mouth), mil(bottom), mil(depth), BoreEnd.FLAT);
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
