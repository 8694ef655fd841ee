package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.section;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Pins what is said of a limit that is kept by less than its uncertainty, and of a contact that jumps. The wall left of the plain
 * club is .07925 in, 2.01295 mm; with the wall known to .01 mm, twice that is .02 mm.
 */
class FitDoubtTest {

    private static final Length LEFT = mil(79.25);

    @Test
    void aLimitKeptByLittle() {
        assertThat(wall(micrometres(0))).hasSize(1);
        List<Finding> found = wall(micrometres(19));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).code()).isEqualTo(FitCode.LIMIT_KEPT_BY_LITTLE);
        assertThat(found.get(0).severity()).isEqualTo(Severity.NOTE);
        for (Units units : Units.values()) {
            assertThat(found.get(0).message(units)).isNotBlank().doesNotContain("{", "}");
        }
    }

    @Test
    void aLimitKeptByMoreOrNotAtAllIsNoDoubt() {
        assertThat(wall(micrometres(21))).isEmpty();
        assertThat(wall(micrometres(-1))).isEmpty();
    }

    @Test
    void withoutALimitThereIsNoDoubtOfIt() {
        assertThat(doubts(Clubs.plain(), FitTarget.of(mil(4)), BenchInput.WALL)).isEmpty();
    }

    /** A tip just as wide as the lower part of a stepped bore goes in all the way or stops at the step. */
    @Test
    void aContactThatJumps() {
        Build build = Clubs.club("7", bore(0, 370, 500, 370, 500, 360, 1250, 360), section(cylinder(360), 0, 90));
        List<Finding> found = doubts(build, FitTarget.of(mil(4)), BenchInput.TIP_DIAMETER);
        assertThat(found).hasSize(2);
        for (Finding finding : found) {
            assertThat(finding.code()).isEqualTo(FitCode.FIRST_ORDER_MISLEADS);
            for (Units units : Units.values()) {
                assertThat(finding.message(units)).isNotBlank().doesNotContain("{", "}");
            }
        }
        assertThat(found.get(0).term("low").text(Units.INCH)).isEqualTo("0.5000 in");
        assertThat(found.get(0).term("high").text(Units.INCH)).isEqualTo("1.2500 in");
    }

    /** In a straight taper it moves by as much as the tip does, over the rate. */
    @Test
    void aContactThatMovesEvenly() {
        Build build = Clubs.withSection(section(cylinder(359), 0, 90));
        assertThat(doubts(build, FitTarget.of(mil(4)), BenchInput.TIP_DIAMETER)).isEmpty();
    }

    /** A thousandth of an inch under the finish, known to less than that: a nudged club is no club. */
    @Test
    void aClubThatCannotBeNudgedIsLeftToItsOwnFindings() {
        Build build = Clubs.withSection(section(cylinder(373.5), 186.6, 190));
        assertThat(doubts(build, Clubs.TARGET, BenchInput.FINISH, 0.5)).isEmpty();
    }

    /** A bench of everything knows a contact or a clearance no better and no worse than one of what is looked at. */
    @Test
    void nothingElseMovesAContactOrAClearance() {
        JobPlan plan = JobPlanner.of(TipFitStep.with(Clubs.TARGET))
                .plan(ClubSet.of(Clubs.withSection(section(cylinder(361), 2, 90))));
        BenchUncertainty all = BenchUncertainty.of(
                BenchUncertainty.Tool.of(
                        Instrument.ofStandard("anything", "mm", 0.01, 0),
                        Arrays.stream(BenchInput.values())
                                .filter(use -> use.unit().equals("mm"))
                                .toArray(BenchInput[]::new)),
                BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.MASS));
        int compared = 0;
        for (Measure measure : plan.clubs().get(0).report(TipFit.class).measures()) {
            Optional<List<BenchInput>> uses = switch (measure.symbol()) {
                case "i0", "i1" -> Optional.of(FitDoubt.OF_CONTACT);
                case "c" -> Optional.of(FitDoubt.OF_CLEARANCE);
                default -> Optional.empty();
            };
            if (uses.isPresent()) {
                Build build = plan.clubs().get(0).after();
                double some = measure.budget(
                                build,
                                all.only(uses.get().toArray(BenchInput[]::new)).orElseThrow())
                        .orElseThrow()
                        .standardUncertainty();
                double every = measure.budget(build, all).orElseThrow().standardUncertainty();
                assertThat(every).as(measure.meaning()).isPositive().isEqualTo(some);
                compared++;
            }
        }
        assertThat(compared).isEqualTo(3);
    }

    private static Length micrometres(double under) {
        return LEFT.minus(Length.ofMicrometres(under));
    }

    private static List<Finding> wall(Length limit) {
        FitTarget target = FitTarget.of(mil(4)).withLeastWall(Reading.measured(limit));
        return doubts(Clubs.plain(), target, BenchInput.WALL);
    }

    private static List<Finding> doubts(Build build, FitTarget target, BenchInput input) {
        return doubts(build, target, input, 0.01);
    }

    private static List<Finding> doubts(Build build, FitTarget target, BenchInput input, double uncertainty) {
        BenchUncertainty bench = BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("micrometer", "mm", uncertainty, 0), input));
        return new FitDoubt(bench, target)
                        .review(JobPlanner.of(TipFitStep.with(target))
                                .plan(ClubSet.of(build))
                                .clubs())
                        .stream()
                        .map(ClubFinding::finding)
                        .toList();
    }
}
