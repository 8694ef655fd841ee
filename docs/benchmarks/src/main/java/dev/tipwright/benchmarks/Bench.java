package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
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
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/** One invented iron and the planner that takes it through all four steps. */
final class Bench {

    private Bench() {}

    static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    static Bore bore() {
        return Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, in(".396")),
                        Station.of(in(".015"), in(".3664")),
                        Station.of(in("1.25"), in(".355"))),
                BoreEnd.FLAT);
    }

    /** A tip of three stations, a little tapered, so that both sides have something to meet with. */
    static DiameterProfile tip() {
        return DiameterProfile.of(
                Station.of(Length.ZERO, in(".356")), Station.of(in("1"), in(".360")), Station.of(in("8"), in(".375")));
    }

    static Build build() {
        Head head = new Head(
                "6",
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(263.9)).withCentre(Reading.measured(new HeadCentre(in("2.14"), Length.ZERO))),
                HeadGeometry.of(Angle.ofDegrees(61.5), Angle.ofDegrees(28), in("2 1/4")),
                bore(),
                Hosel.of(in(".530")));
        Wall wall = new Wall(
                ThicknessProfile.uniform(in(".0905")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)));
        Finish finish = new Finish(
                ThicknessProfile.uniform(in(".0025")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)));
        Shaft shaft = new Shaft(
                "M1",
                new Blank("mid", in("8"), ShaftMaterial.COMPOSITE),
                in("39"),
                ShaftMass.of(Mass.ofGrams(84.1), in("20.25")),
                new ShaftSection(
                        DiameterProfile.cylinder(in(".3735"), in("8")),
                        in(".601"),
                        Reading.measured(wall),
                        Reading.measured(finish)),
                Reading.unknown("not timed"));
        Grip grip = new Grip("G1", Mass.ofGrams(50), in(".125"), in("10.5"), in("4.40"), Reading.unknown("not read"));
        Work work = Work.NONE.withAttached(List.of(
                new GripTape("tape", Mass.ofGrams(2.4), in("5.25")),
                new Ferrule("ferrule", Mass.ofGrams(1.3), in(".370"), in(".70"), in(".35")),
                new Adhesive("adhesive", Mass.ofGrams(1.1))));
        return new Build(new Parts(head, shaft, grip), work);
    }

    static JobPlanner planner() {
        Length kerf = in("1/16");
        SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
        return JobPlanner.of(
                TipTrimStep.by(TrimChart.stepped("mid", List.of("6"), in("1/2"), in("1/2"), in("1")), kerf),
                TipFitStep.with(new FitTarget(in(".004"), Reading.measured(in("1.1")), Reading.measured(in(".075")))),
                CutToLengthStep.to(
                        new LengthPlan(List.of(new LengthTarget("6", in("37 1/2"), LengthMeasure.ALONG_AXIS))), kerf),
                SwingWeightStep.towards(
                        new SwingWeightTargets(scale, List.of(new SwingWeightTarget("6", scale.parse("C9"), 0.5))),
                        List.of(new TipWeight("4 g", Mass.ofGrams(4), in(".185"), Length.ZERO, in(".25")))));
    }
}
