package dev.tipwright.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.TradeBench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of planning a set: clubs that want whole sixteenths off the tip and whole quarters of length. */
class JobPlannerLawProperties {

    private static ClubSet set(int clubs) {
        List<Build> builds = new ArrayList<>();
        for (int i = 0; i < clubs; i++) {
            builds.add(TradeBench.club("" + i, "S" + i, "mid"));
        }
        return new ClubSet(builds);
    }

    private static JobPlanner planner(List<Integer> sixteenths, List<Integer> quarters) {
        List<TrimChart.Row> rows = new ArrayList<>();
        List<LengthTarget> targets = new ArrayList<>();
        for (int i = 0; i < sixteenths.size(); i++) {
            rows.add(new TrimChart.Row("" + i, "mid", Length.ofInches(sixteenths.get(i) / 16.0)));
            targets.add(
                    new LengthTarget("" + i, Length.ofInches(35 + quarters.get(i) / 4.0), LengthMeasure.ALONG_AXIS));
        }
        return JobPlanner.of(
                TipTrimStep.by(new TrimChart(rows, TradeBench.in("1")), TradeBench.in("1/16")),
                CutToLengthStep.to(new LengthPlan(targets), TradeBench.in("1/16")));
    }

    /** Neither the order of a set nor who else is in it changes the plan of a club. */
    @Property(tries = 300)
    void aClubIsPlannedForItself(
            @ForAll @Size(4) List<@IntRange(min = 0, max = 60) Integer> sixteenths,
            @ForAll @Size(4) List<@IntRange(min = 0, max = 24) Integer> quarters,
            @ForAll long seed) {
        JobPlanner planner = planner(sixteenths, quarters);
        List<Build> shuffled = new ArrayList<>(set(4).builds());
        Collections.shuffle(shuffled, new Random(seed));
        JobPlan plan = planner.plan(new ClubSet(shuffled));
        for (Build build : set(4).builds()) {
            ClubPlan alone = planner.plan(build);
            assertThat(plan.club(build.label()).after()).isEqualTo(alone.after());
            assertThat(plan.club(build.label()).findings()).isEqualTo(alone.findings());
        }
    }

    /** Trims and the cut shaft make up the raw one, and planning what is planned already changes nothing. */
    @Property(tries = 300)
    void nothingIsLostAndPlanningAgainChangesNothing(
            @ForAll @Size(1) List<@IntRange(min = 0, max = 60) Integer> sixteenths,
            @ForAll @Size(1) List<@IntRange(min = 0, max = 24) Integer> quarters) {
        JobPlanner planner = planner(sixteenths, quarters);
        Build after = planner.plan(set(1).builds().get(0)).after();
        assertThat(after.work()
                        .tipTrim()
                        .plus(after.cutLength())
                        .plus(after.work().buttTrim()))
                .isEqualTo(after.parts().shaft().length());
        assertThat(planner.plan(after).after()).isEqualTo(after);
    }
}
