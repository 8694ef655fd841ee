package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * How far the grip end of a dry shaft can be moved from side to side while its tip sits loose in the bore, and the way back: what
 * a measured sweep says of the clearance. The shaft is taken as straight and rigid.
 *
 * <pre>
 *   sweep(Z) = least over z1 &lt; z2 of (c(z2) (Z - z1) + c(z1) (Z - z2)) / (z2 - z1)
 * </pre>
 *
 * <p>For a parallel tip in a parallel bore that is {@code c (2 Z - i) / i}. Every pair of knots is looked at, so the time grows as
 * the square of their number.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".370 in"), Length.parse(".370 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".365 in"), Length.parse("8 in"));
 * Sweep.at(tip, bore, bore.depth(), Length.parse("35 in")).inches();                                 // = 0.275
 * Sweep.looser(tip, bore, bore.depth(), Length.parse("35 in"), Length.parse(".330 in")).thousandths();   // = 1.0
 * }</pre>
 */
public final class Sweep {

    private Sweep() {}

    /**
     * The sweep of a tip at an insertion.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @param place where the sweep is read, up from the end of the tip ({@code Z}); the insertion or more, at most 3 m
     * @return from one side to the other; zero if the tip binds
     */
    public static Length at(DiameterProfile tip, Bore bore, Length insertion, Length place) {
        Polyline gap = Gap.of(tip, bore, insertion);
        Require.between("place", place, insertion, Length.ofMillimetres(3000));
        if (gap.value(gap.least()) < 0) {
            return Length.ZERO;
        }
        double at = place.millimetres();
        double least = Double.MAX_VALUE;
        for (int high = 1; high < gap.size(); high++) {
            for (int low = 0; low < high; low++) {
                if (gap.at(low) < gap.at(high)) {
                    least = Math.min(least, sweep(gap, low, high, at));
                }
            }
        }
        return Length.ofMillimetres(least);
    }

    /**
     * How much more clearance there is than the profiles say, by a measured sweep: the same over the whole insertion, on the diameter.
     * Measured on a seated tip it tells what depth no longer can.
     *
     * @param tip diameter up from the end of the tip, as it is believed to be
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @param place where the sweep was read, up from the end of the tip ({@code Z}); the insertion or more, at most 3 m
     * @param measured the sweep, from one side to the other; zero to 1 m
     * @return clearance to add to {@code c(z)}; negative if the fit is tighter than believed
     */
    public static Length looser(DiameterProfile tip, Bore bore, Length insertion, Length place, Length measured) {
        Polyline gap = Gap.of(tip, bore, insertion);
        Require.between("place", place, insertion, Length.ofMillimetres(3000));
        Require.within("measured", measured, 0, 1000);
        double at = place.millimetres();
        double most = -gap.value(gap.least());
        for (int high = 1; high < gap.size(); high++) {
            for (int low = 0; low < high; low++) {
                if (gap.at(low) < gap.at(high)) {
                    double gain = (2 * at - gap.at(low) - gap.at(high)) / (gap.at(high) - gap.at(low));
                    most = Math.max(most, (measured.millimetres() - sweep(gap, low, high, at)) / gain);
                }
            }
        }
        return Length.ofMillimetres(most);
    }

    /** What the contacts at two knots allow. */
    private static double sweep(Polyline gap, int low, int high, double at) {
        double lever = gap.value(high) * (at - gap.at(low)) + gap.value(low) * (at - gap.at(high));
        return lever / (gap.at(high) - gap.at(low));
    }
}
