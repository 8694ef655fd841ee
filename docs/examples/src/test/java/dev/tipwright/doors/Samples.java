package dev.tipwright.doors;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.cut.CutMark;
import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.cut.CutTurn;
import dev.tipwright.core.cut.CuttingOrder;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.flex.FlexDoubt;
import dev.tipwright.core.flex.FlexReview;
import dev.tipwright.core.flex.FlexStep;
import dev.tipwright.core.flex.FrequencyLine;
import dev.tipwright.core.flex.ShaftBend;
import dev.tipwright.core.flex.ShapeCheck;
import dev.tipwright.core.flex.TrimEffect;
import dev.tipwright.core.grip.GripFit;
import dev.tipwright.core.grip.GripStep;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthDoubt;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.length.LongestSet;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.mass.RemovedMaterial;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.match.ClubCost;
import dev.tipwright.core.match.ForbiddenPair;
import dev.tipwright.core.match.MatchedPair;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.offcut.ShaftEvidence;
import dev.tipwright.core.offcut.ShaftReading;
import dev.tipwright.core.offcut.WeighedPiece;
import dev.tipwright.core.orient.OrientStep;
import dev.tipwright.core.orient.Orientation;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Attachments;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.Extension;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftModel;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Shim;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.Progress;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.GaugePin;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.core.rules.ClubLimits;
import dev.tipwright.core.rules.RulesDoubt;
import dev.tipwright.core.rules.RulesReport;
import dev.tipwright.core.rules.RulesStep;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.core.trim.TrimCode;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.BuildInput;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.Correlation;
import dev.tipwright.core.uncertainty.DegreesOfFreedom;
import dev.tipwright.core.uncertainty.Expanded;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Interval;
import dev.tipwright.core.uncertainty.LinearityCheck;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.Model;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.core.uncertainty.MonteCarloResult;
import dev.tipwright.core.uncertainty.Nudge;
import dev.tipwright.core.uncertainty.Nudges;
import dev.tipwright.core.uncertainty.SecondOrder;
import dev.tipwright.core.uncertainty.UncertainClub;
import dev.tipwright.fitcheck.BoreDepthCheck;
import dev.tipwright.fitcheck.FitDoubt;
import dev.tipwright.fitcheck.FitGauges;
import dev.tipwright.fitcheck.FitQuantity;
import dev.tipwright.fitcheck.FitReadings;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.fitcheck.StockReview;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.bond.BondLimits;
import dev.tipwright.fitcheck.bond.ShearLag;
import dev.tipwright.fitcheck.bond.Tube;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.insert.WitnessMark;
import dev.tipwright.fitcheck.insert.WitnessMarks;
import dev.tipwright.fitcheck.limits.FitClass;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.limits.SizeLimits;
import dev.tipwright.fitcheck.other.BoreOpening;
import dev.tipwright.fitcheck.other.Drill;
import dev.tipwright.fitcheck.other.Margin;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.other.ShimReach;
import dev.tipwright.fitcheck.other.WayToFit;
import dev.tipwright.fitcheck.set.AssemblyAim;
import dev.tipwright.fitcheck.set.FittedPair;
import dev.tipwright.fitcheck.set.LabelledBore;
import dev.tipwright.fitcheck.set.LabelledTip;
import dev.tipwright.fitcheck.set.Rescue;
import dev.tipwright.fitcheck.set.RescueChoice;
import dev.tipwright.fitcheck.set.SelectiveAssembly;
import dev.tipwright.fitcheck.taper.KnownTip;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.NextMeasurement;
import dev.tipwright.fitcheck.taper.PassRate;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.StockLeft;
import dev.tipwright.fitcheck.taper.StockRange;
import dev.tipwright.fitcheck.taper.StopReading;
import dev.tipwright.fitcheck.taper.StopReport;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.fitcheck.used.BoreCleaning;
import dev.tipwright.fitcheck.used.UsedTip;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.ShaftReview;
import dev.tipwright.swingweight.SwingWeightCost;
import dev.tipwright.swingweight.SwingWeightDoubt;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.TipWeightStep;
import dev.tipwright.swingweight.aim.InertiaSolve;
import dev.tipwright.swingweight.aim.LengthSolve;
import dev.tipwright.swingweight.aim.LieForLength;
import dev.tipwright.swingweight.aim.MassSolve;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.aim.Worth;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.learn.Forecast;
import dev.tipwright.swingweight.learn.FoundCheck;
import dev.tipwright.swingweight.learn.LearntCentre;
import dev.tipwright.swingweight.learn.ScaleReading;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ChartClub;
import dev.tipwright.swingweight.set.ClubChange;
import dev.tipwright.swingweight.set.SetChart;
import dev.tipwright.swingweight.set.SetSpread;
import java.lang.reflect.Executable;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One good value for every type that crosses the public API, invented for the tests: the registry that the bad-argument test and the
 * documentation snippets draw on. A type without one fails the test that needs it.
 */
public final class Samples {

    private static final Map<String, Object> GOOD = new LinkedHashMap<>();

    /** Where any good value will not do: by the class it is given to and the name of the argument, or by the name alone. */
    private static final Map<String, Object> BY_NAME = Map.ofEntries(
            Map.entry("letters", "ABCDEFG"),
            Map.entry("nu", 2.0),
            Map.entry("probability", 0.9),
            Map.entry("BuildInput.input", Input.ofStandard("head mass", "g", 0, 0.1)),
            Map.entry("Interval.high", 0.75),
            Map.entry("radius", in("40")),
            Map.entry("Correlation.first", "head mass"),
            Map.entry("Correlation.second", "grip mass"),
            Map.entry("MonteCarlo.trials", 100),
            Map.entry("designation", "D2"),
            Map.entry("clearance", in(".004")),
            Map.entry("read", in("2")),
            Map.entry("pass", in(".001")),
            Map.entry("tolerance", in("1/64")),
            Map.entry("depthTolerance", in("1/64")),
            Map.entry("caliperTolerance", in(".0002")),
            Map.entry("Tube.outside", in(".35")),
            Map.entry("Tube.inside", in(".2")),
            Map.entry(
                    "ShearLag.hosel",
                    new Tube(in(".53"), in(".37"), Stress.ofGigapascals(200), Stress.ofGigapascals(80))),
            Map.entry("Drill.diameter", in(".368")),
            Map.entry("cutter", in(".368")),
            Map.entry("oversize", Reading.measured(in(".002"))),
            Map.entry("loosest", in(".006")),
            Map.entry("WitnessMarks.insertion", Length.ZERO),
            Map.entry("FitGauges.tip", Instrument.ofStandard("micrometer", "mm", 0.003, 0.002)),
            Map.entry("FitGauges.bore", Instrument.ofStandard("pins", "mm", 0.003, 0.002)),
            Map.entry("FitGauges.depth", Instrument.ofStandard("rule", "mm", 0.2, 0)),
            Map.entry("UsedTip.found", DiameterProfile.cylinder(in(".36"), in("1.25"))),
            Map.entry("ShimFit.tip", DiameterProfile.cylinder(in(".34"), in("8"))),
            Map.entry("ShimFit.least", in(".004")),
            Map.entry("ShimFit.greatest", in(".005")),
            Map.entry("walls", List.of(in(".003"))),
            Map.entry("Bond.beads", Optional.of(in(".002"))),
            Map.entry("nominal", Length.ofMillimetres(10)),
            Map.entry("SizeLimits.least", in(".354")),
            Map.entry("SizeLimits.of.tolerance", in(".001")),
            Map.entry("FitClass.leastClearance", in(".003")),
            Map.entry("Lean.lowerAt", Length.ZERO),
            Map.entry("place", in("1.25")),
            Map.entry("StopReading.insertion", Optional.of(in("1/2"))),
            Map.entry("StopReading.ofDepth.insertion", in("1/2")),
            Map.entry("StockRange.least", in(".004")),
            Map.entry("PassRate.least", in(".0008")),
            Map.entry("StagedTip.finished", finishedTip()),
            Map.entry("StockLeft.least", Optional.of(in(".004"))),
            Map.entry("outside", in("1.05")),
            Map.entry("boreDepth", in("1.25")),
            Map.entry("ClubSet.label", "6"),
            Map.entry("JobPlan.label", "6"),
            Map.entry("ShaftModel.label", "mid"),
            Map.entry("Finding.symbol", "T"),
            Map.entry("FrequencyLine.club", "6"),
            Map.entry("ClubBalance.label", "head"),
            Map.entry("Balance.label", "head"),
            Map.entry("Seat.stop", Stop.BORE_BOTTOM),
            Map.entry("CuttingOrder.club", "6"),
            Map.entry("towards", Notation.Rounding.UP),
            Map.entry("WeighedPiece.from", Length.ZERO),
            Map.entry("CutSheet.rawLength", in("39")),
            Map.entry("ShaftEvidence.thickness", in(".08")),
            Map.entry("TapeLayers.thickness", in(".005")),
            Map.entry("Ferrule.centre", in(".35")),
            Map.entry("Grip.length", in("10.5")),
            Map.entry("Shaft.length", in("39")),
            Map.entry("DiameterProfile.length", in("7")),
            Map.entry("DiameterProfile.from", Length.ZERO),
            Map.entry("DiameterProfile.extendedTo.length", in("9")),
            Map.entry(
                    "DiameterProfile.stations",
                    List.of(Station.of(Length.ZERO, in(".36")), Station.of(in("9"), in(".37")))),
            Map.entry("Station.least", in(".3")),
            Map.entry("MassSolve.place", Length.ZERO),
            Map.entry("most", Mass.ofGrams(300)),
            Map.entry("StockChoice.most", 1),
            Map.entry("TipWeightStep.most", 1),
            Map.entry("SwingWeightStep.most", 1),
            Map.entry("shortest", in("1")),
            Map.entry("longest", in("36")),
            Map.entry("LieForLength.limit", Reading.measured(Angle.ofDegrees(2))),
            Map.entry("longer.more", in("1/8")),
            Map.entry("inertiaUncertainty", Inertia.ofKilogramSquareCentimetres(5)));

    private Samples() {}

    private static DiameterProfile finishedTip() {
        return DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1.25"), in(".359")));
    }

    static {
        quantities();
        shapes();
        parts();
        clubs();
        results();
        sureness();
    }

    private static void put(Class<?> type, Object value) {
        GOOD.put(type.getTypeName(), value);
    }

    private static void put(String type, Object value) {
        GOOD.put(type, value);
    }

    /** A good value of a type, by its full name with type arguments. */
    static Optional<Object> of(Type type) {
        return Optional.ofNullable(GOOD.get(type.getTypeName()));
    }

    /** A good value for an argument that must fit the others: by the door and its name. */
    static Optional<Object> byName(Executable door, String name) {
        String owner = door.getDeclaringClass().getSimpleName();
        if (owner.equals("ShaftMatcher") && name.equals("set")) {
            return Optional.of(set()); // nothing done to it yet
        }
        if (door.getName().equals("parse") && name.equals("text")) {
            return of(door.getDeclaringClass()).map(Object::toString);
        }
        return Stream.of(owner + "." + door.getName() + "." + name, owner + "." + name, name)
                .filter(BY_NAME::containsKey)
                .findFirst()
                .map(BY_NAME::get);
    }

    /** A raw shaft, for examples. */
    public static Shaft shaft() {
        return get(Shaft.class);
    }

    /** A worked and seated club, for examples. */
    public static Build build() {
        return get(Build.class);
    }

    /** A set of one untouched club, for examples. */
    public static ClubSet set() {
        return ClubSet.of(Build.of(get(Parts.class)));
    }

    /** A trim chart for that club, for examples. */
    public static TrimChart chart() {
        return get(TrimChart.class);
    }

    /** Its length, for examples. */
    public static LengthPlan lengths() {
        return get(LengthPlan.class);
    }

    /** Its swing weight, for examples. */
    public static SwingWeightTargets targets() {
        return get(SwingWeightTargets.class);
    }

    /** A stock of tip weights, for examples. */
    public static List<TipWeight> tipWeights() {
        return List.of(get(TipWeight.class));
    }

    static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static void quantities() {
        put(double.class, 0.5);
        put(long.class, 2L);
        put(int.class, 2);
        put(boolean.class, true);
        put(String.class, "12.5 mm");
        put(Object.class, "anything");
        put(Length.class, in("1"));
        put(Mass.class, Mass.ofGrams(50));
        put(Angle.class, Angle.ofDegrees(62));
        put(Area.class, Area.ofSquareMillimetres(20));
        put(Volume.class, Volume.ofCubicMillimetres(200));
        put(Density.class, Density.ofGramsPerCubicCentimetre(1.55));
        put(LineDensity.class, LineDensity.ofGramsPerInch(2.2));
        put(FirstMoment.class, FirstMoment.ofOunceInches(213.5));
        put(Inertia.class, Inertia.ofKilogramSquareCentimetres(2700));
        put(Frequency.class, Frequency.ofPerMinute(300));
        put(Stress.class, Stress.ofGigapascals(120));
        put(BendingStiffness.class, BendingStiffness.ofNewtonSquareMetres(20));
        put(Notation.Printed.class, Notation.THOUSANDTHS.print(in("1")));
    }

    private static void shapes() {
        Station station = Station.of(Length.ZERO, in(".363"));
        Station deeper = Station.of(in("1.25"), in(".355"));
        put(Station.class, station);
        put(Station[].class, new Station[] {station, deeper});
        put(Stations.class, Stations.of(List.of(station, deeper)));
        put(long[].class, new long[] {9_220_000});
        put("java.util.List<" + Station.class.getName() + ">", List.of(station, deeper));
        put("java.util.List<? extends " + Station.class.getName() + ">", List.of(station, deeper));
        put(DiameterProfile.class, DiameterProfile.cylinder(in(".3735"), in("8")));
        put(GaugePin.class, new GaugePin(in(".355"), in("1.25")));
        put("java.util.List<" + GaugePin.class.getName() + ">", List.of(new GaugePin(in(".350"), in("1.30"))));
        put(ThicknessProfile.class, ThicknessProfile.uniform(in(".0025")));
        ThicknessProfile.Knot knot = new ThicknessProfile.Knot(Length.ZERO, in(".0025"));
        put(ThicknessProfile.Knot.class, knot);
        put("java.util.List<" + ThicknessProfile.Knot.class.getTypeName() + ">", List.of(knot));
        put(Bore.class, Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT));
    }

    private static void parts() {
        Source source = Source.assumption("a sample");
        put(Source.class, source);
        put("Q", in("1"));
        put(Reading.class, Reading.measured(in("1")));
        put("dev.tipwright.core.evidence.Reading<Q>", Reading.assumed(in("1"), source));
        put(
                "java.util.function.Function<? super Q, dev.tipwright.core.evidence.Term>",
                (java.util.function.Function<Length, Term>) at -> Term.of("c", "place", at));
        put(Reading.Measured.class, new Reading.Measured<>(in("1")));
        put(Reading.Assumed.class, new Reading.Assumed<>(in("1"), source));
        put(Reading.Unknown.class, new Reading.Unknown<>("the maker"));
        put(Place.class, new Place(Anchor.TIP_END, in("1/2")));
        put(HeadCentre.class, new HeadCentre(in("2.14"), Length.ZERO));
        HeadMass headMass =
                HeadMass.of(Mass.ofGrams(263.9)).withCentre(Reading.measured(new HeadCentre(in("2.14"), Length.ZERO)));
        put(HeadMass.class, headMass);
        put(SoleShape.class, new SoleShape(in("1.2"), in("10")));
        HeadGeometry geometry = HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(30), in("2 1/4"));
        put(HeadGeometry.class, geometry);
        put(Hosel.class, Hosel.of(in(".530")));
        put(
                Head.class,
                new Head(
                        "6",
                        ClubKind.IRON,
                        Hand.RIGHT,
                        headMass,
                        geometry,
                        (Bore) GOOD.get(Bore.class.getTypeName()),
                        Hosel.of(in(".530"))));
        Blank blank = new Blank("mid", in("8"), ShaftMaterial.COMPOSITE);
        put(Blank.class, blank);
        put("java.util.List<" + Blank.class.getName() + ">", List.of(blank));
        put(ShaftModel.class, new ShaftModel("practice", List.of(blank)));
        LineDensityProfile.Knot low = new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerInch(2));
        LineDensityProfile.Knot high = new LineDensityProfile.Knot(in("39"), LineDensity.ofGramsPerInch(2.4));
        put(LineDensityProfile.Knot.class, low);
        put("java.util.List<" + LineDensityProfile.Knot.class.getTypeName() + ">", List.of(low, high));
        put(LineDensityProfile.class, new LineDensityProfile(List.of(low, high)));
        put(ShaftMass.class, ShaftMass.of(Mass.ofGrams(84.1), in("20.25")));
        Wall wall = new Wall(
                ThicknessProfile.uniform(in(".0905")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)));
        Finish finish = new Finish(
                ThicknessProfile.uniform(in(".0025")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)));
        put(Wall.class, wall);
        put(Finish.class, finish);
        ShaftSection section = new ShaftSection(
                DiameterProfile.cylinder(in(".3735"), in("8")),
                in(".601"),
                Reading.measured(wall),
                Reading.measured(finish));
        put(ShaftSection.class, section);
        StiffnessShape.Knot soft = new StiffnessShape.Knot(Length.ZERO, BendingStiffness.ofNewtonSquareMetres(20));
        StiffnessShape.Knot stiff = new StiffnessShape.Knot(in("39"), BendingStiffness.ofNewtonSquareMetres(60));
        put(StiffnessShape.Knot.class, soft);
        put("java.util.List<" + StiffnessShape.Knot.class.getTypeName() + ">", List.of(soft, stiff));
        StiffnessShape shape = new StiffnessShape.AtStations(List.of(soft, stiff));
        put(StiffnessShape.class, shape);
        put(StiffnessShape.AtStations.class, shape);
        put(StiffnessShape.Tube.class, new StiffnessShape.Tube(Stress.ofGigapascals(200)));
        ShaftFlex.Timed timed = new ShaftFlex.Timed(Frequency.ofPerMinute(300), in("5"), Mass.ofGrams(200));
        put(ShaftFlex.Timed.class, timed);
        put("java.util.List<" + ShaftFlex.Timed.class.getTypeName() + ">", List.of(timed));
        put(ShaftFlex.class, new ShaftFlex(Reading.measured(shape), List.of(timed)));
        put(
                Shaft.class,
                new Shaft(
                        "M1",
                        blank,
                        in("39"),
                        ShaftMass.of(Mass.ofGrams(84.1), in("20.25")),
                        section,
                        Reading.measured(get(ShaftFlex.class))));
        put(GripSize.class, new GripSize(in(".600"), in("1.05")));
        put(
                Grip.class,
                new Grip("G1", Mass.ofGrams(50), in(".125"), in("10.5"), in("4.40"), Reading.unknown("not read")));
        attachments();
        readings(
                Length.class,
                Density.class,
                Inertia.class,
                HeadCentre.class,
                SoleShape.class,
                Wall.class,
                Finish.class);
        readings(LineDensityProfile.class, ShaftFlex.class, StiffnessShape.class, GripSize.class);
    }

    private static void attachments() {
        Ferrule ferrule = new Ferrule("ferrule", Mass.ofGrams(1.3), in(".370"), in(".70"), in(".35"));
        put(Ferrule.class, ferrule);
        put(Adhesive.class, new Adhesive("adhesive", Mass.ofGrams(1.1)));
        put(GripTape.class, new GripTape("tape", Mass.ofGrams(2.4), in("5.25")));
        put(Attachments.class, Attachments.of(List.of(get(Adhesive.class), get(GripTape.class))));
        TipWeight weight = new TipWeight("4 g", Mass.ofGrams(4), in(".185"), Length.ZERO, in(".25"));
        put(TipWeight.class, weight);
        put("java.util.List<" + TipWeight.class.getName() + ">", List.of(weight));
        put("java.util.Optional<" + TipWeight.class.getName() + ">", Optional.of(weight));
        put(Counterweight.class, new Counterweight("counterweight", Mass.ofGrams(8), in("2")));
        put(Shim.class, new Shim("shim", Mass.ofGrams(1), in(".005"), in("1.25")));
        put(Extension.class, new Extension("extension", Mass.ofGrams(6), in("1"), in("1")));
        put(OtherMass.class, new OtherMass("other", Mass.ofGrams(1), new Place(Anchor.GRIP_TOP, in("10"))));
        put(Attachment.class, ferrule);
        put("java.util.List<" + Attachment.class.getName() + ">", List.of(ferrule));
    }

    private static void readings(Class<?>... types) {
        for (Class<?> type : types) {
            put(
                    "dev.tipwright.core.evidence.Reading<" + type.getTypeName() + ">",
                    Reading.measured(GOOD.get(type.getTypeName())));
        }
    }

    private static void clubs() {
        Parts parts = new Parts(get(Head.class), get(Shaft.class), get(Grip.class));
        put(Parts.class, parts);
        Seat seat = new Seat(in("1.25"), Stop.BORE_BOTTOM);
        put(Seat.class, seat);
        TipWork tip = new TipWork(
                in("1.25"), List.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1.25"), in(".359"))));
        put(TipWork.class, tip);
        Work work = new Work(in("1/2"), in("2 1/8"), tip, seat, List.of(get(Ferrule.class), get(Adhesive.class)));
        put(Work.class, work);
        Build build = new Build(parts, work);
        put(Build.class, build);
        put(Build[].class, new Build[] {build});
        put("java.util.List<" + Build.class.getName() + ">", List.of(build));
        put(ClubSet.class, ClubSet.of(build));
    }

    private static void results() {
        Term term = Term.of("T", "tip trim", in("1/2"));
        put(Term.class, term);
        put(Term[].class, new Term[] {term});
        put("java.util.List<" + Term.class.getName() + ">", List.of(term));
        put(FindingCode.class, TrimCode.CANNOT_TRIM);
        Finding finding = Finding.note(TrimCode.CANNOT_TRIM, term);
        put(Finding.class, finding);
        put(Finding[].class, new Finding[] {finding});
        put("java.util.List<" + Finding.class.getName() + ">", List.of(finding));
        put(Assumption.class, new Assumption(term, get(Source.class)));
        put("java.util.List<" + Assumption.class.getName() + ">", List.of(get(Assumption.class)));
        Working.Line line = new Working.Line(term, "chart", List.of(term), get(Source.class));
        put(Working.Line.class, line);
        put("java.util.List<" + Working.Line.class.getTypeName() + ">", List.of(line));
        put(Working.class, new Working("Tip trim", List.of(line)));
        for (Class<?> kind : Term.class.getPermittedSubclasses()) {
            put(kind, termOf(kind));
        }
        TipTrim trim = new TipTrim(in("1/2"), in("1"), in("1.25"), in("1.25"), in("1"), in("1/16"));
        put(TipTrim.class, trim);
        put(StepReport.class, trim);
        put("java.util.List<" + StepReport.class.getName() + ">", List.of(trim));
        put("java.lang.Class<R>", TipTrim.class);
        TrimChart.Row row = new TrimChart.Row("6", "mid", in("1/2"));
        put(TrimChart.Row.class, row);
        put("java.util.List<" + TrimChart.Row.class.getTypeName() + ">", List.of(row));
        put("java.util.List<java.lang.String>", List.of("6"));
        TrimChart chart = new TrimChart(List.of(row), in("1"));
        put(TrimChart.class, chart);
        put(TipTrimStep.class, TipTrimStep.by(chart, in("1/16")));
        put(
                CutToLength.class,
                new CutToLength(
                        in("37 1/2"), in(".125"), in("1.25"), in("1.25"), in("1"), in("39"), in("1/2"), in("1/16")));
        LengthTarget length = new LengthTarget("6", in("37 1/2"), LengthMeasure.ALONG_AXIS);
        put(LengthTarget.class, length);
        put("java.util.List<" + LengthTarget.class.getName() + ">", List.of(length));
        put(LengthPlan.class, new LengthPlan(List.of(length)));
        put(CutToLengthStep.class, CutToLengthStep.to(get(LengthPlan.class), in("1/16")));
        Shaft shaft = get(Shaft.class);
        put(ShaftCut.class, new ShaftCut(shaft, in("1/2"), in("36")));
        put(
                dev.tipwright.core.mass.ProfileVolume.class,
                new dev.tipwright.core.mass.ProfileVolume(DiameterProfile.cylinder(in(".3735"), in("8"))));
        put(RemovedMaterial.class, RemovedMaterial.of(get(Build.class)));
        flexAndRules();
        fits();
        weights();
        plans();
        benchWork();
        setsOfTips();
    }

    private static void setsOfTips() {
        TipSection section = get(TipSection.class);
        Bore bore = get(Bore.class);
        WitnessMarks marks = WitnessMarks.of(DiameterProfile.cylinder(in(".359"), in("8")), bore, in(".0004"));
        put(WitnessMarks.class, marks);
        put(WitnessMark.class, marks.marks().get(0));
        list(WitnessMark.class, marks.marks().get(0));
        put(UsedTip.class, new UsedTip(get(ShaftSection.class), in("1/2"), finishedTip(), get(ThicknessProfile.class)));
        put(BoreCleaning.class, new BoreCleaning(bore.shallowedTo(in("1.15")), bore, in(".001")));
        list(StockRange.class, new StockRange(in("-.004"), Length.ZERO));
        put(ShimReach.class, ShimReach.of(in(".004"), in(".006"), List.of(in(".003")), Optional.empty()));
        LabelledTip tip = new LabelledTip("A", section);
        LabelledBore seat = new LabelledBore("7", bore, bore.depth());
        put(LabelledTip.class, tip);
        list(LabelledTip.class, tip);
        put(LabelledBore.class, seat);
        list(LabelledBore.class, seat);
        SelectiveAssembly assembly = SelectiveAssembly.of(
                List.of(tip), List.of(seat), in(".004"), Reading.unknown("the maker"), AssemblyAim.LEAST_MATERIAL);
        put(SelectiveAssembly.class, assembly);
        put(FittedPair.class, assembly.pairs().get(0));
        list(FittedPair.class, assembly.pairs().get(0));
        FitReadings readings = new FitReadings(DiameterProfile.cylinder(in(".35"), in("8")), bore, in("1"));
        put(FitReadings.class, readings);
        Instrument micrometer = Instrument.ofStandard("micrometer", "mm", 0.003, 0.002);
        put(FitGauges.class, new FitGauges(micrometer, micrometer, micrometer));
        put(FitQuantity.class, FitQuantity.MEAN_CLEARANCE);
        put(
                "java.util.function.ToDoubleFunction<" + FitReadings.class.getName() + ">",
                (java.util.function.ToDoubleFunction<FitReadings>) any -> 1.0);
        Rescue rescue = new Rescue(get(Shaft.class), get(Work.class));
        put(Rescue.class, rescue);
        put(RescueChoice.class, rescue.over(set(), get(JobPlanner.class)).get(0));
    }

    private static void benchWork() {
        CutSheet sheet = new CutSheet(in("39"), in("1/2"), in("2 1/8"), in("1/16"));
        put(CutSheet.class, sheet);
        put(CutMark.class, sheet.tip());
        CuttingOrder order = new CuttingOrder(get(ClubSet.class));
        put(CuttingOrder.class, order);
        put(CutTurn.class, order.turns().get(0));
        WeighedPiece piece = WeighedPiece.tipOffcut(sheet, Mass.ofGrams(0.9));
        put(WeighedPiece.class, piece);
        put("java.util.List<" + WeighedPiece.class.getName() + ">", List.of(piece));
        put(ShaftReading.class, ShaftEvidence.weighed(get(Shaft.class), List.of(piece)));
        put(Progress.class, Progress.UNHEARD);
        ClubCost cost = SwingWeightCost.FINISHED;
        put(ClubCost.class, cost);
        put("java.util.OptionalDouble", OptionalDouble.of(2));
        ForbiddenPair pair = new ForbiddenPair("6", "M2");
        put(ForbiddenPair.class, pair);
        put("java.util.List<" + ForbiddenPair.class.getName() + ">", List.of(pair));
        MatchedPair matched = new MatchedPair("6", "M1", OptionalDouble.of(2), "M2", OptionalDouble.of(1));
        put(MatchedPair.class, matched);
        put("java.util.List<" + MatchedPair.class.getName() + ">", List.of(matched));
        put("java.util.List<" + Shaft.class.getName() + ">", List.of(get(Shaft.class)));
        JobPlanner planner = JobPlanner.of(CutToLengthStep.to(get(LengthPlan.class), in("1/16")));
        put(
                ShaftMatcher.class,
                ShaftMatcher.by(
                        planner, plan -> OptionalDouble.of(plan.findings().size())));
        put(ShaftMatch.class, new ShaftMatch(get(ClubSet.class), List.of(matched), List.of(), List.of()));
        put(TapeLayers.class, new TapeLayers(2, in(".005"), Mass.ofGrams(1)));
        put(GripFit.class, GripFit.of(get(Build.class), TapeLayers.NONE));
        put(GripStep.class, GripStep.over(TapeLayers.NONE));
        put(Orientation.class, Orientation.of(get(Build.class), "the seam", Angle.ofDegrees(90)));
        put(OrientStep.class, OrientStep.to("the seam", Angle.ofDegrees(90)));
        put(BoreDepthCheck.class, new BoreDepthCheck(get(Bore.class), in("1.15"), in(".02")));
    }

    private static void flexAndRules() {
        java.util.function.Function<Build, Length> rule = build -> in("37");
        put("java.util.function.Function<" + Build.class.getName() + ", " + Length.class.getName() + ">", rule);
        java.util.function.Function<Build, Frequency> swing =
                build -> ClubFrequency.of(build, in("5")).orElseThrow().frequency();
        put("java.util.function.Function<" + Build.class.getName() + ", " + Frequency.class.getName() + ">", swing);
        put(RulesDoubt.class, new RulesDoubt(bench()));
        put(LongestSet.class, new LongestSet(List.of(get(LengthTarget.class)), in("1/2")));
        put(SixtyDegreePlane.class, SixtyDegreePlane.of(get(Head.class)));
        put(ClubLimits.class, ClubLimits.EQUIPMENT_RULES);
        put(RulesStep.class, RulesStep.within(ClubLimits.EQUIPMENT_RULES, in("1/16")));
        put(RulesReport.class, new RulesReport(get(Build.class), ClubLimits.EQUIPMENT_RULES));
        ClubFrequency club = ClubFrequency.of(get(Build.class), in("5")).orElseThrow();
        put(ClubFrequency.class, club);
        put(ShaftBend.class, club.bend());
        put(TrimEffect.class, club.effectOf(in("1/2")));
        put(ShapeCheck.class, club.bend().checks(get(Shaft.class)).get(0));
        put(FlexStep.class, FlexStep.clamping(in("5"), Frequency.ofPerMinute(3)));
        put(FlexReview.class, new FlexReview(Frequency.ofPerMinute(2)));
        put(FlexDoubt.class, new FlexDoubt(bench(), Frequency.ofPerMinute(2)));
        FrequencyLine.Point six = new FrequencyLine.Point("6", in("37 1/2"), Frequency.ofPerMinute(306));
        FrequencyLine.Point seven = new FrequencyLine.Point("7", in("37"), Frequency.ofPerMinute(310));
        put(FrequencyLine.Point.class, six);
        put("java.util.List<" + FrequencyLine.Point.class.getTypeName() + ">", List.of(six, seven));
        put(FrequencyLine.class, new FrequencyLine(List.of(six, seven)));
    }

    private static Object termOf(Class<?> kind) {
        try {
            if (kind == Term.OfFactor.class) {
                return Term.momentFactor();
            }
            Object value = get(kind.getRecordComponents()[2].getType());
            return kind.getRecordComponents().length == 3
                    ? kind.getConstructors()[0].newInstance("s", "a sample", value)
                    : kind.getConstructors()[0].newInstance("s", "a sample", value, Notation.Rounding.UP);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void fits() {
        FitTarget target = FitTarget.of(in(".004"));
        put(FitTarget.class, target);
        put(TipFitStep.class, TipFitStep.with(target));
        put(StockReview.class, new StockReview());
        TipSection section = TipSection.of(get(Build.class));
        put(TipSection.class, section);
        Bore bore = get(Bore.class);
        put(FirstContact.class, FirstContact.of(section.outside(), bore));
        put(Clearance.class, Clearance.of(section.outside(), bore, in("1.25")));
        put(MaterialRemoval.class, MaterialRemoval.of(section, bore, in("1.25"), in(".004")));
        put(TipFit.class, TipFit.of(section, bore, in("1.25"), in(".004")));
        StagedTip staged =
                new StagedTip(section.outside(), get(MaterialRemoval.class).profile(), bore, in("1.25"));
        put(StagedTip.class, staged);
        put(Stage.class, staged.stage(in(".005")));
        put("java.util.List<" + Stage.class.getName() + ">", List.of(get(Stage.class)));
        put(StockLeft.class, staged.stock(in("1/2"), in("1/64")));
        put(StageTable.class, StageTable.of(staged, in(".001")));
        StopReading stop = StopReading.ofDepth(in("1/2")).withMarks(List.of(in("1/4")));
        put(StopReading.class, stop);
        put(KnownTip.class, KnownTip.of(bore, stop, in("1/64"), in(".0002")));
        put(StockRange.class, new StockRange(in(".004"), in(".005")));
        put("java.util.Optional<" + StockRange.class.getName() + ">", Optional.of(get(StockRange.class)));
        put("java.util.Optional<" + StockLeft.class.getName() + ">", Optional.of(get(StockLeft.class)));
        put(PassRate.class, new PassRate(in(".0008"), in(".0012")));
        put("java.util.List<" + Length.class.getName() + ">", List.of(in("1/4")));
        put(StopReport.class, StopReport.of(staged, stop, in(".004"), in("1/64"), in(".0002")));
        put(
                "java.util.Optional<" + NextMeasurement.class.getName() + ">",
                Optional.of(get(StageTable.class).next(get(StockLeft.class))));
        put(NextMeasurement.class, get(StageTable.class).next(get(StockLeft.class)));
        others(section, bore);
        put(SizeLimits.class, new SizeLimits(in(".354"), in(".356")));
        put(FitClass.class, new FitClass(in(".003"), in(".005")));
        put(Lean.class, Lean.of(get(MaterialRemoval.class).profile(), bore, in("1.25")));
        put("java.util.Optional<" + Mass.class.getName() + ">", Optional.of(Mass.ofGrams(4)));
        put("java.util.Optional<" + Length.class.getName() + ">", Optional.of(in(".08")));
        put("java.util.Optional<java.lang.Double>", Optional.of(0.8));
    }

    private static void others(TipSection section, Bore bore) {
        put(Drill.class, new Drill(Drill.Series.LETTER, "U", in(".368")));
        BoreOpening opening = BoreOpening.of(bore, in(".530"), in(".368"), Reading.measured(in(".002")));
        put(BoreOpening.class, opening);
        DiameterProfile finished = get(MaterialRemoval.class).profile();
        put(ShimFit.class, ShimFit.of(finished, bore, in("1.25"), in(".001"), in(".002"), List.of(in(".001"))));
        Margin margin = new Margin(Margin.What.HOSEL_WALL, in(".08"), Reading.measured(in(".07")));
        put(Margin.class, margin);
        put("java.util.List<" + Margin.class.getName() + ">", List.of(margin));
        WayToFit way = WayToFit.of(WayToFit.Way.OPEN_BORE, true, List.of(margin));
        put(WayToFit.class, way);
        put("java.util.List<" + WayToFit.class.getName() + ">", List.of(way));
        put(Force.class, Force.ofNewtons(2000));
        put(Torque.class, Torque.ofNewtonMetres(12));
        put(Speed.class, Speed.ofMetresPerSecond(40));
        put(Tube.class, new Tube(in(".35"), in(".2"), Stress.ofGigapascals(100), Stress.ofGigapascals(10)));
        put(ShearLag.class, new ShearLag(0.3, 6.5, 2.1));
        put(Bond.class, Bond.of(section.outside().widenedBy(in("-.03")), bore, in("1.25")));
        put(BondLimits.class, BondLimits.UNKNOWN);
        readings(Stress.class);
    }

    private static void weights() {
        SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
        put(SwingWeightScale.class, scale);
        put(SwingWeight.class, new SwingWeight(29));
        SwingWeightTarget target = new SwingWeightTarget("6", new SwingWeight(29), 0.5);
        put(SwingWeightTarget.class, target);
        put("java.util.List<" + SwingWeightTarget.class.getName() + ">", List.of(target));
        put("java.util.Optional<" + SwingWeightTarget.class.getName() + ">", Optional.of(target));
        put(SwingWeightTargets.class, new SwingWeightTargets(scale, List.of(target)));
        BalancePart head = BalancePart.at("head", Mass.ofGrams(263.9), in("37"));
        BalancePart grip = BalancePart.at("grip", Mass.ofGrams(50), in("4.4"));
        put(BalancePart.class, head);
        put("java.util.List<" + BalancePart.class.getName() + ">", List.of(head, grip));
        put(Balance.class, new Balance(List.of(head, grip)));
        put(
                SwingWeightStep.class,
                SwingWeightStep.towards(get(SwingWeightTargets.class), List.of(get(TipWeight.class))));
        put(ShaftReview.class, new ShaftReview());
        put(
                ClubBalance.class,
                SwingWeightStep.towards(get(SwingWeightTargets.class), List.of())
                        .take(get(Build.class))
                        .reports()
                        .get(0));
        aims(scale);
        learning(scale);
        sets(scale);
    }

    private static void aims(SwingWeightScale scale) {
        Build build = get(Build.class);
        SwingWeight wanted = get(SwingWeight.class);
        put(Worth.class, Worth.of(build, scale));
        put(MassSolve.class, MassSolve.ofHead(build, scale, wanted, Mass.ofGrams(50), Mass.ofGrams(300)));
        put(LengthSolve.class, LengthSolve.of(build, scale, wanted, in("30")));
        put(InertiaSolve.class, new InertiaSolve(build, get(Inertia.class), 0.5));
        put(StockChoice.class, StockChoice.of(build, scale, wanted, tipWeights(), 1));
        List<WorkStep> fitAndCut = List.of(CutToLengthStep.to(get(LengthPlan.class), in("1/16")));
        put(TipWeightStep.class, TipWeightStep.of(fitAndCut, targets(), tipWeights(), 1));
        put(LieForLength.class, LieForLength.of(Angle.ofDegrees(62), in("37"), in("37.5")));
        readings(Angle.class);
        put("java.util.List<" + Attachment.class.getName() + ">", List.of(get(GripTape.class)));
    }

    private static void learning(SwingWeightScale scale) {
        SwingWeight read = Balance.of(get(Build.class)).on(scale).plus(0.2);
        ScaleReading reading = ScaleReading.finished(get(Build.class), scale, read, 0.1);
        put(ScaleReading.class, reading);
        put(LearntCentre.class, new LearntCentre(reading, in(".1"), in(".02")));
        Forecast forecast = new Forecast(get(Build.class), scale, in(".02"), 0.1);
        put(Forecast.class, forecast);
        put(FoundCheck.class, FoundCheck.of(forecast, reading));
    }

    private static void sets(SwingWeightScale scale) {
        ClubSet seated = ClubSet.of(get(Build.class));
        put(SetSpread.class, new SetSpread(scale, seated));
        ClubChange change = new ClubChange(get(Build.class), get(Build.class), true);
        put(ClubChange.class, change);
        put("java.util.List<" + ClubChange.class.getName() + ">", List.of(change));
        ChartClub.Wanted wanted = new ChartClub.Wanted(
                Optional.of(get(SwingWeight.class)), Optional.of(Mass.ofGrams(400)), Optional.of(get(Inertia.class)));
        put(ChartClub.Wanted.class, wanted);
        put("java.util.Optional<" + SwingWeight.class.getName() + ">", Optional.of(get(SwingWeight.class)));
        put("java.util.Optional<" + Inertia.class.getName() + ">", Optional.of(get(Inertia.class)));
        ChartClub club = new ChartClub(
                "6",
                get(SwingWeight.class),
                0.5,
                Mass.ofGrams(400),
                Mass.ofGrams(1),
                get(Inertia.class),
                Inertia.ofKilogramSquareCentimetres(5),
                wanted);
        put(ChartClub.class, club);
        put("java.util.List<" + ChartClub.class.getName() + ">", List.of(club));
        put(SetChart.class, new SetChart(scale, List.of(club)));
    }

    private static void sureness() {
        Input input = Input.ofStandard("head mass", "g", 0, 0.1);
        put(Input.class, input);
        put(Input[].class, new Input[] {input});
        list(Input.class, input);
        Correlation correlation = new Correlation("head mass", "other", 0.5);
        put(Correlation.class, correlation);
        put("java.util.List<" + Correlation.class.getName() + ">", List.of());
        put(DegreesOfFreedom.class, DegreesOfFreedom.of(9));
        Inputs inputs = Inputs.of(input);
        put(Inputs.class, inputs);
        put(Model.class, (Model) x -> java.util.Objects.requireNonNull(x, "inputs").length == 0 ? 0 : 2 * x[0]);
        Measurand measurand = Measurand.of("double mass", "g", inputs, x -> 2 * x[0]);
        put(Measurand.class, measurand);
        put(Budget.class, Budget.of(measurand));
        put(Contribution.class, Budget.of(measurand).contributions().get(0));
        put(Expanded.class, Budget.of(measurand).expanded(0.95));
        put(Interval.class, new Interval(0.95, 0.5, 1));
        put(SecondOrder.class, SecondOrder.of(measurand));
        put(LinearityCheck.class, LinearityCheck.of(measurand, 0.1));
        put(MonteCarlo.Progress.class, (MonteCarlo.Progress) (done, total) -> {});
        put(MonteCarlo.class, MonteCarlo.of(100, 1));
        put(MonteCarloResult.class, MonteCarlo.of(100, 1).run(measurand));
        put(java.util.concurrent.ExecutorService.class, java.util.concurrent.ForkJoinPool.commonPool());
        Instrument scale = Instrument.ofStandard("scale", "g", 0.1, 0.05);
        put(Instrument.class, scale);
        put(double[].class, new double[] {1, 2});
        put(Nudge.class, Nudges.HEAD_MASS);
        put(BuildInput.class, new BuildInput(input, Nudges.HEAD_MASS));
        put(BenchInput[].class, new BenchInput[] {BenchInput.MASS});
        list(BenchInput.class, BenchInput.MASS);
        BenchUncertainty.Tool tool = BenchUncertainty.Tool.of(scale, BenchInput.MASS);
        put(BenchUncertainty.Tool.class, tool);
        put(BenchUncertainty.Tool[].class, new BenchUncertainty.Tool[] {tool});
        list(BenchUncertainty.Tool.class, tool);
        put(BenchUncertainty.class, bench());
        put(UncertainClub.class, UncertainClub.of(build(), bench()));
        Measure measure = get(ClubBalance.class).pointsMeasure();
        put(Measure.class, measure);
        put(
                "java.util.function.ToDoubleFunction<" + Build.class.getName() + ">",
                (java.util.function.ToDoubleFunction<Build>) build -> 1.0);
        put(
                "java.util.function.Function<" + Build.class.getName() + ", " + Length.class.getName() + ">",
                (java.util.function.Function<Build, Length>) Build::cutLength);
        put(SwingWeightDoubt.class, new SwingWeightDoubt(bench()));
        put(LengthDoubt.class, new LengthDoubt(bench()));
        put(FitDoubt.class, new FitDoubt(bench(), get(FitTarget.class)));
    }

    /** The instruments of a bench, for examples. */
    public static BenchUncertainty bench() {
        return BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.MASS),
                BenchUncertainty.Tool.of(
                        Instrument.ofStandard("rule", "mm", in("1/64").millimetres(), 0),
                        BenchInput.RAW_LENGTH,
                        BenchInput.MOUTH_TO_GROUND,
                        BenchInput.CUTS),
                BenchUncertainty.Tool.of(
                        Instrument.ofStandard("balance rest", "mm", in(".05").millimetres(), 0),
                        BenchInput.BALANCE_POINT),
                BenchUncertainty.Tool.of(
                        Instrument.ofStandard("dowel", "mm", in(".04").millimetres(), 0), BenchInput.HEAD_CENTRE));
    }

    /** The report of a balanced club, for examples. */
    public static ClubBalance balance() {
        return get(ClubBalance.class);
    }

    private static void list(Class<?> type, Object value) {
        put("java.util.List<" + type.getTypeName() + ">", List.of(value));
    }

    private static void plans() {
        WorkStep step = TipTrimStep.by(get(TrimChart.class), in("1/16"));
        put(WorkStep.class, step);
        put(WorkStep[].class, new WorkStep[] {step});
        put("java.util.List<" + WorkStep.class.getName() + ">", List.of(step));
        SetReview review = new StockReview();
        put(SetReview.class, review);
        put(SetReview[].class, new SetReview[] {review});
        put("java.util.List<" + SetReview.class.getName() + ">", List.of(review));
        JobPlanner planner = JobPlanner.of(step, TipFitStep.with(get(FitTarget.class)));
        put(JobPlanner.class, planner);
        JobPlan plan = planner.plan(get(ClubSet.class));
        put(JobPlan.class, plan);
        put(plan.clubs().get(0).getClass(), plan.clubs().get(0));
        put("java.util.List<" + plan.clubs().get(0).getClass().getName() + ">", new ArrayList<>(plan.clubs()));
        put(ClubFinding.class, new ClubFinding("6", get(Finding.class)));
        put(StepOutcome.class, step.take(get(Build.class)));
        Operation operation = get(TipTrim.class).operations().get(0);
        put(Operation.class, operation);
        put("dev.tipwright.core.plan.Instruction", operation.instruction());
    }

    @SuppressWarnings("unchecked")
    private static <T> T get(Class<T> type) {
        Object value = GOOD.get(type.getTypeName());
        if (value == null) {
            throw new IllegalStateException("no sample of " + type.getTypeName());
        }
        return (T) value;
    }
}
