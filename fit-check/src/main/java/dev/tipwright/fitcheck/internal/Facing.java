package dev.tipwright.fitcheck.internal;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * The diameters that face each other at a place of a tip that is in, for a working: those of the side of a step that leaves the
 * smaller clearance, or the larger.
 *
 * @param bore the bore there
 * @param tip the tip there
 */
public record Facing(Length bore, Length tip) {

    /**
     * Where the clearance is smaller.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in
     * @param z up from the end of the tip
     * @return the pair
     */
    public static Facing tight(DiameterProfile tip, Bore bore, Length insertion, Length z) {
        return at(tip, bore, insertion, z, 1);
    }

    /**
     * Where the clearance is larger.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in
     * @param z up from the end of the tip
     * @return the pair
     */
    public static Facing loose(DiameterProfile tip, Bore bore, Length insertion, Length z) {
        return at(tip, bore, insertion, z, -1);
    }

    private static Facing at(DiameterProfile tip, Bore bore, Length insertion, Length z, int sign) {
        Polyline around = Polyline.of(bore.profile(), Polyline.Diameter.LEAST);
        Polyline inside = Polyline.of(tip, Polyline.Diameter.GREATEST);
        double up = z.millimetres();
        double down = insertion.minus(z).millimetres();
        double below = around.after(down) - inside.before(up);
        double above = around.before(down) - inside.after(up);
        boolean end = up <= 0;
        boolean top = !z.lessThan(insertion.min(tip.length()));
        boolean lower = !end && (top || sign * below < sign * above);
        return new Facing(
                Length.ofMillimetres(lower ? around.after(down) : around.before(down)),
                Length.ofMillimetres(lower ? inside.before(up) : inside.after(up)));
    }

    /**
     * Bore less tip.
     *
     * @return the clearance, on the diameter
     */
    public Length clearance() {
        return bore.minus(tip);
    }
}
