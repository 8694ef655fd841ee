package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Notation.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths printed in each notation, by hand. */
class NotationTest {

    /** 36.38 in: 582.08 sixteenths, 1164.16 thirty-seconds, 2328.32 sixty-fourths; 924.052 mm. */
    @ParameterizedTest
    @CsvSource({
        "SIXTEENTHS, 36 3/8 in, 36 3/8 in, 36 7/16 in",
        "THIRTY_SECONDS, 36 3/8 in, 36 3/8 in, 36 13/32 in",
        "SIXTY_FOURTHS, 36 3/8 in, 36 3/8 in, 36 25/64 in",
        "THOUSANDTHS, 36.380 in, 36.380 in, 36.380 in",
        "TEN_THOUSANDTHS, 36.3800 in, 36.3800 in, 36.3800 in",
        "TENTHS_OF_MILLIMETRE, 924.1 mm, 924.0 mm, 924.1 mm",
        "HUNDREDTHS_OF_MILLIMETRE, 924.05 mm, 924.05 mm, 924.06 mm",
        "MICROMETRES, 924.052 mm, 924.052 mm, 924.052 mm"
    })
    void printsOnTheSideAskedFor(Notation notation, String nearest, String down, String up) {
        Length length = Length.parse("36.38 in");
        assertThat(notation.print(length).text()).isEqualTo(nearest);
        assertThat(notation.print(length, Rounding.DOWN).text()).isEqualTo(down);
        assertThat(notation.print(length, Rounding.UP).text()).isEqualTo(up);
    }

    /** Down is towards the lesser length, so for a negative one away from zero. */
    @Test
    void aNegativeLengthRoundsTheSameWay() {
        Length length = Length.parse("-0.03 in"); // 0.48 sixteenths
        assertThat(Notation.SIXTEENTHS.print(length, Rounding.DOWN).text()).isEqualTo("-1/16 in");
        assertThat(Notation.SIXTEENTHS.print(length, Rounding.UP).text()).isEqualTo("0 in");
        assertThat(Notation.SIXTEENTHS.print(length).text()).isEqualTo("0 in");
        assertThat(Notation.THOUSANDTHS.print(length).text()).isEqualTo("-0.030 in");
        assertThat(Notation.SIXTEENTHS.print(Length.parse("-2 3/8 in")).text()).isEqualTo("-2 3/8 in");
    }

    /** 1/32 in is halfway from 0 to 1/16 in: to the even 0; 3/32 in is halfway from 1/16 to 2/16: to the even 1/8. */
    @Test
    void tiesGoToTheEvenStep() {
        assertThat(Notation.SIXTEENTHS.print(Length.parse("1/32 in")).text()).isEqualTo("0 in");
        assertThat(Notation.SIXTEENTHS.print(Length.parse("3/32 in")).text()).isEqualTo("1/8 in");
    }

    @Test
    void nullIsNamedAndTheEndOfTheRangeIsNoWrongNumber() {
        assertThatNullPointerException()
                .isThrownBy(() -> Notation.SIXTEENTHS.print(null))
                .withMessage("length");
        assertThatNullPointerException()
                .isThrownBy(() -> Notation.SIXTEENTHS.print(Length.ZERO, null))
                .withMessage("rounding");
        assertThatNullPointerException().isThrownBy(() -> new Notation.Printed(null, Length.ZERO, Length.ZERO));
        assertThatNullPointerException().isThrownBy(() -> new Notation.Printed("", null, Length.ZERO));
        assertThatNullPointerException().isThrownBy(() -> new Notation.Printed("", Length.ZERO, null));
        Length last = Length.ofNanometres(Long.MAX_VALUE);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Notation.SIXTEENTHS.print(last, Rounding.UP));
        assertThat(Notation.SIXTEENTHS.print(last, Rounding.DOWN).rounded()).isTrue();
    }
}
