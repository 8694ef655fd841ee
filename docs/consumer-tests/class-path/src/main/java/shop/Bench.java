package shop;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
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
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/** Two clubs through the whole job, from a class path. */
public final class Bench {

    private Bench() {}

    /**
     * Prints what was planned.
     *
     * @param args none
     */
    public static void main(String[] args) {
        JobPlan plan = planner().plan(ClubSet.of(club("6", "2 1/4 in", 263.9), club("7", "2 3/16 in", 271.0)));
        for (ClubPlan club : plan.clubs()) {
            System.out.println("club " + club.label());
            System.out.println("  tip trim      " + club.report(TipTrim.class).trim());
            System.out.println("  stock at end  " + club.report(TipFit.class).removal().stockAtEnd());
            System.out.println("  cut length    " + club.report(CutToLength.class).cutLength());
            ClubBalance balance = club.report(ClubBalance.class);
            System.out.println("  under D2      " + (balance.reads().compareTo(balance.scale().parse("D2")) < 0));
            for (Finding finding : club.findings()) {
                System.out.println("  " + finding.severity() + " " + finding.code().name());
            }
        }
        System.out.println("on the page: " + PlanText.plain(plan, Units.INCH).contains("37.500 in"));
        refused(() -> Length.parse("37 1/2"));
        refused(() -> Bore.ofTwoDiameters(in(".363"), in(".355"), Length.ZERO, BoreEnd.FLAT));
        refused(() -> plan.club("9"));
        refused(() -> Length.ofInches(1).plus(null));
    }

    private static JobPlanner planner() {
        List<String> clubs = List.of("6", "7");
        SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
        return JobPlanner.of(
                TipTrimStep.by(TrimChart.stepped("mid", clubs, in("1/2"), in("1/2"), in("1")), in("1/16")),
                TipFitStep.with(FitTarget.of(in(".004"))),
                CutToLengthStep.to(
                        LengthPlan.byStep(clubs, in("37 1/2"), in("1/2"), LengthMeasure.ALONG_AXIS), in("1/16")),
                SwingWeightStep.towards(
                        new SwingWeightTargets(
                                scale,
                                List.of(
                                        new SwingWeightTarget("6", scale.parse("D2"), 1),
                                        new SwingWeightTarget("7", scale.parse("D2"), 1))),
                        List.of()));
    }

    private static Build club(String label, String mouthToGround, double headGrams) {
        Head head = new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(headGrams))
                        .withCentre(Reading.measured(new HeadCentre(in("2.14"), Length.ZERO))),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), Length.parse(mouthToGround)),
                Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), BoreEnd.FLAT),
                Hosel.of(in(".530")));
        Shaft shaft = new Shaft(
                "shaft " + label,
                new Blank("mid", in("8"), ShaftMaterial.COMPOSITE),
                in("39"),
                ShaftMass.of(Mass.ofGrams(84.1), in("20 1/4")),
                new ShaftSection(
                        DiameterProfile.cylinder(in(".3735"), in("8")),
                        in(".601"),
                        Reading.unknown("the maker"),
                        Reading.unknown("the maker")),
                Reading.unknown("the maker"));
        Grip grip = new Grip("grip", Mass.ofGrams(50), in("1/8"), in("10.5"), in("4.4"), Reading.unknown("not read"));
        return Build.of(new Parts(head, shaft, grip));
    }

    private static void refused(Runnable misuse) {
        try {
            misuse.run();
            throw new AssertionError("not refused");
        } catch (IllegalArgumentException | NullPointerException e) {
            System.out.println(e.getClass().getSimpleName() + ": " + e.getMessage());
        }
    }

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }
}
