package dev.tipwright.core.length;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.part.Extension;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The step that cuts to length: each finding it can make, with its words, and what it does to the work. */
class CutToLengthStepTest {

    private static final Length KERF = len("1/16 in");

    private static LengthPlan plan(String length) {
        return new LengthPlan(List.of(new LengthTarget("7", len(length), LengthMeasure.ALONG_AXIS)));
    }

    private static StepOutcome take(String length, Build build) {
        return CutToLengthStep.to(plan(length), KERF).take(build);
    }

    private static LengthPlan byPlane(String length) {
        return new LengthPlan(List.of(new LengthTarget("7", len(length), LengthMeasure.SIXTY_DEGREE_PLANE)));
    }

    /** Seated on the bottom, 1 1/4 in deep, and trimmed 1 in at the tip. */
    private static Build seated() {
        Build club = Bench.club("7");
        return club.withWork(club.work()
                .withSeat(Seat.onBottomOf(club.parts().head().bore()))
                .withTipTrim(len("1 in")));
    }

    private static Finding only(StepOutcome outcome) {
        assertThat(outcome.findings()).hasSize(1);
        return outcome.findings().get(0);
    }

    /** L 37 1/2, cap 1/8, bottom 1 in over the ground: S = 36 3/8; of 39 in less 1 in of tip, U = 1 5/8 in. */
    @Test
    void cutsToTheTarget() {
        StepOutcome outcome = take("37 1/2 in", seated());
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.after().work().buttTrim()).isEqualTo(len("1 5/8 in"));
        assertThat(outcome.after().cutLength()).isEqualTo(len("36 3/8 in"));
        assertThat(PlayingLength.alongAxis(outcome.after())).isEqualTo(len("37 1/2 in"));
    }

    /** A hosel 0.530 in wide: h cot 60 = 0.265 / sqrt 3 = 0.152997 in more along the axis, so that much less off the butt. */
    @Test
    void aTargetByThePlaneIsCutLongerAndSaysSo() {
        StepOutcome outcome = CutToLengthStep.to(byPlane("37 1/2 in"), KERF).take(seated());
        Finding note = only(outcome);
        assertThat(note.code()).isEqualTo(LengthCode.BY_PLANE);
        assertThat(note.severity()).isEqualTo(Severity.NOTE);
        assertThat(note.message(Units.INCH))
                .isEqualTo("the wanted 37.500 in (37 1/2) is by the 60 degree plane; along the shaft that is"
                        + " 37.653 in (near 37 21/32)");
        // 1.625 - 0.152997 in, to the sixth decimal of an inch, 25 nm.
        assertThat(outcome.after().work().buttTrim().inches()).isCloseTo(1.472003, within(1e-6));
    }

    /** An extension of 1 in counts as cap: as much more comes off the butt. */
    @Test
    void anExtensionCountsAsCap() {
        Build build = seated();
        Build extended =
                build.withWork(build.work().plus(new Extension("plug", Mass.parse("5 g"), len("1 in"), len("1/2 in"))));
        StepOutcome outcome = take("37 1/2 in", extended);
        assertThat(outcome.after().work().buttTrim()).isEqualTo(len("2 5/8 in"));
        assertThat(PlayingLength.alongAxis(outcome.after())).isEqualTo(len("37 1/2 in"));
    }

    @Test
    void aClubWithoutATargetIsStopped() {
        Build build = Bench.withHead(seated(), Bench.head("8"));
        StepOutcome outcome = take("37 1/2 in", build);
        Finding stop = only(outcome);
        assertThat(stop.code()).isEqualTo(LengthCode.NO_TARGET);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.message(Units.INCH)).isEqualTo("the length plan has no length for club 8: say which");
        assertThat(outcome.after()).isEqualTo(build);
        assertThat(outcome.reports()).isEmpty();
    }

    @Test
    void aTipThatIsNotSeatedIsStopped() {
        StepOutcome outcome = take("37 1/2 in", Bench.club("7"));
        assertThat(only(outcome).code()).isEqualTo(LengthCode.NOT_SEATED);
        assertThat(outcome.after()).isEqualTo(Bench.club("7"));
    }

    /** S = L - 1/8 - 1 must be more than the insertion of 1 1/4: L of 2 3/8 leaves just none. */
    @Test
    void aTargetThatLeavesNoShaftIsStopped() {
        Finding stop = only(take("2 3/8 in", seated()));
        assertThat(stop.code()).isEqualTo(LengthCode.TARGET_TOO_SHORT);
        assertThat(stop.message(Units.INCH))
                .isEqualTo(
                        "a playing length of 2.375 in (2 3/8) leaves no shaft above the insertion of 1.250 in (1 1/4)");
        assertThat(take("2 25/64 in", seated()).findings()).isEmpty();
    }

    /** 38 in of shaft, cap and height give 39 1/8 in at most: 40 in is 7/8 in too long. */
    @Test
    void aShaftTooShortIsStoppedWithNothingOffItsButt() {
        Build build = seated();
        StepOutcome outcome = take("40 in", build.withWork(build.work().withButtTrim(len("2 in"))));
        Finding stop = only(outcome);
        assertThat(stop.code()).isEqualTo(LengthCode.SHAFT_TOO_SHORT);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.message(Units.INCH))
                .startsWith(
                        "the shaft is 0.875 in (7/8) too short for 40.000 in (40): with nothing off its butt the club"
                                + " plays 39.125 in (39 1/8)");
        assertThat(outcome.after().work().buttTrim()).isEqualTo(Length.ZERO);
        CutToLength report = (CutToLength) outcome.reports().get(0);
        assertThat(report.buttTrim()).isEqualTo(len("-7/8 in"));
        assertThat(report.longest()).isEqualTo(PlayingLength.alongAxis(outcome.after()));
        assertThat(report.operations())
                .extracting(Operation::instruction)
                .containsExactly(LengthInstruction.FIT_GRIP, LengthInstruction.MEASURE_LENGTH);
    }

    @Test
    void everyCodeIsReachedAndEverySentenceFilled() {
        List<StepOutcome> outcomes = List.of(
                take("37 1/2 in", Bench.withHead(seated(), Bench.head("8"))),
                take("37 1/2 in", Bench.club("7")),
                take("1 in", seated()),
                take("40 in", seated()),
                take("37 1/2 in", seated()),
                CutToLengthStep.to(byPlane("37 1/2 in"), KERF).take(seated()),
                take("39 3/32 in", seated()));
        Set<LengthCode> reached = EnumSet.noneOf(LengthCode.class);
        Set<LengthInstruction> told = EnumSet.noneOf(LengthInstruction.class);
        for (StepOutcome outcome : outcomes) {
            for (Units units : Units.values()) {
                for (Finding finding : outcome.findings()) {
                    reached.add((LengthCode) finding.code());
                    assertThat(finding.message(units)).doesNotContain("{", "}");
                }
                for (StepReport report : outcome.reports()) {
                    report.operations().forEach(operation -> {
                        told.add((LengthInstruction) operation.instruction());
                        assertThat(operation.text(units)).doesNotContain("{", "}");
                        assertThat(operation.checkFirst(units)).doesNotContain("{", "}");
                        assertThat(operation.oneWay())
                                .isEqualTo(operation.instruction() == LengthInstruction.CUT_BUTT
                                        || operation.instruction() == LengthInstruction.GRIND_BUTT);
                    });
                }
            }
        }
        // BARELY_LONG_ENOUGH comes of a review of how sure a length is, not of the step.
        assertThat(reached).isEqualTo(EnumSet.complementOf(EnumSet.of(LengthCode.BARELY_LONG_ENOUGH)));
        assertThat(told).containsExactly(LengthInstruction.values());
    }

    @Test
    void playingLengthNeedsASeat() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlayingLength.alongAxis(Bench.club("7")))
                .withMessage("build must be seated, was " + Seat.APART);
        Build build = Bench.club("7");
        // Cap 1/8, shaft 39, 1/4 in short of the bottom, bottom 1 in up: 40 3/8 in.
        assertThat(PlayingLength.alongAxis(build.withWork(build.work().withSeat(new Seat(len("1 in"), Stop.MARK)))))
                .isEqualTo(len("40 3/8 in"));
        assertThatNullPointerException()
                .isThrownBy(() -> PlayingLength.alongAxis(null))
                .withMessage("build must not be null");
    }

    @Test
    void refusesBadArguments() {
        assertThatNullPointerException()
                .isThrownBy(() -> CutToLengthStep.to(null, KERF))
                .withMessage("lengths must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CutToLengthStep.to(plan("37 in"), len("-1 mm")))
                .withMessage("kerf must not be negative, was -1 mm");
        assertThatNullPointerException().isThrownBy(() -> take("37 in", null)).withMessage("build must not be null");
        LengthTarget target = new LengthTarget("7", len("37 in"), LengthMeasure.ALONG_AXIS);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LengthPlan(List.of(target, target)))
                .withMessage("targets must name each one once, but has more than one of [7]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LengthPlan(List.of()))
                .withMessage("targets must not be empty, was []");
        assertThatNullPointerException()
                .isThrownBy(() -> plan("37 in").target(null))
                .withMessage("club must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> target.withLength(Length.ZERO))
                .withMessage("length must be from 0.000001 mm to 3000 mm, was 0 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> target.withMeasure(null))
                .withMessage("measure must not be null");
        assertThat(target.withClub("8").club()).isEqualTo("8");
        assertThat(target.withLength(len("38 in")).length()).isEqualTo(len("38 in"));
        assertThat(target.withMeasure(LengthMeasure.ALONG_AXIS)).isEqualTo(target);
    }
}
