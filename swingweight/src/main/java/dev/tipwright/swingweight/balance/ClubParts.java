package dev.tipwright.swingweight.balance;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Rod;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.part.Attachments;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/** The parts of a seated build with their places on the club, handed one after the other to whoever adds them up. */
final class ClubParts {

    /** Takes a part: its mass, and the first and second moment of it about the top of the grip in g mm and g mm2. */
    @FunctionalInterface
    interface Taker {
        void take(String label, Mass mass, double first, double second);
    }

    private final Build build;
    private final double tip;
    private final double mouth;
    private final Taker taker;

    private ClubParts(Build build, Taker taker) {
        this.build = build;
        this.tip = build.tipFromTop().millimetres();
        this.mouth = tip - build.work().seat().insertion().millimetres();
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
        at("grip", build.parts().grip().mass(), build.parts().grip().centre().millimetres());
        shaft();
        head();
        removed();
        Attachments attached = Attachments.of(build.work().attached());
        for (int i = 0; i < attached.size(); i++) {
            at(attached.label(i), attached.mass(i), fromTop(attached.place(i)));
        }
    }

    private void at(String label, Mass mass, double x) {
        double moment = mass.grams() * x;
        taker.take(label, mass, moment, moment * x);
    }

    private void shaft() {
        Shaft shaft = build.parts().shaft();
        Length to = shaft.length().minus(build.work().buttTrim());
        upFromTip("shaft", Rod.of(shaft, build.work().tipTrim(), to), 1);
    }

    private void removed() {
        Rod off = TipStock.weighed(build);
        if (off.mass() != 0 || !TipStock.of(build).isNothing()) {
            upFromTip("taken off the tip", off, -1);
        }
    }

    /** Mass spread up the shaft from the end of the tip at {@code t}: sums of {@code (t - z)} and {@code (t - z)^2}. */
    private void upFromTip(String label, Rod rod, int sign) {
        Mass mass = rod.weight();
        taker.take(
                label,
                sign < 0 ? mass.negated() : mass,
                sign * (rod.mass() * tip - rod.first()),
                sign * (tip * (rod.mass() * tip - 2 * rod.first()) + rod.second()));
    }

    private void head() {
        Head head = build.parts().head();
        HeadCentre centre = head.mass().centre().known().orElseGet(() -> HeadCentreRule.of(head));
        Mass mass = head.mass().mass();
        double x = mouth + centre.along().millimetres();
        double off = centre.off().millimetres();
        double own = head.mass().inertia().orElse(Inertia.ZERO).gramSquareMillimetres();
        double moment = mass.grams() * x;
        taker.take("head", mass, moment, moment * x + mass.grams() * off * off + own);
    }

    private double fromTop(Place place) {
        double offset = place.offset().millimetres();
        return switch (place.anchor()) {
            case GRIP_TOP -> offset;
            case TIP_END -> tip - offset;
            case HOSEL_MOUTH -> mouth - offset;
            case MID_INSERTION -> (tip + mouth) / 2 - offset;
        };
    }
}
