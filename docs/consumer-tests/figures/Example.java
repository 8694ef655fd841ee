import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.fitcheck.TipFitStep;
import java.util.List;
import java.util.Locale;

/** One invented club, which the figures with numbers are of, and how their numbers are written. */
final class Example {

    private Example() {}

    static Build club(String label, Shaft shaft, double headGrams) {
        Head head = new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(headGrams)),
                HeadGeometry.of(Angle.ofDegrees(60), Angle.ofDegrees(30), in("2 1/2")),
                bore(),
                Hosel.of(in(".530")));
        Grip grip = new Grip(
                "grip",
                Mass.ofGrams(50),
                in("1/8"),
                in("10 1/2"),
                in("4.4"),
                Reading.measured(new GripSize(in(".600"), in("1.050"))));
        return Build.of(new Parts(head, shaft, grip));
    }

    static Shaft shaft(String label, double grams) {
        return new Shaft(
                label,
                new Blank("mid", in("8"), ShaftMaterial.COMPOSITE),
                in("39"),
                ShaftMass.of(Mass.ofGrams(grams), in("20 1/4")),
                new ShaftSection(
                        DiameterProfile.cylinder(in(".3735"), in("8")),
                        in(".601"),
                        Reading.unknown("the maker"),
                        Reading.unknown("the maker")),
                Reading.unknown("the maker"));
    }

    static Bore bore() {
        return Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), BoreEnd.FLAT);
    }

    /** Trimmed, fitted and cut. */
    static ClubPlan plan() {
        List<String> clubs = List.of("6");
        return JobPlanner.of(
                        TipTrimStep.by(TrimChart.stepped("mid", clubs, in("1/2"), in("1/2"), in("1")), in("1/16")),
                        TipFitStep.with(FitTarget.of(in(".004"))),
                        CutToLengthStep.to(
                                LengthPlan.byStep(clubs, in("37 1/2"), in("1/2"), LengthMeasure.ALONG_AXIS),
                                in("1/16")))
                .plan(ClubSet.of(club("6", shaft("A", 84.1), 263.9)))
                .club("6");
    }

    static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    /** A number with so many decimals. */
    static String fixed(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number);
    }

    static String inches(Length length, int decimals) {
        return fixed(length.inches(), decimals) + " in";
    }

    static String grams(Mass mass) {
        return fixed(mass.grams(), 1) + " g";
    }
}
