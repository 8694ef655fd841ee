package dev.tipwright.core.plan;

import dev.tipwright.core.internal.arg.Require;
import java.util.List;

/**
 * The plan of a whole set.
 *
 * @param clubs one plan a club, in the order of the set
 */
public record JobPlan(List<ClubPlan> clubs) {

    /**
     * Checks the values.
     *
     * @param clubs one plan a club, in the order of the set
     */
    public JobPlan {
        clubs = Require.distinct("clubs", Require.someOf("clubs", clubs), ClubPlan::label);
    }

    /**
     * The plan of one club.
     *
     * @param label of the club
     * @return its plan
     * @throws IllegalArgumentException if there is none of that label
     */
    public ClubPlan club(String label) {
        Require.given("label", label);
        for (ClubPlan club : clubs) {
            if (club.label().equals(label)) {
                return club;
            }
        }
        throw new IllegalArgumentException("label must be one of the clubs of the plan, was \"" + label + "\"");
    }
}
