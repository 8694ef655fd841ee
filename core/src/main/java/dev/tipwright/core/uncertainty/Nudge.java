package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;

/**
 * How one measured value, or one cut, may be off: the same club with that value moved, and nothing decided anew.
 *
 * <p>What the plan decided stays as it is. A nudge of {@link dev.tipwright.core.club.Parts} changes what was measured
 * and leaves the work alone, so the cut shaft and the finished tip are those of the plan; a nudge of the work changes
 * how well it was carried out. {@link Nudges} has one ready for each input of a bench.
 */
@FunctionalInterface
public interface Nudge {

    /**
     * The club with the value moved.
     *
     * @param build the club
     * @param delta by how much, in the unit of the nudge: mm for a length, g for a mass
     * @return the club that it would be then
     */
    Build by(Build build, double delta);

    /**
     * This nudge and another, by the same amount: an error that both readings share.
     *
     * @param other another nudge in the same unit
     * @return both together
     */
    default Nudge and(Nudge other) {
        Require.given("other", other);
        return (build, delta) -> other.by(by(build, delta), delta);
    }
}
