package dev.tipwright.fitcheck.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.quantity.Length;
import java.util.Locale;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Tolerances and fits against ISO 286-1:2010, table 1 and the fundamental deviations, row by row; exact. */
class Iso286Test {

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    @Test
    void everyGradeOfTheTable() {
        CheckTable table = CheckTable.named("iso-286-grades");
        for (CheckTable.Row row : table.rows()) {
            for (Iso286.Grade grade : Iso286.Grade.values()) {
                double expected = row.number(grade.name().toLowerCase(Locale.ROOT) + "_um");
                Length justOver = mm(row.number("over_mm")).plus(Length.ofNanometres(1));
                assertThat(Iso286.width(justOver, grade).micrometres()).isEqualTo(expected);
                assertThat(Iso286.width(mm(row.number("up_to_mm")), grade).micrometres())
                        .isEqualTo(expected);
            }
        }
        assertThat(table.rows()).hasSize(5);
    }

    @Test
    void everyDeviationOfTheTable() {
        CheckTable table = CheckTable.named("iso-286-deviations");
        for (CheckTable.Row row : table.rows()) {
            Iso286.Deviation letter =
                    Iso286.Deviation.valueOf(row.text("letter").toUpperCase(Locale.ROOT));
            Length nominal = mm(row.number("up_to_mm"));
            SizeLimits shaft = Iso286.shaft(nominal, letter, Iso286.Grade.IT6);
            Length limit = row.text("deviation").equals("es") ? shaft.greatest() : shaft.least();
            assertThat(limit.minus(nominal).micrometres()).isEqualTo(row.number("value_um"));
        }
        assertThat(table.rows()).hasSize(33);
    }

    @Test
    void everyFitAroundTenMillimetres() {
        CheckTable table = CheckTable.named("iso-286-fits-10-h7");
        for (CheckTable.Row row : table.rows()) {
            String shaft = row.text("shaft").toUpperCase(Locale.ROOT);
            SizeLimits hole = Iso286.hole(mm(10), Iso286.Grade.IT7);
            SizeLimits limits = Iso286.shaft(
                    mm(10),
                    Iso286.Deviation.valueOf(shaft.substring(0, 1)),
                    Iso286.Grade.valueOf("IT" + shaft.charAt(1)));
            assertThat(hole)
                    .isEqualTo(new SizeLimits(mm(row.number("hole_lower_mm")), mm(row.number("hole_upper_mm"))));
            assertThat(limits)
                    .isEqualTo(new SizeLimits(mm(row.number("shaft_lower_mm")), mm(row.number("shaft_upper_mm"))));
            FitClass fit = FitClass.of(hole, limits);
            assertThat(fit.leastClearance().micrometres()).isEqualTo(row.number("least_clearance_um"));
            assertThat(fit.greatestClearance().micrometres()).isEqualTo(row.number("greatest_clearance_um"));
            assertThat(fit.kind().name()).isEqualTo(row.text("kind").toUpperCase(Locale.ROOT));
        }
        assertThat(table.rows()).hasSize(7);
    }

    @Test
    void chanceOfInterferenceAgainstAReferenceLibrary() {
        NormalDistribution normal = new NormalDistribution();
        for (int thousandths = -40_000; thousandths <= 8_000; thousandths += 37) {
            double x = thousandths / 1000.0;
            double expected = normal.cumulativeProbability(x);
            // The reference states no better than 1e-15 absolute for erf and 1e-13 relative in the tail.
            assertThat(Normal.below(x))
                    .isCloseTo(expected, org.assertj.core.data.Offset.offset(2e-15 + 1e-12 * expected));
        }
    }

    @Test
    void chanceOfInterferenceByHand() {
        // Spread of .3 and .4 is .5; a clearance of .5 is one standard deviation: 1 - .841345 (any table of the
        // normal).
        double chance = FitClass.chanceOfInterference(mm(.5), mm(.3), mm(.4));
        assertThat(chance).isCloseTo(0.158655, org.assertj.core.data.Offset.offset(5e-7));
        assertThat(FitClass.chanceOfInterference(mm(0), mm(.3), mm(.4))).isEqualTo(0.5);
        assertThat(FitClass.chanceOfInterference(mm(.1), mm(0), mm(0))).isZero();
        assertThat(FitClass.chanceOfInterference(mm(-.1), mm(0), mm(0))).isEqualTo(1);
        assertThat(FitClass.chanceOfInterference(mm(100), mm(1e-6), mm(0))).isZero();
    }

    @Test
    void limitsOfSize() {
        SizeLimits limits = SizeLimits.of(mm(10), mm(.01));
        assertThat(limits.width()).isEqualTo(mm(.02));
        assertThat(limits.middle()).isEqualTo(mm(10));
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> Iso286.width(mm(31), Iso286.Grade.IT6)).hasMessageContaining("nominal");
        assertThatThrownBy(() -> Iso286.width(mm(0), Iso286.Grade.IT6)).hasMessageContaining("nominal");
        assertThatThrownBy(() -> Iso286.shaft(mm(3), Iso286.Deviation.G, Iso286.Grade.IT6))
                .hasMessageContaining("nominal");
        assertThatThrownBy(() -> Iso286.shaft(mm(18.1), Iso286.Deviation.G, Iso286.Grade.IT6))
                .hasMessageContaining("nominal");
        assertThatThrownBy(() -> Iso286.shaft(mm(10), Iso286.Deviation.K, Iso286.Grade.IT8))
                .hasMessageContaining("grade");
        assertThatThrownBy(() -> SizeLimits.of(mm(1), mm(1))).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> new FitClass(mm(1), mm(.5))).hasMessageContaining("leastClearance");
    }
}
