package dev.tipwright.swingweight.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Pins down that reading undoes the moment, and parsing undoes the designation, on any scale. */
class SwingWeightScaleProperties {

    /** The points come back within 1e-9: zeros of up to 2e4 points, of which a double keeps sixteen digits. */
    @Property
    void readingUndoesMoment(
            @ForAll("scales") SwingWeightScale scale, @ForAll @DoubleRange(min = -200, max = 200) double points) {
        SwingWeight wanted = new SwingWeight(points);
        assertThat(scale.read(scale.moment(wanted)).over(wanted)).isCloseTo(0, within(1e-9));
    }

    /** By hand: D2 is 213.5 + 2 x 1.75 = 217 oz in. */
    @Example
    void dTwo() {
        SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
        assertThat(scale.moment(scale.parse("D2")).ounceInches()).isCloseTo(217, within(1e-9));
    }

    /** Any tenth of a point, below the first letter and past the last, comes back to the rounding of one sum. */
    @Property
    void parsingUndoesDesignation(
            @ForAll("scales") SwingWeightScale scale, @ForAll @IntRange(min = -9999, max = 99999) int tenths) {
        SwingWeight reading = new SwingWeight(tenths / 10.0);
        String written = scale.designation(reading);
        assertThat(scale.parse(written).points()).isCloseTo(reading.points(), within(1e-11));
        assertThat(scale.designation(scale.parse(written))).isEqualTo(written);
    }

    /** What is written is within half a tenth of what was read, and its points stay within their letter. */
    @Property
    void aDesignationIsWithinHalfATenth(
            @ForAll("scales") SwingWeightScale scale, @ForAll @DoubleRange(min = -100, max = 2000) double points) {
        String written = scale.designation(new SwingWeight(points));
        assertThat(scale.parse(written).points()).isCloseTo(points, within(0.05 + 1e-9));
        if (!scale.letters().isEmpty()) {
            BigDecimal inLetter = new BigDecimal(written.substring(1));
            boolean first = written.charAt(0) == scale.letters().charAt(0);
            boolean last =
                    written.charAt(0) == scale.letters().charAt(scale.letters().length() - 1);
            assertThat(first || inLetter.signum() >= 0).isTrue();
            assertThat(last || inLetter.compareTo(BigDecimal.valueOf(scale.pointsPerLetter())) < 0)
                    .isTrue();
        }
    }

    @Provide
    Arbitrary<SwingWeightScale> scales() {
        return Combinators.combine(
                        Arbitraries.doubles().between(10, 20).map(Length::ofInches),
                        Arbitraries.doubles().between(-1e5, 2e5).map(FirstMoment::ofGramMillimetres),
                        Arbitraries.doubles().between(10, 2000).map(FirstMoment::ofGramMillimetres),
                        Arbitraries.of("", "A", "ABCDEFG", "ZYX"),
                        Arbitraries.integers().between(1, 20))
                .as(SwingWeightScale::new);
    }
}
