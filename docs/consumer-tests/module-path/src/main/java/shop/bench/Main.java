package shop.bench;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
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
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeightScale;

/** A number of each module, and a step of the shop's own, from a module path. */
public final class Main {

    private Main() {}

    /**
     * Prints them.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Module here = Main.class.getModule();
        System.out.println("module " + here.getName());
        System.out.println("module " + Length.class.getModule().getName());
        System.out.println("module " + FirstContact.class.getModule().getName());
        System.out.println("module " + Balance.class.getModule().getName());

        Bore bore = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), BoreEnd.FLAT);
        DiameterProfile tip = DiameterProfile.cylinder(in(".359"), in("8"));
        System.out.println("goes in " + FirstContact.of(tip, bore).insertion());

        Build club = Build.of(new Parts(head(bore), shaft(tip), grip()))
                .withWork(Work.NONE.withSeat(new Seat(in("5/8"), Stop.MARK)));
        System.out.println("weighs " + Balance.of(club).total());
        System.out.println("D0 is " + SwingWeightScale.LETTERS_AT_14_INCHES
                .moment(SwingWeightScale.LETTERS_AT_14_INCHES.parse("D0")));

        StepOutcome outcome = new OwnStep(in("36")).take(club);
        outcome.findings().forEach(finding -> System.out.println(OwnStep.words(finding)));
        System.out.println(outcome.reports().get(0).working().lines().get(0).result().symbol());
    }

    private static Head head(Bore bore) {
        return new Head(
                "6",
                ClubKind.IRON,
                Hand.LEFT,
                HeadMass.of(Mass.ofGrams(260)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), in("2 1/4")),
                bore,
                Hosel.of(in(".530")));
    }

    private static Shaft shaft(DiameterProfile tip) {
        return new Shaft(
                "A",
                new Blank("mid", in("8"), ShaftMaterial.STEEL),
                in("39"),
                ShaftMass.of(Mass.ofGrams(90), in("19.5")),
                new ShaftSection(tip, in(".600"), Reading.unknown("the maker"), Reading.unknown("the maker")),
                Reading.unknown("the maker"));
    }

    private static Grip grip() {
        return new Grip("grip", Mass.ofGrams(50), in("1/8"), in("10.5"), in("4.4"), Reading.unknown("not read"));
    }

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }
}
