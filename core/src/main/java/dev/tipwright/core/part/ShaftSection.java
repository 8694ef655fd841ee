package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * The cross section of a raw shaft: outside, butt, wall and finish.
 *
 * @param outside diameter over the finish, from the raw tip (0) as far up as it was read
 * @param butt butt diameter; above zero, at most 100 mm
 * @param wall its wall
 * @param finish its finish; whether it leaves some of the tip is for the fit to say
 */
public record ShaftSection(DiameterProfile outside, Length butt, Reading<Wall> wall, Reading<Finish> finish) {

    /**
     * Checks the values.
     *
     * @param outside diameter over the finish, from the raw tip (0) as far up as it was read
     * @param butt butt diameter; above zero, at most 100 mm
     * @param wall its wall
     * @param finish its finish; whether it leaves some of the tip is for the fit to say
     */
    public ShaftSection {
        Require.given("outside", outside);
        Require.that(outside.from().equals(Length.ZERO), "outside", "must start at the raw tip, 0", outside.from());
        Require.someUpTo("butt", butt, 100);
        Require.given("wall", wall);
        Require.given("finish", finish);
    }

    /**
     * This one with another value in one place.
     *
     * @param outside diameter over the finish, from the raw tip (0) as far up as it was read
     * @return a copy that differs in that alone
     */
    public ShaftSection withOutside(DiameterProfile outside) {
        return new ShaftSection(outside, butt, wall, finish);
    }

    /**
     * This one with another value in one place.
     *
     * @param butt butt diameter; above zero, at most 100 mm
     * @return a copy that differs in that alone
     */
    public ShaftSection withButt(Length butt) {
        return new ShaftSection(outside, butt, wall, finish);
    }

    /**
     * This one with another value in one place.
     *
     * @param wall its wall
     * @return a copy that differs in that alone
     */
    public ShaftSection withWall(Reading<Wall> wall) {
        return new ShaftSection(outside, butt, wall, finish);
    }

    /**
     * This one with another value in one place.
     *
     * @param finish its finish
     * @return a copy that differs in that alone
     */
    public ShaftSection withFinish(Reading<Finish> finish) {
        return new ShaftSection(outside, butt, wall, finish);
    }
}
