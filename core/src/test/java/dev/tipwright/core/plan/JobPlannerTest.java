package dev.tipwright.core.plan;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The planner with steps made up for the purpose: order, one club that stops, reviews, typed reports. */
class JobPlannerTest {

    private enum Code implements FindingCode {
        REFUSED,
        DONE,
        UNLIKE;

        @Override
        public String template() {
            return "{club} " + name();
        }
    }

    private enum Job implements Instruction {
        DO,
        DO_FOR_GOOD;

        @Override
        public String template() {
            return "Do {club}.";
        }

        @Override
        public String checkFirst() {
            return this == DO ? "" : "Look at {club}.";
        }
    }

    private static Term club(Build build) {
        return Term.of("club", "club", build.label());
    }

    /** A report that asks for one operation at each of its stages. */
    private record Stages(String name, Build build, List<BenchStage> stages) implements StepReport {
        @Override
        public Working working() {
            return new Working("Stages", List.of());
        }

        @Override
        public List<Operation> operations() {
            return stages.stream()
                    .map(stage -> Operation.of(stage, Job.DO, club(build)))
                    .toList();
        }
    }

    private record Trimmed(Length by) implements StepReport {
        @Override
        public Working working() {
            return new Working("Trim", List.of());
        }
    }

    /** Trims the tip by half an inch more, and reports how much that makes. */
    private static StepOutcome trim(Build build) {
        Length by = build.work().tipTrim().plus(len("1/2 in"));
        return StepOutcome.of(
                build.withWork(build.work().withTipTrim(by)),
                List.of(Finding.note(Code.DONE, club(build))),
                new Trimmed(by));
    }

    /** Refuses club 7. */
    private static StepOutcome refuse(Build build) {
        return build.label().equals("7")
                ? StepOutcome.notTaken(build, Finding.stop(Code.REFUSED, club(build)))
                : new StepOutcome(build, List.of(), List.of());
    }

    private static WorkStep stages(String name, BenchStage... stages) {
        return build -> StepOutcome.of(build, List.of(), new Stages(name, build, List.of(stages)));
    }

    private static final ClubSet SET = ClubSet.of(Bench.club("6"), Bench.club("7"), Bench.club("8"));

    @Test
    void everyStepSeesTheWorkOfTheOneBefore() {
        ClubPlan plan =
                JobPlanner.of(JobPlannerTest::trim, JobPlannerTest::trim).plan(Bench.club("6"));
        assertThat(plan.before().work().tipTrim()).isEqualTo(Length.ZERO);
        assertThat(plan.after().work().tipTrim()).isEqualTo(len("1 in"));
        assertThat(plan.label()).isEqualTo("6");
        assertThat(plan.reports()).containsExactly(new Trimmed(len("1/2 in")), new Trimmed(len("1 in")));
        // The last report of a kind is the one that counts.
        assertThat(plan.report(Trimmed.class).by()).isEqualTo(len("1 in"));
        assertThat(plan.find(Stages.class)).isEmpty();
    }

    @Test
    void oneClubThatIsStoppedLeavesTheOthersPlanned() {
        JobPlan plan =
                JobPlanner.of(JobPlannerTest::refuse, JobPlannerTest::trim).plan(SET);
        assertThat(plan.clubs()).extracting(ClubPlan::label).containsExactly("6", "7", "8");
        assertThat(plan.club("7").findings()).extracting(Finding::code).containsExactly(Code.REFUSED, Code.DONE);
        for (String other : List.of("6", "8")) {
            assertThat(plan.club(other).findings()).extracting(Finding::code).containsExactly(Code.DONE);
            assertThat(plan.club(other).after().work().tipTrim()).isEqualTo(len("1/2 in"));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plan.club("9"))
                .withMessage("label must be one of the clubs of the plan, was \"9\"");
        assertThatNullPointerException().isThrownBy(() -> plan.club(null)).withMessage("label must not be null");
    }

    @Test
    void theWorstFindingTellsWhetherAClubMayBeBuilt() {
        JobPlan plan =
                JobPlanner.of(JobPlannerTest::refuse, JobPlannerTest::trim).plan(SET);
        assertThat(plan.club("6").worst()).contains(Severity.NOTE);
        assertThat(plan.club("7").worst()).contains(Severity.STOP);
        assertThat(JobPlanner.of(build -> StepOutcome.notTaken(build))
                        .plan(Bench.club("6"))
                        .worst())
                .isEmpty();
    }

    @Test
    void aReportThatNoStepMadeIsNamedWithTheFindings() {
        ClubPlan plan = JobPlanner.of(JobPlannerTest::refuse).plan(Bench.club("7"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plan.report(Trimmed.class))
                .withMessage("type must be a report that a step made for club 7, was Trimmed; findings: [REFUSED]");
        assertThatNullPointerException().isThrownBy(() -> plan.report(null)).withMessage("type must not be null");
        assertThatNullPointerException().isThrownBy(() -> plan.find(null)).withMessage("type must not be null");
    }

    /** Whatever the order of the steps; of one stage, in the order of the steps. */
    @Test
    void operationsAreInBenchOrder() {
        ClubPlan plan = JobPlanner.of(
                        stages("a", BenchStage.CHECK, BenchStage.TIP_CUT),
                        stages("b", BenchStage.BUTT_CUT, BenchStage.FIT, BenchStage.TIP_CUT),
                        stages("c", BenchStage.BOND))
                .plan(Bench.club("7"));
        assertThat(plan.operations())
                .extracting(Operation::stage)
                .containsExactly(
                        BenchStage.TIP_CUT,
                        BenchStage.TIP_CUT,
                        BenchStage.FIT,
                        BenchStage.BOND,
                        BenchStage.BUTT_CUT,
                        BenchStage.CHECK);
        assertThat(BenchStage.BUTT_CUT).as("the butt is cut after the cure").isGreaterThan(BenchStage.BOND);
    }

    @Test
    void reviewsSeeThePlannedSetAndAddToTheirClubs() {
        SetReview review = clubs -> clubs.stream()
                .filter(club -> club.after().work().tipTrim().equals(len("1/2 in")))
                .filter(club -> !club.label().equals("6"))
                .map(club -> new ClubFinding(club.label(), Finding.caution(Code.UNLIKE, club(club.after()))))
                .toList();
        JobPlan plan =
                JobPlanner.of(JobPlannerTest::trim).reviewedBy(review, review).plan(SET);
        assertThat(plan.club("6").findings()).extracting(Finding::code).containsExactly(Code.DONE);
        assertThat(plan.club("8").findings())
                .extracting(Finding::code)
                .containsExactly(Code.DONE, Code.UNLIKE, Code.UNLIKE);
    }

    @Test
    void aFindingForAStrangerIsNotLost() {
        SetReview review = clubs -> List.of(new ClubFinding("9", Finding.note(Code.UNLIKE)));
        JobPlanner planner = JobPlanner.of(JobPlannerTest::trim).reviewedBy(review);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> planner.plan(SET))
                .withMessage("reviews must find only in clubs of the set, was 9");
    }

    @Test
    void anOperationSaysWhetherItIsOneWay() {
        Term club = Term.of("club", "club", "7");
        Operation undone = Operation.of(BenchStage.FIT, Job.DO, club);
        Operation forGood = Operation.of(BenchStage.FIT, Job.DO_FOR_GOOD, club);
        assertThat(undone.oneWay()).isFalse();
        assertThat(undone.checkFirst(Units.INCH)).isEmpty();
        assertThat(forGood.oneWay()).isTrue();
        assertThat(forGood.text(Units.INCH)).isEqualTo("Do 7.");
        assertThat(forGood.checkFirst(Units.INCH)).isEqualTo("Look at 7.");
    }

    @Test
    void aReportMayHaveNothingToSay() {
        StepReport report = new Trimmed(len("1 in"));
        assertThat(report.headline()).isEmpty();
        assertThat(report.operations()).isEmpty();
        assertThat(report.assumptions()).isEmpty();
        assertThat(report.cautions()).isEmpty();
    }

    @Test
    void refusesBadArguments() {
        assertThatIllegalArgumentException().isThrownBy(JobPlanner::of).withMessage("steps must not be empty, was []");
        assertThatNullPointerException()
                .isThrownBy(() -> JobPlanner.of((WorkStep[]) null))
                .withMessage("steps must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> JobPlanner.of(JobPlannerTest::trim, null))
                .withMessage("steps must not hold null, but element 1 is");
        JobPlanner planner = JobPlanner.of(JobPlannerTest::trim);
        assertThatNullPointerException()
                .isThrownBy(() -> planner.reviewedBy((SetReview[]) null))
                .withMessage("reviews must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> planner.plan((ClubSet) null))
                .withMessage("set must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> planner.plan((Build) null))
                .withMessage("build must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> StepOutcome.of(Bench.club("7"), List.of(), null))
                .withMessage("report must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> StepOutcome.notTaken(null))
                .withMessage("unchanged must not be null");
        ClubPlan plan = planner.plan(Bench.club("7"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new JobPlan(List.of(plan, plan)))
                .withMessage("clubs must name each one once, but has more than one of [7]");
    }
}
