package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;

/** The diameters that matter to what has to pass: the narrowest of a bore, the widest of a tip. */
final class Extremes {

    private Extremes() {}

    /** The least diameter of a bore from its mouth down to a depth. */
    static Length narrowest(Bore bore, Length depth) {
        Polyline down = Polyline.through(bore.profile().stations(), Length.ZERO, Polyline.Diameter.LEAST);
        return Length.ofMillimetres(down.least(0, depth.millimetres()));
    }

    /** The greatest diameter of a profile from one place to another. */
    static Length widest(DiameterProfile profile, Length from, Length to) {
        Stations stations = Stations.of(profile.stations());
        long widest = stations.widestNanometres();
        if (widest == stations.narrowestNanometres()) {
            return Length.ofNanometres(widest); // a parallel tip
        }
        Polyline all = Polyline.through(stations, profile.from(), Polyline.Diameter.GREATEST);
        return Length.ofMillimetres(all.greatest(from.millimetres(), to.millimetres()));
    }

    /** The greatest diameter at the end of a tip. */
    static Length widestEnd(DiameterProfile tip) {
        return Length.ofMillimetres(Polyline.through(tip.stations(), tip.from(), Polyline.Diameter.GREATEST)
                .after(0));
    }
}
