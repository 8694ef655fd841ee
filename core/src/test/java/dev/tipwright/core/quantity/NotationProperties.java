package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Notation.Printed;
import dev.tipwright.core.quantity.Notation.Rounding;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.numbers.fraction.Fraction;

/** What holds for every notation: it prints the length it says, on the side asked for, and owns up to rounding. */
class NotationProperties {

    /** Ten metres either way, and exact ties between two steps. */
    @Provide
    Arbitrary<Length> lengths() {
        Arbitrary<Long> any = Arbitraries.longs().between(-10_000_000_000L, 10_000_000_000L);
        Arbitrary<Long> ties = Arbitraries.longs().between(-4000, 4000).map(n -> n * 25_400_000 / 128);
        return Arbitraries.oneOf(any, ties).map(Length::ofNanometres);
    }

    @Property
    void theTextStandsForTheLengthShown(
            @ForAll Notation notation, @ForAll Rounding rounding, @ForAll("lengths") Length length) {
        Printed printed = notation.print(length, rounding);
        assertThat(Length.parse(printed.text())).isEqualTo(printed.shown());
        assertThat(printed.exact()).isEqualTo(length);
        assertThat(printed.rounded()).isEqualTo(!printed.shown().equals(length));
        assertThat(printed.shown().nanometres() % notation.step().nanometres()).isZero();
    }

    @Property
    void theLengthShownIsOnTheSideAskedFor(@ForAll Notation notation, @ForAll("lengths") Length length) {
        Length step = notation.step();
        Length down = notation.print(length, Rounding.DOWN).shown();
        Length up = notation.print(length, Rounding.UP).shown();
        Length nearest = notation.print(length).shown();
        assertThat(down).isLessThanOrEqualTo(length);
        assertThat(length.minus(down)).isLessThan(step);
        assertThat(up).isGreaterThanOrEqualTo(length);
        assertThat(up.minus(length)).isLessThan(step);
        assertThat(nearest.minus(length).abs().times(2)).isLessThanOrEqualTo(step);
        if (nearest.minus(length).abs().times(2).equals(step)) {
            assertThat(nearest.nanometres() / step.nanometres() % 2).isZero();
        }
    }

    @Property
    void aLengthOnItsStepIsPrintedWithoutRounding(
            @ForAll Notation notation, @ForAll Rounding rounding, @ForAll short steps) {
        Length length = notation.step().times(steps);
        Printed printed = notation.print(length, rounding);
        assertThat(printed.rounded()).isFalse();
        assertThat(printed.shown()).isEqualTo(length);
    }

    /** The fraction printed is in lowest terms, as Commons Numbers reduces it. */
    @Property
    void fractionsAreInLowestTerms(@ForAll short sixtyFourths) {
        String text = Notation.SIXTY_FOURTHS
                .print(Length.parse("1/64 in").times(sixtyFourths))
                .text();
        Fraction reduced = Fraction.of(Math.abs(sixtyFourths), 64);
        int whole = reduced.getNumerator() / reduced.getDenominator();
        int rest = reduced.getNumerator() % reduced.getDenominator();
        String fraction = rest == 0 ? "" : rest + "/" + reduced.getDenominator();
        String number = rest == 0 ? "" + whole : whole == 0 ? fraction : whole + " " + fraction;
        assertThat(text).isEqualTo((sixtyFourths < 0 ? "-" : "") + number + " in");
    }
}
