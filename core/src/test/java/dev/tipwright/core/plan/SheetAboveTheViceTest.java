package dev.tipwright.core.plan;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.grip;
import static dev.tipwright.core.TradeBench.head;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.shaft;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.grip.GripStep;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The sheet above the vice. */
class SheetAboveTheViceTest {

    private static JobPlanner planner(List<String> clubs) {
        List<LengthTarget> lengths = clubs.stream()
                .map(club -> new LengthTarget(club, in("37"), LengthMeasure.ALONG_AXIS))
                .toList();
        return JobPlanner.of(
                TipTrimStep.by(TrimChart.stepped("mid", clubs, in("1/2"), in("1/4"), in("1")), in("1/16")),
                CutToLengthStep.to(new LengthPlan(lengths), in("1/16")),
                GripStep.over(TapeLayers.NONE));
    }

    private static JobPlan plan(String... clubs) {
        List<Build> builds = new ArrayList<>();
        for (String club : clubs) {
            builds.add(club(club, "shaft of " + club, "mid"));
        }
        return planner(List.of(clubs)).plan(new ClubSet(builds));
    }

    @Test
    void saysTheOrderOfCuttingAndWhatASlipLeaves() {
        String page = unwrapped(PlanText.plain(plan("8", "7", "6"), Units.INCH));
        assertThat(page)
                .contains("THE ORDER OF CUTTING TIPS")
                .contains(
                        "1. shaft shaft of 8 (blank mid) for club 8: 0.500 in (1/2). Cut too far, it could still become 7 or 6.")
                .contains("Cut too far, it is lost to this set.");
        assertThat(PlanText.plain(plan("8"), Units.INCH)).doesNotContain("ORDER OF CUTTING");
    }

    @Test
    void marksBeforeItCutsAndCutsTheButtLast() {
        String page = PlanText.plain(plan("7"), Units.INCH);
        assertThat(page.indexOf("1.  Measure the raw shaft")).isPositive();
        assertThat(page.indexOf("2.  Mark 0.500 in (1/2) from the raw tip and cut"))
                .isGreaterThan(page.indexOf("1.  Measure the raw shaft"));
        assertThat(page.indexOf("3.  Mark ")).isGreaterThan(page.indexOf("2.  Mark "));
    }

    @Test
    void cautionsComeOnceAndAssumptionsWithTheirSources() {
        String page = unwrapped(PlanText.plain(plan("6", "7"), Units.INCH));
        assertThat(page.split("Composite dust harms", -1)).hasSize(2);
        assertThat(page)
                .contains("6 butt under the grip: 0.5")
                .contains("(assumption: straight from the highest station read to the raw butt)");
    }

    @Test
    void everyKindOfSourceIsNamed() {
        List<Source> sources = List.of(
                Source.published("A handbook", "page 7"),
                Source.commonPractice("a fact"),
                new Source(Source.Kind.FROM_MEMORY, "A patent", ""),
                Source.given("the maker"));
        StepReport report = new StepReport() {
            @Override
            public Working working() {
                return new Working("none", List.of());
            }

            @Override
            public List<Assumption> assumptions() {
                return sources.stream()
                        .map(source -> new Assumption(Term.of("x", "a length", in("1")), source))
                        .toList();
            }
        };
        JobPlan plan = JobPlanner.of(build -> StepOutcome.of(build, List.of(), report))
                .plan(ClubSet.of(club("6", "M1", "mid")));
        assertThat(PlanText.plain(plan, Units.METRIC))
                .contains("(published: A handbook, page 7)")
                .contains("(common practice, no source: a fact)")
                .contains("(from memory: A patent)")
                .contains("(given by the maker)");
    }

    @Test
    void fitsTheWallWhateverTheLabels() {
        String longest = "M".repeat(80);
        Parts parts = new Parts(
                head("ß".repeat(80), ClubKind.HYBRID, BoreEnd.FLAT), shaft(longest, "mid"), grip().withLabel(longest));
        List<Build> builds = new ArrayList<>(List.of(Build.of(parts)));
        for (int i = 0; i < 9; i++) {
            builds.add(club(i + " and a label of some forty letters more", "" + i, "mid"));
        }
        List<String> clubs = builds.stream().map(Build::label).toList();
        JobPlan plan = planner(clubs).plan(new ClubSet(builds));
        for (Units units : Units.values()) {
            assertThat(PlanText.plain(plan, units).lines()).allMatch(line -> line.length() <= 100);
        }
    }

    /** The same words in the same order; only what makes it a table, a list or a heading differs. */
    @Test
    void markdownSaysTheSame() {
        JobPlan plan = plan("6", "7");
        for (Units units : Units.values()) {
            assertThat(words(PlanText.markdown(plan, units))).isEqualTo(words(PlanText.plain(plan, units)));
        }
    }

    private static String unwrapped(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private static String words(String page) {
        return page.replaceAll("[-=]{3,}:?", " ")
                .replaceAll("(?m)^ *- +", " ")
                .replaceAll("[#*|\\\\]", " ")
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT)
                .strip();
    }

    @Test
    void saysHowFarThePlanningHasCome() {
        List<String> heard = new ArrayList<>();
        ClubSet set = ClubSet.of(club("6", "M1", "mid"), club("7", "M2", "mid"));
        JobPlanner planner = planner(List.of("6", "7"));
        JobPlan plan = planner.plan(set, (done, of) -> heard.add(done + " of " + of));
        assertThat(heard).containsExactly("1 of 2", "2 of 2");
        assertThat(plan).isEqualTo(planner.plan(set));
    }
}
