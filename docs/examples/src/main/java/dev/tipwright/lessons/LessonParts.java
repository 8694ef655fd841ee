package dev.tipwright.lessons;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
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
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/** The invented parts that the lessons share. */
public final class LessonParts {

    private LessonParts() {}

    /** A length as written on the bench, in inches: {@code "37 1/2"}. */
    public static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    /** A bore from .363 in at the mouth to .355 in at its bottom, 1 1/4 in down. */
    public static Bore taperedBore() {
        return Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), BoreEnd.FLAT);
    }

    /** A bore of .370 in all the way, 1 1/4 in deep. */
    public static Bore parallelBore() {
        return Bore.ofTwoDiameters(in(".370"), in(".370"), in("1 1/4"), BoreEnd.FLAT);
    }

    /** An iron head with that bore; its centre of mass and its inertia about it were measured. */
    public static Head head(String label, double grams, double lie, String mouthToGround, String centre, Bore bore) {
        HeadMass mass = HeadMass.of(Mass.ofGrams(grams))
                .withCentre(Reading.measured(new HeadCentre(in(centre), in("1.3"))))
                .withInertia(Reading.measured(Inertia.ofKilogramSquareCentimetres(2.4)));
        return new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                mass,
                HeadGeometry.of(Angle.ofDegrees(lie), Angle.ofDegrees(30), in(mouthToGround)),
                bore,
                Hosel.of(in(".530")));
    }

    /** A composite blank with a parallel tip of 8 in. */
    public static Blank blank(String label) {
        return new Blank(label, in("8"), ShaftMaterial.COMPOSITE);
    }

    /** A raw shaft on that blank, {@code .3735 in} over a finish of {@code .0025 in} at its tip. */
    public static Shaft shaft(String label, Blank blank, String length, double grams, String balance) {
        Wall wall = new Wall(
                ThicknessProfile.uniform(in(".0905")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)));
        Finish finish = new Finish(
                ThicknessProfile.uniform(in(".0025")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)));
        ShaftSection section = new ShaftSection(
                DiameterProfile.cylinder(in(".3735"), in("8")),
                in(".600"),
                Reading.measured(wall),
                Reading.measured(finish));
        return new Shaft(
                label,
                blank,
                in(length),
                ShaftMass.of(Mass.ofGrams(grams), in(balance)),
                section,
                Reading.unknown("a frequency meter"));
    }

    /** A grip of that mass. */
    public static Grip grip(double grams) {
        return new Grip("grip", Mass.ofGrams(grams), in(".125"), in("10 1/2"), in("4.4"), Reading.unknown("a caliper"));
    }

    /** A club seated on the bottom of its bore, with so much off its tip and the rest of what is too long off its butt. */
    public static Build club(Head head, Shaft shaft, Grip grip, Length tipTrim, Length cutLength) {
        Length buttTrim = shaft.length().minus(tipTrim).minus(cutLength);
        return new Build(
                new Parts(head, shaft, grip),
                Work.NONE.withTipTrim(tipTrim).withButtTrim(buttTrim).withSeat(Seat.onBottomOf(head.bore())));
    }
}
