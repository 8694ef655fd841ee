package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;

/**
 * How a head stands.
 *
 * @param lie between shaft axis and ground; above 0, at most 90 degrees
 * @param loft of the face; -20 to 90 degrees
 * @param mouthToGround hosel mouth to the ground along the shaft axis ({@code H}); above zero, at most 500 mm
 * @param sole shape of the sole
 */
public record HeadGeometry(Angle lie, Angle loft, Length mouthToGround, Reading<SoleShape> sole) {

    /**
     * Checks the values.
     *
     * @param lie between shaft axis and ground; above 0, at most 90 degrees
     * @param loft of the face; -20 to 90 degrees
     * @param mouthToGround hosel mouth to the ground along the shaft axis ({@code H}); above zero, at most 500 mm
     * @param sole shape of the sole
     */
    public HeadGeometry {
        Require.given("lie", lie);
        Require.that(lie.degrees() > 0 && lie.degrees() <= 90, "lie", "must be above 0 and at most 90 deg", lie);
        Require.between("loft", loft, Angle.ofDegrees(-20), Angle.ofDegrees(90));
        Require.someUpTo("mouthToGround", mouthToGround, 500);
        Require.given("sole", sole);
    }

    /**
     * A head whose sole was not measured.
     *
     * @param lie between shaft axis and ground
     * @param loft of the face
     * @param mouthToGround hosel mouth to the ground along the shaft axis
     * @return the geometry, sole unknown
     */
    public static HeadGeometry of(Angle lie, Angle loft, Length mouthToGround) {
        return new HeadGeometry(
                lie, loft, mouthToGround, Reading.unknown("measure the sole, or leave it out near 60 deg of lie"));
    }

    /**
     * This one with another value in one place.
     *
     * @param lie between shaft axis and ground; above 0, at most 90 degrees
     * @return a copy that differs in that alone
     */
    public HeadGeometry withLie(Angle lie) {
        return new HeadGeometry(lie, loft, mouthToGround, sole);
    }

    /**
     * This one with another value in one place.
     *
     * @param loft of the face; -20 to 90 degrees
     * @return a copy that differs in that alone
     */
    public HeadGeometry withLoft(Angle loft) {
        return new HeadGeometry(lie, loft, mouthToGround, sole);
    }

    /**
     * This one with another value in one place.
     *
     * @param mouthToGround hosel mouth to the ground along the shaft axis ({@code H}); above zero, at most 500 mm
     * @return a copy that differs in that alone
     */
    public HeadGeometry withMouthToGround(Length mouthToGround) {
        return new HeadGeometry(lie, loft, mouthToGround, sole);
    }

    /**
     * This one with another value in one place.
     *
     * @param sole shape of the sole
     * @return a copy that differs in that alone
     */
    public HeadGeometry withSole(Reading<SoleShape> sole) {
        return new HeadGeometry(lie, loft, mouthToGround, sole);
    }
}
