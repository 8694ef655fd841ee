package dev.tipwright.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Length;
import java.math.BigDecimal;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A check that could not fail would be none: values a hair inside and outside of a bound, and how the page prints them. */
class CaseTest {

    /** Of the taper that the handbook prints as 0.62460 in a foot, with a mouth of 0.3561. */
    private static boolean holds(Consumer<Case> check) {
        Tally tally = new Tally();
        check.accept(tally.only("tapers-morse", "morse", "0"));
        return tally.checks().get(0).holds();
    }

    @ParameterizedTest
    @CsvSource({"0.3561, true", "0.35614, true", "0.35606, true", "0.35616, false", "0.35604, false"})
    void aPrintedNumberIsGoodToHalfItsLastDigit(double found, boolean good) {
        assertThat(holds(row -> row.check("large_end_of_socket_in", found, Bound.PRINTED)))
                .isEqualTo(good);
    }

    @ParameterizedTest
    @CsvSource({"50800000, true", "50800001, false", "50799999, false"})
    void notOneNanometreOfALengthMayBeOff(long nanometres, boolean good) {
        assertThat(holds(row -> row.same("plug_depth_in", Length.ofNanometres(nanometres))))
                .isEqualTo(good);
    }

    @Test
    void anotherWordIsSeen() {
        assertThat(holds(row -> row.says("plug_depth", "2"))).isTrue();
        assertThat(holds(row -> row.says("plug_depth", "3"))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "0, none",
        "0.000123, 0.00013",
        "0.0000123, 1.3e-5",
        "12.01, 13",
        "0.5, 0.5",
        "4.9e-7, 4.9e-7",
        "1e-12, 1e-12"
    })
    void anErrorIsRoundedUpToTwoDigits(String error, String printed) {
        assertThat(Figures.of(new BigDecimal(error))).isEqualTo(printed);
    }

    @Test
    void aSmallPartOfItsBoundIsPrintedAsThat() {
        BigDecimal bound = new BigDecimal("2e-9");
        assertThat(Figures.error(new BigDecimal("1.01e-10"), bound)).isEqualTo("1.1e-10");
        assertThat(Figures.error(new BigDecimal("9.9e-11"), bound)).isEqualTo("under 1e-10");
        assertThat(Figures.error(BigDecimal.ZERO, bound)).isEqualTo("none");
        assertThat(Figures.part(new BigDecimal("3e-16"))).isEqualTo("under 1e-12");
    }
}
