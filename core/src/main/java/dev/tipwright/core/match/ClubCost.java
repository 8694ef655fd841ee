package dev.tipwright.core.match;

import dev.tipwright.core.plan.ClubPlan;
import java.util.OptionalDouble;

/**
 * What it costs to build a club as planned: how far what the planner predicts is from what is wanted, in any unit so long as it is the
 * same for every club. A pure function of the plan.
 */
@FunctionalInterface
public interface ClubCost {

    /**
     * The cost of a planned club.
     *
     * @param plan of the club with one of the shafts
     * @return a finite number, less being better; empty if this shaft must not go to this head
     */
    OptionalDouble of(ClubPlan plan);
}
