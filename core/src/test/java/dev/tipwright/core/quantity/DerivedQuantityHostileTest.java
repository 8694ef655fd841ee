package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bad numbers and bad text given to the quantities that are doubles: the message names argument, rule and value. */
class DerivedQuantityHostileTest {

    static List<Kind<?>> kinds() {
        return Kind.all();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void refusesWhatIsNoFiniteNumber(Kind<Q> kind) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> kind.of().apply(bad))
                    .withMessage(kind.argument() + " must be a finite number, was " + bad);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> kind.scaledBy().apply(kind.of().apply(1), bad))
                    .withMessage("ratio must be a finite number, was " + bad);
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void refusesNullByName(Kind<Q> kind) {
        Q one = kind.of().apply(1);
        assertThatNullPointerException()
                .isThrownBy(() -> kind.plus().apply(one, null))
                .withMessage("other");
        assertThatNullPointerException()
                .isThrownBy(() -> kind.minus().apply(one, null))
                .withMessage("other");
        assertThatNullPointerException()
                .isThrownBy(() -> kind.ratioTo().applyAsDouble(one, null))
                .withMessage("other");
        assertThatNullPointerException().isThrownBy(() -> one.compareTo(null)).withMessage("other");
        assertThatNullPointerException()
                .isThrownBy(() -> kind.parse().apply(null))
                .withMessage("text");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void saysWhatItDividesBy(Kind<Q> kind) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.ratioTo().applyAsDouble(kind.of().apply(1), kind.zero()))
                .withMessage("other must not be zero, was " + kind.zero());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void leavesTheRangeWithAnArithmeticException(Kind<Q> kind) {
        Q most = kind.of().apply(Double.MAX_VALUE);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> kind.plus().apply(most, most))
                .withMessageContaining("other");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> kind.scaledBy().apply(most, 2.0))
                .withMessageContaining("ratio");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> kind.ratioTo().applyAsDouble(most, kind.of().apply(Double.MIN_VALUE)))
                .withMessageContaining("other");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void refusesTextThatIsNoNumberWithItsUnit(Kind<Q> kind) {
        String unit = kind.zero().toString().substring("0.0 ".length());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.parse().apply("1.5"))
                .withMessageContaining("text must name its unit (" + unit)
                .withMessageEndingWith("was \"1.5\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.parse().apply("1,5 " + unit))
                .withMessageContaining("write decimals with a point")
                .withMessageContaining("\"1,5 " + unit + "\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.parse().apply("1.5 furlong"))
                .withMessageContaining("text must be in one of " + unit)
                .withMessageContaining("furlong");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.parse().apply("1" + " ".repeat(80) + unit))
                .withMessageContaining("at most 80 characters, was " + (81 + unit.length()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> kind.parse().apply(",5 " + unit))
                .withMessageContaining("write decimals with a point");
        String fits = "1" + " ".repeat(79 - unit.length()) + unit;
        assertThat(fits).hasSize(80);
        assertThat(kind.parse().apply(fits)).isEqualTo(kind.of().apply(1));
        for (String bad : List.of("", " ", unit, "NaN " + unit, "Infinity " + unit, "1e5 " + unit, "\u0661 " + unit)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> kind.parse().apply(bad))
                    .withMessageContaining("\"" + bad + "\"");
        }
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> kind.parse().apply("1E400 " + unit))
                .withMessageContaining("text");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Comparable<Q>> void printsAPointInALocaleOfCommas(Kind<Q> kind) {
        // The build runs its tests in a German locale; without that this would check nothing.
        assertThat(String.format(Locale.getDefault(), "%.1f", 1.5)).isEqualTo("1,5");
        assertThat(kind.of().apply(1.5).toString()).startsWith("1.5 ");
        assertThat(kind.of().apply(-0.0))
                .isEqualTo(kind.zero())
                .hasToString(kind.zero().toString());
    }
}
