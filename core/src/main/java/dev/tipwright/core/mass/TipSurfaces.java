package dev.tipwright.core.mass;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * The three surfaces of a worked tip over the length the work reaches: over the finish, under it, and as it becomes.
 *
 * @param outside over the finish
 * @param bare under the finish
 * @param after when the work is done
 */
record TipSurfaces(Polyline outside, Polyline bare, Polyline after) {

    static TipSurfaces of(Build build) {
        TipWork work = build.work().tip();
        Length reach = work.reach();
        double length = reach.millimetres();
        Finish finish = build.parts().shaft().section().finish().orElse(Finish.NONE);
        Polyline outside = Polyline.of(build.trimmedTip().endedAt(reach), Polyline.Diameter.MEAN);
        Polyline thickness = Polyline.of(finish.thickness(), build.work().tipTrim(), length);
        Polyline bare = outside.plus(thickness, -2);
        return new TipSurfaces(outside, bare, after(work, outside, bare, length));
    }

    /** Stripped as far as the finish comes off, then worked down as far as the finished shape goes. */
    private static Polyline after(TipWork work, Polyline outside, Polyline bare, double length) {
        double stripped = work.stripped().millimetres();
        Polyline after = stripped == length ? bare : stripped == 0 ? outside : bare.joined(outside, stripped);
        if (work.finished().isEmpty()) {
            return after;
        }
        Polyline finished = Polyline.of(DiameterProfile.of(work.finished()), Polyline.Diameter.MEAN);
        return finished.to() == length
                ? after.min(finished)
                : after.between(0, finished.to()).min(finished).joined(after, finished.to());
    }
}
