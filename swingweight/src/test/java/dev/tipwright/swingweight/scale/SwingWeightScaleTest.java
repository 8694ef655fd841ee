package dev.tipwright.swingweight.scale;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pins down the letter scale against its table (common practice, from memory; no published source), how a reading is written and
 * read, and what is refused. Tolerance 1e-9 of a point: a moment of some 1e5 g mm carries sixteen digits.
 */
class SwingWeightScaleTest {

    private static final SwingWeightScale LETTERS = SwingWeightScale.LETTERS_AT_14_INCHES;
    private static final SwingWeightScale POINTS =
            new SwingWeightScale(Length.ofInches(12), FirstMoment.ZERO, FirstMoment.ofOunceInches(2), "", 10);

    @Test
    void everyRowOfTheLetterScaleIsRead() {
        CheckTable table = CheckTable.named("swing-weight-letters");
        SwingWeight d0 = LETTERS.parse("D0");
        for (CheckTable.Row row : table.rows()) {
            FirstMoment moment = FirstMoment.ofOunceInches(row.number("moment_oz_in"));
            SwingWeight reading = LETTERS.read(moment);
            assertThat(LETTERS.designation(reading)).as("%s", row).isEqualTo(row.text("reading") + ".0");
            assertThat(reading.over(d0)).as("%s", row).isCloseTo(row.number("points_from_d0"), within(1e-9));
            assertThat(LETTERS.moment(LETTERS.parse(row.text("reading"))).ounceInches())
                    .as("%s", row)
                    .isCloseTo(row.number("moment_oz_in"), within(1e-9));
        }
        assertThat(table.rows()).hasSize(60);
    }

    @Test
    void theFulcrumIsWhereThePatentPutsIt() {
        CheckTable table = CheckTable.named("swing-weight-fulcrum");
        assertThat(LETTERS.fulcrum().inches())
                .isEqualTo(table.row("quantity", "fulcrum in patent 6 765 156").number("value"));
    }

    /** Ten points a letter from A0 at zero: C9.2 is 2 x 10 + 9.2. */
    @ParameterizedTest
    @CsvSource({
        "0, A0.0",
        "29.2, C9.2",
        "29.94, C9.9",
        "29.96, D0.0",
        "30, D0.0",
        "-0.04, A0.0",
        "-0.06, A-0.1",
        "-1.5, A-1.5",
        "-12, A-12.0",
        "69.96, G10.0",
        "72, G12.0",
        "1000, G940.0"
    })
    void readingsAreWrittenToATenth(double points, String written) {
        assertThat(LETTERS.designation(new SwingWeight(points))).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({"D2, 32", "D2.4, 32.4", "' D 2 ', 32", "A-1.5, -1.5", "G12, 72", "C12, 32", "D0.000000001, 30.000000001"
    })
    void writtenReadingsAreRead(String written, double points) {
        assertThat(LETTERS.parse(written).points()).isEqualTo(points);
    }

    @Test
    void aScaleWithoutLettersGivesPoints() {
        assertThat(POINTS.designation(new SwingWeight(20.04))).isEqualTo("20.0");
        assertThat(POINTS.designation(new SwingWeight(-0.01))).isEqualTo("0.0");
        assertThat(POINTS.parse("20.5").points()).isEqualTo(20.5);
        assertThat(POINTS.parse("-3").points()).isEqualTo(-3);
        // 247.5 oz in at 2 oz in a point
        assertThat(POINTS.read(FirstMoment.ofOunceInches(247.5)).points()).isCloseTo(123.75, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"H2", "d2", "2", "D", "D2.", "D--2", "DD2", "D1e3", "D2 in", "D1234567", "D,2", "''", "٣"})
    void whatIsNoReadingOfTheScaleIsRefused(String written) {
        assertThatThrownBy(() -> LETTERS.parse(written))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("designation must be a letter of ABCDEFG and points, was \"" + written + "\"");
    }

    @Test
    void lettersAreRefusedWhereThereAreNone() {
        assertThatThrownBy(() -> POINTS.parse("D2"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("designation must be points, was \"D2\"");
    }

    @Test
    void theLargestReadingIsStillWritten() {
        assertThat(LETTERS.designation(new SwingWeight(1e9))).isEqualTo("G999999940.0");
        assertThat(POINTS.designation(new SwingWeight(-1e9))).isEqualTo("-1000000000.0");
    }

    @Test
    void readingsOutOfRangeAreRefused() {
        for (double points : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 1.1e9, -1.1e9, Double.MAX_VALUE}) {
            assertThatThrownBy(() -> new SwingWeight(points))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("points must be from -1e9 to 1e9, was " + points);
        }
        SwingWeight most = new SwingWeight(1e9);
        refused("more must leave the sum from -1e9 to 1e9, was 1.0", () -> most.plus(1));
        refused("more must leave the sum from -1e9 to 1e9, was NaN", () -> most.plus(Double.NaN));
        assertThat(most.over(new SwingWeight(-1e9))).isEqualTo(2e9);
        refused(
                "moment must read from -1e9 to 1e9 points, was 1.0E300 g mm",
                () -> LETTERS.read(FirstMoment.ofGramMillimetres(1e300)));
    }

    /** A kilogram at a metre is 9.80665 N m; the 213.5 oz in of D0 are 213.5 x 28.349523125 g x 25.4 mm of that. */
    @Test
    void aMomentTurnsWithATorque() {
        assertThat(SwingWeightScale.torque(FirstMoment.ofGramMillimetres(1e6)).newtonMetres())
                .isCloseTo(9.80665, within(1e-15 * 10));
        assertThat(SwingWeightScale.torque(FirstMoment.ofOunceInches(213.5)).newtonMetres())
                .isCloseTo(213.5 * 0.028349523125 * 0.0254 * 9.80665, within(1e-14));
        missing("moment", () -> SwingWeightScale.torque(null));
    }

    /** A scale of its own: 10 in fulcrum, zero at 250 oz in, 2 oz in a point, five points a letter from K. */
    @Test
    void aCallersOwnScaleIsReadAndWritten() {
        SwingWeightScale own = new SwingWeightScale(
                Length.ofInches(10), FirstMoment.ofOunceInches(250), FirstMoment.ofOunceInches(2), "KLM", 5);
        assertThat(own.designation(own.read(FirstMoment.ofOunceInches(264)))).isEqualTo("L2.0");
        assertThat(own.designation(own.read(FirstMoment.ofOunceInches(300)))).isEqualTo("M15.0");
        assertThat(own.designation(own.read(FirstMoment.ofOunceInches(245)))).isEqualTo("K-2.5");
        for (String written : new String[] {"L2.0", "M15.0", "K-2.5"}) {
            assertThat(own.designation(own.parse(written))).isEqualTo(written);
        }
        assertThat(own.moment(own.parse("L2")).ounceInches()).isCloseTo(264, within(1e-9));
    }

    @Test
    void readingsCompareByPoints() {
        assertThat(new SwingWeight(-0.0)).isEqualTo(new SwingWeight(0)).isEqualByComparingTo(new SwingWeight(0));
        assertThat(new SwingWeight(1)).isLessThan(new SwingWeight(2));
        assertThat(new SwingWeight(1).plus(0.5)).isEqualTo(new SwingWeight(1.5));
    }

    @Test
    void aScaleThatCannotWeighIsRefused() {
        FirstMoment point = FirstMoment.ofGramMillimetres(1260);
        Length at = Length.ofInches(14);
        refused("fulcrum must be above zero, was 0 mm", () -> scale(Length.ZERO, point, "AB", 10));
        refused("perPoint must be above zero, was 0.0 g mm", () -> scale(at, FirstMoment.ZERO, "AB", 10));
        refused(
                "perPoint must be above zero, was -1.0 g mm",
                () -> scale(at, FirstMoment.ofGramMillimetres(-1), "", 10));
        refused("letters must be capital letters, none twice, was aB", () -> scale(at, point, "aB", 10));
        refused("letters must be capital letters, none twice, was A[", () -> scale(at, point, "A[", 10));
        refused("letters must be capital letters, none twice, was ABA", () -> scale(at, point, "ABA", 10));
        refused("pointsPerLetter must be from 1 to 1000, was 0", () -> scale(at, point, "AB", 0));
        refused("pointsPerLetter must be from 1 to 1000, was 1001", () -> scale(at, point, "AB", 1001));
        assertThat(scale(at, point, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", 1000).designation(new SwingWeight(25_500)))
                .isEqualTo("Z500.0");
    }

    @Test
    void nullIsNamed() {
        FirstMoment point = FirstMoment.ofGramMillimetres(1260);
        Length at = Length.ofInches(14);
        missing("fulcrum", () -> new SwingWeightScale(null, point, point, "", 1));
        missing("zero", () -> new SwingWeightScale(at, null, point, "", 1));
        missing("perPoint", () -> new SwingWeightScale(at, point, null, "", 1));
        missing("letters", () -> new SwingWeightScale(at, point, point, null, 1));
        missing("moment", () -> LETTERS.read(null));
        missing("reading", () -> LETTERS.moment(null));
        missing("reading", () -> LETTERS.designation(null));
        missing("designation", () -> LETTERS.parse(null));
        missing("other", () -> new SwingWeight(1).over(null));
        missing("other", () -> new SwingWeight(1).compareTo(null));
    }

    private static SwingWeightScale scale(Length fulcrum, FirstMoment perPoint, String letters, int pointsPerLetter) {
        return new SwingWeightScale(fulcrum, FirstMoment.ZERO, perPoint, letters, pointsPerLetter);
    }
}
