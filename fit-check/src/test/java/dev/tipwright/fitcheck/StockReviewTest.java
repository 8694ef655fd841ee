package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.section;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins when a tip has noticeably more to come off than the middle of its blank, and whether that is finish or structure. The bore is
 * .355 at its bottom and .004 is wanted: a tip of .373 has 22 to come off.
 */
class StockReviewTest {

    /** 22, 22 and 27 thousandths, five more, all of it finish. */
    @Test
    void moreFinish() {
        List<ClubFinding> found = review(club("a", 373, 2.5), club("b", 378, 5), club("c", 373, 2.5));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).label()).isEqualTo("b");
        assertThat(found.get(0).finding().code()).isEqualTo(FitCode.MORE_FINISH_THAN_SET);
        assertThat(found.get(0).finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(found.get(0).finding().message(Units.INCH))
                .isEqualTo("0.0050 in more to take off than the middle of its blank, and 0.0050 in of that is finish:"
                        + " it looks alarming and is not");
    }

    /** Six more finish on a tip one thinner under it: five more in all, and no more than five of it finish. */
    @Test
    void finishIsNoMoreThanTheSurplus() {
        List<ClubFinding> found = review(club("a", 373, 2.5), club("b", 378, 5.5), club("c", 373, 2.5));
        assertThat(found.get(0).finding().term("xf").text(Units.INCH)).isEqualTo("0.0050 in");
    }

    @Test
    void moreStructure() {
        List<ClubFinding> found = review(club("a", 373, 2.5), club("b", 378, 2.5), club("c", 373, 2.5));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).finding().code()).isEqualTo(FitCode.MORE_STRUCTURE_THAN_SET);
        assertThat(found.get(0).finding().severity()).isEqualTo(Severity.CAUTION);
    }

    @Test
    void itSpeaksFromThreeThousandthsOn() {
        assertThat(review(club("a", 373, 2.5), club("b", 375.9, 2.5), club("c", 373, 2.5)))
                .isEmpty();
        assertThat(review(club("a", 373, 2.5), club("b", 376, 2.5), club("c", 373, 2.5)))
                .hasSize(1);
        assertThat(review(club("a", 373, 2.5), club("b", 375.9, 3.95), club("c", 373, 2.5)))
                .isEmpty();
        assertThat(review(club("a", 373, 2.5), club("b", 376, 4), club("c", 373, 2.5)))
                .hasSize(1);
    }

    /** Of two the lower is the middle, so the other may stand out; of one nothing does. */
    @Test
    void oneAndTwo() {
        assertThat(review(club("a", 378, 2.5))).isEmpty();
        assertThat(review(club("a", 378, 2.5), club("b", 373, 2.5)))
                .extracting(ClubFinding::label)
                .containsExactly("a");
    }

    @Test
    void eachIsHeldAgainstItsOwnBlank() {
        Build other = club("b", 378, 2.5);
        other = other.withParts(other.parts()
                .withShaft(other.parts()
                        .shaft()
                        .withBlank(other.parts().shaft().blank().withLabel("short"))));
        assertThat(review(club("a", 373, 2.5), other, club("c", 373, 2.5))).isEmpty();
    }

    @Test
    void aClubWithoutAFitIsLeftOut() {
        Build through = Clubs.club("x", Clubs.taper().withEnd(BoreEnd.THROUGH), section(cylinder(390), 2.5, 90.5));
        assertThat(review(club("a", 373, 2.5), through)).isEmpty();
        assertThat(review(through)).isEmpty();
        assertThat(new StockReview().review(List.of())).isEmpty();
    }

    private static List<ClubFinding> review(Build... builds) {
        List<ClubPlan> clubs = JobPlanner.of(TipFitStep.with(FitTarget.of(mil(4))))
                .plan(ClubSet.of(builds))
                .clubs();
        return new StockReview().review(clubs);
    }

    private static Build club(String label, double tip, double finish) {
        return Clubs.club(label, Clubs.taper(), section(cylinder(tip), finish, 90.5));
    }
}
