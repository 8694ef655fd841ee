package dev.tipwright.core.length;

import dev.tipwright.core.internal.arg.Require;
import java.util.List;
import java.util.Optional;

/**
 * The playing lengths of a set.
 *
 * @param targets one a club, clubs distinct
 */
public record LengthPlan(List<LengthTarget> targets) {

    /**
     * Checks the values.
     *
     * @param targets one a club, clubs distinct
     */
    public LengthPlan {
        targets = Require.distinct("targets", Require.someOf("targets", targets), LengthTarget::club);
    }

    /**
     * The target of one club.
     *
     * @param club label of the club
     * @return the target, empty if the plan has none
     */
    public Optional<LengthTarget> target(String club) {
        Require.given("club", club);
        for (LengthTarget target : targets) {
            if (target.club().equals(club)) {
                return Optional.of(target);
            }
        }
        return Optional.empty();
    }

    /**
     * This one with another value in one place.
     *
     * @param targets one a club, clubs distinct
     * @return a copy that differs in that alone
     */
    public LengthPlan withTargets(List<LengthTarget> targets) {
        return new LengthPlan(targets);
    }
}
