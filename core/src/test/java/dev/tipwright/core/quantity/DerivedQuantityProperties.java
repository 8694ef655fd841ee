package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.function.DoubleSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every quantity that is a finite double: text, order, arithmetic. */
class DerivedQuantityProperties {

    @Provide
    Arbitrary<Kind<?>> kinds() {
        return Arbitraries.of(Kind.all());
    }

    /** Doubles of every size, by their bits. */
    @Provide
    Arbitrary<Double> anyFinite() {
        return Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
    }

    @Property
    <Q extends Comparable<Q>> void parsingThePrintedTextGivesTheSameBits(
            @ForAll("kinds") Kind<Q> kind, @ForAll("anyFinite") double number) {
        Q quantity = kind.of().apply(number);
        Q back = kind.parse().apply(quantity.toString());
        assertThat(back).isEqualTo(quantity).hasSameHashCodeAs(quantity);
        // Adding zero turns -0.0 into 0.0 and changes nothing else.
        assertThat(Double.doubleToLongBits(kind.value().applyAsDouble(back)))
                .isEqualTo(Double.doubleToLongBits(number + 0.0));
    }

    @Property
    <Q extends Comparable<Q>> void orderEqualityAndHashGoTogether(
            @ForAll("kinds") Kind<Q> kind, @ForAll("anyFinite") double one, @ForAll("anyFinite") double other) {
        Q a = kind.of().apply(one);
        Q b = kind.of().apply(other);
        assertThat(Integer.signum(a.compareTo(b))).isEqualTo(one < other ? -1 : one > other ? 1 : 0);
        assertThat(a.equals(b))
                .isEqualTo(a.compareTo(b) == 0)
                .isEqualTo(a.toString().equals(b.toString()));
        assertThat(a).isNotEqualTo(one).isNotEqualTo(null);
    }

    @Property
    <Q extends Comparable<Q>> void arithmeticIsThatOfDoublesOrTheRangeIsLeft(
            @ForAll("kinds") Kind<Q> kind, @ForAll("anyFinite") double one, @ForAll("anyFinite") double other) {
        Q a = kind.of().apply(one);
        Q b = kind.of().apply(other);
        checkSum(one + other, () -> kind.value().applyAsDouble(kind.plus().apply(a, b)));
        checkSum(one - other, () -> kind.value().applyAsDouble(kind.minus().apply(a, b)));
        checkSum(one * other, () -> kind.value().applyAsDouble(kind.scaledBy().apply(a, other)));
        Assume.that(other != 0);
        checkSum(one / other, () -> kind.ratioTo().applyAsDouble(a, b));
    }

    private static void checkSum(double expected, DoubleSupplier actual) {
        if (Double.isFinite(expected)) {
            assertThat(actual.getAsDouble()).isEqualTo(expected + 0.0);
        } else {
            assertThatExceptionOfType(ArithmeticException.class)
                    .isThrownBy(actual::getAsDouble)
                    .withMessageContaining("range");
        }
    }
}
