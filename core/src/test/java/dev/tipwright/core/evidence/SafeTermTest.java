package dev.tipwright.core.evidence;

import static dev.tipwright.core.TradeBench.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.core.quantity.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that are rounded to the safe side alone, and say so. */
class SafeTermTest {

    /** Fractions worked by hand: 21/64 is .328125, 11/32 is .34375, 1 1/16 is 1.0625. */
    @ParameterizedTest
    @CsvSource({
        "1.0625, 1.062 in (1 1/16), 1.063 in (1 1/16)",
        ".5, 0.500 in (1/2), 0.500 in (1/2)",
        ".3339, 0.333 in (over 21/64), 0.334 in (under 11/32)",
        ".05, 0.050 in (over 3/64), 0.050 in (under 1/16)",
        "2, 2.000 in (2), 2.000 in (2)",
        "0.001, 0.001 in (over 0), 0.001 in (under 1/64)"
    })
    void aLengthInInches(String inches, String atMost, String atLeast) {
        assertThat(Term.atMost("T", "trim", in(inches)).text(Units.INCH)).isEqualTo(atMost);
        assertThat(Term.atLeast("S", "cut", in(inches)).text(Units.INCH)).isEqualTo(atLeast);
    }

    /** An inch is 25.4 mm exactly; half a tenth is rounded away one way or the other. */
    @Test
    void aLengthInMillimetres() {
        assertThat(Term.atMost("T", "trim", in("1")).text(Units.METRIC)).isEqualTo("25.4 mm");
        assertThat(Term.atMost("T", "trim", Length.parse("25.45 mm")).text(Units.METRIC))
                .isEqualTo("25.4 mm (rounded down)");
        assertThat(Term.atLeast("S", "cut", Length.parse("25.45 mm")).text(Units.METRIC))
                .isEqualTo("25.5 mm (rounded up)");
    }

    @Test
    void aDiameter() {
        assertThat(Term.fineAtLeast("f", "finished", in(".36255")).text(Units.INCH))
                .isEqualTo("0.3626 in (rounded up)");
        assertThat(Term.fineAtMost("e", "stock", in(".01755")).text(Units.INCH)).isEqualTo("0.0175 in (rounded down)");
        assertThat(Term.fineAtLeast("f", "finished", in(".3510")).text(Units.INCH))
                .isEqualTo("0.3510 in");
        assertThat(Term.fineAtLeast("f", "finished", in(".3510")).text(Units.METRIC))
                .isEqualTo("8.916 mm (rounded up)");
    }

    @Property
    void theShownNumberIsNeverOnTheUnsafeSide(
            @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        for (Units units : Units.values()) {
            String unit = units == Units.INCH ? " in" : " mm";
            Length most = Length.parse(Term.atMost("T", "trim", length).number(units, 0) + unit);
            Length least = Length.parse(Term.atLeast("S", "cut", length).number(units, 0) + unit);
            assertThat(most).isLessThanOrEqualTo(length);
            assertThat(least).isGreaterThanOrEqualTo(length);
            Length finest = Length.parse(Term.fineAtMost("e", "stock", length).number(units, 0) + unit);
            assertThat(finest).isBetween(most, length);
            assertThat(Length.parse(Term.fineAtLeast("f", "finished", length).number(units, 0) + unit))
                    .isBetween(length, least);
        }
    }

    @Test
    void nearestIsNoSafeSide() {
        assertThatThrownBy(() -> new Term.OfSafeLength("T", "trim", in("1"), Notation.Rounding.NEAREST))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("towards");
        assertThatThrownBy(() -> new Term.OfSafeDiameter("f", "finished", in("1"), Notation.Rounding.NEAREST))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("towards");
    }

    @Test
    void moreDigitsAreRoundedToTheSafeSideToo() {
        assertThat(Term.atMost("T", "trim", in(".33339")).number(Units.INCH, 1)).isEqualTo("0.3333");
        assertThat(Term.atLeast("T", "trim", in(".33331")).number(Units.INCH, 1))
                .isEqualTo("0.3334");
        assertThat(Term.fineAtMost("e", "stock", in(".01755")).number(Units.INCH, 1))
                .isEqualTo("0.01755");
        for (Term term : new Term[] {Term.atMost("T", "trim", in("1")), Term.fineAtMost("e", "stock", in("1"))}) {
            assertThatThrownBy(() -> term.number(Units.INCH, 10)).hasMessage("extra must be from 0 to 9, was 10");
        }
    }
}
