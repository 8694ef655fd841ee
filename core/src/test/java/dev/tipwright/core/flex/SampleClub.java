package dev.tipwright.core.flex;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An invented club for tests: a shaft of 1 m and 80 g. */
public final class SampleClub {

    private SampleClub() {}

    public static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /** Pairs of place in mm and stiffness in N m2. */
    public static StiffnessShape.AtStations stations(double... pairs) {
        List<StiffnessShape.Knot> knots = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            knots.add(new StiffnessShape.Knot(mm(pairs[i]), BendingStiffness.ofNewtonSquareMetres(pairs[i + 1])));
        }
        return new StiffnessShape.AtStations(knots);
    }

    public static ShaftFlex.Timed timed(double perMinute, double clampMm, double tipGrams) {
        return new ShaftFlex.Timed(Frequency.ofPerMinute(perMinute), mm(clampMm), Mass.ofGrams(tipGrams));
    }

    public static Reading<ShaftFlex> flex(StiffnessShape shape, ShaftFlex.Timed... timed) {
        return Reading.measured(new ShaftFlex(Reading.measured(shape), Arrays.asList(timed)));
    }

    /** Uniform in mass; EI from 15 N m2 at the tip to 65 at the butt. */
    public static Shaft shaft() {
        return new Shaft(
                "S1",
                new Blank("mid", mm(200), ShaftMaterial.STEEL),
                mm(1000),
                ShaftMass.of(Mass.ofGrams(80), mm(500)),
                new ShaftSection(
                        DiameterProfile.cylinder(mm(9.4), mm(1000)),
                        mm(15),
                        Reading.unknown("the shaft's maker"),
                        Reading.unknown("the shaft's maker")),
                flex(stations(0, 15, 1000, 65)));
    }

    public static Head head() {
        return new Head(
                "6",
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(260)).withCentre(Reading.measured(new HeadCentre(mm(50), mm(30)))),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), mm(60)),
                Bore.ofTwoDiameters(mm(9.45), mm(9.4), mm(30), BoreEnd.FLAT),
                Hosel.of(mm(13)));
    }

    public static Build build() {
        Grip grip = new Grip("G", Mass.ofGrams(50), mm(3), mm(267), mm(110), Reading.unknown("calliper it"));
        Work work = new Work(mm(20), mm(60), TipWork.NONE, new Seat(mm(30), Stop.BORE_BOTTOM), List.of());
        return new Build(new Parts(head(), shaft(), grip), work);
    }

    public static Build with(Build build, Shaft shaft) {
        return build.withParts(build.parts().withShaft(shaft));
    }

    public static Build with(Build build, Head head) {
        return build.withParts(build.parts().withHead(head));
    }

    public static Build with(Build build, Grip grip) {
        return build.withParts(build.parts().withGrip(grip));
    }
}
