package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.function.UnaryOperator;

/** An invented club, to be changed into the one of a check. */
final class Club {

    private static final String ASK = "nobody, it is invented";

    private Club() {}

    static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    static Head head() {
        return new Head(
                "6",
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(260)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), mm(90)),
                Bore.ofTwoDiameters(mm(9.5), mm(9.4), mm(60), BoreEnd.FLAT),
                Hosel.of(mm(13.5)));
    }

    static Head head(HeadMass mass) {
        return head().withMass(mass);
    }

    /** Uniform in mass, a parallel tip, nothing known of wall, finish and stiffness. */
    static Shaft shaft(Length length, Mass mass) {
        return new Shaft(
                "S1",
                new Blank("mid", mm(200), ShaftMaterial.STEEL),
                length,
                ShaftMass.of(mass, length.half()),
                new ShaftSection(
                        DiameterProfile.cylinder(mm(9.39), mm(200)),
                        mm(15),
                        Reading.unknown(ASK),
                        Reading.measured(Finish.NONE)),
                Reading.unknown(ASK));
    }

    static Grip grip() {
        return new Grip("G", Mass.ofGrams(50), mm(3), mm(267), mm(110), Reading.unknown(ASK));
    }

    static Build of(Head head, Shaft shaft, Grip grip) {
        return Build.of(new Parts(head, shaft, grip));
    }

    static Build seated(Build build, Length tipTrim, Length buttTrim, Length insertion) {
        return build.withWork(
                Work.NONE.withTipTrim(tipTrim).withButtTrim(buttTrim).withSeat(new Seat(insertion, Stop.BORE_BOTTOM)));
    }

    static Build withHead(Build build, UnaryOperator<Head> change) {
        return build.withParts(build.parts().withHead(change.apply(build.parts().head())));
    }

    static Build withShaft(Build build, UnaryOperator<Shaft> change) {
        return build.withParts(
                build.parts().withShaft(change.apply(build.parts().shaft())));
    }

    static Build withGrip(Build build, UnaryOperator<Grip> change) {
        return build.withParts(build.parts().withGrip(change.apply(build.parts().grip())));
    }
}
