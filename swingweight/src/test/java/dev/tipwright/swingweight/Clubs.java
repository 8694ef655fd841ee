package dev.tipwright.swingweight;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Invented clubs for the tests: one whose sums can be done by hand, and two of the practice set. */
public final class Clubs {

    private Clubs() {}

    public static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    public static Mass grams(double grams) {
        return Mass.ofGrams(grams);
    }

    /**
     * A club whose sums can be done by hand, in ounces and inches. Grip: 2 oz, centre 4 in from its top. Shaft: 3 oz, even, 36
     * in long, uncut, under no cap, so its centre is at 18 in. Inserted 1 in, so the mouth is at 35 in. Head: 10 oz,
     * centre 2 in below the mouth, at 37 in. Total 15 oz; moment about the top 8 + 54 + 370 = 432 oz in; about 14
     * in 432 - 210 = 222 oz in; on the letter scale (222 - 161) / 1.75 = 34.857 points: D4.9. Inside of the tip: 0.370
     * - 2 x 0.090 = 0.190 in.
     */
    public static Build plain() {
        return new Build(new Parts(head(), shaft(), grip()), Work.NONE.withSeat(Seat.onBottomOf(head().bore())));
    }

    static Head head() {
        return new Head(
                "6",
                ClubKind.IRON,
                Hand.RIGHT,
                new HeadMass(
                        Mass.ofOunces(10),
                        Reading.measured(new HeadCentre(inches(2), Length.ZERO)),
                        Reading.measured(Inertia.ZERO)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), inches(2.25)),
                Bore.ofTwoDiameters(inches(0.375), inches(0.375), inches(1), BoreEnd.FLAT),
                Hosel.of(inches(0.53)));
    }

    static Shaft shaft() {
        return new Shaft(
                "M1",
                new Blank("mid", inches(8), ShaftMaterial.COMPOSITE),
                inches(36),
                ShaftMass.of(Mass.ofOunces(3), inches(18)),
                section(0.370, 0.0025, 0.090),
                Reading.unknown("time it on a clamp"));
    }

    static ShaftSection section(double tip, double finish, double wall) {
        return new ShaftSection(
                DiameterProfile.cylinder(inches(tip), inches(8)),
                inches(0.6),
                Reading.measured(new Wall(
                        ThicknessProfile.uniform(inches(wall)),
                        Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)))),
                Reading.measured(new Finish(
                        ThicknessProfile.uniform(inches(finish)),
                        Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)))));
    }

    static Grip grip() {
        return new Grip(
                "plain", Mass.ofOunces(2), Length.ZERO, inches(10.5), inches(4), Reading.unknown("the grip's maker"));
    }

    /** A tip weight with a stem that enters {@link #plain()}, no flange, centre 1/4 in above the tip end. */
    public static TipWeight weight(double grams) {
        return new TipWeight(grams + " g", grams(grams), inches(0.185), Length.ZERO, inches(0.25));
    }

    public static Build withHead(Build build, Head head) {
        return build.withParts(build.parts().withHead(head));
    }

    public static Build withShaft(Build build, Shaft shaft) {
        return build.withParts(build.parts().withShaft(shaft));
    }

    /** The 6 of the practice set, tip stripped and worked down to its bore, cut, with tape, ferrule and adhesive. */
    public static Build practiceSix() {
        return practice(
                "6",
                263.9,
                2.25,
                2.14,
                new double[][] {{0, .396}, {.015, .3664}, {.40, .363}, {.84, .359}, {1.18, .356}, {1.25, .355}},
                new double[] {39, 84.1, 20.25},
                section(.3735, .0025, .0905),
                50.0,
                new double[] {.5, 2.125});
    }

    /** The 8 of the practice set: five thousandths of finish, and low. */
    public static Build practiceEight() {
        return practice(
                "8",
                273.6,
                2.28125,
                2.17,
                new double[][] {{0, .396}, {.015, .3666}, {.42, .363}, {.86, .359}, {1.19, .356}, {1.25, .355}},
                new double[] {38.96875, 84.3, 20.20},
                section(.3785, .0050, .0930),
                49.7,
                new double[] {1.53125, 2.09375});
    }

    private static Build practice(
            String label,
            double headGrams,
            double mouthToGround,
            double centre,
            double[][] bore,
            double[] shaft,
            ShaftSection section,
            double gripGrams,
            double[] trims) {
        List<Station> readings = Arrays.stream(bore)
                .map(at -> Station.of(inches(at[0]), inches(at[1])))
                .toList();
        Bore hole = Bore.ofReadings(readings, BoreEnd.FLAT);
        Head head = new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                new HeadMass(
                        grams(headGrams),
                        Reading.measured(new HeadCentre(inches(centre), Length.ZERO)),
                        Reading.unknown("a pendulum")),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), inches(mouthToGround)),
                hole,
                Hosel.of(inches(.530)));
        Shaft raw = new Shaft(
                "for " + label,
                new Blank("mid", inches(8), ShaftMaterial.COMPOSITE),
                inches(shaft[0]),
                ShaftMass.of(grams(shaft[1]), inches(shaft[2])),
                section,
                Reading.unknown("time it on a clamp"));
        Grip grip = new Grip(
                "practice", grams(gripGrams), inches(.125), inches(10.5), inches(4.40), Reading.unknown("its maker"));
        Work work = new Work(
                inches(trims[0]),
                inches(trims[1]),
                new TipWork(hole.depth(), clearOf(hole, inches(.004))),
                Seat.onBottomOf(hole),
                List.of(
                        new GripTape("tape", grams(2.4), inches(5.25)),
                        new Ferrule("ferrule", grams(1.3), inches(.370), inches(.70), inches(.35)),
                        new Adhesive("adhesive", grams(1.1))));
        return new Build(new Parts(head, raw, grip), work);
    }

    /** The shape of a bore less a clearance, from the tip end up: depth {@code y} is {@code i - y} up the tip. */
    private static List<Station> clearOf(Bore bore, Length clearance) {
        List<Station> up = new ArrayList<>();
        for (Station at : bore.profile().stations()) {
            up.add(0, Station.of(bore.depth().minus(at.at()), at.mean().minus(clearance)));
        }
        return up;
    }
}
