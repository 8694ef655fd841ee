package dev.tipwright.swingweight.aim;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import java.util.Optional;

/**
 * The swing weights of a set, on one scale.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * SwingWeightTargets targets = new SwingWeightTargets(
 *         scale, List.of(new SwingWeightTarget("6", scale.parse("D2"), 0.5)));
 * targets.target("6").orElseThrow().wanted().points();   // = 32.0
 * targets.target("7").isPresent();                       // = false
 * }</pre>
 *
 * @param scale the scale
 * @param targets one a club, clubs distinct; may be empty
 */
public record SwingWeightTargets(SwingWeightScale scale, List<SwingWeightTarget> targets) {

    /**
     * Checks the values.
     *
     * @param scale the scale
     * @param targets one a club, clubs distinct; may be empty
     */
    public SwingWeightTargets {
        Require.given("scale", scale);
        targets = Require.distinct("targets", Require.list("targets", targets), SwingWeightTarget::club);
    }

    /**
     * The target of one club.
     *
     * @param club label of the club
     * @return the target, empty if there is none
     */
    public Optional<SwingWeightTarget> target(String club) {
        Require.given("club", club);
        for (SwingWeightTarget target : targets) {
            if (target.club().equals(club)) {
                return Optional.of(target);
            }
        }
        return Optional.empty();
    }
}
