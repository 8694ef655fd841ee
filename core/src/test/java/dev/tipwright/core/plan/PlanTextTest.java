package dev.tipwright.core.plan;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The printed plan: a block a club in bench order, the set at a glance, cautions and assumptions once. */
class PlanTextTest {

    private static final Length KERF = len("1/16 in");
    private static final List<String> CLUBS = List.of("5", "6", "7");

    private static final JobPlanner PLANNER = JobPlanner.of(
            TipTrimStep.by(TrimChart.stepped("mid", CLUBS, len("1/2 in"), len("1/2 in"), len("3/4 in")), KERF),
            CutToLengthStep.to(
                    new LengthPlan(CLUBS.stream()
                            .map(club -> new LengthTarget(club, len("37 1/2 in"), LengthMeasure.ALONG_AXIS))
                            .toList()),
                    KERF));

    private static JobPlan plan(String... labels) {
        return PLANNER.plan(
                new ClubSet(List.of(labels).stream().map(Bench::club).toList()));
    }

    @Test
    void hasABlockForEachClubInBenchOrder() {
        String text = PlanText.plain(plan("5", "6"), Units.INCH);
        assertThat(text).startsWith("PLAN FOR 2 CLUBS\n================\n");
        assertThat(text.indexOf("CLUB 5")).isLessThan(text.indexOf("CLUB 6"));
        String club = text.substring(text.indexOf("CLUB 5"), text.indexOf("CLUB 6"));
        assertThat(club)
                .contains("iron, right hand; shaft s5 (blank mid); grip cord")
                .containsSubsequence("Findings", "note", "Numbers", "At the bench");
        // Chart 1/2 in for a bore 1/4 in lower: 3/4 in. S = 36 3/8, U = 39 - 3/4 - 36 3/8 = 1 7/8 in.
        assertThat(club)
                .containsSubsequence(
                        " 1.",
                        "Measure the raw shaft",
                        " 2.",
                        "Mark 0.750 in (3/4) from the raw tip",
                        "First: Measure the mark again",
                        " 3.",
                        "in (1 7/8) comes off",
                        " 4.",
                        "Put on tape and grip",
                        " 5.",
                        "Measure the finished club");
    }

    @Test
    void showsTheSetAtAGlanceInTheUnitsAskedFor() {
        String inch = PlanText.plain(plan("5", "6"), Units.INCH);
        assertThat(inch)
                .containsPattern("tip trim, in +0\\.750 +1\\.250\n")
                .containsPattern("worst finding +note +note\n");
        String metric = PlanText.plain(plan("5", "6"), Units.METRIC);
        assertThat(metric).containsPattern("tip trim, mm +19\\.0 +31\\.7\n"); // 19.05 and 31.75, down
        // The numbers of a club are in both.
        assertThat(inch).containsPattern("tip trim +T +0\\.750 in \\(3/4\\) +19\\.0 mm \\(rounded down\\)\n");
        assertThat(metric).containsPattern("tip trim +T +19\\.0 mm \\(rounded down\\) +0\\.750 in \\(3/4\\)\n");
    }

    /** A club that is stopped at both steps has findings and nothing else; the set shows it with dashes. */
    @Test
    void aStoppedClubHasFindingsAlone() {
        String text = PlanText.plain(plan("5", "9"), Units.INCH);
        String club = text.substring(text.indexOf("CLUB 9"), text.indexOf("CAUTIONS"));
        assertThat(club).contains("STOP  the chart has no trim for club 9").doesNotContain("Numbers", "At the bench");
        assertThat(text).containsPattern("tip trim, in +0\\.750 +-\n").containsPattern("worst finding +note +stop\n");
    }

    @Test
    void saysCautionsOnceAndDefers() {
        String text = PlanText.plain(plan("5", "6", "7"), Units.INCH);
        assertThat(text.split("Composite dust harms", -1)).hasSize(2);
        assertThat(text).contains("certifies nothing");
    }

    private record Assuming(Build build) implements StepReport {
        @Override
        public Working working() {
            return new Working("Mass", List.of());
        }

        @Override
        public List<Term> headline() {
            return List.of(Term.of("m", "mass", Mass.parse("12 g")));
        }

        @Override
        public List<Assumption> assumptions() {
            return List.of(
                    new Assumption(Term.of("m", "mass", Mass.parse("12 g")), Source.commonPractice("as they come")));
        }
    }

    @Test
    void listsWhatIsAssumedWithItsSource() {
        JobPlan plan = JobPlanner.of(build -> StepOutcome.of(build, List.of(), new Assuming(build)))
                .plan(ClubSet.of(Bench.club("5"), Bench.club("6")));
        String text = PlanText.plain(plan, Units.INCH);
        assertThat(text.split("ASSUMED, NOT MEASURED", -1)).hasSize(2);
        assertThat(text).contains("  all  mass: 12.00 g (common practice, no source: as they come)\n");
        // The same in both units is printed once.
        assertThat(text).containsPattern("mass +m +12\\.00 g\n");
        assertThat(text).doesNotContain("CAUTIONS", "Findings");
    }

    @Test
    void whatOnlySomeClubsRestOnIsSaidOfThose() {
        JobPlan plan = JobPlanner.of(build -> "5".equals(build.label())
                        ? StepOutcome.notTaken(build)
                        : StepOutcome.of(build, List.of(), new Assuming(build)))
                .plan(ClubSet.of(Bench.club("5"), Bench.club("6"), Bench.club("7")));
        assertThat(PlanText.plain(plan, Units.INCH)).contains("  6, 7  mass: 12.00 g (common practice");
    }

    /** Seven clubs do not fit abreast: six and one. */
    @Test
    void aLargeSetIsPrintedInTables() {
        JobPlan plan = JobPlanner.of(build -> StepOutcome.of(build, List.of(), new Assuming(build)))
                .plan(new ClubSet(
                        IntStream.range(0, 7).mapToObj(i -> Bench.club("c" + i)).toList()));
        String text = PlanText.plain(plan, Units.INCH);
        assertThat(text).containsPattern("club +c0 +c1 +c2 +c3 +c4 +c5\n").containsPattern("club +c6\n");
        assertThat(text.split("worst finding", -1)).hasSize(3);
    }

    @Test
    void sixClubsFillOneTable() {
        JobPlan plan = JobPlanner.of(build -> StepOutcome.of(build, List.of(), new Assuming(build)))
                .plan(new ClubSet(
                        IntStream.range(0, 6).mapToObj(i -> Bench.club("c" + i)).toList()));
        assertThat(PlanText.plain(plan, Units.INCH).split("worst finding", -1)).hasSize(2);
    }

    /** Two tips can be cut in the wrong order, one cannot. Ten turns stay in line. */
    @Test
    void theOrderOfCuttingBeginsWithTwoTipsAndStaysInLine() {
        assertThat(PlanText.plain(plan("5", "6"), Units.INCH)).contains("THE ORDER OF CUTTING TIPS");
        assertThat(PlanText.plain(plan("5"), Units.INCH)).doesNotContain("THE ORDER OF CUTTING TIPS");
        List<String> ten = IntStream.rangeClosed(1, 10).mapToObj(i -> "c" + i).toList();
        JobPlan plan = JobPlanner.of(
                        TipTrimStep.by(TrimChart.stepped("mid", ten, len("1/2 in"), len("1/4 in"), len("1 in")), KERF))
                .plan(new ClubSet(ten.stream().map(Bench::club).toList()));
        assertThat(PlanText.plain(plan, Units.INCH))
                .contains("\n   9.  shaft sc9 (blank mid) for club c9", "\n  10.  shaft sc10 (blank mid) for club c10");
    }

    @Test
    void theUnitsAskedForComeFirstAmongTheNumbers() {
        assertThat(PlanText.plain(plan("5"), Units.INCH)).containsPattern("number +inches +metric\n");
        assertThat(PlanText.plain(plan("5"), Units.METRIC)).containsPattern("number +metric +inches\n");
    }

    /** A length that nobody measures, with the symbol of one number of the cut and the meaning of another. */
    private record NotMeasured() implements StepReport {
        @Override
        public Working working() {
            return new Working("Not measured", List.of());
        }

        @Override
        public List<Term> headline() {
            return List.of(Term.of("S", "same symbol", len("7 mm")), Term.of("m", "butt trim", len("8 mm")));
        }
    }

    /**
     * The raw length read to 0.5 mm, the mouth over the ground to 0.2 mm. The cut length rests on the mouth alone, so twice 0.2 is
     * 0.4 mm; the butt trim on both, 2 sqrt(0.25 + 0.04) = 1.08 mm, most of it from the raw length.
     */
    @Test
    void aBenchSaysHowSureTheNumbersAre() {
        BenchUncertainty bench = BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("tape", "mm", 0.5, 0), BenchInput.RAW_LENGTH),
                BenchUncertainty.Tool.of(Instrument.ofStandard("rule", "mm", 0.2, 0), BenchInput.MOUTH_TO_GROUND));
        Build club = Bench.club("6");
        Build seated = club.withWork(
                club.work().withSeat(Seat.onBottomOf(club.parts().head().bore())));
        LengthPlan lengths = new LengthPlan(List.of(new LengthTarget("6", len("37 1/2 in"), LengthMeasure.ALONG_AXIS)));
        JobPlan plan = JobPlanner.of(
                        CutToLengthStep.to(lengths, KERF), build -> StepOutcome.of(build, List.of(), new NotMeasured()))
                .plan(ClubSet.of(seated));
        String text = PlanText.plain(plan, Units.METRIC, bench);
        assertThat(text)
                .contains("The uncertainty beside a number is expanded")
                .containsPattern("number +metric +uncertainty +most of it from\n")
                .containsPattern("cut length +S +924\\.0 mm \\(rounded up\\) +0\\.4 mm +mouth to ground\n")
                .containsPattern("butt trim +U +66\\.6 mm \\(rounded down\\) +1\\.1 mm +raw length\n")
                .containsPattern("same symbol +S +7\\.0 mm *\n")
                .containsPattern("butt trim +m +8\\.0 mm *\n");
        assertThat(PlanText.markdown(plan, Units.METRIC, bench))
                .contains("| cut length | S | 924.0 mm (rounded up) | 0.4 mm | mouth to ground |");
        assertThat(PlanText.plain(plan, Units.METRIC)).doesNotContain("expanded", "uncertainty");
    }

    @Test
    void isAHundredColumnsWideAndTheSameAsMarkdown() {
        JobPlan plan = plan("5", "6", "9");
        assertThat(PlanText.plain(plan, Units.INCH).lines()).allMatch(line -> line.length() <= 100);
        String markdown = PlanText.markdown(plan, Units.METRIC);
        assertThat(markdown)
                .startsWith("# Plan for 3 clubs\n")
                .contains("\n## Club 9\n", "\n### At the bench\n", "| tip trim, mm | 19.0 | 31.7 | - |", "**STOP** ");
        assertThat(PlanText.plain(plan("5"), Units.INCH)).startsWith("PLAN FOR ONE CLUB\n");
    }

    @Test
    void tenStepsAndMoreStayInLine() {
        BenchStage[] stages = BenchStage.values();
        WorkStep step = build -> StepOutcome.of(build, List.of(), new Many(List.of(stages)));
        String text = PlanText.plain(JobPlanner.of(step, step).plan(ClubSet.of(Bench.club("5"))), Units.INCH);
        assertThat(text).contains("\n   9.  Look.\n", "\n  10.  Look.\n");
    }

    private record Many(List<BenchStage> stages) implements StepReport {
        @Override
        public Working working() {
            return new Working("Many", List.of());
        }

        @Override
        public List<Operation> operations() {
            return stages.stream().map(stage -> Operation.of(stage, Look.LOOK)).toList();
        }
    }

    private enum Look implements Instruction {
        LOOK;

        @Override
        public String template() {
            return "Look.";
        }

        @Override
        public String checkFirst() {
            return "";
        }
    }

    @Test
    void nullIsNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> PlanText.plain(null, Units.INCH))
                .withMessage("plan must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> PlanText.markdown(plan("5"), null))
                .withMessage("units must not be null");
    }
}
