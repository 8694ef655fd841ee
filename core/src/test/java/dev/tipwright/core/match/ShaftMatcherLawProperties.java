package dev.tipwright.core.match;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.TradeBench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of sharing out shafts: club 0 wants 70 g, club 1 wants 72 g and so on, shafts weigh whole grams. */
class ShaftMatcherLawProperties {

    private static final JobPlanner NOTHING = JobPlanner.of(build -> new StepOutcome(build, List.of(), List.of()));

    private static final ClubCost GRAMS_OFF = plan -> OptionalDouble.of(
            Math.abs(plan.after().parts().shaft().mass().mass().grams() - 70 - 2 * Double.parseDouble(plan.label())));

    private static List<Shaft> shafts(List<Integer> grams) {
        List<Shaft> shafts = new ArrayList<>();
        for (int weighs : grams) {
            Shaft shaft = TradeBench.shaft("S" + shafts.size(), "mid");
            shafts.add(shaft.withMass(shaft.mass().withMass(Mass.ofGrams(weighs))));
        }
        return shafts;
    }

    private static ClubSet clubs(int count, List<Shaft> shafts) {
        List<Build> builds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Build build = TradeBench.club("" + i, "S" + i, "mid");
            builds.add(build.withParts(build.parts().withShaft(shafts.get(i))));
        }
        return new ClubSet(builds);
    }

    private static ShaftMatch match(List<Integer> grams, MatchAim aim) {
        List<Shaft> shafts = shafts(grams);
        return ShaftMatcher.by(NOTHING, GRAMS_OFF).withAim(aim).match(clubs(3, shafts), shafts);
    }

    @Property(tries = 300)
    void itIsNeverWorseThanItWas(
            @ForAll @Size(min = 3, max = 5) List<@IntRange(min = 60, max = 90) Integer> grams, @ForAll MatchAim aim) {
        ShaftMatch match = match(grams, aim);
        boolean total = aim == MatchAim.LEAST_TOTAL;
        double before = (total ? match.totalBefore() : match.worstBefore()).orElseThrow();
        double after = (total ? match.totalAfter() : match.worstAfter()).orElseThrow();
        assertThat(after).isLessThanOrEqualTo(before);
    }

    @Property(tries = 300)
    void oneMoreShaftInTheBoxNeverMakesItWorse(
            @ForAll @Size(3) List<@IntRange(min = 60, max = 90) Integer> grams,
            @ForAll @IntRange(min = 60, max = 90) int another) {
        List<Integer> more = new ArrayList<>(grams);
        more.add(another);
        assertThat(match(more, MatchAim.LEAST_TOTAL).totalAfter().orElseThrow())
                .isLessThanOrEqualTo(
                        match(grams, MatchAim.LEAST_TOTAL).totalAfter().orElseThrow());
        assertThat(match(more, MatchAim.LEAST_WORST).worstAfter().orElseThrow())
                .isLessThanOrEqualTo(
                        match(grams, MatchAim.LEAST_WORST).worstAfter().orElseThrow());
    }

    @Property(tries = 300)
    void theLeastWorstIsNoWorseAndTheLeastTotalNoMore(
            @ForAll @Size(min = 3, max = 5) List<@IntRange(min = 60, max = 90) Integer> grams) {
        ShaftMatch total = match(grams, MatchAim.LEAST_TOTAL);
        ShaftMatch worst = match(grams, MatchAim.LEAST_WORST);
        assertThat(total.totalAfter().orElseThrow())
                .isLessThanOrEqualTo(worst.totalAfter().orElseThrow());
        assertThat(worst.worstAfter().orElseThrow())
                .isLessThanOrEqualTo(total.worstAfter().orElseThrow());
    }
}
