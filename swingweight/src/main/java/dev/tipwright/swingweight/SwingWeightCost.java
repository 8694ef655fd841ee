package dev.tipwright.swingweight;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.match.ClubCost;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a planned club costs by its swing weight, to share out shafts among heads: the points it reads off its target, squared, so that one
 * club far off counts for more than several that are nearly right. A club without a target, or of which nothing could be said, must
 * not be built that way.
 */
public enum SwingWeightCost implements ClubCost {
    /** As the club will read when it is finished, with the tip weight that its plan puts in. */
    FINISHED,
    /** As the club would read without a tip weight of its plan: so that as little weight as possible is needed. */
    WITHOUT_TIP_WEIGHT;

    @Override
    public OptionalDouble of(ClubPlan plan) {
        Require.given("plan", plan);
        Optional<ClubBalance> balance = plan.find(ClubBalance.class);
        Optional<SwingWeightTarget> target = balance.flatMap(ClubBalance::target);
        if (balance.isEmpty() || target.isEmpty()) {
            return OptionalDouble.empty();
        }
        SwingWeight reads =
                this == FINISHED ? balance.get().reads() : balance.get().readsBefore();
        double off = reads.over(target.get().wanted());
        return OptionalDouble.of(off * off);
    }
}
