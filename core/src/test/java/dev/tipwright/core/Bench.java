package dev.tipwright.core;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
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
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/** Invented parts in round numbers, so that a reader can do the sums. */
public final class Bench {

    private Bench() {}

    /** A length as it is written. */
    public static Length len(String text) {
        return Length.parse(text);
    }

    /** Bore 1 1/4 in deep, bottom 1 in over the ground: the mouth stands 2 1/4 in over it. */
    public static Head head(String label) {
        return new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.parse("260 g")),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), len("2 1/4 in")),
                bore(BoreEnd.FLAT),
                Hosel.of(len(".53 in")));
    }

    /** Mouth .363 in, bottom .355 in, 1 1/4 in deep. */
    public static Bore bore(BoreEnd end) {
        return Bore.ofTwoDiameters(len(".363 in"), len(".355 in"), len("1 1/4 in"), end);
    }

    /** 39 in long, 78 g, balances in its middle: 2 g an inch all along. Tip .374 in over .002 in of finish, read for 10 in. */
    public static Shaft shaft(String label) {
        return new Shaft(
                label,
                new Blank("mid", len("7 in"), ShaftMaterial.COMPOSITE),
                len("39 in"),
                ShaftMass.of(Mass.parse("78 g"), len("19.5 in")),
                new ShaftSection(
                        DiameterProfile.cylinder(len(".374 in"), len("10 in")),
                        len(".6 in"),
                        Reading.measured(new Wall(
                                ThicknessProfile.uniform(len(".06 in")),
                                Reading.measured(Density.ofGramsPerCubicCentimetre(1.6)))),
                        Reading.measured(new Finish(
                                ThicknessProfile.uniform(len(".002 in")),
                                Reading.measured(Density.ofGramsPerCubicCentimetre(1.2))))),
                Reading.unknown("clamp it and count"));
    }

    /** Cap 1/8 in. */
    public static Grip grip() {
        return new Grip(
                "cord", Mass.parse("50 g"), len("1/8 in"), len("10.5 in"), len("4 in"), Reading.unknown("measure it"));
    }

    /** A club of untouched parts. */
    public static Build club(String label) {
        return Build.of(new Parts(head(label), shaft("s" + label), grip()));
    }

    /** The same with another head. */
    public static Build withHead(Build build, Head head) {
        return build.withParts(build.parts().withHead(head));
    }

    /** The same with another shaft. */
    public static Build withShaft(Build build, Shaft shaft) {
        return build.withParts(build.parts().withShaft(shaft));
    }
}
