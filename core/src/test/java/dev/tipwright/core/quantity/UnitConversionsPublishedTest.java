package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Units against the yard and pound agreement of 1959, NIST SP 811 and the SI brochure (table unit-conversions). */
class UnitConversionsPublishedTest {

    private static final CheckTable TABLE = CheckTable.named("unit-conversions");

    private static String lengthIn(String unit, String text) {
        return new BigDecimal(Length.parse(text).nanometres())
                .movePointLeft(unit.equals("m") ? 9 : unit.equals("mm") ? 6 : 3)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String massIn(String unit, String text) {
        return new BigDecimal(Mass.parse(text).picograms())
                .movePointLeft(unit.equals("kg") ? 15 : unit.equals("g") ? 12 : 9)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Exact units are exact: every digit of the table, none besides. */
    @Test
    void exactUnitsAreExact() {
        Map<String, Supplier<String>> ours = Map.of(
                "yard", () -> lengthIn("m", "36 in"),
                "foot", () -> lengthIn("m", "12 in"),
                "inch", () -> lengthIn("mm", "1 in"),
                "thousandth of an inch (mil)", () -> lengthIn("um", "1 thou"),
                "sixty-fourth of an inch", () -> lengthIn("mm", "1/64 in"),
                "pound avoirdupois", () -> massIn("kg", "1 lb"),
                "ounce avoirdupois", () -> massIn("g", "1 oz"),
                "grain", () -> massIn("mg", "1 gr"),
                "ounce troy", () -> massIn("g", "480 gr"));
        ours.forEach((unit, value) -> assertThat(value.get())
                .as(unit)
                .isEqualTo(TABLE.row("unit", unit).text("value")));
        // The same through the factories that take a double: 1 is exact in binary, so one rounding changes nothing.
        assertThat(Length.ofInches(1)).isEqualTo(Length.parse("1 in"));
        assertThat(Length.ofThousandths(1)).isEqualTo(Length.parse("1 thou"));
        assertThat(Mass.ofOunces(1)).isEqualTo(Mass.parse("1 oz"));
        assertThat(Mass.ofGrains(1)).isEqualTo(Mass.parse("1 gr"));
    }

    /** Derived units are doubles: the nearest to the exact value of the table, and back again. */
    @Test
    void exactDerivedUnitsAreTheNearestDouble() {
        assertThat(Area.ofSquareInches(1).squareMillimetres()).isEqualTo(value("square inch"));
        assertThat(Volume.ofCubicInches(1).cubicMillimetres()).isEqualTo(value("cubic inch"));
        assertThat(FirstMoment.ofOunceInches(1).gramMillimetres()).isEqualTo(value("ounce inch (mass times length)"));
        assertThat(Area.ofSquareMillimetres(value("square inch")).squareInches())
                .isEqualTo(1);
        assertThat(Volume.ofCubicMillimetres(value("cubic inch")).cubicInches()).isEqualTo(1);
        assertThat(FirstMoment.ofGramMillimetres(value("ounce inch (mass times length)"))
                        .ounceInches())
                .isEqualTo(1);
    }

    /** Units printed to so many digits agree to half of the last of them; the degree to a rounding of a double. */
    @Test
    void roundedUnitsAgreeToTheDigitsPrinted() {
        assertThat(Inertia.ofOunceSquareInches(1).gramSquareMillimetres())
                .isCloseTo(value("ounce inch squared (inertia)"), within(0.00005));
        assertThat(Stress.ofPoundsPerSquareInch(1000).megapascals())
                .isCloseTo(value("pound-force per square inch"), within(0.5e-8));
        assertThat(Angle.ofDegrees(1).radians()).isCloseTo(value("degree of angle"), within(1e-17));
        assertThat(Angle.ofDegrees(1 / 60.0).radians()).isCloseTo(value("minute of arc"), within(1e-18));
        assertThat(Angle.ofDegrees(1 / 3600.0).radians()).isCloseTo(value("second of arc"), within(1e-20));
        assertThat(Frequency.ofPerMinute(1).hertz()).isCloseTo(value("cycle a minute"), within(1e-17));
    }

    private static double value(String unit) {
        return TABLE.row("unit", unit).number("value");
    }
}
