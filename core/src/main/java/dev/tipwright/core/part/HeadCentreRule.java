package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * Where the centre of mass of a head lies when nobody has measured it: on the axis, nineteen twentieths of the way from hosel mouth
 * to ground. An assumption of this library, good to about a tenth of an inch on irons, which is half a point of swing weight: a head
 * balanced on a dowel in its bore, or one reading of the dry club, is worth having.
 */
public final class HeadCentreRule {

    /** The source of the assumption. */
    public static final Source SOURCE =
            Source.assumption("centre of mass taken at 19/20 of hosel mouth to ground; not measured");

    /** How far off the assumption may be, as a standard uncertainty; an assumption too. */
    public static final Length STANDARD_UNCERTAINTY = Length.ofThousandths(100);

    private HeadCentreRule() {}

    /**
     * The assumed centre of mass.
     *
     * @param head the head
     * @return on the axis, near the ground
     */
    public static HeadCentre of(Head head) {
        Require.given("head", head);
        return new HeadCentre(head.geometry().mouthToGround().scaledBy(0.95), Length.ZERO);
    }
}
