package dev.tipwright.swingweight.set;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;

/**
 * What is to be changed on one club of a set, and what it then reads.
 *
 * @param before the club as it was planned, seated
 * @param after the club as it should be built, seated
 * @param reached whether that is what was wanted
 */
public record ClubChange(Build before, Build after, boolean reached) {

    /**
     * Checks the values.
     *
     * @param before the club as it was planned, seated
     * @param after the club as it should be built, seated
     * @param reached whether that is what was wanted
     */
    public ClubChange {
        SetSpread.seated("before", before);
        SetSpread.seated("after", after);
    }

    /**
     * Which club.
     *
     * @return label of its head
     */
    public String club() {
        return before.label();
    }

    /**
     * How much longer the shaft is cut.
     *
     * @return below zero if shorter
     */
    public Length longer() {
        return after.cutLength().minus(before.cutLength());
    }

    /**
     * How much heavier the club is.
     *
     * @return below zero if lighter
     */
    public Mass heavier() {
        return Balance.of(after).total().minus(Balance.of(before).total());
    }

    /**
     * What the club reads then.
     *
     * @param scale the scale
     * @return the reading
     */
    public SwingWeight reads(SwingWeightScale scale) {
        Require.given("scale", scale);
        return Balance.of(after).on(scale);
    }

    /**
     * Its inertia about the butt then.
     *
     * @return about the top of the grip
     */
    public Inertia inertia() {
        return Balance.of(after).inertiaAboutButt();
    }

    /**
     * What it weighs then.
     *
     * @return total mass
     */
    public Mass total() {
        return Balance.of(after).total();
    }
}
