package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;

/**
 * A club laid out in what errors move, so that a dozen of them can move it one after another and it is put together, and checked,
 * once. Trials come this way a million times.
 */
final class Draft {

    private Build before;

    HeadMass headMass;
    HeadGeometry geometry;
    Bore bore;
    Hosel hosel;
    Length length;
    ShaftMass shaftMass;
    DiameterProfile outside;
    Reading<Wall> wall;
    Reading<Finish> finish;
    Reading<ShaftFlex> flex;
    Grip grip;
    Length tipTrim;
    Length buttTrim;
    TipWork tip;
    Seat seat;

    Draft(Build build) {
        layOut(build);
    }

    private void layOut(Build build) {
        before = build;
        Head head = build.parts().head();
        headMass = head.mass();
        geometry = head.geometry();
        bore = head.bore();
        hosel = head.hosel();
        Shaft shaft = build.parts().shaft();
        length = shaft.length();
        shaftMass = shaft.mass();
        outside = shaft.section().outside();
        wall = shaft.section().wall();
        finish = shaft.section().finish();
        flex = shaft.flex();
        grip = build.parts().grip();
        Work work = build.work();
        tipTrim = work.tipTrim();
        buttTrim = work.buttTrim();
        tip = work.tip();
        seat = work.seat();
    }

    /** Moves one thing more; a nudge that knows whole clubs alone is given one. */
    void move(Nudge nudge, double delta) {
        if (nudge instanceof PartNudge part) {
            part.move(this, delta);
        } else {
            layOut(nudge.by(build(), delta));
        }
    }

    Head head() {
        Head head = before.parts().head();
        return new Head(head.label(), head.kind(), head.hand(), headMass, geometry, bore, hosel);
    }

    private Shaft shaft() {
        Shaft shaft = before.parts().shaft();
        ShaftSection section = new ShaftSection(outside, shaft.section().butt(), wall, finish);
        return new Shaft(shaft.label(), shaft.blank(), length, shaftMass, section, flex);
    }

    Build build() {
        Work work = new Work(tipTrim, buttTrim, tip, seat, before.work().attached());
        return new Build(new Parts(head(), shaft(), grip), work);
    }
}
