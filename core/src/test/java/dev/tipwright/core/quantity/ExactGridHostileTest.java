package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Bad arguments given to lengths and masses: the message names argument, rule and value. */
class ExactGridHostileTest {

    private static final Length INCH = Length.parse("1 in");
    private static final Mass GRAM = Mass.parse("1 g");

    private static Map<String, DoubleFunction<Object>> factories() {
        Map<String, DoubleFunction<Object>> factories = new LinkedHashMap<>();
        factories.put("micrometres", Length::ofMicrometres);
        factories.put("millimetres", Length::ofMillimetres);
        factories.put("inches", Length::ofInches);
        factories.put("thousandths", Length::ofThousandths);
        factories.put("grams", Mass::ofGrams);
        factories.put("ounces", Mass::ofOunces);
        factories.put("grains", Mass::ofGrains);
        return factories;
    }

    @Test
    void refusesWhatIsNoFiniteNumberAndWhatIsTooLarge() {
        factories().forEach((name, of) -> {
            for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> of.apply(bad))
                        .withMessage(name + " must be a finite number, was " + bad);
            }
            for (double huge : new double[] {1e30, -1e30, Double.MAX_VALUE}) {
                assertThatExceptionOfType(ArithmeticException.class)
                        .isThrownBy(() -> of.apply(huge))
                        .withMessage(name + " is out of range, was " + huge);
            }
            assertThat(of.apply(Double.MIN_VALUE)).isEqualTo(of.apply(0)).isEqualTo(of.apply(-0.0));
        });
        // The doubles of plus and minus 2^63 nm lie just past either end, those next to them just inside.
        for (double sign : new double[] {1, -1}) {
            double past = sign * 0x1p63 / 1000;
            assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Length.ofMicrometres(past));
            long inside = Length.ofMicrometres(past - sign * Math.ulp(past)).nanometres();
            assertThat(Long.signum(inside)).isEqualTo((int) sign);
        }
    }

    @Test
    void refusesNullByName() {
        Map<String, Function<Length, Object>> ofLength = new LinkedHashMap<>();
        ofLength.put("plus", INCH::plus);
        ofLength.put("minus", INCH::minus);
        ofLength.put("ratioTo", INCH::ratioTo);
        ofLength.put("min", INCH::min);
        ofLength.put("max", INCH::max);
        ofLength.put("lessThan", INCH::lessThan);
        ofLength.put("moreThan", INCH::moreThan);
        ofLength.put("compareTo", INCH::compareTo);
        ofLength.put("within", other -> INCH.within(other, INCH));
        ofLength.forEach((method, call) -> assertThatNullPointerException()
                .as(method)
                .isThrownBy(() -> call.apply(null))
                .withMessage("other"));
        Map<String, Function<Mass, Object>> ofMass = new LinkedHashMap<>();
        ofMass.put("plus", GRAM::plus);
        ofMass.put("minus", GRAM::minus);
        ofMass.put("ratioTo", GRAM::ratioTo);
        ofMass.put("min", GRAM::min);
        ofMass.put("max", GRAM::max);
        ofMass.put("lessThan", GRAM::lessThan);
        ofMass.put("moreThan", GRAM::moreThan);
        ofMass.put("compareTo", GRAM::compareTo);
        ofMass.put("within", other -> GRAM.within(other, GRAM));
        ofMass.forEach((method, call) -> assertThatNullPointerException()
                .as(method)
                .isThrownBy(() -> call.apply(null))
                .withMessage("other"));
        assertThatNullPointerException()
                .isThrownBy(() -> INCH.within(INCH, null))
                .withMessage("tolerance");
        assertThatNullPointerException()
                .isThrownBy(() -> GRAM.within(GRAM, null))
                .withMessage("tolerance");
        assertThatNullPointerException().isThrownBy(() -> GRAM.at(null)).withMessage("distance");
        FirstMoment moment = GRAM.at(INCH);
        assertThatNullPointerException()
                .isThrownBy(() -> moment.over((Mass) null))
                .withMessage("mass");
        assertThatNullPointerException()
                .isThrownBy(() -> moment.over((Length) null))
                .withMessage("distance");
        assertThatNullPointerException().isThrownBy(() -> Volume.ZERO.of(null)).withMessage("density");
    }

    @Test
    void saysWhatItDividesBy() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> INCH.ratioTo(Length.ZERO))
                .withMessage("other must not be zero, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRAM.ratioTo(Mass.ZERO))
                .withMessage("other must not be zero, was 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRAM.at(INCH).over(Mass.ZERO))
                .withMessage("mass must not be zero, was 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRAM.at(INCH).over(Length.ZERO))
                .withMessage("distance must not be zero, was 0 mm");
    }

    @Test
    void aQuotientOutOfRangeNamesItsDivisor() {
        FirstMoment most = FirstMoment.ofGramMillimetres(Double.MAX_VALUE);
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> most.over(Mass.ofPicograms(1)))
                .withMessageContaining("mass");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> most.over(GRAM))
                .withMessageContaining("mass");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> most.over(INCH))
                .withMessageContaining("distance");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Volume.ofCubicMillimetres(Double.MAX_VALUE).of(Density.parse("8 g/cm3")));
    }

    @Test
    void refusesANegativeTolerance() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> INCH.within(INCH, Length.parse("-1 nm")))
                .withMessage("tolerance must not be negative, was -0.000001 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GRAM.within(GRAM, Mass.parse("-1 pg")))
                .withMessage("tolerance must not be negative, was -0.000000000001 g");
    }

    @Test
    void fractionsAreExactOrFail() {
        assertThat(Length.ofInchFraction(37, 1, 2)).isEqualTo(Length.parse("37.5 in"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofInchFraction(-1, 1, 2))
                .withMessage("whole must not be negative, was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofInchFraction(1, -1, 2))
                .withMessage("numerator must not be negative, was -1");
        for (long bad : new long[] {0, -2}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Length.ofInchFraction(1, 1, bad))
                    .withMessage("denominator must be above zero, was " + bad);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofInchFraction(0, 1, 3))
                .withMessage("denominator must divide 1 in into whole nanometres, was 3");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Length.ofInchFraction(Long.MAX_VALUE, 1, 2))
                .withMessageContaining("whole");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Length.ofInchFraction(1, Long.MAX_VALUE, 2))
                .withMessageContaining("numerator");
    }

    @Test
    void otherTypesAreNotEqual() {
        assertThat(INCH).isNotEqualTo(null).isNotEqualTo((Object) 25_400_000L);
        assertThat(GRAM).isNotEqualTo(null).isNotEqualTo((Object) 1_000_000_000_000L);
        assertThat(Length.ofNanometres(0)).isEqualTo(Length.ZERO);
        assertThat(Mass.ofPicograms(0)).isEqualTo(Mass.ZERO);
    }
}
