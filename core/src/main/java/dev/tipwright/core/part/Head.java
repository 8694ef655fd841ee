package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.quantity.Length;

/**
 * A club head as it lies on the bench: what it weighs, how it stands, and the bore in its hosel.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * Head six = new Head(
 *         "6", ClubKind.IRON, Hand.RIGHT, HeadMass.of(Mass.parse("262 g")),
 *         HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), Length.parse("2 1/4 in")),
 *         bore, Hosel.of(Length.parse(".530 in")));
 * six.bottomToGround().inches();             // = 1.0
 * six.mass().centre().known().isPresent();   // = false
 * }</pre>
 *
 * @param label how the bench calls the club, such as {@code 7} or {@code gap}
 * @param kind what kind of club it makes
 * @param hand for which hand
 * @param mass mass and where it is
 * @param geometry lie, loft, hosel mouth to ground, sole
 * @param bore the hole the tip goes into
 * @param hosel the outside of the hosel
 */
public record Head(
        String label, ClubKind kind, Hand hand, HeadMass mass, HeadGeometry geometry, Bore bore, Hosel hosel) {

    /**
     * Checks the values.
     *
     * @param label how the bench calls the club, such as {@code 7} or {@code gap}
     * @param kind what kind of club it makes
     * @param hand for which hand
     * @param mass mass and where it is
     * @param geometry lie, loft, hosel mouth to ground, sole
     * @param bore the hole the tip goes into
     * @param hosel the outside of the hosel
     */
    public Head {
        Require.label("label", label);
        Require.given("kind", kind);
        Require.given("hand", hand);
        Require.given("mass", mass);
        Require.given("geometry", geometry);
        Require.given("bore", bore);
        Require.given("hosel", hosel);
    }

    /**
     * The bottom of the bore to the ground along the axis, {@code G = H - B}.
     *
     * @return hosel mouth to ground less the bore's depth
     */
    public Length bottomToGround() {
        return geometry.mouthToGround().minus(bore.depth());
    }

    /**
     * This one with another value in one place.
     *
     * @param label how the bench calls the club, such as {@code 7} or {@code gap}
     * @return a copy that differs in that alone
     */
    public Head withLabel(String label) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param kind what kind of club it makes
     * @return a copy that differs in that alone
     */
    public Head withKind(ClubKind kind) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param hand for which hand
     * @return a copy that differs in that alone
     */
    public Head withHand(Hand hand) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param mass mass and where it is
     * @return a copy that differs in that alone
     */
    public Head withMass(HeadMass mass) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param geometry lie, loft, hosel mouth to ground, sole
     * @return a copy that differs in that alone
     */
    public Head withGeometry(HeadGeometry geometry) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param bore the hole the tip goes into
     * @return a copy that differs in that alone
     */
    public Head withBore(Bore bore) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }

    /**
     * This one with another value in one place.
     *
     * @param hosel the outside of the hosel
     * @return a copy that differs in that alone
     */
    public Head withHosel(Hosel hosel) {
        return new Head(label, kind, hand, mass, geometry, bore, hosel);
    }
}
