package dev.tipwright.fitcheck.set;

import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubPlan;

/**
 * A head that a spoilt shaft may still serve, and what the planner says of it.
 *
 * @param head label of the head
 * @param work the trims it starts from: those that are done, or more
 * @param plan the plan from there on
 */
public record RescueChoice(String head, Work work, ClubPlan plan) {

    /**
     * Checks the values.
     *
     * @param head label of the head
     * @param work the trims it starts from
     * @param plan the plan from there on
     */
    public RescueChoice {
        Require.label("head", head);
        Require.given("work", work);
        Require.given("plan", plan);
    }

    /**
     * Whether the club can be built.
     *
     * @return true if no finding of the plan is a stop
     */
    public boolean possible() {
        return plan.worst().filter(Severity.STOP::equals).isEmpty();
    }

    /**
     * What speaks against it.
     *
     * @return how many findings of the plan are cautions
     */
    public long cautions() {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .count();
    }
}
