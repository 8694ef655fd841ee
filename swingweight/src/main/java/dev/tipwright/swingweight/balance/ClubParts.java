package dev.tipwright.swingweight.balance;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.mass.RemovedMaterial;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** The parts of a build with their places on the club. */
final class ClubParts {

    private ClubParts() {}

    static List<BalancePart> of(Build build) {
        List<BalancePart> parts = new ArrayList<>();
        Grip grip = build.parts().grip();
        parts.add(BalancePart.at("grip", grip.mass(), grip.centre()));
        parts.add(shaft(build));
        parts.add(head(build));
        RemovedMaterial removed = RemovedMaterial.of(build);
        if (!removed.equals(RemovedMaterial.NONE)) {
            parts.add(removed(build, removed));
        }
        for (Attachment attachment : build.work().attached()) {
            parts.add(BalancePart.at(attachment.label(), attachment.mass(), place(build, attachment.place())));
        }
        return parts;
    }

    private static BalancePart shaft(Build build) {
        ShaftCut cut = ShaftCut.of(build);
        return upFromTip("shaft", build.tipFromTop(), cut.mass(), cut.momentAboutTip(), cut.inertiaAboutTip());
    }

    private static BalancePart removed(Build build, RemovedMaterial removed) {
        return upFromTip(
                "taken off the tip",
                build.tipFromTop(),
                removed.mass().negated(),
                removed.momentAboutTip().scaledBy(-1),
                Inertia.ZERO.minus(removed.inertiaAboutTip()));
    }

    /** Mass spread up the shaft from the end of the tip at {@code t}: sums of {@code (t - z)} and {@code (t - z)^2}. */
    private static BalancePart upFromTip(
            String label, Length tip, Mass mass, FirstMoment aboutTip, Inertia inertiaAboutTip) {
        double t = tip.millimetres();
        double m = mass.grams();
        double z = aboutTip.gramMillimetres();
        return new BalancePart(
                label,
                mass,
                FirstMoment.ofGramMillimetres(m * t - z),
                Inertia.ofGramSquareMillimetres(m * t * t - 2 * t * z + inertiaAboutTip.gramSquareMillimetres()));
    }

    private static BalancePart head(Build build) {
        Head head = build.parts().head();
        HeadCentre centre = head.mass().centre().orElse(HeadCentreRule.of(head));
        BalancePart onAxis =
                BalancePart.at("head", head.mass().mass(), build.mouthFromTop().plus(centre.along()));
        double off = centre.off().millimetres();
        Inertia own = head.mass().inertia().orElse(Inertia.ZERO);
        Inertia offAxis = Inertia.ofGramSquareMillimetres(head.mass().mass().grams() * off * off);
        return new BalancePart(
                "head",
                onAxis.mass(),
                onAxis.moment(),
                onAxis.inertia().plus(offAxis).plus(own));
    }

    static Length place(Build build, Place place) {
        return switch (place.anchor()) {
            case GRIP_TOP -> place.offset();
            case TIP_END -> build.tipFromTop().minus(place.offset());
            case HOSEL_MOUTH -> build.mouthFromTop().minus(place.offset());
            case MID_INSERTION ->
                build.mouthFromTop()
                        .plus(build.work().seat().insertion().half())
                        .minus(place.offset());
        };
    }
}
