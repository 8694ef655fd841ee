package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/** The diameters that matter to what has to pass: the narrowest of a bore, the widest of a tip. */
final class Extremes {

    private Extremes() {}

    /** The least diameter of a bore from its mouth down to a depth. */
    static Length narrowest(Bore bore, Length depth) {
        Polyline down = Polyline.of(bore.profile(), Polyline.Diameter.LEAST).between(0, depth.millimetres());
        return Length.ofMillimetres(down.value(down.least()));
    }

    /** The greatest diameter of a profile from one place to another. */
    static Length widest(DiameterProfile profile, Length from, Length to) {
        Polyline part = Polyline.of(profile, Polyline.Diameter.GREATEST).between(from.millimetres(), to.millimetres());
        return Length.ofMillimetres(part.value(part.greatest()));
    }

    /** The greatest diameter at the end of a tip. */
    static Length widestEnd(DiameterProfile tip) {
        return Length.ofMillimetres(Polyline.of(tip, Polyline.Diameter.GREATEST).after(0));
    }
}
