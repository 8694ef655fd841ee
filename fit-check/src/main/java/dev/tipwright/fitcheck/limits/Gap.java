package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/** The clearance {@code c(z)} of a seated tip by its knots, in millimetres. */
final class Gap {

    private Gap() {}

    static Polyline of(DiameterProfile tip, Bore bore, Length insertion) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.between(
                "insertion", insertion, Length.ofMillimetres(1), bore.depth().min(tip.length()));
        double depth = insertion.millimetres();
        Polyline around = Polyline.of(bore.profile(), Polyline.Diameter.LEAST)
                .between(0, depth)
                .mirrored(depth);
        return around.plus(Polyline.of(tip, Polyline.Diameter.GREATEST).between(0, depth), -1);
    }
}
