package dev.tipwright.core.match;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.Progress;
import java.util.List;

/**
 * Shares out shafts among heads so that what the planner predicts is as near to what is wanted as it can be.
 *
 * <p>Every head is planned with every shaft that is not forbidden. A stop that a head gets with each of them is the head's own (a
 * bore too shallow for the limit) and rules out none; a stop that only some shafts give (too short, not on the chart) rules those
 * out. Among the pairs left the best way is found exactly, on a grid {@code 2^-47} as fine as the dearest pair; of ways equally good
 * it is the one that gives the head first by label the shaft first by label, and so on. The order in which clubs and shafts are given
 * makes no difference.
 *
 * <pre>{@code
 * JobPlanner planner = JobPlanner.of(TipTrimStep.by(Samples.chart(), Length.parse("1/16 in")));
 * ClubCost heavy = plan -> java.util.OptionalDouble.of(plan.after().parts().shaft().mass().mass().grams());
 * Shaft light = Samples.shaft().withLabel("M2").withMass(ShaftMass.of(Mass.ofGrams(80), Length.parse("20 in")));
 * ShaftMatch match = ShaftMatcher.by(planner, heavy).match(Samples.set(), List.of(Samples.shaft(), light));
 * match.set().club("6").parts().shaft().label();   // = M2
 * match.totalBefore().getAsDouble();               // = 84.1
 * match.totalAfter().getAsDouble();                // = 80.0
 * }</pre>
 *
 * @param planner plans a head with a shaft; its reviews are not asked
 * @param cost what a plan is worth
 * @param aim what to make least
 * @param forbidden pairs that must not be made; may be empty
 */
public record ShaftMatcher(JobPlanner planner, ClubCost cost, MatchAim aim, List<ForbiddenPair> forbidden) {

    /**
     * Checks the values.
     *
     * @param planner plans a head with a shaft; its reviews are not asked
     * @param cost what a plan is worth
     * @param aim what to make least
     * @param forbidden pairs that must not be made; may be empty
     */
    public ShaftMatcher {
        Require.given("planner", planner);
        Require.given("cost", cost);
        Require.given("aim", aim);
        forbidden = Require.list("forbidden", forbidden);
    }

    /**
     * A matcher that makes the sum of the costs least and forbids no pair.
     *
     * @param planner plans a head with a shaft
     * @param cost what a plan is worth
     * @return the matcher
     */
    public static ShaftMatcher by(JobPlanner planner, ClubCost cost) {
        return new ShaftMatcher(planner, cost, MatchAim.LEAST_TOTAL, List.of());
    }

    /**
     * This matcher with another aim.
     *
     * @param aim what to make least
     * @return a copy that differs in that alone
     */
    public ShaftMatcher withAim(MatchAim aim) {
        return new ShaftMatcher(planner, cost, aim, forbidden);
    }

    /**
     * This matcher with other pairs that must not be made.
     *
     * @param forbidden the pairs; labels that do not occur forbid nothing
     * @return a copy that differs in that alone
     */
    public ShaftMatcher withForbidden(List<ForbiddenPair> forbidden) {
        return new ShaftMatcher(planner, cost, aim, forbidden);
    }

    /**
     * Shares out the shafts that the clubs of a set come with.
     *
     * @param set clubs whose shafts and tips are not touched yet, shafts with distinct labels; at most 1024
     * @return who takes what
     */
    public ShaftMatch match(ClubSet set) {
        Require.given("set", set);
        Require.distinct("set", set.builds(), build -> build.parts().shaft().label());
        return match(
                set, set.builds().stream().map(build -> build.parts().shaft()).toList());
    }

    /**
     * Shares out shafts, of which there may be more than heads.
     *
     * @param set clubs whose shafts and tips are not touched yet; at most 1024
     * @param shafts as many as clubs or more, labels distinct, the shafts the clubs come with among them; at most 1024
     * @return who takes what
     */
    public ShaftMatch match(ClubSet set, List<Shaft> shafts) {
        return match(set, shafts, Progress.UNHEARD);
    }

    /**
     * Shares out shafts and says after each head how far the planning has come.
     *
     * @param set clubs whose shafts and tips are not touched yet; at most 1024
     * @param shafts as many as clubs or more, labels distinct, the shafts the clubs come with among them; at most 1024
     * @param progress told after each head
     * @return who takes what
     */
    public ShaftMatch match(ClubSet set, List<Shaft> shafts, Progress progress) {
        Require.given("set", set);
        for (Build build : set.builds()) {
            Require.that(
                    build.work().tipTrim().nanometres() == 0
                            && build.work().buttTrim().nanometres() == 0
                            && build.work().tip().equals(TipWork.NONE),
                    "set",
                    "must be of clubs whose shafts are not touched yet",
                    build.label());
        }
        Require.distinct("set", set.builds(), build -> build.parts().shaft().label());
        List<Shaft> stock = Require.distinct("shafts", Require.someOf("shafts", shafts), Shaft::label);
        Require.that(
                set.builds().size() <= MOST,
                "set",
                "must be of at most " + MOST + " clubs",
                set.builds().size());
        Require.that(stock.size() <= MOST, "shafts", "must be at most " + MOST, stock.size());
        for (Build build : set.builds()) {
            Require.that(
                    stock.contains(build.parts().shaft()),
                    "shafts",
                    "must hold the shaft of every club",
                    "without " + build.parts().shaft().label());
        }
        return new Sharing(this, set, stock).match(Require.given("progress", progress));
    }

    private static final int MOST = 1024;
}
