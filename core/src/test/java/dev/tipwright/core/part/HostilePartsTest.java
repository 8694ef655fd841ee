package dev.tipwright.core.part;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.Bench;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts that cannot be: each range is refused just past its end, with argument, rule and value. */
class HostilePartsTest {

    private static final Mass GRAM = Mass.parse("1 g");
    private static final Mass NONE = Mass.ZERO;
    private static final Length INCH = len("1 in");
    private static final Length ZERO = Length.ZERO;
    private static final Length LESS = len("-1 nm");
    private static final Shaft SHAFT = Bench.shaft("A");
    private static final Head HEAD = Bench.head("7");

    private static Arguments bad(String message, ThrowingCallable call) {
        return Arguments.of(message, call);
    }

    static Stream<Arguments> attachments() {
        String mass = "mass must be above zero, was 0 g";
        return Stream.of(
                bad(mass, () -> new Adhesive("a", NONE)),
                bad(mass, () -> new Counterweight("a", NONE, INCH)),
                bad("depth must not be negative, was -0.000001 mm", () -> new Counterweight("a", GRAM, LESS)),
                bad(mass, () -> new Extension("a", NONE, INCH, INCH)),
                bad("added must be above zero, was 0 mm", () -> new Extension("a", GRAM, ZERO, INCH)),
                bad("centre must not be negative, was -0.000001 mm", () -> new Extension("a", GRAM, INCH, LESS)),
                bad(mass, () -> new Ferrule("a", NONE, INCH, INCH, INCH)),
                bad("bore must be above zero, was 0 mm", () -> new Ferrule("a", GRAM, ZERO, INCH, INCH)),
                bad("length must be above zero, was 0 mm", () -> new Ferrule("a", GRAM, INCH, ZERO, ZERO)),
                bad("centre must not be negative, was -0.000001 mm", () -> new Ferrule("a", GRAM, INCH, INCH, LESS)),
                bad(
                        "centre must be at most length, 25.4 mm, was 50.8 mm",
                        () -> new Ferrule("a", GRAM, INCH, INCH, len("2 in"))),
                bad(mass, () -> new GripTape("a", NONE, INCH)),
                bad("centre must not be negative, was -0.000001 mm", () -> new GripTape("a", GRAM, LESS)),
                bad(mass, () -> new OtherMass("a", NONE, new Place(Anchor.GRIP_TOP, INCH))),
                bad(
                        "offset must be from -3000 mm to 3000 mm, was -3001 mm",
                        () -> new Place(Anchor.GRIP_TOP, len("-3001 mm"))),
                bad(mass, () -> new Shim("a", NONE, INCH, INCH)),
                bad("wall must be above zero, was 0 mm", () -> new Shim("a", GRAM, ZERO, INCH)),
                bad("length must be above zero, was 0 mm", () -> new Shim("a", GRAM, INCH, ZERO)),
                bad(mass, () -> new TipWeight("a", NONE, INCH, ZERO, ZERO)),
                bad("stem must be above zero, was 0 mm", () -> new TipWeight("a", GRAM, ZERO, ZERO, ZERO)),
                bad("flange must not be negative, was -0.000001 mm", () -> new TipWeight("a", GRAM, INCH, LESS, ZERO)),
                bad(
                        "centre must be from -500 mm to 500 mm, was 501 mm",
                        () -> new TipWeight("a", GRAM, INCH, ZERO, len("501 mm"))),
                bad("label must be 1 to 80 printable characters, was \"\"", () -> new Adhesive("", GRAM)));
    }

    static Stream<Arguments> heads() {
        HeadGeometry geometry = HEAD.geometry();
        return Stream.of(
                bad("mass must be above zero, was 0 g", () -> HeadMass.of(NONE)),
                bad("lie must be above 0 and at most 90 deg, was 0.0 deg", () -> geometry.withLie(Angle.ZERO)),
                bad(
                        "lie must be above 0 and at most 90 deg, was 91.0 deg",
                        () -> geometry.withLie(Angle.ofDegrees(91))),
                bad(
                        "loft must be from -20.0 deg to 90.0 deg, was 91.0 deg",
                        () -> geometry.withLoft(Angle.ofDegrees(91))),
                bad("lie must be above 0 and at most 90 deg, was 0.0 deg", () -> geometry.withLie(Angle.ofDegrees(0))),
                bad(
                        "mouthToGround must be from 0.000001 mm to 500 mm, was 0 mm",
                        () -> geometry.withMouthToGround(ZERO)),
                bad("along must be from -500 mm to 500 mm, was 501 mm", () -> new HeadCentre(len("501 mm"), ZERO)),
                bad("off must be from 0 mm to 500 mm, was -0.000001 mm", () -> new HeadCentre(ZERO, LESS)),
                bad("lowest must be from -300 mm to 300 mm, was 301 mm", () -> new SoleShape(len("301 mm"), ZERO)),
                bad("radius must be from 0 mm to 3000 mm, was -0.000001 mm", () -> new SoleShape(ZERO, LESS)),
                bad("radius must be from 0 mm to 3000 mm, was 3001 mm", () -> new SoleShape(ZERO, len("3001 mm"))),
                bad("outside must be from 0.000001 mm to 100 mm, was 0 mm", () -> Hosel.of(ZERO)));
    }

    static Stream<Arguments> grips() {
        Grip grip = Bench.grip();
        return Stream.of(
                bad("mass must be above zero, was 0 g", () -> grip.withMass(NONE)),
                bad("cap must not be negative, was -0.000001 mm", () -> grip.withCap(LESS)),
                bad("length must be above zero, was 0 mm", () -> grip.withLength(ZERO)),
                bad("centre must be above zero, was 0 mm", () -> grip.withCentre(ZERO)),
                bad("centre must be at most length, 266.7 mm, was 279.4 mm", () -> grip.withCentre(len("11 in"))),
                bad("core must be above zero, was 0 mm", () -> new GripSize(ZERO, INCH)),
                bad("core must be at most outside, 25.4 mm, was 50.8 mm", () -> new GripSize(len("2 in"), INCH)),
                bad("outside must be from 0.000001 mm to 100 mm, was 101 mm", () -> new GripSize(INCH, len("101 mm"))));
    }

    static Stream<Arguments> shafts() {
        ShaftSection section = SHAFT.section();
        ShaftMass mass = SHAFT.mass();
        return Stream.of(
                bad(
                        "parallelTip must be from 0 mm to 3000 mm, was -0.000001 mm",
                        () -> SHAFT.blank().withParallelTip(LESS)),
                bad("length must be from 0.000001 mm to 3000 mm, was 3001 mm", () -> SHAFT.withLength(len("3001 mm"))),
                bad(
                        "mass must balance short of the length, 495.3 mm, was 495.3 mm",
                        () -> SHAFT.withLength(len("19.5 in"))),
                bad(
                        "section must end within the length, 228.6 mm, was 254 mm",
                        () -> SHAFT.withMass(ShaftMass.of(GRAM, INCH)).withLength(len("9 in"))),
                bad("mass must be above zero, was 0 g", () -> mass.withMass(NONE)),
                bad("balance must be above zero, was 0 mm", () -> mass.withBalance(ZERO)),
                bad("butt must be from 0.000001 mm to 100 mm, was 0 mm", () -> section.withButt(ZERO)),
                bad(
                        "outside must start at the raw tip, 0, was 1 mm",
                        () -> section.withOutside(DiameterProfile.of(
                                Station.of(len("1 mm"), len("9 mm")), Station.of(len("9 mm"), len("9 mm"))))));
    }

    static Stream<Arguments> densitiesAndStiffnesses() {
        LineDensity light = LineDensity.ofGramsPerMillimetre(.1);
        LineDensityProfile.Knot tip = new LineDensityProfile.Knot(ZERO, light);
        LineDensityProfile.Knot up = new LineDensityProfile.Knot(INCH, light);
        BendingStiffness soft = BendingStiffness.ofNewtonSquareMetres(18);
        StiffnessShape.Knot low = new StiffnessShape.Knot(ZERO, soft);
        StiffnessShape.Knot high = new StiffnessShape.Knot(INCH, soft);
        return Stream.of(
                bad("knots must be two or more", () -> new LineDensityProfile(List.of(tip))),
                bad("knots must start at the raw tip, 0, was 25.4 mm", () -> new LineDensityProfile(List.of(up, up))),
                bad("knots must be in order of their place", () -> new LineDensityProfile(List.of(tip, up, up))),
                bad(
                        "density must be above zero, was 0.0 g/mm",
                        () -> new LineDensityProfile.Knot(ZERO, LineDensity.ZERO)),
                bad(
                        "at must be from 0 mm to 3000 mm, was -0.000001 mm",
                        () -> new LineDensityProfile.Knot(LESS, light)),
                bad(
                        "mass must have its mass along the shaft read to the length, 990.6 mm, was Measured[value=",
                        () -> SHAFT.withMass(
                                SHAFT.mass().withAlong(Reading.measured(new LineDensityProfile(List.of(tip, up)))))),
                bad("knots must be two or more", () -> new StiffnessShape.AtStations(List.of(low))),
                bad(
                        "knots must start at the raw tip, 0, was 25.4 mm",
                        () -> new StiffnessShape.AtStations(List.of(high, high))),
                bad(
                        "knots must be in order of their place, was 0 mm",
                        () -> new StiffnessShape.AtStations(List.of(low, high, low))),
                bad(
                        "knots must be at most two at one place, was three at 0 mm",
                        () -> new StiffnessShape.AtStations(List.of(low, low, low, high))),
                bad(
                        "knots must be at most two at one place, was three at 25.4 mm",
                        () -> new StiffnessShape.AtStations(List.of(low, high, high, high))),
                bad("knots must span some length, was [", () -> new StiffnessShape.AtStations(List.of(low, low))),
                bad(
                        "stiffness must be above zero, was 0.0 N m2",
                        () -> new StiffnessShape.Knot(ZERO, BendingStiffness.ZERO)),
                bad("modulus must be above zero, was 0.0 MPa", () -> new StiffnessShape.Tube(Stress.ZERO)),
                bad(
                        "frequency must be above zero, was 0.0 /min",
                        () -> new ShaftFlex.Timed(Frequency.ZERO, INCH, GRAM)),
                bad(
                        "clamp must not be negative, was -0.000001 mm",
                        () -> new ShaftFlex.Timed(Frequency.ofPerMinute(300), LESS, GRAM)),
                bad(
                        "tipMass must not be negative, was -1 g",
                        () -> new ShaftFlex.Timed(Frequency.ofPerMinute(300), INCH, Mass.parse("-1 g"))));
    }

    @ParameterizedTest
    @MethodSource({"attachments", "heads", "grips", "shafts", "densitiesAndStiffnesses"})
    void isRefusedWithArgumentRuleAndValue(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(message);
    }

    @Test
    void nullIsNamed() {
        assertThatNullPointerException().isThrownBy(() -> HEAD.withBore(null)).withMessage("bore must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> SHAFT.withSection(null))
                .withMessage("section must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Bench.grip().withSize(null))
                .withMessage("size must not be null");
    }

    @Test
    void aModelKnowsItsBlanksByLabel() {
        Blank mid = SHAFT.blank();
        ShaftModel model = new ShaftModel("bench", List.of(mid, mid.withLabel("long")));
        assertThat(model.blank("mid")).isEqualTo(mid);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> model.blank("short"))
                .withMessage("label must be one of the blanks of bench, was \"short\"");
        assertThatNullPointerException().isThrownBy(() -> model.blank(null)).withMessage("label must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShaftModel("bench", List.of(mid, mid)))
                .withMessage("blanks must name each one once, but has more than one of [mid]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShaftModel("bench", List.of()))
                .withMessage("blanks must not be empty, was []");
    }

    /** Mouth 2 1/4 in over the ground, bore 1 1/4 in deep: the bottom is 1 in up. */
    @Test
    void theBottomOfTheBoreIsItsDepthUnderTheMouth() {
        assertThat(HEAD.bottomToGround()).isEqualTo(INCH);
    }

    @Test
    void everyAttachmentSaysWhereItIs() {
        assertThat(new Adhesive("a", GRAM).place()).isEqualTo(new Place(Anchor.MID_INSERTION, ZERO));
        assertThat(new Counterweight("a", GRAM, INCH).place()).isEqualTo(new Place(Anchor.GRIP_TOP, INCH));
        assertThat(new Extension("a", GRAM, len("2 in"), INCH).place()).isEqualTo(new Place(Anchor.GRIP_TOP, INCH));
        assertThat(new Ferrule("a", GRAM, INCH, INCH, INCH).place()).isEqualTo(new Place(Anchor.HOSEL_MOUTH, INCH));
        assertThat(new GripTape("a", GRAM, INCH).place()).isEqualTo(new Place(Anchor.GRIP_TOP, INCH));
        // A shim lies along the tip from its end: its middle is half its length up.
        assertThat(new Shim("a", GRAM, INCH, len("1 in")).place()).isEqualTo(new Place(Anchor.TIP_END, len(".5 in")));
        assertThat(new TipWeight("a", GRAM, INCH, ZERO, len("2 mm")).place())
                .isEqualTo(new Place(Anchor.TIP_END, len("2 mm")));
    }

    @Test
    void whatIsNotMeasuredSaysWhomToAsk() {
        assertThat(HeadMass.of(GRAM).centre()).isInstanceOf(Reading.Unknown.class);
        assertThat(Hosel.of(INCH).metal()).isEqualTo(Reading.unknown("the head's maker"));
        assertThat(ShaftMass.of(GRAM, INCH).along()).isEqualTo(Reading.unknown("weigh the offcuts"));
        assertThat(Finish.NONE.thickness().at(INCH)).isEqualTo(ZERO);
    }

    @Test
    void aShaftMayStandUpright() {
        Angle upright = Angle.ofDegrees(90);
        assertThat(HEAD.geometry().withLie(upright).lie()).isEqualTo(upright);
    }
}
