package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The plain club reads 61 / 1.75 = 34.857 points. Its head weighs 10 oz, so an inch of its centre is 10 oz in, 10 / 1.75 points:
 * known to 0.0175 in, it moves the reading by 0.1 point, and 0.2 expanded.
 */
class SwingWeightDoubtTest {

    private static final double READS = 61 / 1.75;

    private static final Tool DOWEL =
            Tool.of(Instrument.ofStandard("dowel", "mm", 0.0175 * 25.4, 0), BenchInput.HEAD_CENTRE);

    /** An ounce of the head is 23 oz in about 14 in, 13.14 points; 1 g of it 0.46 point, so that it hides the dowel. */
    private static final Tool COARSE_SCALE = Tool.of(Instrument.ofStandard("scale", "g", 1, 0), BenchInput.MASS);

    private static List<Finding> found(double points, double within, Tool... tools) {
        SwingWeightTarget target = new SwingWeightTarget("6", new SwingWeight(points), within);
        SwingWeightTargets targets = new SwingWeightTargets(SwingWeightScale.LETTERS_AT_14_INCHES, List.of(target));
        return found(targets, tools);
    }

    private static List<Finding> found(SwingWeightTargets targets, Tool... tools) {
        ClubPlan club =
                JobPlanner.of(SwingWeightStep.towards(targets, List.of())).plan(Clubs.plain());
        return new SwingWeightDoubt(BenchUncertainty.of(tools))
                .review(List.of(club)).stream().map(ClubFinding::finding).toList();
    }

    private static List<FindingCode> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Test
    void aTargetMetByLessThanTheUncertaintyIsMarginal() {
        List<Finding> found = found(READS - 0.4, 0.5, DOWEL);
        assertThat(codes(found)).containsExactly(SwingWeightCode.MARGINAL, SwingWeightCode.DRY_BUILD_WORTH);
        assertThat(found).allMatch(finding -> finding.severity() == Severity.NOTE);
        // The grid of nanometres is one part in 1e5 of the step; half a ten-thousandth of a point is far above that.
        assertThat(((Term.OfNumber) found.get(0).term("U")).value()).isCloseTo(0.2, within(5e-5));
        assertThat(((Term.OfNumber) found.get(0).term("off")).value()).isCloseTo(0.4, within(1e-9));
        assertThat(((Term.OfCount) found.get(1).term("share")).value()).isEqualTo(100);
    }

    @Test
    void aTargetMetByMoreIsNot() {
        assertThat(codes(found(READS - 0.25, 0.5, DOWEL))).containsExactly(SwingWeightCode.DRY_BUILD_WORTH);
    }

    @Test
    void aTargetMissedByLessThanTheUncertaintyMayBeMet() {
        assertThat(codes(found(READS + 0.6, 0.5, DOWEL)))
                .containsExactly(SwingWeightCode.MISSED_BY_LITTLE, SwingWeightCode.DRY_BUILD_WORTH);
        assertThat(codes(found(READS + 0.8, 0.5, DOWEL))).containsExactly(SwingWeightCode.DRY_BUILD_WORTH);
    }

    @Test
    void aDryBuildIsWorthItOnlyWhereTheCentreContributesMost() {
        assertThat(codes(found(READS, 3, DOWEL, COARSE_SCALE))).isEmpty();
        Tool exact = Tool.of(Instrument.ofStandard("exact", "mm", 0, 0), BenchInput.HEAD_CENTRE);
        assertThat(codes(found(READS, 0.5, exact))).isEmpty();
    }

    @Test
    void withoutATargetOnlyTheDryBuildIsSpokenOf() {
        SwingWeightTargets none = new SwingWeightTargets(SwingWeightScale.LETTERS_AT_14_INCHES, List.of());
        assertThat(codes(found(none, DOWEL))).containsExactly(SwingWeightCode.DRY_BUILD_WORTH);
    }

    @Test
    void aClubThatWasNotBalancedIsPassedOver() {
        ClubPlan empty = new ClubPlan(Clubs.plain(), Clubs.plain(), List.of(), List.of());
        assertThat(new SwingWeightDoubt(BenchUncertainty.of(DOWEL)).review(List.of(empty)))
                .isEmpty();
    }
}
