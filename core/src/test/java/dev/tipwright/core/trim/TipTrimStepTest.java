package dev.tipwright.core.trim;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.Nudges;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The step that trims tips: each finding it can make, with its words, and what it does to the work. */
class TipTrimStepTest {

    private static final Length KERF = len("1/16 in");
    /** Clubs 5 to 8, from 1/2 in by 1/2 in, for bores that bottom 1 in over the ground. */
    private static final TrimChart CHART =
            TrimChart.stepped("mid", List.of("5", "6", "7", "8"), len("1/2 in"), len("1/2 in"), len("1 in"));

    private static StepOutcome take(TrimChart chart, Build build) {
        return TipTrimStep.by(chart, KERF).take(build);
    }

    private static Finding only(StepOutcome outcome) {
        assertThat(outcome.findings()).hasSize(1);
        return outcome.findings().get(0);
    }

    private static TipTrim report(StepOutcome outcome) {
        return (TipTrim) outcome.reports().get(0);
    }

    /** The head of the bench sits just as the chart assumes: the chart's own value, and the tip goes to the bottom. */
    @Test
    void trimsByTheChartAndSeatsTheTip() {
        StepOutcome outcome = take(CHART, Bench.club("7"));
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.after().work().tipTrim()).isEqualTo(len("1 1/2 in"));
        assertThat(outcome.after().work().seat()).isEqualTo(new Seat(len("1 1/4 in"), Stop.BORE_BOTTOM));
        assertThat(report(outcome).correction()).isEqualTo(Length.ZERO);
        assertThat(outcome.after().parts()).isEqualTo(Bench.club("7").parts());
    }

    /** What can have a budget is asked of other parts again: a mouth a tenth of an inch higher takes a tenth more off. */
    @Test
    void measuresAreAskedOfTheParts() {
        Build build = Bench.club("7");
        StepOutcome outcome = take(CHART, build);
        TipTrim report = report(outcome);
        Build higher = Nudges.MOUTH_TO_GROUND.by(outcome.after(), 2.54);
        assertThat(report.measures()).extracting(Measure::symbol).containsExactly("G", "T", "o");
        double[] ground = asked(report, 0, outcome.after(), higher);
        double[] trim = asked(report, 1, outcome.after(), higher);
        double[] offcut = asked(report, 2, outcome.after(), higher);
        assertThat(ground[0]).isEqualTo(report.bottomToGround().millimetres()).isEqualTo(25.4);
        assertThat(trim[0]).isEqualTo(38.1);
        // The kerf of 1/16 in is not in the offcut.
        assertThat(offcut[0]).isEqualTo(38.1 - 1.5875);
        // Places are whole nanometres.
        assertThat(ground[1] - ground[0]).isCloseTo(2.54, within(1e-9));
        assertThat(trim[1] - trim[0]).isCloseTo(2.54, within(1e-9));
        assertThat(offcut[1] - offcut[0]).isCloseTo(2.54, within(1e-9));
    }

    private static double[] asked(TipTrim report, int measure, Build one, Build other) {
        Measure asked = report.measures().get(measure);
        return new double[] {asked.value().applyAsDouble(one), asked.value().applyAsDouble(other)};
    }

    /** A chart for bores that bottom 3/4 in over the ground: this one bottoms 1/4 in higher, so 1/4 in more comes off. */
    @Test
    void correctsForABoreThatSitsHigher() {
        StepOutcome outcome = take(CHART.withGroundReference(len("3/4 in")), Bench.club("7"));
        assertThat(outcome.after().work().tipTrim()).isEqualTo(len("1 3/4 in"));
        Finding note = only(outcome);
        assertThat(note.code()).isEqualTo(TrimCode.BORE_CORRECTED);
        assertThat(note.severity()).isEqualTo(Severity.NOTE);
        assertThat(note.message(Units.INCH))
                .isEqualTo(
                        "the tip's end will stand 1.000 in (1) over the ground where the chart assumes 0.750 in (3/4):"
                                + " the chart's 1.500 in (1 1/2) is corrected by 0.250 in (1/4)");
    }

    /** A mark 1/4 in short of the bottom lifts the tip as a higher bore would. */
    @Test
    void correctsForATipThatStopsShortOfTheBottom() {
        Build build = Bench.club("7");
        Build marked = build.withWork(build.work().withSeat(new Seat(len("1 in"), Stop.MARK)));
        StepOutcome outcome = take(CHART, marked);
        assertThat(outcome.after().work().tipTrim()).isEqualTo(len("1 3/4 in"));
        assertThat(outcome.after().work().seat()).isEqualTo(marked.work().seat());
        assertThat(only(outcome).message(Units.INCH)).startsWith("the tip's end will stand 1.250 in");
    }

    /** 1/2 in off the chart for a bore 3/4 in lower than assumed: -1/4 in, which is said and not cut. */
    @Test
    void aNegativeTrimIsSaidAndNeverClamped() {
        Build build = Bench.club("5");
        Build trimmed = build.withWork(build.work().withTipTrim(len("1 in")));
        StepOutcome outcome = take(CHART.withGroundReference(len("1 3/4 in")), trimmed);
        assertThat(report(outcome).trim()).isEqualTo(len("-1/4 in"));
        assertThat(report(outcome).operations()).isEmpty();
        assertThat(outcome.after().work().tipTrim()).as("left untrimmed").isEqualTo(Length.ZERO);
        assertThat(outcome.findings())
                .extracting(Finding::code)
                .containsExactly(TrimCode.BORE_CORRECTED, TrimCode.CANNOT_TRIM);
        Finding cannot = outcome.findings().get(1);
        assertThat(cannot.severity()).isEqualTo(Severity.CAUTION);
        assertThat(cannot.message(Units.METRIC)).startsWith("the trim comes to -6.4 mm, which cannot be cut");
    }

    /** 1/2 in off the chart for a bore 1/2 in lower than assumed: nothing comes off, and nothing is amiss. */
    @Test
    void aTrimOfNothingIsNoTrimThatCannotBe() {
        StepOutcome outcome = take(CHART.withGroundReference(len("1 1/2 in")), Bench.club("5"));
        assertThat(report(outcome).trim()).isEqualTo(Length.ZERO);
        assertThat(only(outcome).code()).isEqualTo(TrimCode.BORE_CORRECTED);
    }

    @Test
    void aClubNotOnTheChartIsStopped() {
        StepOutcome outcome = take(CHART, Bench.club("9"));
        Finding stop = only(outcome);
        assertThat(stop.code()).isEqualTo(TrimCode.NOT_ON_CHART);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.message(Units.INCH))
                .isEqualTo(
                        "the chart has no trim for club 9 on blank mid, so its tip is left untrimmed here: ask the shaft's maker,"
                                + " and do not cut this shaft before");
        assertThat(outcome.reports()).isEmpty();
        assertThat(outcome.after().work().tipTrim()).isEqualTo(Length.ZERO);
    }

    @Test
    void aThroughBoreWithoutAStopIsStopped() {
        Build build = Bench.club("7");
        Build through = Bench.withHead(build, build.parts().head().withBore(Bench.bore(BoreEnd.THROUGH)));
        StepOutcome outcome = take(CHART, through);
        Finding stop = only(outcome);
        assertThat(stop.code()).isEqualTo(TrimCode.NO_STOP);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(outcome.after()).isEqualTo(through);
        // With a mark the same club is trimmed.
        Build marked = through.withWork(Work.NONE.withSeat(new Seat(len("1 1/4 in"), Stop.MARK)));
        assertThat(take(CHART, marked).findings()).isEmpty();
    }

    /** Of 39 in, 38 in of butt trim leave 1 in: 1 1/2 in of trim and 1 1/4 in of insertion do not fit. */
    @Test
    void aShaftTooShortIsStoppedAndLeftAsItWas() {
        Build build = Bench.club("7");
        Build stub = build.withWork(build.work().withButtTrim(len("36 1/4 in")));
        StepOutcome outcome = take(CHART, stub);
        Finding stop = only(outcome);
        assertThat(stop.code()).isEqualTo(TrimCode.SHAFT_TOO_SHORT);
        assertThat(stop.message(Units.INCH))
                .isEqualTo("a trim of 1.500 in (1 1/2) leaves nothing of a shaft 39.000 in (39) long");
        assertThat(outcome.after().work().tipTrim()).isEqualTo(Length.ZERO);
        Build justEnough = build.withWork(build.work().withButtTrim(len("36 15/64 in")));
        assertThat(take(CHART, justEnough).findings()).isEmpty();
    }

    /** Read for 2 1/2 in only; 1 1/2 in of trim and 1 1/4 in of insertion need 2 3/4 in. */
    @Test
    void aTipNotReadFarEnoughIsStopped() {
        Build build = Bench.club("7");
        Build unread = Bench.withShaft(
                build,
                build.parts()
                        .shaft()
                        .withSection(build.parts()
                                .shaft()
                                .section()
                                .withOutside(build.parts()
                                        .shaft()
                                        .section()
                                        .outside()
                                        .endedAt(len("2 1/2 in")))));
        Finding stop = only(take(CHART, unread));
        assertThat(stop.code()).isEqualTo(TrimCode.TIP_NOT_READ);
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.message(Units.INCH)).startsWith("the tip was measured only to 2.500 in (2 1/2), short of");
    }

    /** Parallel for 2 1/2 in only; nothing is said of a blank whose parallel section is not given. */
    @Test
    void aTrimPastTheParallelSectionIsACaution() {
        Build build = Bench.club("7");
        Finding caution = only(take(CHART, withParallel(build, "2 1/2 in")));
        assertThat(caution.code()).isEqualTo(TrimCode.PAST_PARALLEL);
        assertThat(caution.severity()).isEqualTo(Severity.CAUTION);
        assertThat(caution.message(Units.INCH)).contains("past the parallel section, 2.500 in (2 1/2) long");
        assertThat(take(CHART, withParallel(build, "2 3/4 in")).findings()).isEmpty();
        assertThat(take(CHART, withParallel(build, "0 in")).findings()).isEmpty();
    }

    private static Build withParallel(Build build, String parallel) {
        return Bench.withShaft(
                build,
                build.parts().shaft().withBlank(build.parts().shaft().blank().withParallelTip(len(parallel))));
    }

    /** Every code is reached, and every sentence of finding and operation is filled in both units. */
    @Test
    void everyCodeIsReachedAndEverySentenceFilled() {
        Build build = Bench.club("7");
        Build through = Bench.withHead(build, build.parts().head().withBore(Bench.bore(BoreEnd.THROUGH)));
        List<StepOutcome> outcomes = List.of(
                take(CHART, Bench.club("9")),
                take(CHART, through),
                TipTrimStep.by(CHART.withGroundReference(len("3/4 in")), KERF)
                        .withDoubt(len("1/4 in"))
                        .take(build),
                take(CHART.withGroundReference(len("6 in")), build),
                take(CHART, build.withWork(build.work().withButtTrim(len("38 in")))),
                take(CHART, withParallel(build, "2 in")),
                take(TrimChart.stepped("mid", List.of("7"), len("12 in"), Length.ZERO, len("1 in")), build),
                take(TrimChart.stepped("mid", List.of("7"), KERF, Length.ZERO, len("1 in")), build));
        Set<TrimCode> reached = EnumSet.noneOf(TrimCode.class);
        Set<TrimInstruction> told = EnumSet.noneOf(TrimInstruction.class);
        for (StepOutcome outcome : outcomes) {
            for (Units units : Units.values()) {
                for (Finding finding : outcome.findings()) {
                    reached.add((TrimCode) finding.code());
                    assertThat(finding.message(units)).doesNotContain("{", "}");
                }
                for (StepReport report : outcome.reports()) {
                    report.operations().forEach(operation -> {
                        told.add((TrimInstruction) operation.instruction());
                        assertThat(operation.oneWay()).isTrue();
                        assertThat(operation.text(units)).doesNotContain("{", "}");
                        assertThat(operation.checkFirst(units)).doesNotContain("{", "}");
                    });
                }
            }
        }
        assertThat(reached).containsExactly(TrimCode.values());
        assertThat(told).containsExactly(TrimInstruction.values());
    }

    @Test
    void refusesBadArguments() {
        assertThatNullPointerException()
                .isThrownBy(() -> TipTrimStep.by(null, KERF))
                .withMessage("chart must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> TipTrimStep.by(CHART, null))
                .withMessage("kerf must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TipTrimStep.by(CHART, len("-1 mm")))
                .withMessage("kerf must not be negative, was -1 mm");
        assertThatNullPointerException().isThrownBy(() -> take(CHART, null)).withMessage("build must not be null");
    }
}
