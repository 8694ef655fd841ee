package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;

/**
 * A tip as it stands: its outside, its finish and its wall.
 *
 * @param outside diameter over the finish, up from the end of the tip
 * @param finish the finish on it
 * @param wall its wall, finish included
 * @param trimmed how much was cut off below it, zero or more: finish and wall are counted from the raw tip
 */
public record TipSection(DiameterProfile outside, Finish finish, Reading<Wall> wall, Length trimmed) {

    /** Far more than what is lost in working with doubles, nm. */
    private static final long CLEAR = 1000;

    /**
     * Checks the values.
     *
     * @param outside diameter over the finish, up from the end of the tip
     * @param finish the finish on it
     * @param wall its wall, finish included
     * @param trimmed how much was cut off below it, zero or more
     */
    public TipSection {
        Require.given("outside", outside);
        Require.given("finish", finish);
        Require.given("wall", wall);
        Require.notNegative("trimmed", trimmed);
    }

    /**
     * An untrimmed tip of unknown wall.
     *
     * @param outside diameter over the finish, up from the end of the tip
     * @param finish the finish on it
     * @return the section
     */
    public static TipSection of(DiameterProfile outside, Finish finish) {
        return new TipSection(outside, finish, Reading.unknown("the shaft's maker, or an offcut"), Length.ZERO);
    }

    /**
     * The trimmed tip of a build; a finish that is not known counts as none.
     *
     * @param build parts and work
     * @return the section
     * @throws IllegalArgumentException if more is trimmed than was read of the outside
     */
    public static TipSection of(Build build) {
        Require.given("build", build);
        ShaftSection section = build.parts().shaft().section();
        return new TipSection(
                build.trimmedTip(),
                section.finish().orElse(Finish.NONE),
                section.wall(),
                build.work().tipTrim());
    }

    /**
     * This tip with another wall.
     *
     * @param wall its wall, finish included
     * @return a copy that differs in that alone
     */
    public TipSection withWall(Reading<Wall> wall) {
        return new TipSection(outside, finish, wall, trimmed);
    }

    /**
     * The least diameter under the finish, over all that was read of the outside.
     *
     * @return diameter less twice the finish where that is least; not above zero if the finish was read too thick to be true
     */
    public Length leastBare() {
        Polyline bare = bare(outsideOver(outside.length(), Polyline.Diameter.LEAST));
        return Length.ofMillimetres(bare.value(bare.least()));
    }

    /**
     * The outside with the finish off.
     *
     * @return diameter less twice the finish, up from the end of the tip; the stations of the outside and those of the finish
     * @throws IllegalArgumentException if the finish is as thick as the tip
     */
    public DiameterProfile stripped() {
        Polyline least = bare(outsideOver(outside.length(), Polyline.Diameter.LEAST));
        checkFinish(Length.ofMillimetres(least.value(least.least())));
        Polyline greatest = round() ? least : bare(outsideOver(outside.length(), Polyline.Diameter.GREATEST));
        return DiameterProfile.of(least.rounded(greatest));
    }

    /**
     * Whether some of the tip is left under its finish, wherever it was measured.
     *
     * @return whether {@link #leastBare()} is above zero
     */
    public boolean leavesStructure() {
        return clearlyLeavesStructure() || leastBare().nanometres() > 0;
    }

    /** The narrowest reading and the thickest finish, wherever they are: a finish is mostly a hundredth of a tip. */
    private boolean clearlyLeavesStructure() {
        long narrowest = Stations.of(outside.stations()).narrowestNanometres();
        long thickest = 0;
        for (ThicknessProfile.Knot knot : finish.thickness().knots()) {
            thickest = Math.max(thickest, knot.thickness().nanometres());
        }
        return narrowest - 2 * thickest > CLEAR;
    }

    /** Whether every reading is round, so that least, mean and greatest diameter are one. */
    boolean round() {
        return Stations.of(outside.stations()).areRound();
    }

    void checkFinish() {
        if (!clearlyLeavesStructure()) {
            checkFinish(leastBare());
        }
    }

    private static void checkFinish(Length bare) {
        Require.that(bare.nanometres() > 0, "finish", "must leave some of the tip under it", bare);
    }

    Polyline outsideOver(Length length, Polyline.Diameter which) {
        return Polyline.over(outside.stations(), outside.from(), length, which);
    }

    /** What is under the finish of an outside from the end of the tip on. */
    Polyline bare(Polyline outside) {
        return outside.plus(finish.thickness(), trimmed, -2);
    }
}
