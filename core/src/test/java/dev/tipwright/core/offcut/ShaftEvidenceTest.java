package dev.tipwright.core.offcut;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.codes;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.shaft;
import static dev.tipwright.core.TradeBench.trimmed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Pieces on the scale and cut faces under the caliper. */
class ShaftEvidenceTest {

    /** Rounding of a few sums of order 100 g; masses come in steps of a picogram. */
    private static final double GRAM = 1e-9;

    /** 84 g on 40 in, balanced in the middle: 2.1 g an inch everywhere. */
    private static final Shaft EVEN =
            shaft("M1", "mid").withLength(in("40")).withMass(ShaftMass.of(Mass.ofGrams(84), in("20")));

    private static double grams(Shaft shaft, String from, String to) {
        return new ShaftCut(shaft, in(from), in(to)).mass().grams();
    }

    @Test
    void aPieceThatWeighsWhatWasExpectedChangesNothing() {
        WeighedPiece tip = new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(4.2));
        ShaftReading reading = ShaftEvidence.weighed(EVEN, List.of(tip));
        assertThat(codes(reading.findings())).containsExactly("WEIGHED");
        reading.shaft()
                .mass()
                .along()
                .known()
                .orElseThrow()
                .knots()
                .forEach(knot -> assertThat(knot.density().gramsPerInch()).isCloseTo(2.1, within(GRAM)));
    }

    /** 5 g came off, so 79 g are left; and the moments about the tip stay 84 x 20. */
    @Test
    void aHeavyTipLeavesALightRest() {
        WeighedPiece tip = new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(5));
        Shaft known = ShaftEvidence.weighed(EVEN, List.of(tip)).shaft();
        assertThat(grams(known, "0", "2")).isCloseTo(5, within(GRAM));
        assertThat(grams(known, "2", "40")).isCloseTo(79, within(GRAM));
        ShaftCut whole = new ShaftCut(known, Length.ZERO, in("40"));
        assertThat(whole.balance().inches()).isCloseTo(20, within(1e-6));
    }

    /** Each piece has its mass, whatever the pieces are, and the raw shaft its mass and its balance point. */
    @Property
    void everyMassIsKept(
            @ForAll @DoubleRange(min = 0.9, max = 1.1) double tip,
            @ForAll @DoubleRange(min = 0.9, max = 1.1) double butt,
            @ForAll @DoubleRange(min = 0.99, max = 1.01) double middle) {
        List<WeighedPiece> pieces = List.of(
                new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(4.2 * tip)),
                new WeighedPiece(in("37"), in("40"), Mass.ofGrams(6.3 * butt)),
                new WeighedPiece(in("10"), in("20"), Mass.ofGrams(21 * middle)));
        Shaft known = ShaftEvidence.weighed(EVEN, pieces).shaft();
        for (WeighedPiece piece : pieces) {
            assertThat(new ShaftCut(known, piece.from(), piece.to()).mass().grams())
                    .isCloseTo(piece.mass().grams(), within(GRAM));
        }
        ShaftCut whole = new ShaftCut(known, Length.ZERO, in("40"));
        assertThat(whole.mass().grams()).isCloseTo(84, within(GRAM));
        // A nanometre of balance point is 84e-6 g mm of moment.
        assertThat(whole.balance().inches()).isCloseTo(20, within(1e-6));
        List<WeighedPiece> turned = new ArrayList<>(List.of(pieces.get(2), pieces.get(0), pieces.get(1)));
        assertThat(grams(ShaftEvidence.weighed(EVEN, turned).shaft(), "5", "9"))
                .isCloseTo(grams(known, "5", "9"), within(GRAM));
    }

    @Test
    void aCutShaftTellsWhatItsOffcutsWeighed() {
        Shaft raw = shaft("M1", "mid");
        WeighedPiece cut = WeighedPiece.cutShaft(trimmed(club("6", "M1", "mid"), "1", "2"), Mass.ofGrams(78));
        Shaft known = ShaftEvidence.weighed(raw, List.of(cut)).shaft();
        assertThat(cut.length()).isEqualTo(in("36"));
        assertThat(grams(known, "1", "37")).isCloseTo(78, within(GRAM));
        assertThat(grams(known, "0", "1") + grams(known, "37", "39")).isCloseTo(6, within(GRAM));
    }

    @Test
    void offcutsEndAtTheKerf() {
        CutSheet sheet = new CutSheet(in("39"), in("1/2"), in("2 1/8"), in("1/16"));
        assertThat(WeighedPiece.tipOffcut(sheet, Mass.ofGrams(1)).to()).isEqualTo(in("7/16"));
        assertThat(WeighedPiece.buttOffcut(sheet, Mass.ofGrams(1)).from()).isEqualTo(in("36 15/16"));
        CutSheet ground = new CutSheet(in("39"), in("1/16"), Length.ZERO, in("1/16"));
        assertThatThrownBy(() -> WeighedPiece.tipOffcut(ground, Mass.ofGrams(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sheet");
        assertThatThrownBy(() -> WeighedPiece.buttOffcut(ground, Mass.ofGrams(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sheet");
    }

    /** 4.2 g were expected: a quarter more is 5.25 g, a fifth less 3.36 g. */
    @Test
    void aPieceFarFromWhatWasExpectedIsDoubted() {
        assertThat(codeOf(5.24)).isEqualTo("WEIGHED");
        assertThat(codeOf(5.26)).isEqualTo("WEIGHED_UNLIKE");
        assertThat(codeOf(3.37)).isEqualTo("WEIGHED");
        assertThat(codeOf(3.35)).isEqualTo("WEIGHED_UNLIKE");
    }

    private static String codeOf(double grams) {
        WeighedPiece tip = new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(grams));
        return ShaftEvidence.weighed(EVEN, List.of(tip))
                .findings()
                .get(0)
                .code()
                .name();
    }

    @Test
    void massesThatDoNotAddUpAreNotUsed() {
        for (double grams : new double[] {84, 100, 30}) {
            WeighedPiece tip = new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(grams));
            ShaftReading reading = ShaftEvidence.weighed(EVEN, List.of(tip));
            assertThat(reading.shaft()).isEqualTo(EVEN);
            assertThat(reading.findings())
                    .extracting(finding -> finding.severity())
                    .containsExactly(Severity.STOP);
            assertThat(codes(reading.findings())).containsExactly("DOES_NOT_ADD_UP");
        }
    }

    @Test
    void piecesLieWithinTheShaftAndNotOverOneAnother() {
        WeighedPiece low = new WeighedPiece(Length.ZERO, in("20"), Mass.ofGrams(42));
        WeighedPiece over = new WeighedPiece(in("19"), in("30"), Mass.ofGrams(20));
        WeighedPiece past = new WeighedPiece(in("38"), in("41"), Mass.ofGrams(6));
        WeighedPiece rest = new WeighedPiece(in("20"), in("40"), Mass.ofGrams(42));
        for (List<WeighedPiece> bad : List.of(List.of(low, over), List.of(past), List.of(low, rest))) {
            assertThatThrownBy(() -> ShaftEvidence.weighed(EVEN, bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("pieces");
        }
    }

    @Test
    void aWallReadTakesTheAssumptionsPlaceAndJoinsOtherReadings() {
        Wall guess = new Wall(
                ThicknessProfile.uniform(in(".090")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)));
        Shaft assumed =
                EVEN.withSection(EVEN.section().withWall(Reading.assumed(guess, Source.assumption("a sister"))));
        ShaftReading once = ShaftEvidence.wall(assumed, in("1/2"), in(".086"));
        assertThat(codes(once.findings())).containsExactly("THICKNESS_READ");
        Wall read = once.shaft().section().wall().known().orElseThrow();
        assertThat(read.thickness().at(in("20"))).isEqualTo(in(".086"));
        assertThat(read.density()).isEqualTo(guess.density());
        Shaft twice = ShaftEvidence.wall(once.shaft(), in("38"), in(".050")).shaft();
        // Half way from 1/2 in to 38 in the wall is half way from .086 in to .050 in.
        assertThat(twice.section().wall().known().orElseThrow().thickness().at(in("19 1/4")))
                .isEqualTo(in(".068"));
        Shaft again = ShaftEvidence.wall(twice, in("38"), in(".052")).shaft();
        assertThat(again.section().wall().known().orElseThrow().thickness().knots())
                .hasSize(2);
        assertThat(again.section().wall()).isInstanceOf(Reading.Measured.class);
    }

    @Test
    void aWallThatWasNotKnownIsLearnt() {
        ShaftReading reading = ShaftEvidence.wall(EVEN, in("1/2"), in(".086"));
        assertThat(codes(reading.findings())).containsExactly("THICKNESS_LEARNT");
        assertThat(reading.shaft()
                        .section()
                        .wall()
                        .known()
                        .orElseThrow()
                        .density()
                        .known())
                .isEmpty();
    }

    @Test
    void aFinishReadOnAnOffcut() {
        Finish paint = Finish.NONE.withThickness(ThicknessProfile.uniform(in(".0025")));
        Shaft painted = EVEN.withSection(EVEN.section().withFinish(Reading.measured(paint)));
        ShaftReading reading = ShaftEvidence.finish(painted, Length.ZERO, in(".0050"));
        assertThat(codes(reading.findings())).containsExactly("THICKNESS_UNLIKE");
        assertThat(reading.findings().get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(reading.shaft()
                        .section()
                        .finish()
                        .known()
                        .orElseThrow()
                        .thickness()
                        .at(in("1")))
                .isEqualTo(in(".0050"));
        assertThat(codes(ShaftEvidence.finish(EVEN, Length.ZERO, in(".0050")).findings()))
                .containsExactly("THICKNESS_LEARNT");
    }

    /** The butt is .600 in wide, so no wall is as thick as .300 in; a finish is part of its wall. */
    @Test
    void aThicknessThatCannotBeIsNotUsed() {
        ShaftReading solid = ShaftEvidence.wall(EVEN, in("1"), in(".300"));
        assertThat(codes(solid.findings())).containsExactly("THICKNESS_IMPOSSIBLE");
        assertThat(solid.shaft()).isEqualTo(EVEN);
        Shaft walled = ShaftEvidence.wall(EVEN, in("1"), in(".086")).shaft();
        assertThat(codes(ShaftEvidence.finish(walled, in("1"), in(".086")).findings()))
                .containsExactly("THICKNESS_IMPOSSIBLE");
        assertThat(codes(ShaftEvidence.finish(EVEN, in("1"), in(".300")).findings()))
                .containsExactly("THICKNESS_IMPOSSIBLE");
    }

    @Test
    void placesAndThicknessesAreChecked() {
        assertThatThrownBy(() -> ShaftEvidence.wall(EVEN, in("41"), in(".08")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at must be");
        assertThatThrownBy(() -> ShaftEvidence.finish(EVEN, in("1"), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("thickness must be");
    }

    @Test
    void aPieceEndsBeyondWhereItBegan() {
        assertThatThrownBy(() -> new WeighedPiece(in("2"), in("2"), Mass.ofGrams(1)))
                .hasMessage("to must be beyond from, 50.8 mm, was 50.8 mm");
    }

    /** Pieces of the ends part from the rest where they were cut; a piece from between is parted in its middle. */
    @Test
    void theLineBendsWhereThePiecesWereCut() {
        List<WeighedPiece> pieces = List.of(
                new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(4.3)),
                new WeighedPiece(in("10"), in("20"), Mass.ofGrams(21)),
                new WeighedPiece(in("37"), in("40"), Mass.ofGrams(6.2)));
        assertThat(ShaftEvidence.weighed(EVEN, pieces)
                        .shaft()
                        .mass()
                        .along()
                        .known()
                        .orElseThrow()
                        .knots())
                .extracting(LineDensityProfile.Knot::at)
                .containsExactly(Length.ZERO, in("2"), in("15"), in("37"), in("40"));
    }

    /** Read at the butt first and then at the tip: half way between the wall is half way between the two. */
    @Test
    void readingsMayComeInAnyOrder() {
        Shaft butt = ShaftEvidence.wall(EVEN, in("38"), in(".050")).shaft();
        Shaft both = ShaftEvidence.wall(butt, in("1/2"), in(".086")).shaft();
        assertThat(both.section().wall().known().orElseThrow().thickness().at(in("19 1/4")))
                .isEqualTo(in(".068"));
    }

    @Test
    void aFinishKeepsItsDensityWhenItsThicknessIsRead() {
        Finish paint = new Finish(
                ThicknessProfile.uniform(in(".0025")), Reading.measured(Density.ofGramsPerCubicCentimetre(1.2)));
        Shaft painted = EVEN.withSection(EVEN.section().withFinish(Reading.measured(paint)));
        Finish read = ShaftEvidence.finish(painted, Length.ZERO, in(".0026"))
                .shaft()
                .section()
                .finish()
                .known()
                .orElseThrow();
        assertThat(read.density()).isEqualTo(paint.density());
    }

    /** 2.1 g an inch: 4.2 g were expected of 2 in. */
    @Test
    void aFindingSaysWhatThePieceWeighsAndWhatWasExpected() {
        WeighedPiece tip = new WeighedPiece(Length.ZERO, in("2"), Mass.ofGrams(4.3));
        assertThat(ShaftEvidence.weighed(EVEN, List.of(tip)).findings().get(0).message(Units.METRIC))
                .isEqualTo("the piece from 0.0 mm to 50.8 mm weighs 4.30 g where 4.20 g was expected:"
                        + " the weighed mass is used from now on");
    }
}
