package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Exact fractions and the lines between them, by hand. */
class ExactLineTest {

    @Test
    void aFractionKeepsItsSignAbove() {
        // 1/2 over -3/4 is -2/3.
        Fraction share = fraction(1, 2).by(fraction(-3, 4));
        assertThat(share.same(fraction(-2, 3))).isTrue();
        assertThat(share.under()).isPositive();
        assertThat(fraction(-1, 2).by(fraction(-3, 4)).same(fraction(2, 3))).isTrue();
        assertThat(Fraction.ZERO.by(fraction(-3, 4)).sign()).isZero();
    }

    @Test
    void wholeNumbersBelowAndAbove() {
        assertThat(fraction(-7, 2).floor()).isEqualTo(-4);
        assertThat(fraction(-7, 2).ceiling()).isEqualTo(-3);
        assertThat(fraction(7, 2).floor()).isEqualTo(3);
        assertThat(fraction(7, 2).ceiling()).isEqualTo(4);
        assertThat(fraction(-6, 2).floor()).isEqualTo(-3);
        assertThat(fraction(-6, 2).ceiling()).isEqualTo(-3);
    }

    @Test
    void ofTwoThatAreTheSameThisOneIsLesserAndGreater() {
        Fraction half = fraction(1, 2);
        assertThat(half.min(fraction(2, 4))).isSameAs(half);
        assertThat(half.max(fraction(2, 4))).isSameAs(half);
        assertThat(half.min(fraction(1, 3)).same(fraction(1, 3))).isTrue();
        assertThat(half.max(fraction(2, 3)).same(fraction(2, 3))).isTrue();
    }

    /** From 8 at 1 down to 2 at 3 it is 5 at 2. */
    @Test
    void theLeastSoFarBendsWhereALineComesBackToIt() {
        same(line(0, 5, 1, 8, 3, 2).runningLeast(), line(0, 5, 1, 5, 2, 5, 3, 2));
        same(line(0, 5, 1, 8, 2, 5).runningLeast(), line(0, 5, 1, 5, 2, 5));
        same(line(0, 5, 1, 5, 2, 3).runningLeast(), line(0, 5, 1, 5, 2, 3));
    }

    @Test
    void aLineIsFirstBelowAValueWhereItLeavesIt() {
        ExactLine falling = line(0, 5, 2, 5, 4, 3);
        assertThat(falling.firstBelow(Fraction.of(6)).orElseThrow().same(Fraction.ZERO))
                .isTrue();
        assertThat(falling.firstBelow(Fraction.of(5)).orElseThrow().same(Fraction.of(2)))
                .isTrue();
        assertThat(falling.firstBelow(Fraction.of(4)).orElseThrow().same(Fraction.of(3)))
                .isTrue();
        // It comes down to 3 and is not below it.
        assertThat(falling.firstBelow(Fraction.of(3))).isEmpty();
    }

    /** 4 up to 8 and 7 down to 5: they cross at 6, half way. */
    @Test
    void theLesserOfTwoLines() {
        same(line(0, 4, 2, 8).least(line(0, 7, 2, 5)), line(0, 4, 1, 6, 2, 5));
        same(line(0, 7, 2, 5).least(line(0, 4, 2, 8)), line(0, 4, 1, 6, 2, 5));
        // They meet at an end and cross nowhere.
        same(line(0, 4, 2, 6).least(line(0, 4, 2, 5)), line(0, 4, 2, 5));
        same(line(0, 4, 2, 6).least(line(0, 5, 2, 6)), line(0, 4, 2, 6));
    }

    private static void same(ExactLine line, ExactLine expected) {
        assertThat(line.knots()).hasSameSizeAs(expected.knots());
        for (int k = 0; k < line.knots().size(); k++) {
            assertThat(line.knots().get(k).at().same(expected.knots().get(k).at()))
                    .isTrue();
            assertThat(line.knots().get(k).value().same(expected.knots().get(k).value()))
                    .isTrue();
        }
    }

    private static ExactLine line(long... placesAndValues) {
        List<ExactLine.Knot> knots = new ArrayList<>();
        for (int k = 0; k < placesAndValues.length; k += 2) {
            knots.add(new ExactLine.Knot(Fraction.of(placesAndValues[k]), Fraction.of(placesAndValues[k + 1])));
        }
        return new ExactLine(knots);
    }

    private static Fraction fraction(long over, long under) {
        return new Fraction(BigInteger.valueOf(over), BigInteger.valueOf(under));
    }
}
