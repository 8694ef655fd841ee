package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import java.util.Arrays;
import java.util.List;

/**
 * The clubs of one job, in the order of the set; each is called by its head, and no two alike.
 *
 * @param builds one or more, labels distinct
 */
public record ClubSet(List<Build> builds) {

    /**
     * Checks the values.
     *
     * @param builds one or more, labels distinct
     */
    public ClubSet {
        builds = Require.distinct("builds", Require.someOf("builds", builds), Build::label);
    }

    /**
     * The clubs of one job.
     *
     * @param builds one or more, labels distinct
     * @return the set
     */
    public static ClubSet of(Build... builds) {
        return new ClubSet(Arrays.asList(Require.given("builds", builds)));
    }

    /**
     * One club.
     *
     * @param label of its head
     * @return the club
     * @throws IllegalArgumentException if there is none of that label
     */
    public Build club(String label) {
        Require.given("label", label);
        for (Build build : builds) {
            if (build.label().equals(label)) {
                return build;
            }
        }
        throw new IllegalArgumentException("label must be one of the clubs of the set, was \"" + label + "\"");
    }

    /**
     * This one with another value in one place.
     *
     * @param builds one or more, labels distinct
     * @return a copy that differs in that alone
     */
    public ClubSet withBuilds(List<Build> builds) {
        return new ClubSet(builds);
    }
}
