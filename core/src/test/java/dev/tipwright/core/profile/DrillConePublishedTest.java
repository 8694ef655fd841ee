package dev.tipwright.core.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The cone that a standard drill (ASME B94.11M, table drills) leaves. A workshop rule of every handbook: the point of a drill of
 * 118 degrees is 0.3 diameters high (0.3004 to four places, half over tan 59 degrees; from memory).
 */
class DrillConePublishedTest {

    static List<CheckTable.Row> drills() {
        return CheckTable.named("drills").rows();
    }

    @ParameterizedTest
    @MethodSource("drills")
    void theConeIsThreeTenthsOfTheDrill(CheckTable.Row row) {
        Length drill = Length.ofMillimetres(row.number("diameter_mm"));
        Length read = Length.parse("40 mm");
        Length cone = read.minus(Bore.depthByPointedRod(read, drill, Angle.ofDegrees(118)));
        // Half a unit of the fourth place.
        assertThat(cone.ratioTo(drill)).isCloseTo(0.3004, within(0.00005));
    }
}
