package dev.tipwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.checkvalues.CheckTable;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sixty-fourths of an inch against the table of decimal equivalents of every workshop handbook (fractions-of-an-inch). */
class FractionsOfAnInchPublishedTest {

    static List<CheckTable.Row> rows() {
        return CheckTable.named("fractions-of-an-inch").rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyWayToWriteItIsTheSameLength(CheckTable.Row row) {
        long sixtyFourths = row.decimal("sixty_fourths").longValueExact();
        Length expected = Length.ofNanometres(row.decimal("value_nm").longValueExact());
        assertThat(Length.parse(row.text("fraction") + " in")).isEqualTo(expected);
        assertThat(Length.parse(row.text("decimal_in") + " in")).isEqualTo(expected);
        assertThat(Length.parse(row.text("value_mm") + " mm")).isEqualTo(expected);
        assertThat(Length.ofInchFraction(0, sixtyFourths, 64)).isEqualTo(expected);
        assertThat(Length.ofInches(row.number("decimal_in"))).isEqualTo(expected);
        assertThat(Length.ofMillimetres(row.number("value_mm"))).isEqualTo(expected);
        assertThat(expected.inches()).isEqualTo(row.number("decimal_in"));
        assertThat(expected.millimetres()).isEqualTo(row.number("value_mm"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isPrintedAsTheTableWritesIt(CheckTable.Row row) {
        Length length = Length.ofNanometres(row.decimal("value_nm").longValueExact());
        Notation.Printed printed = Notation.SIXTY_FOURTHS.print(length);
        assertThat(printed.text()).isEqualTo(row.text("fraction") + " in");
        assertThat(printed.rounded()).isFalse();
        assertThat(length).hasToString(row.text("value_mm") + " mm");
    }
}
