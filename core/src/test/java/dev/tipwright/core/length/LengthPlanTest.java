package dev.tipwright.core.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans of length for a set, and clubs cut to them by either measure. */
class LengthPlanTest {

    private static final Length HALF = Length.parse("1/2 in");

    private static LengthTarget target(String club, String length) {
        return new LengthTarget(club, Length.parse(length), LengthMeasure.ALONG_AXIS);
    }

    @Test
    void byStepByHand() {
        LengthPlan plan = LengthPlan.byStep(
                List.of("5", "6", "7"), Length.parse("38 in"), HALF, LengthMeasure.SIXTY_DEGREE_PLANE);
        assertThat(plan.targets())
                .extracting(LengthTarget::length)
                .containsExactly(Length.parse("38 in"), Length.parse("37 1/2 in"), Length.parse("37 in"));
        assertThat(plan.targets()).allMatch(target -> target.measure() == LengthMeasure.SIXTY_DEGREE_PLANE);
    }

    @Test
    void byStepRefusesWhatNoClubCanHave() {
        assertThatThrownBy(() -> LengthPlan.byStep(List.of("5", "6"), HALF, HALF, LengthMeasure.ALONG_AXIS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("step");
        assertThatThrownBy(() -> LengthPlan.byStep(List.of("5", "5"), HALF, HALF, LengthMeasure.ALONG_AXIS))
                .hasMessageContaining("clubs");
        assertThatThrownBy(() -> LengthPlan.byStep(
                        List.of("5", "6"), SampleClub.mm(3000), HALF.negated(), LengthMeasure.ALONG_AXIS))
                .hasMessageContaining("step");
    }

    @Test
    void oldClubsWithAChange() {
        LengthPlan old = new LengthPlan(List.of(target("5", "37 7/8 in"), target("6", "37 1/4 in")));
        assertThat(old.lengthenedBy(Length.parse("1/4 in")))
                .isEqualTo(new LengthPlan(List.of(target("5", "38 1/8 in"), target("6", "37 1/2 in"))));
        assertThat(old.lengthenedBy(Length.ZERO)).isEqualTo(old);
        assertThatThrownBy(() -> old.lengthenedBy(Length.parse("38 in").negated()))
                .hasMessageContaining("by must");
        assertThatThrownBy(() -> old.lengthenedBy(Length.parse("37 1/4 in").negated()))
                .hasMessageStartingWith("by must leave club 6 above zero and at most 3 m");
        assertThatThrownBy(() -> old.lengthenedBy(SampleClub.mm(3000))).hasMessageContaining("by must");
    }

    @Test
    void byARuleOfTheCallers() {
        ClubSet set = ClubSet.of(SampleClub.build());
        LengthPlan plan = LengthPlan.byRule(
                set,
                LengthMeasure.ALONG_AXIS,
                build -> SampleClub.mm(build.parts().head().mass().mass().grams() * 4));
        assertThat(plan.target("6").orElseThrow().length()).isEqualTo(SampleClub.mm(1040));
        assertThatThrownBy(() -> LengthPlan.byRule(set, LengthMeasure.ALONG_AXIS, build -> null))
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("length");
    }

    /** Three clubs; the shaft of the second is 20 mm shorter. */
    private static ClubSet three() {
        Build one = SampleClub.build();
        Shaft shaft = one.parts().shaft();
        Shaft shorter = shaft.withSection(
                        shaft.section().withOutside(DiameterProfile.cylinder(SampleClub.mm(9.4), SampleClub.mm(980))))
                .withLength(SampleClub.mm(980));
        return ClubSet.of(one, SampleClub.with(labelled(one, "7"), shorter), labelled(one, "8"));
    }

    private static Build labelled(Build build, String label) {
        return SampleClub.with(build, build.parts().head().withLabel(label));
    }

    @Test
    void theLongestSetIsLimitedByTheShaftThatGivesLeast() {
        // Lmax = g + (R - T) - i + H = 3 + 980 - 30 + 60 = 1013, and 993 for the shaft that is 20 mm shorter.
        // With 15 mm a club the first may be 1013, 993 + 15 = 1008, 1013 + 30: 1008.
        LongestSet set = LongestSet.of(three(), SampleClub.mm(15), LengthMeasure.ALONG_AXIS);
        assertThat(set.longest())
                .extracting(LengthTarget::length)
                .containsExactly(SampleClub.mm(1013), SampleClub.mm(993), SampleClub.mm(1013));
        assertThat(set.first()).isEqualTo(SampleClub.mm(1008));
        assertThat(set.limitedBy()).isEqualTo("7");
        assertThat(set.plan().targets())
                .extracting(LengthTarget::length)
                .containsExactly(SampleClub.mm(1008), SampleClub.mm(993), SampleClub.mm(978));
        assertThat(set.working().lines()).hasSize(3);
        assertThat(set.working().text(Units.METRIC)).contains("1008.00 mm");
        // Every club of it can be cut, the limiting one with nothing off its butt, and none of a set a nanometre
        // longer.
        for (Build build : three().builds()) {
            CutToLengthStep step = CutToLengthStep.to(set.plan(), Length.ZERO);
            assertThat(step.take(build).findings()).isEmpty();
        }
        LengthPlan longer = set.plan().lengthenedBy(Length.ofNanometres(1));
        assertThat(CutToLengthStep.to(longer, Length.ZERO)
                        .take(three().club("7"))
                        .findings())
                .extracting(Finding::code)
                .containsExactly(LengthCode.SHAFT_TOO_SHORT);
    }

    @Test
    void theLongestSetByThePlaneIsShorterByWhatThePlaneTakes() {
        LongestSet axis = LongestSet.of(three(), SampleClub.mm(15), LengthMeasure.ALONG_AXIS);
        LongestSet plane = LongestSet.of(three(), SampleClub.mm(15), LengthMeasure.SIXTY_DEGREE_PLANE);
        assertThat(axis.first().minus(plane.first()))
                .isEqualTo(SixtyDegreePlane.of(SampleClub.head()).shorterBy());
    }

    @Test
    void theLongestSetRefusesWhatIsNone() {
        Build unseated = SampleClub.build().withWork(SampleClub.build().work().withSeat(Seat.APART));
        assertThatThrownBy(() -> LongestSet.of(ClubSet.of(unseated), HALF, LengthMeasure.ALONG_AXIS))
                .hasMessageContaining("set");
        LengthTarget plane = new LengthTarget("7", HALF, LengthMeasure.SIXTY_DEGREE_PLANE);
        assertThatThrownBy(() -> new LongestSet(List.of(target("6", "37 in"), plane), HALF))
                .hasMessageContaining("longest");
        LongestSet none = new LongestSet(List.of(target("6", "37 in"), target("7", "1 in")), SampleClub.mm(-100));
        assertThatThrownBy(none::plan).hasMessageContaining("step");
    }

    /** A step of 1 in: the second of 1 in and 5 in would be 0; of 2 in and 5 in it is 1 in. From 0 in on no set begins. */
    @Test
    void aSetThatLeavesAClubJustNoLengthIsNone() {
        Length inch = Length.parse("1 in");
        String message = "step must leave every club a length, was ";
        LongestSet nothingLast = new LongestSet(List.of(target("6", "1 in"), target("7", "5 in")), inch);
        assertThatThrownBy(nothingLast::plan).hasMessage(message + "25.4 mm");
        LongestSet nothingFirst = new LongestSet(List.of(target("6", "5 in"), target("7", "1 in")), inch.negated());
        assertThatThrownBy(nothingFirst::plan).hasMessage(message + "-25.4 mm");
        LongestSet shortest = new LongestSet(List.of(target("6", "2 in"), target("7", "5 in")), inch);
        assertThat(shortest.plan().targets())
                .extracting(LengthTarget::length)
                .containsExactly(Length.parse("2 in"), inch);
    }

    @Test
    void aTargetByThePlaneIsCutToThatPlane() {
        Length wanted = SampleClub.mm(950);
        LengthPlan plan = new LengthPlan(List.of(new LengthTarget("6", wanted, LengthMeasure.SIXTY_DEGREE_PLANE)));
        StepOutcome outcome = CutToLengthStep.to(plan, SampleClub.mm(1)).take(SampleClub.build());
        assertThat(outcome.findings()).extracting(Finding::code).containsExactly(LengthCode.BY_PLANE);
        Length made = PlayingLength.alongAxis(outcome.after());
        assertThat(SixtyDegreePlane.of(SampleClub.head()).length(made)).isEqualTo(wanted);
        // 950 + 6.5 cot 60.
        assertThat(made.millimetres()).isEqualTo(953.752777);
        assertMessages(outcome.findings().get(0), "953.8 mm", "37.549 in");
    }

    @Test
    void everyOtherFindingOfACutIsReachedAndSaysItsNumbers() {
        Build build = SampleClub.build();
        assertMessages(cut(build, target("7", "37 in")), "club 6", "club 6");
        Build apart = build.withWork(build.work().withSeat(Seat.APART));
        assertMessages(cut(apart, target("6", "37 in")), "settle", "settle");
        assertMessages(cut(build, target("6", "2 in")), "50.8 mm", "2.000 in");
        assertMessages(cut(build, target("6", "40 in")), "3.0 mm too short", "0.118 in");
        assertThat(cut(build, target("6", "40 in")).severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void aTargetByThePlaneThatIsNoLengthAlongTheAxisIsAFinding() {
        // At 30 deg of lie a sole that touches 300 mm toe-ward reaches 173 mm further: such a club is too short, and no
        // error.
        Build build = SampleClub.build();
        Build odd = SampleClub.with(
                build,
                build.parts()
                        .head()
                        .withGeometry(build.parts()
                                .head()
                                .geometry()
                                .withLie(Angle.ofDegrees(30))
                                .withSole(Reading.measured(new SoleShape(SampleClub.mm(300), Length.ZERO)))));
        LengthTarget target = new LengthTarget("6", SampleClub.mm(100), LengthMeasure.SIXTY_DEGREE_PLANE);
        Finding finding = cut(odd, target);
        assertThat(finding.code()).isEqualTo(LengthCode.TARGET_TOO_SHORT);
        assertThat(finding.term("L")).isInstanceOf(Term.OfLength.class);
        // What the plane adds is no length along the axis at all.
        Length nothing = SixtyDegreePlane.of(odd.parts().head()).shorterBy().negated();
        LengthTarget justNone = new LengthTarget("6", nothing, LengthMeasure.SIXTY_DEGREE_PLANE);
        assertThat(cut(odd, justNone).code()).isEqualTo(LengthCode.TARGET_TOO_SHORT);
    }

    private static Finding cut(Build build, LengthTarget target) {
        return CutToLengthStep.to(new LengthPlan(List.of(target)), SampleClub.mm(1))
                .take(build)
                .findings()
                .get(0);
    }

    private static void assertMessages(Finding finding, String metric, String inch) {
        assertThat(finding.message(Units.METRIC)).contains(metric).doesNotContain("{");
        assertThat(finding.message(Units.INCH)).contains(inch).doesNotContain("{");
    }
}
