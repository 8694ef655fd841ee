package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.HashSet;
import java.util.Set;
import java.util.function.DoubleSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
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

    /** 6 and 2: sum 8, difference 4, twice 6 is 12, 6 over 2 is 3; minus twice none is none. */
    @Example
    void arithmeticAndOrderByHand() {
        Kind.all().forEach(DerivedQuantityProperties::checkSixAndTwo);
    }

    private static <Q extends Comparable<Q>> void checkSixAndTwo(Kind<Q> kind) {
        Q six = kind.of().apply(6);
        Q two = kind.of().apply(2);
        assertThat(kind.value().applyAsDouble(six)).as("%s", kind).isEqualTo(6);
        assertThat(kind.plus().apply(six, two)).isEqualTo(kind.of().apply(8));
        assertThat(kind.minus().apply(six, two)).isEqualTo(kind.of().apply(4));
        assertThat(kind.scaledBy().apply(six, 2.0)).isEqualTo(kind.of().apply(12));
        assertThat(kind.ratioTo().applyAsDouble(six, two)).isEqualTo(3);
        assertThat(six)
                .isGreaterThan(two)
                .isNotEqualTo(two)
                .isEqualTo(kind.parse().apply(six.toString()));
        assertThat(two).isLessThan(six);
        assertThat(kind.scaledBy().apply(kind.zero(), -2.0))
                .as("minus no %s", kind)
                .isEqualTo(kind.zero())
                .hasToString(kind.zero().toString());
    }

    /** A hash that is the same for most values makes a list of every map that they are keys of. */
    @Example
    void hashesOfDifferentValuesDiffer() {
        for (Kind<?> kind : Kind.all()) {
            Set<Integer> hashes = new HashSet<>();
            for (int number = 1; number <= 1000; number++) {
                hashes.add(kind.of().apply(number).hashCode());
            }
            assertThat(hashes).as("%s", kind).hasSizeGreaterThan(500);
        }
    }
}
