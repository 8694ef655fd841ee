package dev.tipwright.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How sure a length by the plane is, term by term on paper, and what that does to a club near a limit. */
class RulesDoubtTest {

    private static final BenchUncertainty RULE = BenchUncertainty.of(
            Tool.of(Instrument.ofStandard("rule", "mm", 0.3, 0), BenchInput.MOUTH_TO_GROUND),
            Tool.of(Instrument.ofStandard("saw", "mm", 0.4, 0), BenchInput.CUTS));

    private static double contribution(Budget budget, String name) {
        return budget.contributions().stream()
                .filter(line -> line.input().name().equals(name))
                .findFirst()
                .orElseThrow()
                .uncertainty();
    }

    /**
     * {@code L60 = g + S - i + H - h cot 60 + (u sin(60 - lie) + r (1 - cos(lie - 60))) / sin 60} with {@code h} half the hosel, so by
     * lie {@code (-u cos(60 - lie) + r sin(lie - 60)) / sin 60} a radian. For 64 degrees, u = 30 mm and r = 200 mm:
     * (-30 * 0.9975641 + 200 * 0.0697565) / 0.8660254 = -18.44706 mm a radian, -0.321962 mm a degree.
     */
    @Test
    void everyContributionIsTheOneOnPaper() {
        Head head = SampleClub.head();
        Head measured = head.withGeometry(head.geometry()
                .withLie(Angle.ofDegrees(64))
                .withSole(Reading.measured(new SoleShape(SampleClub.mm(30), SampleClub.mm(200)))));
        Build build = SampleClub.with(SampleClub.build(), measured);
        BenchUncertainty bench = BenchUncertainty.of(
                Tool.of(
                        Instrument.ofStandard("rule", "mm", 0.4, 0),
                        BenchInput.MOUTH_TO_GROUND,
                        BenchInput.CUTS,
                        BenchInput.SOLE),
                Tool.of(Instrument.ofStandard("rod", "mm", 0.25, 0), BenchInput.BORE_DEPTH),
                Tool.of(Instrument.ofStandard("caliper", "mm", 0.1, 0), BenchInput.HOSEL_OUTSIDE),
                Tool.of(Instrument.ofStandard("gauge", "deg", 0.5, 0), BenchInput.LIE));
        Budget budget = SixtyDegreePlane.measure().budget(build, bench).orElseThrow();
        // Places are rounded to the nanometre, and a step is an eighth of the uncertainty: 1e-6 mm of each half step,
        // times 8.
        var close = within(2e-5);
        assertThat(contribution(budget, "mouth to ground")).isCloseTo(0.4, close);
        assertThat(contribution(budget, "cut length")).isCloseTo(0.4, close);
        assertThat(contribution(budget, "tip trim cut")).isCloseTo(0, close);
        assertThat(contribution(budget, "bore depth")).isCloseTo(-0.25, close);
        assertThat(contribution(budget, "hosel outside")).isCloseTo(-0.1 / 2 / Math.sqrt(3), close);
        assertThat(contribution(budget, "lie")).isCloseTo(-0.321962 * 0.5, close);
        assertThat(contribution(budget, "lowest point of the sole")).isCloseTo(0.4 * -0.0697565 / 0.8660254, close);
        assertThat(contribution(budget, "radius of the sole")).isCloseTo(0.4 * 0.0024359 / 0.8660254, close);
        assertThat(budget.standardUncertainty())
                .isCloseTo(
                        Math.sqrt(2 * 0.16
                                + 0.0625
                                + 0.0288675 * 0.0288675
                                + 0.160981 * 0.160981
                                + 0.0322191 * 0.0322191
                                + 0.0011251 * 0.0011251),
                        close);
        Budget byRules = new RulesReport(build, ClubLimits.EQUIPMENT_RULES)
                .measures()
                .get(0)
                .budget(build, bench)
                .orElseThrow();
        assertThat(byRules.standardUncertainty()).isEqualTo(budget.standardUncertainty());
    }

    @Test
    void aSoleThatWasNotMeasuredHasNoError() {
        BenchUncertainty bench =
                BenchUncertainty.of(Tool.of(Instrument.ofStandard("rule", "mm", 0.4, 0), BenchInput.SOLE));
        assertThat(bench.inputs(SampleClub.build())).isEmpty();
    }

    private static List<Finding> found(Build build) {
        return JobPlanner.of(RulesStep.within(ClubLimits.EQUIPMENT_RULES, Length.ZERO))
                .reviewedBy(new RulesDoubt(RULE))
                .plan(ClubSet.of(build))
                .clubs()
                .get(0)
                .findings();
    }

    private static List<FindingCode> codes(Build build) {
        return found(build).stream().map(Finding::code).toList();
    }

    private static Build withCap(Build build, Length wanted) {
        Length more = wanted.minus(RulesCheck.length(build));
        return SampleClub.with(
                build, build.parts().grip().withCap(build.parts().grip().cap().plus(more)));
    }

    private static Build neck(Length neck) {
        Head head = SampleClub.head();
        return SampleClub.with(
                SampleClub.build(), head.withGeometry(head.geometry().withMouthToGround(neck)));
    }

    /** A rule of 0.3 mm and a saw of 0.4 mm: U = 2 * 0.5 = 1 mm either side of 48 in. */
    @Test
    void withinAMillimetreOfTheLongestNobodyCanTell() {
        Length limit = Length.ofInches(48);
        Build build = SampleClub.build();
        assertThat(codes(withCap(build, limit.minus(SampleClub.mm(1.001))))).doesNotContain(RulesCode.TOO_NEAR);
        assertThat(codes(withCap(build, limit.plus(SampleClub.mm(1.001)))))
                .contains(RulesCode.TOO_LONG)
                .doesNotContain(RulesCode.TOO_NEAR);
        assertThat(codes(withCap(build, limit.plus(SampleClub.mm(0.999)))))
                .contains(RulesCode.TOO_LONG, RulesCode.TOO_NEAR);
        List<Finding> near = found(withCap(build, limit.minus(SampleClub.mm(0.999))));
        Finding doubt = near.get(near.size() - 1);
        assertThat(doubt.severity()).isEqualTo(Severity.CAUTION);
        assertThat(doubt.message(Units.METRIC))
                .isEqualTo("length by the Rules, 1218.2 mm, is so near the limit of 1219.2 mm in R&A and USGA,"
                        + " Equipment Rules, Part 2 that an uncertainty of 1.0 mm decides: measure again, or stay further"
                        + " off");
    }

    @Test
    void theShortestAndTheNeckAreDoubtedToo() {
        Build cut = SampleClub.build().withWork(SampleClub.build().work().withButtTrim(SampleClub.mm(900)));
        Length shortest = Length.ofInches(18);
        assertThat(codes(withCap(cut, shortest.plus(SampleClub.mm(0.999))))).contains(RulesCode.TOO_NEAR);
        assertThat(codes(withCap(cut, shortest.plus(SampleClub.mm(1.001))))).doesNotContain(RulesCode.TOO_NEAR);
        // The neck was read with the rule alone: U = 0.6 mm.
        assertThat(codes(neck(Length.ofInches(5).minus(SampleClub.mm(0.599))))).contains(RulesCode.TOO_NEAR);
        assertThat(codes(neck(Length.ofInches(5).minus(SampleClub.mm(0.601))))).doesNotContain(RulesCode.TOO_NEAR);
    }

    @Test
    void aPutterHasNoLongestLength() {
        Build putter = SampleClub.with(SampleClub.build(), SampleClub.head().withKind(ClubKind.PUTTER));
        assertThat(codes(withCap(putter, Length.ofInches(48)))).doesNotContain(RulesCode.TOO_NEAR);
    }

    @Test
    void whatWasNotHeldAgainstTheRulesIsNotDoubted() {
        assertThat(codes(SampleClub.build().withWork(dev.tipwright.core.club.Work.NONE)))
                .containsExactly(RulesCode.NOT_SEATED);
        Measure measure = new RulesReport(SampleClub.build(), ClubLimits.EQUIPMENT_RULES)
                .measures()
                .get(0);
        assertThat(measure.symbol()).isEqualTo("L60");
        assertThatNullPointerException().isThrownBy(() -> new RulesDoubt(null)).withMessage("bench must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> new RulesDoubt(RULE).review(null))
                .withMessage("clubs must not be null");
    }
}
