package dev.tipwright.core.internal.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Decimal text of a double is within half a unit of its last place, and has no exponent and no minus zero. */
class DecimalsProperties {

    @Property
    void isWithinHalfAUnitOfTheLastPlace(@ForAll double value, @ForAll @IntRange(min = 0, max = 12) int places) {
        String text = Decimals.fixed(value, places);
        assertThat(text).matches("-?[0-9]+" + (places == 0 ? "" : "\\.[0-9]{" + places + "}"));
        BigDecimal error = new BigDecimal(text).subtract(new BigDecimal(value)).abs();
        assertThat(error).isLessThanOrEqualTo(new BigDecimal("0.5").movePointLeft(places));
    }

    /** 0.125 and 0.375 are exact in binary: ties go to the even digit. */
    @Example
    void byHand() {
        assertThat(Decimals.fixed(0.125, 2)).isEqualTo("0.12");
        assertThat(Decimals.fixed(0.375, 2)).isEqualTo("0.38");
        assertThat(Decimals.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Decimals.fixed(-0.0, 0)).isEqualTo("0");
        assertThat(Decimals.fixed(1e21, 1)).isEqualTo("1000000000000000000000.0");
        assertThat(Decimals.fixed(-1234.5, 1)).isEqualTo("-1234.5");
    }

    @Example
    void allDigitsAndNoExponent() {
        assertThat(Decimals.plain(10)).isEqualTo("10");
        assertThat(Decimals.plain(28.349523125)).isEqualTo("28.349523125");
        assertThat(Decimals.plain(1e21)).isEqualTo("1000000000000000000000");
        assertThat(Decimals.plain(-1e-7)).isEqualTo("-0.0000001");
    }
}
