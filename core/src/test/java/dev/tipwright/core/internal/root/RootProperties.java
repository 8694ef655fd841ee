package dev.tipwright.core.internal.root;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws of the search for a root, on rising cubics whose root is known because it was put there. */
class RootProperties {

    @Property
    void theRootIsWithinTheWidthAndTheWidthWithinTheTolerance(
            @ForAll @DoubleRange(min = -1, max = 1) double at,
            @ForAll @DoubleRange(min = 0, max = 9) double slope,
            @ForAll @IntRange(min = 1, max = 40) int bits) {
        double tolerance = Math.scalb(1.0, -bits);
        Root root = Root.between(cubic(at, slope), -2, 3, tolerance);
        assertThat(Math.abs(root.x() - at)).isLessThanOrEqualTo(tolerance);
        assertThat(root.width()).isLessThanOrEqualTo(tolerance);
        assertThat(root.settled()).isTrue();
        // 2 + ceil(log2(5 / tolerance)), and 4 < 5 < 8.
        assertThat(root.iterations()).isLessThanOrEqualTo(2 + bits + 3);
    }

    @Property
    void itNeverLooksOutsideTheBracket(
            @ForAll @DoubleRange(min = -1, max = 1) double at, @ForAll @DoubleRange(min = 0, max = 9) double slope) {
        Root.between(
                x -> {
                    assertThat(x).isBetween(-2.0, 3.0);
                    return cubic(at, slope).applyAsDouble(x);
                },
                -2,
                3,
                0);
    }

    @Property
    void theOppositeFunctionHasTheSameRootBitForBit(
            @ForAll @DoubleRange(min = -1, max = 1) double at, @ForAll @DoubleRange(min = 0, max = 9) double slope) {
        DoubleUnaryOperator f = cubic(at, slope);
        Root opposite = Root.between(x -> -f.applyAsDouble(x), -2, 3, 1e-12);
        assertThat(opposite.x()).isEqualTo(Root.between(f, -2, 3, 1e-12).x());
    }

    @Property
    void anotherUnitByAPowerOfTwoGivesTheSameRootBitForBit(
            @ForAll @DoubleRange(min = -1, max = 1) double at, @ForAll @IntRange(min = -30, max = 30) int power) {
        double unit = Math.scalb(1.0, power);
        DoubleUnaryOperator f = cubic(at, 1);
        Root scaled = Root.between(x -> f.applyAsDouble(x / unit), -2 * unit, 3 * unit, 0x1p-40 * unit);
        assertThat(scaled.x()).isEqualTo(Root.between(f, -2, 3, 0x1p-40).x() * unit);
    }

    private static DoubleUnaryOperator cubic(double at, double slope) {
        return x -> (x - at) * ((x - at) * (x - at) + slope);
    }
}
