package dev.tipwright.fitcheck.other;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.StockRange;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** How much too much a stock of shims makes up for, by hand and by trying every shim; what each way to a fit costs. */
class ShimReachTest {

    private static final Bore BORE = Bore.ofTwoDiameters(mil(371), mil(370), mil(1250), BoreEnd.FLAT);
    private static final Density BRASS = Density.ofGramsPerCubicCentimetre(8.5);

    /** Wanted 4, allowed 8: free to 4 over, then 2 x 3 = 6 to 10 and 2 x 10 = 20 to 24. */
    @Test
    void byHand() {
        ShimReach reach = ShimReach.of(mil(4), mil(8), List.of(mil(10), mil(3)), Optional.empty());
        assertThat(reach.walls()).containsExactly(mil(3), mil(10));
        assertThat(reach.saved())
                .containsExactly(
                        new StockRange(mil(-4), mil(0)),
                        new StockRange(mil(-10), mil(-6)),
                        new StockRange(mil(-24), mil(-20)));
        assertThat(reach.beyond()).isEqualTo(mil(24));
        assertThat(reach.wall(mil(5))).isEmpty();
        assertThat(reach.wall(mil(7))).contains(mil(3));
        assertThat(text(reach, 3))
                .isEqualTo(Severity.NOTE + " 0.0030 in too much is off, and 0.0070 in of clearance is"
                        + " within the limit of 0.0080 in: no shim is needed");
        assertThat(text(reach, 7))
                .isEqualTo(Severity.NOTE
                        + " 0.0070 in too much is off: a shim of wall 0.0030 in leaves 0.0050 in of clearance");
        assertThat(text(reach, 15)).startsWith(Severity.CAUTION + " ").contains("find one of wall 0.0075 in");
        assertThat(text(reach, 24.1)).startsWith(Severity.STOP + " ").contains("from 0.0240 in on no shim");
    }

    /** The wall of the tip loses half of what is off; .009 to spare is gone at .018. */
    @Test
    void theWallOfTheTipSetsALimitOfItsOwn() {
        List<Length> walls = List.of(mil(3), mil(5), mil(10));
        ShimReach reach = ShimReach.of(mil(4), mil(8), walls, Optional.of(mil(9)));
        // 0 to 4, 6 to 10 joined with 10 to 14; 20 is past 18.
        assertThat(reach.saved()).containsExactly(new StockRange(mil(-4), mil(0)), new StockRange(mil(-14), mil(-6)));
        assertThat(reach.beyond()).isEqualTo(mil(14));
        assertThat(ShimReach.of(mil(4), mil(8), walls, Optional.of(mil(6))).beyond())
                .isEqualTo(mil(12));
        assertThat(ShimReach.of(mil(4), mil(4), List.of(), Optional.of(Length.ZERO))
                        .beyond())
                .isEqualTo(Length.ZERO);
    }

    @Property
    void aTipIsSavedExactlyIfAShimOrNoneLeavesAClearanceBetweenTheTwo(
            @ForAll @Size(max = 5) List<@IntRange(min = 1, max = 20) Integer> walls,
            @ForAll @IntRange(max = 10) int room,
            @ForAll @IntRange(max = 60) int over) {
        ShimReach reach = ShimReach.of(
                mil(4), mil(4 + room), walls.stream().map(ShimReachTest::mil).toList(), Optional.of(mil(20)));
        List<Integer> all = new ArrayList<>(walls);
        all.add(0);
        boolean saved = over <= 40 && all.stream().anyMatch(wall -> over - 2 * wall >= 0 && over - 2 * wall <= room);
        assertThat(reach.saves(mil(over))).isEqualTo(saved);
        assertThat(reach.judge(mil(over)).severity() == Severity.NOTE).isEqualTo(saved);
    }

    @Test
    void aShimWeighsWhatItsTubeDoes() {
        DiameterProfile tip = DiameterProfile.cylinder(mil(355), mil(8000));
        ShimFit fit = ShimFit.of(tip, BORE, mil(1250), mil(4), mil(6), List.of(mil(5)));
        // A tube of .365 outside and .355 inside.
        double volume = Math.PI / 4 * (.365 * .365 - .355 * .355) * 1.25 * 25.4 * 25.4 * 25.4;
        assertThat(fit.volume(tip).cubicMillimetres()).isCloseTo(volume, offset(1e-10));
        // A mass is a count of picograms.
        assertThat(fit.mass(tip, BRASS).grams()).isCloseTo(volume * 8.5 / 1000, offset(1e-12));
        ShimFit none = ShimFit.of(tip, BORE, mil(1250), mil(4), mil(20), List.of(mil(5)));
        assertThat(none.mass(tip, BRASS)).isEqualTo(Mass.ZERO);
        assertThatThrownBy(() -> fit.volume(DiameterProfile.cylinder(mil(355), mil(1000))))
                .hasMessageContaining("tip");
    }

    @Test
    void everyWaySaysWhatItCostsInStiffnessAndWeight() {
        Bore taper = Bore.ofTwoDiameters(mil(363), mil(355), mil(1250), BoreEnd.FLAT);
        TipSection tube = TipSection.of(DiameterProfile.cylinder(mil(368.5), mil(8000)), Finish.NONE)
                .withWall(Reading.measured(new Wall(
                        ThicknessProfile.uniform(mil(88)), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)))));
        MaterialRemoval removal = MaterialRemoval.of(tube, taper, mil(1250), mil(4));
        WayToFit worked = WayToFit.taper(WayToFit.Way.TAPER_TIP, removal, Reading.measured(mil(75)));
        // Outside .3685 down to .351 at the end, around a hole of .1925.
        double share = (fourth(351) - fourth(192.5)) / (fourth(368.5) - fourth(192.5));
        assertThat(worked.stiffness().orElseThrow()).isCloseTo(share, offset(1e-7));
        assertThat(worked.added()).contains(removal.mass().orElseThrow().negated());
        Reading<Length> oversize = Reading.measured(mil(2));
        BoreOpening opening = BoreOpening.of(taper, mil(530), mil(368), oversize);
        double metal = opening.removed().cubicMillimetres() * 7.8 / 1000;
        Density steel = Density.ofGramsPerCubicCentimetre(7.8);
        assertThat(opening.mass(steel).grams()).isCloseTo(metal, offset(1e-12));
        WayToFit open = WayToFit.open(opening, Reading.measured(mil(70)));
        assertThat(open.stiffness()).contains(1.0);
        assertThat(open.added()).isEmpty();
        Mass off = opening.mass(steel).negated();
        assertThat(open.withAdded(off).added()).contains(off);
        assertThat(open.withStiffness(.5).withStiffness(1)).isEqualTo(open);
        assertThatThrownBy(() -> open.withStiffness(1.1)).hasMessageContaining("stiffness");
        assertThatThrownBy(() -> open.withStiffness(Double.NaN)).hasMessageContaining("stiffness");
    }

    private static double fourth(double diameter) {
        return diameter * diameter * diameter * diameter;
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> ShimReach.of(mil(4), mil(3), List.of(), Optional.empty()))
                .hasMessageContaining("clearance");
        assertThatThrownBy(() -> ShimReach.of(mil(4), mil(8), List.of(mil(0)), Optional.empty()))
                .hasMessageContaining("walls");
        assertThatThrownBy(() -> ShimReach.of(mil(4), mil(8), List.of(), Optional.of(mil(-1))))
                .hasMessageContaining("spare");
        ShimReach reach = ShimReach.of(mil(4), mil(8), List.of(), Optional.empty());
        assertThatThrownBy(() -> reach.judge(mil(-1))).hasMessageContaining("over");
        assertThatThrownBy(() -> reach.saves(mil(-1))).hasMessageContaining("over");
    }

    private static String text(ShimReach reach, double over) {
        Finding finding = reach.judge(mil(over));
        return finding.severity() + " " + finding.message(Units.INCH);
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
