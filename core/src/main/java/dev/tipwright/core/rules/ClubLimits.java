package dev.tipwright.core.rules;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * The limits of the Equipment Rules that bear on a club as it is built. They are a value, so that another edition or
 * a local rule is another value.
 *
 * <p>Source: R&amp;A and USGA, Equipment Rules, Part 2: longest and shortest club, straight shaft, neck, grip; the local
 * rule is Model Local Rule G-10, in force where a committee says so.
 *
 * @param edition what the limits are taken from
 * @param longest longest club, putters excepted; above zero, as are the others
 * @param shortest shortest club
 * @param neck longest neck, from its top to the sole along the axis
 * @param gripWidest widest grip in any direction
 * @param gripShortest shortest grip
 */
public record ClubLimits(
        String edition, Length longest, Length shortest, Length neck, Length gripWidest, Length gripShortest) {

    /**
     * Checks the values.
     *
     * @param edition what the limits are taken from
     * @param longest longest club, putters excepted; above zero, as are the others
     * @param shortest shortest club
     * @param neck longest neck, from its top to the sole along the axis
     * @param gripWidest widest grip in any direction
     * @param gripShortest shortest grip
     */
    public ClubLimits {
        Require.label("edition", edition);
        Require.positive("longest", longest);
        Require.positive("shortest", shortest);
        Require.positive("neck", neck);
        Require.positive("gripWidest", gripWidest);
        Require.positive("gripShortest", gripShortest);
    }

    /** Equipment Rules, Part 2. */
    public static final ClubLimits EQUIPMENT_RULES = new ClubLimits(
            "R&A and USGA, Equipment Rules, Part 2",
            Length.ofInches(48),
            Length.ofInches(18),
            Length.ofInches(5),
            Length.ofInches(1.75),
            Length.ofInches(7));

    /** The same with Model Local Rule G-10: no club but a putter longer than 46 in. */
    public static final ClubLimits WITH_LOCAL_RULE_G10 = EQUIPMENT_RULES
            .withLongest(Length.ofInches(46))
            .withEdition("Equipment Rules, Part 2, with Model Local Rule G-10");

    /**
     * This one with another value in one place.
     *
     * @param edition what the limits are taken from
     * @return a copy that differs in that alone
     */
    public ClubLimits withEdition(String edition) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }

    /**
     * This one with another value in one place.
     *
     * @param longest longest club, putters excepted; above zero, as are the others
     * @return a copy that differs in that alone
     */
    public ClubLimits withLongest(Length longest) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }

    /**
     * This one with another value in one place.
     *
     * @param shortest shortest club
     * @return a copy that differs in that alone
     */
    public ClubLimits withShortest(Length shortest) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }

    /**
     * This one with another value in one place.
     *
     * @param neck longest neck, from its top to the sole along the axis
     * @return a copy that differs in that alone
     */
    public ClubLimits withNeck(Length neck) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }

    /**
     * This one with another value in one place.
     *
     * @param gripWidest widest grip in any direction
     * @return a copy that differs in that alone
     */
    public ClubLimits withGripWidest(Length gripWidest) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }

    /**
     * This one with another value in one place.
     *
     * @param gripShortest shortest grip
     * @return a copy that differs in that alone
     */
    public ClubLimits withGripShortest(Length gripShortest) {
        return new ClubLimits(edition, longest, shortest, neck, gripWidest, gripShortest);
    }
}
