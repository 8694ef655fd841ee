package dev.tipwright.fitcheck.other;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Shim, bore opening and the choice, worked by hand; the drills against ASME B94.11M row by row. */
class OtherWaysTest {

    private static final Bore TAPER = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT);
    private static final Bore WIDE = Bore.ofTwoDiameters(in(".371"), in(".370"), in("1.25"), BoreEnd.FLAT);
    private static final Reading<Length> OVERSIZE = Reading.assumed(in(".002"), Source.assumption("a test"));

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static DiameterProfile tip(String diameter) {
        return DiameterProfile.cylinder(in(diameter), in("8"));
    }

    private static ShimFit shim(String diameter, Bore bore, String loosest, String... walls) {
        List<Length> stock = new ArrayList<>();
        for (String wall : walls) {
            stock.add(in(wall));
        }
        return ShimFit.of(tip(diameter), bore, in("1.25"), in(".004"), in(loosest), stock);
    }

    @Test
    void everyDrillOfTheTable() {
        CheckTable table = CheckTable.named("drills");
        List<Drill> standard = Drill.standard();
        assertThat(standard).hasSameSizeAs(table.rows());
        for (CheckTable.Row row : table.rows()) {
            Drill.Series series = Drill.Series.valueOf(row.text("series").toUpperCase(Locale.ROOT));
            assertThat(standard)
                    .contains(new Drill(
                            series, row.text("designation"), Length.ofMillimetres(row.number("diameter_mm"))));
        }
        assertThat(standard).isSortedAccordingTo((a, b) -> a.diameter().compareTo(b.diameter()));
    }

    @Test
    void theLargestDrillUpToADiameter() {
        assertThat(Drill.largestUpTo(in(".370")).orElseThrow().designation()).isEqualTo("U");
        assertThat(Drill.largestUpTo(in(".368")).orElseThrow().designation()).isEqualTo("U");
        assertThat(Drill.largestUpTo(in(".3679")).orElseThrow().designation()).isEqualTo("9.3 mm");
        assertThat(Drill.largestUpTo(Length.ofMillimetres(2.9))).isEmpty();
    }

    @Test
    void anOpenedBore() {
        BoreOpening opening = BoreOpening.of(TAPER, in(".530"), in(".368"), OVERSIZE);
        assertThat(opening.wallLeft()).isEqualTo(in(".080"));
        // A cylinder of .370 less a frustum of .363 and .355, both 1.25 long, in cubic inches.
        double frustum = Math.PI * 1.25 * (.363 * .363 + .363 * .355 + .355 * .355) / 12;
        double metal = (Math.PI * 1.25 * .370 * .370 / 4 - frustum) * 25.4 * 25.4 * 25.4;
        // Both sums carry a few roundings of 1e-16 relative on volumes 20 times the difference.
        assertThat(opening.removed().cubicMillimetres()).isCloseTo(metal, offset(metal * 1e-13));
        assertThat(BoreOpening.of(TAPER, in(".360"), in(".368"), OVERSIZE).wallLeft())
                .isEqualTo(in("-.005"));
    }

    @Test
    void aCutterThatMeetsTheTaperOpensTheLowerPart() {
        // .357 + .002 = .359 is met at 5/8.
        BoreOpening opening = BoreOpening.of(TAPER, in(".530"), in(".357"), OVERSIZE);
        assertThat(opening.after().profile().diameterAt(in("5/8"))).isEqualTo(in(".359"));
        assertThat(opening.after().profile().diameterAt(in("1"))).isEqualTo(in(".359"));
        assertThat(opening.after().profile().diameterAt(Length.ZERO)).isEqualTo(in(".363"));
        BoreOpening small = BoreOpening.of(TAPER, in(".530"), in(".300"), OVERSIZE);
        assertThat(small.removed().cubicMillimetres()).isZero();
        assertThat(small.after().profile()).isEqualTo(TAPER.profile());
    }

    /** A tip is stopped by the least diameter, and the thinnest wall lies at the greatest: neither is the mean. */
    @Test
    void anOutOfRoundBoreIsOpenedWhereItIsNarrow() {
        Bore oval = Bore.ofReadings(
                List.of(
                        new Station(Length.ZERO, in(".361"), in(".365")),
                        new Station(in("1.25"), in(".353"), in(".357"))),
                BoreEnd.FLAT);
        BoreOpening none = BoreOpening.of(oval, in(".530"), in(".300"), OVERSIZE);
        assertThat(none.after()).isEqualTo(oval);
        assertThat(none.removed().cubicMillimetres()).isZero();
        assertThat(none.wallLeft()).isEqualTo(in(".0825"));
        // .357 + .002 = .359 is met by the least a quarter of the way down, by the greatest at three quarters.
        BoreOpening some = BoreOpening.of(oval, in(".530"), in(".357"), OVERSIZE);
        assertThat(some.after().profile())
                .isEqualTo(DiameterProfile.of(
                        new Station(Length.ZERO, in(".361"), in(".365")),
                        new Station(in("5/16"), in(".359"), in(".363")),
                        Station.of(in("15/16"), in(".359")),
                        Station.of(in("1.25"), in(".359"))));
        assertThat(some.wallLeft()).isEqualTo(in(".0825"));
        assertThat(BoreOpening.working(oval, in(".530"), in(".357"), OVERSIZE).text(Units.INCH))
                .contains("D = 0.365000000 in");
    }

    @Test
    void aShimOfTheStock() {
        ShimFit fit = shim(".355", WIDE, ".006", ".003", ".005", ".010");
        // .370 - .355 = 15, less 2 x 5: 5 thousandths at the bottom, 6 at the mouth.
        assertThat(fit.wall()).contains(in(".005"));
        assertThat(fit.least()).isEqualTo(in(".005"));
        assertThat(fit.greatest()).isEqualTo(in(".006"));
        assertThat(fit.offCentre()).isEqualTo(in(".0025"));
        assertThat(fit.verdict()).isEqualTo(ShimFit.Verdict.CURES);
        // Lean: (.005 + .006) / (2 x 1.25).
        assertThat(StrictMath.tan(fit.lean().angle().radians())).isCloseTo(.0044, offset(1e-8));
    }

    @Test
    void whenAShimIsNoCure() {
        assertThat(shim(".355", WIDE, ".006", ".003").verdict()).isEqualTo(ShimFit.Verdict.STILL_LOOSE);
        assertThat(shim(".355", WIDE, ".006", ".010").verdict()).isEqualTo(ShimFit.Verdict.NONE_THIN_ENOUGH);
        assertThat(shim(".366", WIDE, ".006", ".003").verdict()).isEqualTo(ShimFit.Verdict.NOT_NEEDED);
        // A parallel tip in a taper of .008: 4 at the bottom leaves no room, 12 at the mouth is loose.
        assertThat(shim(".351", TAPER, ".006", ".001").verdict()).isEqualTo(ShimFit.Verdict.NONE_THIN_ENOUGH);
        assertThat(shim(".343", TAPER, ".006", ".004").verdict()).isEqualTo(ShimFit.Verdict.STILL_LOOSE);
    }

    @Test
    void waysAreRankedByTheLimitsAlone() {
        MaterialRemoval removal =
                MaterialRemoval.of(TipSection.of(tip(".3685"), Finish.NONE), TAPER, in("1.25"), in(".004"));
        WayToFit unknownWall = WayToFit.taper(WayToFit.Way.TAPER_TIP, removal, Reading.measured(in(".075")));
        WayToFit open =
                WayToFit.open(BoreOpening.of(TAPER, in(".530"), in(".368"), OVERSIZE), Reading.measured(in(".070")));
        WayToFit shim = WayToFit.shim(shim(".355", WIDE, ".006", ".005"), Reading.measured(in(".005")));
        WayToFit blank = WayToFit.of(
                WayToFit.Way.OTHER_BLANK,
                true,
                List.of(new Margin(Margin.What.TIP_WALL, in(".090"), Reading.measured(in(".075")))));
        assertThat(unknownWall.standing()).isEqualTo(WayToFit.Standing.LIMIT_UNKNOWN);
        assertThat(open.leastMargin().orElseThrow()).isCloseTo(80 / 70.0, offset(1e-12));
        assertThat(shim.standing()).isEqualTo(WayToFit.Standing.PAST_A_LIMIT);
        assertThat(shim.leastMargin().orElseThrow()).isCloseTo(2 - 6 / 5.0, offset(1e-12));
        assertThat(WayToFit.ranked(List.of(shim, unknownWall, open, blank)))
                .extracting(WayToFit::way)
                .containsExactly(
                        WayToFit.Way.OTHER_BLANK, WayToFit.Way.OPEN_BORE, WayToFit.Way.TAPER_TIP, WayToFit.Way.SHIM);
        WayToFit through = WayToFit.open(
                BoreOpening.of(TAPER, in(".360"), in(".368"), OVERSIZE), Reading.unknown("the head's maker"));
        assertThat(through.standing()).isEqualTo(WayToFit.Standing.PAST_A_LIMIT);
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> BoreOpening.of(TAPER, in(".530"), in(".368"), Reading.unknown("the drill's maker")))
                .hasMessageContaining("oversize")
                .hasMessageContaining("the drill's maker");
        assertThatThrownBy(() -> shim(".355", WIDE, ".003", ".005")).hasMessageContaining("clearance");
        assertThatThrownBy(() -> shim(".355", WIDE, ".006", "0")).hasMessageContaining("walls");
        assertThatThrownBy(() -> new Margin(Margin.What.CLEARANCE, in("1"), Reading.measured(Length.ZERO)))
                .hasMessageContaining("limit");
    }
}
