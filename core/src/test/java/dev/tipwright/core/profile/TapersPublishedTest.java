package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tapers against Machinery's Handbook (Morse sockets, two discs: tables tapers-morse and tapers-two-discs) and ISO 1119 and
 * ISO 3040 (taper as a ratio: table tapers-ratio).
 */
class TapersPublishedTest {

    static List<CheckTable.Row> morse() {
        return CheckTable.named("tapers-morse").rows();
    }

    static List<CheckTable.Row> ratios() {
        return CheckTable.named("tapers-ratio").rows();
    }

    /** A socket bored from its published mouth at its published rate has the published small end at the plug's depth. */
    @ParameterizedTest
    @MethodSource("morse")
    void aMorseSocketNarrowsToTheSmallEndOfItsPlug(CheckTable.Row row) {
        Length depth = len(row.text("plug_depth_in") + " in");
        double rate = row.number("taper_per_foot_in") / 12;
        Bore socket = Bore.ofMouthAndTaper(
                Length.ofInches(row.number("large_end_of_socket_in")), rate, depth, BoreEnd.THROUGH);
        double smallEnd = socket.profile().diameterAt(depth).inches();
        // Both ends are printed to a thousandth (Morse 0 to a ten-thousandth at one end): half a unit of each.
        assertThat(smallEnd).isCloseTo(row.number("small_end_of_plug_in"), within(0.001));
        assertThat(len(row.text("plug_depth") + " in")).isEqualTo(depth);
    }

    /** Halfway up a plug the diameter is the mean of its ends. */
    @ParameterizedTest
    @MethodSource("morse")
    void aPlugIsStraightBetweenItsEnds(CheckTable.Row row) {
        Length depth = len(row.text("plug_depth_in") + " in");
        Length small = len(row.text("small_end_of_plug_in") + " in");
        Length large = len(row.text("large_end_of_socket_in") + " in");
        DiameterProfile plug = DiameterProfile.of(Station.of(Length.ZERO, small), Station.of(depth, large));
        assertThat(plug.diameterAt(depth.half())).isEqualTo(small.plus(large).half());
    }

    /** ISO 3040: over its length per unit diameter a cone loses one unit, and the included angle is 2 atan(1 / 2 length). */
    @ParameterizedTest
    @MethodSource("ratios")
    void aRatioIsOneUnitOfDiameterOverItsLength(CheckTable.Row row) {
        double per = row.number("length_per_unit_diameter");
        Bore cone = Bore.ofMouthAndTaper(len("20 mm"), 1 / per, Length.ofMillimetres(10 * per), BoreEnd.FLAT);
        assertThat(cone.profile().diameterAt(cone.depth())).isEqualTo(len("10 mm"));
        // A cone of the included angle, 20 mm wide at its mouth, ends in a point at 20 mm times the ratio's length.
        Angle included = Angle.parse(row.text("included_angle_deg") + " deg");
        Length left = Bore.depthByPointedRod(Length.ofMillimetres(21 * per), len("20 mm"), included);
        // The angle is printed to 1e-6 degrees, which is 1e-6 of the smallest angle.
        assertThat(left.millimetres()).isCloseTo(per, within(20 * per * 1e-6));
    }

    /** Two discs: 0.2 in over rolls on stacks 2 in apart is a rate of 0.1, that is 1.2 in per foot (read). */
    @Test
    void aTaperOverTwoDiscsGivesItsRate() {
        CheckTable table = CheckTable.named("tapers-two-discs");
        Length low = Length.ofInches(value(table, "over rolls at one stack"));
        Length high = Length.ofInches(value(table, "over rolls at the other stack"));
        Length apart = Length.ofInches(value(table, "upper stack") - value(table, "lower stack"));
        Bore bore = Bore.ofTwoDiameters(low, high, apart, BoreEnd.THROUGH);
        Length perFoot = bore.profile()
                .diameterAt(Length.ZERO)
                .minus(bore.profile().diameterAt(apart))
                .times(6);
        assertThat(perFoot.inches()).isEqualTo(value(table, "taper per foot"));
    }

    private static double value(CheckTable table, String quantity) {
        return table.row("quantity", quantity).number("value");
    }
}
