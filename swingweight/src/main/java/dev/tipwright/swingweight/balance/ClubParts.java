package dev.tipwright.swingweight.balance;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Rod;
import dev.tipwright.core.mass.RemovedMaterial;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;

/** The parts of a seated build with their places on the club, handed one after the other to whoever adds them up. */
final class ClubParts {

    /** Takes a part: its mass, and the first and second moment of it about the top of the grip in g mm and g mm2. */
    @FunctionalInterface
    interface Taker {
        void take(String label, Mass mass, double first, double second);
    }

    private final Build build;
    private final Length tip;
    private final Length mouth;
    private final Taker taker;

    private ClubParts(Build build, Taker taker) {
        this.build = build;
        this.tip = build.tipFromTop();
        this.mouth = tip.minus(build.work().seat().insertion());
        this.taker = taker;
    }

    /**
     * Hands over the parts.
     *
     * @param build parts and work
     * @param taker gets grip, shaft, head, what came off the tip if anything did, and what is attached
     * @throws IllegalArgumentException if the tip is not seated, or the work on it reaches further up than its outside was read
     */
    static void of(Build build, Taker taker) {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().nanometres() > 0,
                "build",
                "must be seated",
                build.work().seat());
        new ClubParts(build, taker).handOver();
    }

    private void handOver() {
        at("grip", build.parts().grip().mass(), build.parts().grip().centre());
        shaft();
        head();
        removed();
        List<Attachment> attached = build.work().attached();
        for (int i = 0; i < attached.size(); i++) {
            Attachment one = attached.get(i);
            at(one.label(), one.mass(), fromTop(one.place()));
        }
    }

    private void at(String label, Mass mass, Length fromTop) {
        double x = fromTop.millimetres();
        double moment = mass.grams() * x;
        taker.take(label, mass, moment, moment * x);
    }

    private void shaft() {
        Shaft shaft = build.parts().shaft();
        Length to = shaft.length().minus(build.work().buttTrim());
        Rod rod = Rod.of(shaft, build.work().tipTrim(), to);
        upFromTip("shaft", Mass.ofGrams(rod.mass()), rod.first(), rod.second());
    }

    private void removed() {
        RemovedMaterial removed = RemovedMaterial.of(build);
        if (!removed.isNothing()) {
            upFromTip(
                    "taken off the tip",
                    removed.mass().negated(),
                    -removed.momentAboutTip().gramMillimetres(),
                    -removed.inertiaAboutTip().gramSquareMillimetres());
        }
    }

    /** Mass spread up the shaft from the end of the tip at {@code t}: sums of {@code (t - z)} and {@code (t - z)^2}. */
    private void upFromTip(String label, Mass mass, double aboutTip, double inertiaAboutTip) {
        double t = tip.millimetres();
        double m = mass.grams();
        taker.take(label, mass, m * t - aboutTip, m * t * t - 2 * t * aboutTip + inertiaAboutTip);
    }

    private void head() {
        Head head = build.parts().head();
        HeadCentre centre = head.mass().centre().known().orElseGet(() -> HeadCentreRule.of(head));
        Mass mass = head.mass().mass();
        double x = mouth.plus(centre.along()).millimetres();
        double off = centre.off().millimetres();
        double own = head.mass().inertia().orElse(Inertia.ZERO).gramSquareMillimetres();
        double moment = mass.grams() * x;
        taker.take("head", mass, moment, moment * x + mass.grams() * off * off + own);
    }

    private Length fromTop(Place place) {
        return switch (place.anchor()) {
            case GRIP_TOP -> place.offset();
            case TIP_END -> tip.minus(place.offset());
            case HOSEL_MOUTH -> mouth.minus(place.offset());
            case MID_INSERTION ->
                mouth.plus(build.work().seat().insertion().half()).minus(place.offset());
        };
    }
}
