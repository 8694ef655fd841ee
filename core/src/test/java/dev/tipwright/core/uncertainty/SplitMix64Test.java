package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published generator; the JDK's splittable one, begun with a seed and not split, is the same. */
class SplitMix64Test {

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 1234567, Long.MIN_VALUE, Long.MAX_VALUE})
    void givesTheSequenceOfTheJdk(long seed) {
        SplittableRandom reference = new SplittableRandom(seed);
        for (int k = 0; k < 1000; k++) {
            assertThat(SplitMix64.bits(seed, k)).isEqualTo(reference.nextLong());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 42})
    void uniformNumbersLieStrictlyBetweenZeroAndOneInExactMiddles(long seed) {
        for (int k = 0; k < 1000; k++) {
            double u = SplitMix64.uniform(seed, k);
            assertThat(u).isStrictlyBetween(0.0, 1.0);
            assertThat((u * 0x1p52) % 1).isEqualTo(0.5);
        }
    }
}
