package dev.tipwright.core.flex;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.beam.EndBody;
import dev.tipwright.core.mass.RemovedMaterial;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/**
 * What hangs on the beam at the hosel mouth, as one rigid body: head, inserted tip less what was taken off it, and what is fixed to
 * either. Sums of mass, of mass times distance beyond the mouth, and of inertia about the mouth; kilograms and metres.
 */
final class HeadEnd {

    private double mass;
    private double moment;
    private double inertia;

    private HeadEnd() {}

    static HeadEnd of(Build build) {
        HeadEnd end = new HeadEnd();
        end.head(build.parts().head().mass());
        ShaftCut tip = inserted(build);
        double insertion = build.work().seat().insertion().metres();
        end.upFromTip(
                insertion,
                tip.mass().grams(),
                tip.momentAboutTip().gramMillimetres(),
                tip.inertiaAboutTip().gramSquareMillimetres());
        RemovedMaterial removed = RemovedMaterial.of(build);
        end.upFromTip(
                insertion,
                -removed.mass().grams(),
                -removed.momentAboutTip().gramMillimetres(),
                -removed.inertiaAboutTip().gramSquareMillimetres());
        for (Attachment attachment : build.work().attached()) {
            if (counts(attachment)) {
                end.add(attachment.mass().grams() / 1000, beyondMouth(build, attachment.place()), 0);
            }
        }
        return end;
    }

    static ShaftCut inserted(Build build) {
        Length tip = build.work().tipTrim();
        return new ShaftCut(
                build.parts().shaft(), tip, tip.plus(build.work().seat().insertion()));
    }

    /** Head end or not: what is placed from the top of the grip goes on with it, or is held by the clamp. */
    private static boolean counts(Attachment attachment) {
        return attachment.place().anchor() != Anchor.GRIP_TOP;
    }

    static Mass attached(Build build) {
        Mass sum = Mass.ZERO;
        for (Attachment attachment : build.work().attached()) {
            sum = counts(attachment) ? sum.plus(attachment.mass()) : sum;
        }
        return sum;
    }

    private static double beyondMouth(Build build, Place place) {
        double insertion = build.work().seat().insertion().metres();
        double from = switch (place.anchor()) {
            case TIP_END -> insertion;
            case MID_INSERTION -> insertion / 2;
            case HOSEL_MOUTH, GRIP_TOP -> 0;
        };
        return from - place.offset().metres();
    }

    private void head(HeadMass head) {
        HeadCentre centre = head.centre().known().orElseThrow();
        double off = centre.off().metres();
        double kilograms = head.mass().grams() / 1000;
        double own = head.inertia().orElse(Inertia.ZERO).gramSquareMillimetres() * 1e-9;
        add(kilograms, centre.along().metres(), own + kilograms * off * off);
    }

    private void add(double kilograms, double beyond, double own) {
        mass += kilograms;
        moment += kilograms * beyond;
        inertia += own + kilograms * beyond * beyond;
    }

    /** Mass spread up the shaft from the tip end, by its grams, gram millimetres and gram square millimetres about that end. */
    private void upFromTip(double insertion, double grams, double first, double second) {
        double m = grams / 1000;
        double mz = first * 1e-6;
        mass += m;
        moment += m * insertion - mz;
        inertia += m * insertion * insertion - 2 * insertion * mz + second * 1e-9;
    }

    /** The body about its own centre; rounding may leave a point mass a hair below zero inertia. */
    EndBody body() {
        double offset = moment / mass;
        return new EndBody(mass, Math.max(0, inertia - mass * offset * offset), offset);
    }
}
