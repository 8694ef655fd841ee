package dev.tipwright.core.match;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.codes;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.shaft;
import static dev.tipwright.core.TradeBench.trimmed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.core.trim.TrimCode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sharing out a few shafts, small enough to try every way by hand. */
class ShaftMatcherTest {

    private static final JobPlanner NOTHING = JobPlanner.of(build -> new StepOutcome(build, List.of(), List.of()));

    /** Squared grams between the shaft and 80 g for club 6, 82 g for 7, 84 g for 8. */
    private static final ClubCost GRAMS_OFF = plan -> {
        double wanted = 68 + 2 * Double.parseDouble(plan.label());
        double off = plan.after().parts().shaft().mass().mass().grams() - wanted;
        return OptionalDouble.of(off * off);
    };

    private static Shaft weighing(String label, double grams) {
        return shaft(label, "mid").withMass(ShaftMass.of(Mass.ofGrams(grams), in("20")));
    }

    private static Build with(String head, String shaft, double grams) {
        Build build = club(head, shaft, "mid");
        return build.withParts(build.parts().withShaft(weighing(shaft, grams)));
    }

    private static final ClubSet SET = ClubSet.of(with("6", "A", 84), with("7", "B", 80), with("8", "C", 82));

    private static List<String> taken(ShaftMatch match) {
        return match.set().builds().stream()
                .map(build -> build.label() + build.parts().shaft().label())
                .toList();
    }

    /** As it came: 16 + 4 + 4 = 24; each on its wanted mass: 0. */
    @Test
    void findsTheBestWay() {
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(SET);
        assertThat(taken(match)).containsExactly("6B", "7C", "8A");
        assertThat(match.totalBefore()).hasValue(24);
        assertThat(match.worstBefore()).hasValue(16);
        assertThat(match.totalAfter()).hasValue(0);
        assertThat(match.worstAfter()).hasValue(0);
        assertThat(match.left()).isEmpty();
        assertThat(codes(match.findings())).containsExactly("BETTER");
        assertThat(match.findings().get(0).message(Units.INCH))
                .isEqualTo(
                        "3 of the heads take another shaft: the cost of the set falls from 24.000 to 0.000, of its worst club"
                                + " from 16.000 to 0.000");
        assertThat(match.pairs()).contains(new MatchedPair("6", "A", OptionalDouble.of(16), "B", OptionalDouble.of(0)));
        assertThat(match.pairs()).allMatch(MatchedPair::changed);
    }

    @Test
    void theOrderOfClubsAndShaftsMakesNoDifference() {
        List<Shaft> stock = new ArrayList<>(
                List.of(weighing("A", 84), weighing("B", 80), weighing("C", 82), weighing("D", 82), weighing("E", 79)));
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(SET, stock);
        Collections.reverse(stock);
        ClubSet turned = ClubSet.of(
                SET.builds().get(2), SET.builds().get(0), SET.builds().get(1));
        ShaftMatch other = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(turned, stock);
        assertThat(other.pairs()).isEqualTo(match.pairs());
        assertThat(other.left()).isEqualTo(match.left());
        assertThat(other.findings()).isEqualTo(match.findings());
        assertThat(taken(other)).containsExactly("8A", "6B", "7C");
    }

    /** C and D weigh the same: the first by label is taken. */
    @Test
    void tiesGoByLabel() {
        List<Shaft> stock = List.of(weighing("D", 82), weighing("C", 82), weighing("B", 80), weighing("A", 84));
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(SET, stock);
        assertThat(taken(match)).contains("7C");
        assertThat(match.left()).extracting(Shaft::label).containsExactly("D");
    }

    @Test
    void whatIsAlreadyBestStays() {
        ClubSet best = ClubSet.of(with("6", "A", 80), with("7", "B", 82));
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(best);
        assertThat(match.set()).isEqualTo(best);
        assertThat(codes(match.findings())).containsExactly("AS_IT_WAS");
    }

    @Test
    void theWorstClubCanCountAlone() {
        double[][] costs = {{0, 5}, {6, 10}};
        ClubCost table = plan -> OptionalDouble.of(costs[plan.label().equals("6") ? 0 : 1][
                plan.after().parts().shaft().label().equals("A") ? 0 : 1]);
        ClubSet two = ClubSet.of(with("6", "A", 80), with("7", "B", 80));
        // 0 + 10 = 10 and 5 + 6 = 11: the sum prefers the first way, the worst club the second.
        assertThat(taken(ShaftMatcher.by(NOTHING, table).match(two))).containsExactly("6A", "7B");
        assertThat(taken(ShaftMatcher.by(NOTHING, table)
                        .withAim(MatchAim.LEAST_WORST)
                        .match(two)))
                .containsExactly("6B", "7A");
    }

    @Test
    void aForbiddenPairIsNotMade() {
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF)
                .withForbidden(List.of(new ForbiddenPair("6", "B"), new ForbiddenPair("nobody", "A")))
                .match(SET);
        // Left are 6A or 6C: 6C 7B 8A costs 4 + 4 + 0, 6A 7B 8C 16 + 4 + 4, 6A 7C 8B 16 + 0 + 16, 6C 7A 8B 4 + 4 + 16.
        assertThat(taken(match)).containsExactly("6C", "7B", "8A");
        assertThat(match.totalAfter()).hasValue(8);
    }

    @Test
    void aPairThatCameForbiddenIsMended() {
        ClubSet two = ClubSet.of(with("6", "A", 80), with("7", "B", 82));
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF)
                .withForbidden(List.of(new ForbiddenPair("6", "A")))
                .match(two);
        assertThat(taken(match)).containsExactly("6B", "7A");
        assertThat(match.totalBefore()).isEmpty();
        assertThat(match.worstBefore()).isEmpty();
        assertThat(codes(match.findings())).containsExactly("MENDED");
    }

    @Test
    void whatCannotBeSharedOutStaysAndSaysWhy() {
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF)
                .withForbidden(List.of(
                        new ForbiddenPair("6", "B"), new ForbiddenPair("6", "C"),
                        new ForbiddenPair("7", "B"), new ForbiddenPair("7", "C")))
                .match(SET);
        assertThat(match.set()).isEqualTo(SET);
        assertThat(match.findings()).extracting(Finding::severity).containsExactly(Severity.STOP);
        assertThat(match.findings().get(0).message(Units.INCH))
                .startsWith("no shaft is left for head 7: head 6, 7 can be built with shaft A only");
        assertThat(match.totalAfter()).isEmpty();
        ShaftMatch none =
                ShaftMatcher.by(NOTHING, plan -> OptionalDouble.empty()).match(SET);
        assertThat(none.findings().get(0).message(Units.INCH))
                .startsWith("no shaft is left for head 6, 7, 8: head 6, 7, 8 can be built with no shaft only");
    }

    @Test
    void manyHeadsAreCountedAndNotNamed() {
        List<Build> builds = new ArrayList<>();
        for (int i = 10; i < 40; i++) {
            builds.add(with("head number " + i, "shaft " + i, 80));
        }
        ShaftMatch none =
                ShaftMatcher.by(NOTHING, plan -> OptionalDouble.empty()).match(new ClubSet(builds));
        assertThat(none.findings().get(0).message(Units.INCH)).startsWith("no shaft is left for 30 of the heads:");
    }

    /** The chart knows 6 on mid and 9 on short; a stop that only the wrong blank brings keeps the shaft away. */
    @Test
    void theChartKeepsEachHeadOnItsBlank() {
        TrimChart chart = new TrimChart(
                List.of(new TrimChart.Row("6", "mid", in("1/2")), new TrimChart.Row("9", "short", in("1/2"))), in("1"));
        JobPlanner planner = JobPlanner.of(TipTrimStep.by(chart, in("1/16")));
        ClubCost swapped =
                plan -> OptionalDouble.of(plan.after().parts().shaft().label().startsWith(plan.label()) ? 1 : 0);
        ClubSet set = ClubSet.of(club("6", "6mid", "mid"), club("9", "9short", "short"));
        assertThat(taken(ShaftMatcher.by(planner, swapped).match(set))).containsExactly("66mid", "99short");
        assertThat(ForbiddenPair.acrossBlanks(
                        set,
                        set.builds().stream()
                                .map(build -> build.parts().shaft())
                                .toList()))
                .containsExactly(new ForbiddenPair("6", "9short"), new ForbiddenPair("9", "6mid"));
    }

    /** A head that is stopped with every shaft is stopped by itself, and still takes the best of them. */
    @Test
    void aStopOfTheHeadRulesOutNoShaft() {
        WorkStep stops =
                build -> StepOutcome.notTaken(build, Finding.stop(TrimCode.CANNOT_TRIM, Term.of("T", "trim", in("1"))));
        assertThat(taken(ShaftMatcher.by(JobPlanner.of(stops), GRAMS_OFF).match(SET)))
                .containsExactly("6B", "7C", "8A");
    }

    @Test
    void saysHowFarItHasCome() {
        List<String> heard = new ArrayList<>();
        ShaftMatcher.by(NOTHING, GRAMS_OFF)
                .match(
                        SET,
                        SET.builds().stream()
                                .map(build -> build.parts().shaft())
                                .toList(),
                        (done, of) -> heard.add(done + "/" + of));
        assertThat(heard).containsExactly("1/3", "2/3", "3/3");
    }

    @Test
    void aCostMayBeBelowZeroButMustBeANumber() {
        ClubCost below = plan -> OptionalDouble.of(-GRAMS_OFF.of(plan).getAsDouble());
        assertThat(ShaftMatcher.by(NOTHING, below).match(SET).totalAfter().getAsDouble())
                .isCloseTo(-32, within(1e-12));
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> ShaftMatcher.by(NOTHING, plan -> OptionalDouble.of(bad))
                            .match(SET))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("cost must be finite");
        }
        assertThatThrownBy(() -> ShaftMatcher.by(NOTHING, plan -> OptionalDouble.of(1e308))
                        .match(SET))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void onlyWholeShaftsAreSharedOutEachOnce() {
        ShaftMatcher matcher = ShaftMatcher.by(NOTHING, GRAMS_OFF);
        assertThatThrownBy(() -> matcher.match(ClubSet.of(trimmed(club("6", "A", "mid"), "1", "0"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not touched");
        assertThatThrownBy(() -> matcher.match(ClubSet.of(club("6", "A", "mid"), club("7", "A", "mid"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("set must name each one once");
        assertThatThrownBy(() -> matcher.match(SET, List.of(weighing("A", 84))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shafts must hold the shaft of every club, was without B");
    }

    private static List<String> said(List<ClubFinding> findings) {
        return findings.stream()
                .map(found -> found.label() + " " + found.finding().code())
                .toList();
    }

    /** Each changed head says so, and the first of those that are planned says what it does to the set. */
    @Test
    void aPlanOfTheSetSaysWhoTakesAnother() {
        ShaftMatch match = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(SET);
        List<ClubPlan> clubs = NOTHING.plan(match.set()).clubs();
        List<ClubFinding> found = match.review(clubs);
        assertThat(said(found)).containsExactly("6 TAKES_ANOTHER", "7 TAKES_ANOTHER", "8 TAKES_ANOTHER", "6 BETTER");
        assertThat(found.get(0).finding().message(Units.INCH))
                .isEqualTo("takes shaft B; shaft A, which it came with, goes elsewhere");
        assertThat(said(match.review(clubs.subList(1, 3))))
                .containsExactly("7 TAKES_ANOTHER", "8 TAKES_ANOTHER", "7 BETTER");
        assertThat(match.review(List.of())).isEmpty();
        ClubSet best = ClubSet.of(with("6", "A", 80), with("7", "B", 82));
        ShaftMatch same = ShaftMatcher.by(NOTHING, GRAMS_OFF).match(best);
        assertThat(said(same.review(NOTHING.plan(best).clubs()))).containsExactly("6 AS_IT_WAS");
    }

    /** Shaft B and no other brings a caution: it is still the best for club 6. */
    @Test
    void aCautionRulesOutNoShaft() {
        WorkStep warns = build -> new StepOutcome(
                build,
                build.parts().shaft().label().equals("B")
                        ? List.of(Finding.caution(TrimCode.CANNOT_TRIM, Term.of("T", "trim", in("1"))))
                        : List.of(),
                List.of());
        assertThat(taken(ShaftMatcher.by(JobPlanner.of(warns), GRAMS_OFF).match(SET)))
                .containsExactly("6B", "7C", "8A");
    }

    @Test
    void whereNothingCanBeSharedOutTheSparesAreLeft() {
        List<Shaft> stock = List.of(weighing("A", 84), weighing("B", 80), weighing("C", 82), weighing("D", 82));
        ShaftMatch none =
                ShaftMatcher.by(NOTHING, plan -> OptionalDouble.empty()).match(SET, stock);
        assertThat(none.left()).extracting(Shaft::label).containsExactly("D");
    }

    @Test
    void aThousandAndTwentyFourShaftsAreTheMost() {
        ClubSet one = ClubSet.of(with("6", "shaft 0", 84));
        List<Shaft> most = IntStream.range(0, 1024)
                .mapToObj(i -> weighing("shaft " + i, i == 700 ? 80 : 84))
                .toList();
        assertThat(taken(ShaftMatcher.by(NOTHING, GRAMS_OFF).match(one, most))).containsExactly("6shaft 700");
        List<Shaft> more = new ArrayList<>(most);
        more.add(weighing("shaft 1024", 84));
        assertThatThrownBy(() -> ShaftMatcher.by(NOTHING, GRAMS_OFF).match(one, more))
                .hasMessage("shafts must be at most 1024, was 1025");
        ClubSet many = new ClubSet(IntStream.range(0, 1025)
                .mapToObj(i -> with("club " + i, "shaft " + i, 84))
                .toList());
        assertThatThrownBy(() -> ShaftMatcher.by(NOTHING, GRAMS_OFF).match(many))
                .hasMessage("set must be of at most 1024 clubs, was 1025");
    }
}
