package dev.tipwright.core.plan;

import java.util.List;

/** Looks at the clubs of a set side by side when all are planned, and finds what no club shows by itself. */
@FunctionalInterface
public interface SetReview {

    /**
     * Reviews the set.
     *
     * @param clubs the planned clubs, in the order of the set
     * @return findings, each with the club it concerns
     */
    List<ClubFinding> review(List<ClubPlan> clubs);
}
