package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins down which shafts of a blank are said to stand out and by how much: the even shaft of the plain club, uncut, centred 4 in from
 * the fulcrum, so that a gram of it is 4 / 28.3495 / 1.75 = 0.0806 points and a gram of total mass.
 */
class ShaftReviewTest {

    private static final JobPlanner PLANNER = JobPlanner.of(SwingWeightStep.towards(
                    new SwingWeightTargets(SwingWeightScale.LETTERS_AT_14_INCHES, List.of()), List.of()))
            .reviewedBy(new ShaftReview());

    /** 88.2 g against 84.1 and 84.3, mean 84.2: 4 g heavier. */
    @Test
    void aHeavyShaftStandsOut() {
        JobPlan plan = plan(84.1, 88.2, 84.3);
        assertThat(outOf(plan)).containsExactly("club 1");
        Finding finding = plan.club("club 1").findings().get(1);
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.message(Units.INCH))
                .isEqualTo(
                        "the shaft is 4.00 g heavier than the others of blank mid: 0.323 of a point only, but 4.00 g of total"
                                + " mass");
        assertThat(finding.message(Units.METRIC)).doesNotContain("{");
        assertThat(((Term.OfNumber) finding.term("p")).value()).isCloseTo(4 * 4 / 28.349523125 / 1.75, within(1e-9));
    }

    @Test
    void aLightShaftStandsOut() {
        JobPlan plan = plan(84, 80, 85);
        assertThat(outOf(plan)).containsExactly("club 1");
        assertThat(plan.club("club 1").findings().get(1).message(Units.INCH))
                .startsWith("the shaft is 4.50 g lighter than");
    }

    @Test
    void twoGramsAreNoticeableAndLessIsNot() {
        assertThat(outOf(plan(84, 84, 86))).containsExactly("club 2");
        assertThat(outOf(plan(84, 84, 82))).containsExactly("club 2");
        assertThat(outOf(plan(84, 84, 85.999))).isEmpty();
        assertThat(outOf(plan(84))).isEmpty();
    }

    /** One shaft of 100 g lifts the mean of the others past the one of 83, which is over the middle: neither side is said of it. */
    @Test
    void whatIsHeavierThanTheMiddleAndLighterThanTheMeanDoesNotStandOut() {
        assertThat(outOf(plan(80, 80, 83, 100))).containsExactly("club 3");
        // 82 is 2 g over the middle and equal to the mean of the others
        assertThat(outOf(plan(80, 80, 82, 86))).containsExactly("club 3");
    }

    /** The other blank is 20 g heavier throughout. */
    @Test
    void blanksAreNotComparedWithEachOther() {
        List<Build> builds = new ArrayList<>(clubs(84, 84, 104, 104));
        for (int i = 2; i < 4; i++) {
            Build build = builds.get(i);
            builds.set(
                    i,
                    Clubs.withShaft(
                            build,
                            build.parts()
                                    .shaft()
                                    .withBlank(build.parts().shaft().blank().withLabel("short"))));
        }
        assertThat(outOf(PLANNER.plan(new ClubSet(builds)))).isEmpty();
    }

    @Test
    void aClubThatIsNotWeighedIsPassedOver() {
        List<Build> builds = new ArrayList<>(clubs(84, 88, 84));
        builds.set(1, builds.get(1).withWork(Work.NONE));
        assertThat(outOf(PLANNER.plan(new ClubSet(builds)))).isEmpty();
    }

    @Test
    void nullIsNamed() {
        assertThatThrownBy(() -> new ShaftReview().review(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("clubs must not be null");
        assertThat(new ShaftReview().review(List.of())).isEmpty();
    }

    private static JobPlan plan(double... grams) {
        return PLANNER.plan(new ClubSet(clubs(grams)));
    }

    private static List<Build> clubs(double... grams) {
        List<Build> builds = new ArrayList<>();
        for (double mass : grams) {
            Build plain = Clubs.plain();
            Build build = Clubs.withHead(plain, plain.parts().head().withLabel("club " + builds.size()));
            builds.add(Clubs.withShaft(
                    build,
                    build.parts()
                            .shaft()
                            .withMass(ShaftMass.of(
                                    Clubs.grams(mass),
                                    build.parts().shaft().mass().balance()))));
        }
        return builds;
    }

    private static List<String> outOf(JobPlan plan) {
        return plan.clubs().stream()
                .filter(club -> club.findings().stream()
                        .anyMatch(finding -> finding.code() == SwingWeightCode.SHAFT_STANDS_OUT))
                .map(ClubPlan::label)
                .toList();
    }
}
