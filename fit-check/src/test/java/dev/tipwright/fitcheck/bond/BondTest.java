package dev.tipwright.fitcheck.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The bond by hand, and shear-lag against the tables of Volkersen's theory for laps and tubes. */
class BondTest {

    private static final Tube TIP = new Tube(mm(9.2), mm(5), Stress.ofGigapascals(100), Stress.ofGigapascals(10));
    private static final Tube HOSEL = new Tube(mm(13.4), mm(9.4), Stress.ofGigapascals(207), Stress.ofGigapascals(80));
    private static final Stress ADHESIVE = Stress.ofGigapascals(1);
    private static final Bore BORE = Bore.ofTwoDiameters(mm(9.4), mm(9.4), mm(30), BoreEnd.FLAT);
    private static final Bond BOND = Bond.of(DiameterProfile.cylinder(mm(9.2), mm(200)), BORE, mm(30));

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    @Test
    void everyLapOfTheTable() {
        for (CheckTable.Row row : CheckTable.named("adhesive-joints-single-lap").rows()) {
            ShearLag lap = ShearLag.ofEqualStrips(
                    Stress.ofGigapascals(70), mm(2), ADHESIVE, mm(.2), mm(row.number("overlap_mm")));
            // Half of the last digit printed.
            assertThat(lap.atMouth()).isCloseTo(row.number("peak_over_mean"), offset(5e-5));
            assertThat(lap.atBottom()).isEqualTo(lap.atMouth());
        }
    }

    @Test
    void everyTubeOfTheTable() {
        ShearLag pull = ShearLag.ofPull(TIP, HOSEL, ADHESIVE, mm(30));
        ShearLag torque = ShearLag.ofTorque(TIP, HOSEL, ADHESIVE, mm(30));
        for (CheckTable.Row row : CheckTable.named("adhesive-joints-tubular").rows()) {
            ShearLag joint = row.text("load").equals("pull") ? pull : torque;
            double value = switch (row.text("quantity")) {
                case "w" -> joint.perMillimetre();
                case "shear over mean at the mouth" -> joint.atMouth();
                default -> joint.atBottom();
            };
            // Ten digits are printed.
            assertThat(value).isCloseTo(row.number("value"), offset(6e-10 * row.number("value")));
        }
        assertThat(pull.peak()).isEqualTo(pull.atMouth());
    }

    /** The two ends add up to 2 x coth x, which is 2 or more and 2 for a bond of no length. */
    @Property
    void aSoftTipPeaksAtTheMouthAndAShortBondIsEven(@ForAll @DoubleRange(min = 0.01, max = 100) double length) {
        ShearLag joint = ShearLag.ofTorque(TIP, HOSEL, ADHESIVE, mm(length));
        assertThat(joint.atMouth()).isGreaterThanOrEqualTo(joint.atBottom());
        assertThat(joint.atMouth() + joint.atBottom()).isGreaterThanOrEqualTo(2);
        assertThat(ShearLag.ofTorque(TIP, HOSEL, ADHESIVE, mm(.001)).peak()).isCloseTo(1, offset(1e-6));
    }

    @Test
    void twiceTheLengthHardlyLowersThePeak() {
        // Mean shear halves as the length doubles; the published factor for this lap is 1.0025 (rounded there to
        // 1.003).
        double once = ShearLag.ofEqualStrips(Stress.ofGigapascals(70), mm(2), ADHESIVE, mm(.2), mm(25))
                .peak();
        double twice = ShearLag.ofEqualStrips(Stress.ofGigapascals(70), mm(2), ADHESIVE, mm(.2), mm(50))
                        .peak()
                / 2;
        assertThat(once / twice).isCloseTo(1.0025, offset(5e-5));
    }

    @Test
    void areaLineAndGapByHand() {
        assertThat(BOND.area().squareMillimetres()).isCloseTo(Math.PI * 9.2 * 30, offset(1e-11));
        assertThat(BOND.leastLine()).isEqualTo(mm(.1));
        assertThat(BOND.meanLine()).isEqualTo(mm(.1));
        assertThat(BOND.gap().cubicMillimetres()).isCloseTo(Math.PI / 4 * (9.4 * 9.4 - 9.2 * 9.2) * 30, offset(1e-10));
        assertThat(BOND.adhesive(Volume.ofCubicMillimetres(500))
                        .minus(BOND.gap())
                        .cubicMillimetres())
                .isCloseTo(500, offset(1e-10));
    }

    @Test
    void meanShearByHand() {
        // T = tau 2 pi r^2 l and F = tau 2 pi r l.
        assertThat(BOND.shear(Torque.ofNewtonMetres(12)).megapascals())
                .isCloseTo(12_000 / (2 * Math.PI * 4.6 * 4.6 * 30), offset(1e-12));
        assertThat(BOND.shear(Force.ofNewtons(2000)).megapascals())
                .isCloseTo(2000 / (2 * Math.PI * 4.6 * 30), offset(1e-12));
        // 0.2 kg at 40 m/s on 1.6 m: 0.2 (1000 + 9.80665).
        assertThat(Bond.pull(Mass.ofGrams(200), Speed.ofMetresPerSecond(40), mm(1600))
                        .newtons())
                .isCloseTo(201.96133, offset(1e-10));
    }

    @Test
    void aTaperedTipInItsTaper() {
        Bore taper = Bore.ofTwoDiameters(mm(9.2), mm(9.0), mm(30), BoreEnd.FLAT);
        DiameterProfile tip = DiameterProfile.of(Station.of(Length.ZERO, mm(8.9)), Station.of(mm(30), mm(9.1)));
        Bond bond = Bond.of(tip, taper, mm(30));
        assertThat(bond.area().squareMillimetres()).isCloseTo(Math.PI * 9.0 * 30, offset(1e-11));
        assertThat(bond.meanLine()).isEqualTo(mm(.05));
    }

    /** Straight at 9.05 in a bore from 9.2 to 9.0: at the bottom .05 wider on the diameter. */
    @Test
    void aTipThatDoesNotGoInIsAStop() {
        Bore taper = Bore.ofTwoDiameters(mm(9.2), mm(9.0), mm(30), BoreEnd.FLAT);
        Bond tight = Bond.of(DiameterProfile.cylinder(mm(9.05), mm(30)), taper, mm(30));
        BondLimits none = new BondLimits(
                Reading.measured(Stress.ofMegapascals(3)), Reading.unknown("maker"), Reading.unknown("maker"));
        List<Finding> findings = tight.review(Optional.empty(), none, Torque.ZERO, Force.ZERO);
        assertThat(codes(findings)).containsExactly(BondCode.TIP_TOO_WIDE);
        assertThat(findings.get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(findings.get(0).message(Units.METRIC)).startsWith("the tip is up to 0.050 mm wider than the bore");
        Bond touching = Bond.of(DiameterProfile.cylinder(mm(9), mm(30)), taper, mm(30));
        assertThat(touching.review(Optional.empty(), none, Torque.ZERO, Force.ZERO))
                .isEmpty();
    }

    @Test
    void whatIsToBeKnown() {
        BondLimits limits = new BondLimits(
                Reading.measured(Stress.ofMegapascals(3)), Reading.measured(mm(28)), Reading.measured(mm(.15)));
        // Shear of 3.009 under 12 N m and 2.307 under 2000 N.
        assertThat(codes(BOND.review(Optional.of(mm(.12)), limits, Torque.ofNewtonMetres(12), Force.ofNewtons(2000))))
                .containsExactly(BondCode.BEADS_TOO_THICK, BondCode.OVER_ALLOWABLE, BondCode.PULL_NO_COMFORT);
        assertThat(codes(BOND.review(Optional.of(mm(.1)), limits, Torque.ofNewtonMetres(11), Force.ofNewtons(3000))))
                .containsExactly(BondCode.OVER_ALLOWABLE);
        BondLimits strict = new BondLimits(
                Reading.measured(Stress.ofMegapascals(30)), Reading.measured(mm(31)), Reading.measured(mm(.05)));
        assertThat(codes(BOND.review(Optional.empty(), strict, Torque.ZERO, Force.ZERO)))
                .containsExactly(BondCode.TOO_SHORT, BondCode.THICK_LINE);
        assertThat(codes(BOND.review(Optional.empty(), BondLimits.UNKNOWN, Torque.ZERO, Force.ZERO)))
                .containsExactly(BondCode.NO_ALLOWABLE);
    }

    /** Published as a statement: lap-shear results are no design values. So an allowable that nobody gave is asked for. */
    @Test
    void noAllowableIsEverAssumed() {
        CheckTable.Row row =
                CheckTable.named("adhesive-joints-lap-shear").rows().get(0);
        assertThat(row.text("statement")).contains("not design values");
        Finding finding = BOND.review(
                        Optional.empty(), BondLimits.UNKNOWN, Torque.ofNewtonMetres(1e6), Force.ofNewtons(1e6))
                .get(0);
        assertThat(finding.code()).isEqualTo(BondCode.NO_ALLOWABLE);
        assertThat(finding.message(Units.INCH)).contains("the adhesive's maker");
    }

    @Test
    void everyFindingSaysItsSentence() {
        EnumSet<BondCode> seen = EnumSet.noneOf(BondCode.class);
        BondLimits strict = new BondLimits(
                Reading.measured(Stress.ofMegapascals(3)), Reading.measured(mm(31)), Reading.measured(mm(.05)));
        List<Finding> findings = new ArrayList<>(
                BOND.review(Optional.of(mm(.12)), strict, Torque.ofNewtonMetres(12), Force.ofNewtons(2000)));
        findings.addAll(BOND.review(Optional.empty(), BondLimits.UNKNOWN, Torque.ZERO, Force.ZERO));
        Bore narrow = Bore.ofTwoDiameters(mm(9.2), mm(9.0), mm(30), BoreEnd.FLAT);
        findings.addAll(Bond.of(DiameterProfile.cylinder(mm(9.1), mm(30)), narrow, mm(30))
                .review(Optional.empty(), BondLimits.UNKNOWN, Torque.ZERO, Force.ZERO));
        for (Finding finding : findings) {
            seen.add((BondCode) finding.code());
            assertThat(finding.message(Units.METRIC)).doesNotContain("{", "}");
        }
        assertThat(seen).containsExactlyInAnyOrder(BondCode.values());
        assertThat(findings.get(0).message(Units.METRIC)).contains("0.120 mm").contains("0.100 mm");
    }

    /** A stiff tip in a soft hosel peaks at the bottom, and equal stiffnesses at both ends alike. */
    @Test
    void thePeakIsWhereTheStifferPartEnds() {
        Tube soft = new Tube(mm(13.4), mm(9.4), Stress.ofGigapascals(2), Stress.ofGigapascals(1));
        ShearLag joint = ShearLag.ofTorque(TIP, soft, ADHESIVE, mm(30));
        assertThat(joint.atBottom()).isGreaterThan(joint.atMouth());
        assertThat(joint.peak()).isEqualTo(joint.atBottom());
    }

    private static List<FindingCode> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> ShearLag.ofPull(HOSEL, TIP, ADHESIVE, mm(30))).hasMessageContaining("hosel");
        assertThatThrownBy(() -> ShearLag.ofPull(TIP, HOSEL, Stress.ZERO, mm(30)))
                .hasMessageContaining("adhesive");
        assertThatThrownBy(() -> ShearLag.ofPull(TIP, HOSEL, ADHESIVE, Length.ZERO))
                .hasMessageContaining("overlap");
        assertThatThrownBy(() -> new ShearLag(Double.NaN, 1, 1)).hasMessageContaining("perMillimetre");
        assertThatThrownBy(() -> new Tube(mm(9), mm(9), ADHESIVE, ADHESIVE)).hasMessageContaining("inside");
        assertThatThrownBy(() -> Bond.pull(Mass.ofGrams(200), Speed.ofMetresPerSecond(40), Length.ZERO))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> new Bond(mm(1), Area.ofSquareMillimetres(0), mm(1), mm(1), BOND.gap(), BOND.torsion()))
                .hasMessageContaining("area");
        assertThatThrownBy(() -> new Bond(mm(1), BOND.area(), mm(1), mm(1), BOND.gap(), Volume.ZERO))
                .hasMessageContaining("torsion");
        Bond least = new Bond(mm(1), Area.ofSquareMillimetres(2e-9), mm(1), mm(1), BOND.gap(), BOND.torsion());
        assertThatThrownBy(() -> least.shear(Force.ofNewtons(1e300)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("pull");
        assertThatThrownBy(() -> new ShearLag(1, -1, 1)).hasMessageContaining("atMouth");
        assertThatThrownBy(() -> BOND.adhesive(Volume.ofCubicMillimetres(-1))).hasMessageContaining("added");
    }
}
