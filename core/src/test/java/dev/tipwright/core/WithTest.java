package dev.tipwright.core;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Anchor;
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
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.BoreReading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.GaugePin;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.trim.TrimChart;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every component of a value has a {@code with} that changes it alone; no value has a method named as a bean would. */
class WithTest {

    /** Two of a kind that differ in every component, each of which may stand in the other. */
    record Pair(Record one, Record other) {
        @Override
        public String toString() {
            return one.getClass().getSimpleName();
        }
    }

    private static final Reading<Density> STEEL = Reading.measured(Density.ofGramsPerCubicCentimetre(7.85));
    private static final Reading<Density> BRASS = Reading.measured(Density.ofGramsPerCubicCentimetre(8.53));
    private static final Place PLACE = new Place(Anchor.GRIP_TOP, len("1 in"));
    private static final Mass GRAM = Mass.parse("1 g");
    private static final Mass TWO = Mass.parse("2 g");
    private static final Blank MID = new Blank("mid", len("7 in"), ShaftMaterial.COMPOSITE);
    private static final Blank LONG = new Blank("long", len("8 in"), ShaftMaterial.STEEL);
    private static final ThicknessProfile THIN = ThicknessProfile.uniform(len(".002 in"));
    private static final ThicknessProfile THICK = ThicknessProfile.uniform(len(".004 in"));

    static List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>(attachments());
        pairs.addAll(profiles());
        pairs.addAll(parts());
        pairs.addAll(clubs());
        return pairs;
    }

    private static List<Pair> attachments() {
        return List.of(
                new Pair(PLACE, new Place(Anchor.TIP_END, len("2 in"))),
                new Pair(new Adhesive("a", GRAM), new Adhesive("b", TWO)),
                new Pair(new Counterweight("a", GRAM, len("1 in")), new Counterweight("b", TWO, len("2 in"))),
                new Pair(
                        new Extension("a", GRAM, len("1 in"), len("1 in")),
                        new Extension("b", TWO, len("2 in"), len("2 in"))),
                new Pair(
                        new Ferrule("a", GRAM, len("9 mm"), len("1 in"), len(".5 in")),
                        new Ferrule("b", TWO, len("8 mm"), len("2 in"), len(".6 in"))),
                new Pair(new GripTape("a", GRAM, len("1 in")), new GripTape("b", TWO, len("2 in"))),
                new Pair(
                        new OtherMass("a", GRAM, PLACE),
                        new OtherMass("b", TWO, new Place(Anchor.HOSEL_MOUTH, len("1 in")))),
                new Pair(new Shim("a", GRAM, len("1 mm"), len("1 in")), new Shim("b", TWO, len("2 mm"), len("2 in"))),
                new Pair(
                        new TipWeight("a", GRAM, len("1 in"), len("1 mm"), len("1 mm")),
                        new TipWeight("b", TWO, len("2 in"), len("2 mm"), len("2 mm"))));
    }

    private static List<Pair> profiles() {
        DiameterProfile nine = DiameterProfile.cylinder(len("9 mm"), len("30 mm"));
        DiameterProfile eight = DiameterProfile.of(
                        Station.of(len("0 mm"), len("8 mm")), Station.of(len("30 mm"), len("8.1 mm")))
                .trimmedFromStart(len("1 mm"))
                .endedAt(len("20 mm"));
        return List.of(
                new Pair(new GaugePin(len("9 mm"), len("1 in")), new GaugePin(len("8 mm"), len("2 in"))),
                new Pair(
                        new Station(len("1 mm"), len("9 mm"), len("9.1 mm")),
                        new Station(len("2 mm"), len("8 mm"), len("9.2 mm"))),
                new Pair(nine, eight),
                new Pair(THIN, THICK),
                new Pair(
                        new Bore(nine, BoreEnd.FLAT, BoreReading.AT_STATIONS),
                        new Bore(nine.endedAt(len("29 mm")), BoreEnd.THROUGH, BoreReading.BY_PINS)));
    }

    private static List<Pair> parts() {
        LineDensityProfile.Knot tip = new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerMillimetre(.1));
        LineDensityProfile.Knot butt = new LineDensityProfile.Knot(len("40 in"), LineDensity.ofGramsPerMillimetre(.1));
        ShaftMass mass = ShaftMass.of(Mass.parse("80 g"), len("19 in"));
        Reading<LineDensityProfile> along = Reading.measured(new LineDensityProfile(List.of(tip, butt)));
        ShaftFlex stiff =
                new ShaftFlex(Reading.measured(new StiffnessShape.Tube(Stress.ofGigapascals(207))), List.of());
        ShaftFlex timed = new ShaftFlex(
                Reading.measured(new StiffnessShape.AtStations(List.of(
                        new StiffnessShape.Knot(Length.ZERO, BendingStiffness.ofNewtonSquareMetres(18)),
                        new StiffnessShape.Knot(len("40 in"), BendingStiffness.ofNewtonSquareMetres(80))))),
                List.of(new ShaftFlex.Timed(Frequency.ofPerMinute(300), len("5 in"), Mass.parse("200 g"))));
        Shaft shaft = Bench.shaft("a");
        ShaftSection section = shaft.section();
        ShaftSection other = new ShaftSection(
                DiameterProfile.cylinder(len(".37 in"), len("9 in")),
                len(".61 in"),
                Reading.unknown("measure it"),
                Reading.measured(Finish.NONE));
        Head head = Bench.head("7");
        return List.of(
                new Pair(MID, LONG),
                new Pair(
                        new ShaftFlex.Timed(Frequency.ofPerMinute(300), len("5 in"), Mass.parse("200 g")),
                        new ShaftFlex.Timed(Frequency.ofPerMinute(310), len("6 in"), Mass.parse("190 g"))),
                new Pair(new ShaftModel("a", List.of(MID)), new ShaftModel("b", List.of(MID, LONG))),
                new Pair(new Finish(THIN, STEEL), new Finish(THICK, BRASS)),
                new Pair(new Wall(THIN, STEEL), new Wall(THICK, BRASS)),
                new Pair(new Hosel(len(".5 in"), STEEL), new Hosel(len(".6 in"), BRASS)),
                new Pair(new SoleShape(len("1 mm"), len("2 mm")), new SoleShape(len("2 mm"), len("3 mm"))),
                new Pair(new HeadCentre(len("1 mm"), len("2 mm")), new HeadCentre(len("2 mm"), len("3 mm"))),
                new Pair(new GripSize(len(".58 in"), len(".9 in")), new GripSize(len(".6 in"), len(".91 in"))),
                new Pair(
                        Bench.grip(),
                        new Grip(
                                "b",
                                TWO,
                                len("1 mm"),
                                len("10 in"),
                                len("5 in"),
                                Reading.measured(new GripSize(len(".6 in"), len("1 in"))))),
                new Pair(
                        HeadMass.of(GRAM),
                        new HeadMass(
                                TWO,
                                Reading.measured(new HeadCentre(len("1 mm"), len("1 mm"))),
                                Reading.measured(Inertia.ofKilogramSquareCentimetres(3)))),
                new Pair(
                        head.geometry(),
                        new HeadGeometry(
                                Angle.ofDegrees(60),
                                Angle.ofDegrees(40),
                                len("3 in"),
                                Reading.measured(new SoleShape(len("1 mm"), len("1 mm"))))),
                new Pair(
                        head,
                        new Head(
                                "8",
                                ClubKind.WEDGE,
                                Hand.LEFT,
                                HeadMass.of(GRAM),
                                head.geometry().withLie(Angle.ofDegrees(60)),
                                Bench.bore(BoreEnd.CONE),
                                Hosel.of(len(".6 in")))),
                new Pair(
                        new LineDensityProfile(List.of(tip, butt)),
                        new LineDensityProfile(List.of(
                                tip, new LineDensityProfile.Knot(len("41 in"), LineDensity.ofGramsPerMillimetre(.2))))),
                new Pair(mass, new ShaftMass(Mass.parse("81 g"), len("18 in"), along)),
                new Pair(stiff, timed),
                new Pair(section, other),
                new Pair(
                        shaft,
                        new Shaft(
                                "b",
                                LONG,
                                len("40 in"),
                                mass.withAlong(along),
                                other,
                                Reading.assumed(stiff, Source.given("the maker")))));
    }

    private static List<Pair> clubs() {
        Build build = Bench.club("7");
        Parts parts = build.parts();
        Seat seat = new Seat(len("1 in"), Stop.MARK);
        TipWork tip = new TipWork(len("1 in"), List.of());
        TipWork finished = new TipWork(
                len("2 in"), List.of(Station.of(Length.ZERO, len("9 mm")), Station.of(len("1 in"), len("9.2 mm"))));
        Work work = new Work(len("1 in"), len("2 in"), tip, seat, List.of(new Adhesive("a", GRAM)));
        LengthTarget target = new LengthTarget("7", len("37 in"), LengthMeasure.ALONG_AXIS);
        TipTrim trim = new TipTrim(len("1 in"), len("1 in"), len("1.25 in"), len("1 in"), len("1 in"), len("1 mm"));
        CutToLength cut = new CutToLength(
                len("37 in"),
                len("1 mm"),
                len("1.25 in"),
                len("1 in"),
                len("1 in"),
                len("39 in"),
                len("1 in"),
                len("1 mm"));
        TrimChart chart = TrimChart.stepped("mid", List.of("7"), len("1 in"), len("1 in"), len("1 in"));
        return List.of(
                new Pair(seat, new Seat(len("1.1 in"), Stop.FLANGE)),
                new Pair(tip, finished),
                new Pair(Work.NONE.withSeat(new Seat(len("1.1 in"), Stop.CONTACT)), work),
                new Pair(
                        parts,
                        new Parts(
                                Bench.head("8"), Bench.shaft("b"), Bench.grip().withLabel("other"))),
                new Pair(build, new Build(parts.withHead(Bench.head("8")), work)),
                new Pair(ClubSet.of(build), ClubSet.of(build, Bench.club("8"))),
                new Pair(target, new LengthTarget("8", len("38 in"), LengthMeasure.ALONG_AXIS)),
                new Pair(new LengthPlan(List.of(target)), new LengthPlan(List.of(target.withClub("8")))),
                new Pair(
                        trim,
                        new TipTrim(len("2 in"), len("2 in"), len("1.5 in"), len(".5 in"), len("2 in"), len("2 mm"))),
                new Pair(
                        cut,
                        new CutToLength(
                                len("38 in"),
                                len("2 mm"),
                                len("1.5 in"),
                                len(".5 in"),
                                len("2 in"),
                                len("40 in"),
                                len("2 in"),
                                len("2 mm"))),
                new Pair(chart, TrimChart.stepped("long", List.of("7", "8"), len("1 in"), len("1 in"), len("2 in"))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aWithChangesThatComponentAlone(Pair pair) throws ReflectiveOperationException {
        for (RecordComponent changed : pair.one().getClass().getRecordComponents()) {
            String name = changed.getName();
            Method with = pair.one()
                    .getClass()
                    .getMethod(
                            "with" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1),
                            changed.getType());
            Object value = changed.getAccessor().invoke(pair.other());
            Object result = with.invoke(pair.one(), value);
            for (RecordComponent component : pair.one().getClass().getRecordComponents()) {
                Method get = component.getAccessor();
                assertThat(get.invoke(result))
                        .as("%s after %s", component.getName(), with.getName())
                        .isEqualTo(component.getName().equals(name) ? value : get.invoke(pair.one()));
            }
            if (!(value instanceof LengthMeasure)) { // there is only one so far
                assertThat(result).as(with.getName()).isNotEqualTo(pair.one());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void noMethodIsNamedAsABeanWouldNameIt(Pair pair) {
        assertThat(Arrays.stream(pair.one().getClass().getDeclaredMethods())
                        .filter(method -> Modifier.isPublic(method.getModifiers()))
                        .map(Method::getName))
                .noneMatch(name -> name.matches("(get|is|set)[A-Z].*"));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void equalValuesPrintAlike(Pair pair) {
        assertThat(pair.one()).isNotEqualTo(pair.other());
        assertThat(pair.one().toString()).isNotEqualTo(pair.other().toString());
        assertThat(pairs().stream().map(Pair::one).filter(pair.one()::equals))
                .isNotEmpty()
                .allSatisfy(again -> assertThat(again)
                        .hasSameHashCodeAs(pair.one())
                        .hasToString(pair.one().toString()));
    }
}
