package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths and masses as they are written on a bench, and what is refused with which words. */
class BenchTextTest {

    /** By hand: 37 1/2 in is 75 half inches of 12.7 mm, 952.5 mm; 0.370 in is 9.398 mm; 0.3735 in 9.4869 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "37 1/2 in      | 952500000",
                "37-1/2\"       | 952500000",
                "37-1/2 inches  | 952500000",
                "37  1/2in      | 952500000",
                "37.5 inch      | 952500000",
                "37.5″          | 952500000",
                "+37.5 in       | 952500000",
                "-37-1/2 in     | -952500000",
                "-1/2 in        | -12700000",
                ".370 in        | 9398000",
                "0.3735 in      | 9486900",
                "9.4 mm         | 9400000",
                "9. mm          | 9000000",
                "1 m            | 1000000000",
                "2.5 cm         | 25000000",
                "1.5 thou       | 38100",
                "3 um           | 3000",
                "3 µm           | 3000",
                "7 nm           | 7",
                "75/2 in        | 952500000",
                "37½ in         | 952500000",
                "37 ½”          | 952500000",
                "37-½ in        | 952500000",
                "½ in           | 12700000",
                "-½ in          | -12700000",
                "1⅛ in          | 28575000",
                "1¼ in          | 31750000",
                "1⅜ in          | 34925000",
                "1⅝ in          | 41275000",
                "1¾ in          | 44450000",
                "1⅞ in          | 47625000",
                "0 mm           | 0",
                "-0 mm          | 0",
            })
    void readsALength(String text, long nanometres) {
        assertThat(Length.parse(text).nanometres()).isEqualTo(nanometres);
        assertThat(Length.parse("\t " + text + " ").nanometres()).isEqualTo(nanometres);
    }

    /** By hand: an ounce is 28.349523125 g, so an eighth is 3.543690390625 g; a grain is 0.06479891 g. */
    @ParameterizedTest
    @CsvSource({
        "263.9 g, 263900000000000",
        "1/8 oz, 3543690390625",
        "1 1/2 gr, 97198365000",
        "0.001 oz, 28349523125",
        "2 lb, 907184740000000",
        "1 kg, 1000000000000000",
        "5 mg, 5000000000",
        "5 pg, 5"
    })
    void readsAMass(String text, long picograms) {
        assertThat(Mass.parse(text).picograms()).isEqualTo(picograms);
    }

    /** A sign for a fraction stands for itself: with a figure or another fraction beside it, it is anybody's guess. */
    @ParameterizedTest
    @ValueSource(strings = {"½2 in", "1.5½ in", "3/4½ in", "½½ in", "1/½ in", "½/2 in", "1½1/2 in"})
    void aFractionThatMayBeReadTwoWaysIsAnError(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessage("text must be a number and a unit such as \"12.5 mm\", was \"" + text + "\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"37.5", "37 1/2", "5", ".5", "1/2", "-3"})
    void aMissingUnitIsAnError(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessage("text must name its unit (mm, in, cm, m, thou, um, nm), was \"" + text + "\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.parse(text))
                .withMessage("text must name its unit (g, oz, lb, gr, kg, mg, pg), was \"" + text + "\"");
    }

    @Test
    void aUnitOfAnotherKindIsAnError() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("84.1 g"))
                .withMessage("text must be in one of mm, in, cm, m, thou, um, nm, was \"84.1 g\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.parse("84.1 mm"))
                .withMessage("text must be in one of g, oz, lb, gr, kg, mg, pg, was \"84.1 mm\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("1 MM"))
                .withMessageContaining("MM");
    }

    @Test
    void aDecimalCommaIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("9,4 mm"))
                .withMessage("text must be a number and a unit such as \"12.5 mm\", was \"9,4 mm\""
                        + " (write decimals with a point)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.parse("84,1 g"))
                .withMessageContaining("\"12.5 g\", was \"84,1 g\" (write decimals with a point)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(",5 mm"))
                .withMessageEndingWith("was \",5 mm\" (write decimals with a point)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "mm",
                "in 5",
                "five in",
                "1.2.3 mm",
                "1..2 mm",
                ". mm",
                "- 5 mm",
                "--5 mm",
                "1/2/3 in",
                "1/ in",
                "/2 in",
                "1 1/-2 in",
                "1.5/2 in",
                "1 .5/2 in",
                "1 - 1/2 in",
                "1--1/2 in",
                "5 mm mm",
                "5 mm 5",
                "NaN mm",
                "Infinity mm",
                "1e3 mm",
                "0x10 mm",
                "\u0663 mm",
                "\uff15 mm",
                "1\u00a0000 mm",
                "1'000 mm",
                "⅓ in"
            })
    void whatIsNoNumberAndUnitIsAnErrorThatShowsTheText(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessageStartingWith("text must be ")
                .withMessageContaining("was \"" + text + "\"");
    }

    @Test
    void divisionByZeroAndWhatIsNotWholeOnTheGridAreErrors() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("1/0 in"))
                .withMessage("text must not divide by zero, was \"1/0 in\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("1/3 in"))
                .withMessage("text must be a whole number of nanometres, was \"1/3 in\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("0.1 nm"))
                .withMessage("text must be a whole number of nanometres, was \"0.1 nm\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.parse("1/3 oz"))
                .withMessage("text must be a whole number of picograms, was \"1/3 oz\"");
        // 127 divides an inch: 25 400 000 = 127 * 200 000.
        assertThat(Length.parse("1/127 in").nanometres()).isEqualTo(200_000);
    }

    @Test
    void tooLongTextIsNotEvenRead() {
        String fits = "0".repeat(77) + " mm";
        assertThat(fits).hasSize(80);
        assertThat(Length.parse(fits)).isEqualTo(Length.ZERO);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("0" + fits))
                .withMessage("text must be at most 80 characters, was 81");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("9".repeat(1_000_000)))
                .withMessageContaining("1000000");
    }

    @Test
    void theRangeEndsWithTheLong() {
        assertThat(Length.parse("-9223372036854.775808 mm").nanometres()).isEqualTo(Long.MIN_VALUE);
        assertThat(Length.parse("9223372036854775807 nm").nanometres()).isEqualTo(Long.MAX_VALUE);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Length.parse("9223372036854775808 nm"))
                .withMessage("text is out of range for Length, was \"9223372036854775808 nm\"");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Mass.parse("10000 kg"))
                .withMessage("text is out of range for Mass, was \"10000 kg\"");
    }

    @Test
    void nullIsNamed() {
        assertThatNullPointerException().isThrownBy(() -> Length.parse(null)).withMessage("text");
        assertThatNullPointerException().isThrownBy(() -> Mass.parse(null)).withMessage("text");
    }
}
