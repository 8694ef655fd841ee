package dev.tipwright.swingweight.set;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.InertiaSolve;
import dev.tipwright.swingweight.balance.Balance;
import java.util.ArrayList;
import java.util.List;

/**
 * Other ways than swing weight to make the clubs of a set alike, and what it takes: one inertia about the butt for all of them, or an
 * even step in total mass. Which feels better is for the player to say; {@link ClubChange#reads} says what swing weights it gives.
 */
public final class SetAims {

    /** Least mass worth adding, so that rounding adds none. */
    private static final Mass SPECK = Mass.ofPicograms(1);

    private SetAims() {}

    /**
     * Brings every club to one inertia about its butt, see {@link InertiaSolve}.
     *
     * <pre>{@code
     * ClubSet set = ClubSet.of(Samples.build());
     * Inertia wanted = Balance.of(Samples.build()).inertiaAboutButt().scaledBy(0.99);
     * SetAims.equalInertia(set, wanted, 1).get(0).reached();   // = true
     * }</pre>
     *
     * @param set the clubs, seated
     * @param wanted the inertia; above zero
     * @param byLength share of the change that the length takes: 0 by head mass alone, 1 by length alone
     * @return what is to be changed, in the order of the set
     */
    public static List<ClubChange> equalInertia(ClubSet set, Inertia wanted, double byLength) {
        List<ClubChange> changes = new ArrayList<>();
        for (Build build : seated(set)) {
            InertiaSolve solve = new InertiaSolve(build, wanted, byLength);
            changes.add(new ClubChange(build, solve.after(), solve.reached()));
        }
        return changes;
    }

    /**
     * Brings the total masses of a set to an even step, by mass added at one place: the first club of the set is to weigh {@code first}, the
     * next {@code first + step}, and so on. Nothing can be taken off: a club heavier than its mark stays as it is and is not
     * reached.
     *
     * @param set the clubs in their order, seated
     * @param first what the first is to weigh; above zero, at most 10 kg
     * @param step from club to club, below zero if they get lighter; at most 1 kg either way
     * @param place where the mass goes
     * @return what is to be changed, in the order of the set
     */
    public static List<ClubChange> evenMass(ClubSet set, Mass first, Mass step, Place place) {
        Require.between("first", first, Mass.ofPicograms(1), Mass.ofGrams(10_000));
        Require.between("step", step, Mass.ofGrams(-1000), Mass.ofGrams(1000));
        Require.given("place", place);
        List<ClubChange> changes = new ArrayList<>();
        Mass mark = first;
        for (Build build : seated(set)) {
            Mass missing = mark.minus(Balance.of(build).total());
            Build after = missing.lessThan(SPECK)
                    ? build
                    : build.withWork(build.work().plus(new OtherMass("added mass", missing, place)));
            changes.add(new ClubChange(build, after, !missing.lessThan(Mass.ZERO)));
            mark = mark.plus(step);
        }
        return changes;
    }

    /**
     * The first mass of the even step that all clubs can be brought to by adding least.
     *
     * @param set the clubs in their order, seated
     * @param step from club to club; at most 1 kg either way
     * @return the least first mass that leaves no club too heavy
     */
    public static Mass leastFirst(ClubSet set, Mass step) {
        Require.between("step", step, Mass.ofGrams(-1000), Mass.ofGrams(1000));
        List<Build> builds = seated(set);
        Mass least = Balance.of(builds.get(0)).total();
        for (int i = 1; i < builds.size(); i++) {
            least = least.max(Balance.of(builds.get(i)).total().minus(step.times(i)));
        }
        return least;
    }

    /**
     * The clubs that could not be brought to what is wanted.
     *
     * @param changes of a set
     * @return a caution for each; may be empty
     */
    public static List<Finding> notReached(List<ClubChange> changes) {
        return Require.<ClubChange>list("changes", changes).stream()
                .filter(change -> !change.reached())
                .map(change -> Finding.caution(SetCode.NOT_REACHED, Term.of("club", "club", change.club())))
                .toList();
    }

    private static List<Build> seated(ClubSet set) {
        Require.given("set", set).builds().forEach(build -> SetSpread.seated("set", build));
        return set.builds();
    }
}
