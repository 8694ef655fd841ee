package dev.tipwright.core.internal.shape;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.internal.shape.Polyline.Diameter;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Polylines by hand, made from profiles, and the frustum of any mechanics text (table rigid-bodies). */
class PolylineTest {

    private static Polyline line(double... atAndValue) {
        double[] at = new double[atAndValue.length / 2];
        double[] value = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = atAndValue[2 * i];
            value[i] = atAndValue[2 * i + 1];
        }
        return Polyline.of(at, value);
    }

    private static void assertKnots(Polyline line, double... atAndValue) {
        double[] actual = new double[2 * line.size()];
        for (int i = 0; i < line.size(); i++) {
            actual[2 * i] = line.at(i);
            actual[2 * i + 1] = line.value(i);
        }
        assertThat(actual).containsExactly(atAndValue);
    }

    /** One that dips ahead: from 1 it may rise to 2 only, halfway up to 3, for 2 is what lies at its end. */
    @Test
    void theLeastAheadByHand() {
        assertKnots(line(0, 1, 2, 3, 4, 2).leastAhead(), 0, 1, 1, 2, 2, 2, 4, 2);
        assertKnots(line(0, 3, 2, 1, 4, 3).leastAhead(), 0, 1, 2, 1, 4, 3);
        assertKnots(line(0, 1, 2, 1, 2, 3, 4, 2).leastAhead(), 0, 1, 2, 1, 2, 2, 4, 2);
        Polyline neverFalling = line(0, 1, 2, 1, 4, 3);
        assertThat(neverFalling.leastAhead()).isSameAs(neverFalling);
    }

    /** 5, 4 and 2 less twice 1, 1.5 and 3. */
    @Test
    void theSumWithASlopedLineByHand() {
        assertKnots(line(0, 5, 1, 4, 4, 2).plus(line(0, 1, 4, 3), -2), 0, 3, 1, 1, 4, -4);
        assertKnots(line(0, 5, 4, 2).plus(line(0, 1, 4, 3), 1), 0, 6, 4, 5);
        assertKnots(line(0, 5, 1, 4, 1, 3, 4, 2).plus(line(0, 1, 4, 1), 2), 0, 7, 1, 6, 1, 5, 4, 4);
    }

    /** A step at 2 from 4 to 6: just short of it, at it and beyond, each place on its own and all in one walk. */
    @Test
    void manyPlacesInOneWalk() {
        Polyline line = line(0, 2, 2, 4, 2, 6, 4, 6, 5, 7);
        double[] places = {0, 0, 1, 2, 2, 3, 4, 4.5, 5};
        assertThat(line.before(places)).containsExactly(2, 2, 3, 4, 4, 6, 6, 6.5, 7);
        assertThat(line.after(places)).containsExactly(2, 2, 3, 6, 6, 6, 6, 6.5, 7);
        for (double place : places) {
            assertThat(line.before(new double[] {place})).containsExactly(line.before(place));
            assertThat(line.after(new double[] {place})).containsExactly(line.after(place));
        }
    }

    /** Radii 2 and 1, height 3: volume 7 pi, centroid 33/28 from the large end. */
    @Test
    void aFrustumHasItsVolumeAndCentroid() {
        CheckTable table = CheckTable.named("rigid-bodies");
        Solid solid = line(0, 4, 3, 2).solid();
        // Printed to six decimals and to ten: half a unit of the last.
        assertThat(solid.volume()).isCloseTo(value(table, "volume"), within(0.5e-6));
        assertThat(solid.first() / solid.volume())
                .isCloseTo(value(table, "centroid from the large end"), within(0.5e-10));
        assertThat(solid.volume()).isCloseTo(7 * Math.PI, within(1e-14 * 22));
        assertThat(solid.first() / solid.volume()).isCloseTo(33.0 / 28, within(1e-15 * 2));
    }

    private static double value(CheckTable table, String quantity) {
        return table.row("quantity", quantity).number("value");
    }

    /** A cylinder 2 wide and 3 long: volume 3 pi, first moment 3 pi times 3/2, second 3 pi times 3^2 / 3. */
    @Test
    void aCylinderByHand() {
        Solid solid = Polyline.constant(2, 0, 3).solid();
        assertThat(solid.volume()).isCloseTo(3 * Math.PI, within(1e-14));
        assertThat(solid.first()).isCloseTo(4.5 * Math.PI, within(1e-14));
        assertThat(solid.second()).isCloseTo(9 * Math.PI, within(1e-13));
        assertThat(Polyline.constant(2, 0, 3).integral()).isEqualTo(6);
    }

    /** 4 to 2 and 1 to 5 over 0 to 4: equal where 4 - z/2 = 1 + z, at z = 2 with the value 3. */
    @Test
    void theLowerEnvelopeHasAKnotWhereTheLinesCross() {
        assertKnots(line(0, 4, 4, 2).min(line(0, 1, 4, 5)), 0, 1, 2, 3, 4, 2);
    }

    @Test
    void theLowerEnvelopeKeepsTheStepsOfBoth() {
        assertKnots(line(0, 4, 2, 4, 2, 1, 4, 1).min(line(0, 3, 4, 3)), 0, 3, 2, 3, 2, 1, 4, 1);
        // Touching is no crossing.
        assertKnots(line(0, 2, 2, 3, 4, 2).min(line(0, 4, 2, 3, 4, 4)), 0, 2, 2, 3, 4, 2);
    }

    @Test
    void aSumHasTheKnotsOfBoth() {
        assertKnots(line(0, 4, 4, 2).plus(line(0, 1, 1, 1, 1, 2, 4, 2), -2), 0, 2, 1, 1.5, 1, -0.5, 4, -2);
    }

    @Test
    void aPartTakesTheInnerSideOfAStepAtItsEnds() {
        Polyline line = line(0, 5, 2, 5, 2, 3, 4, 1, 4, 7, 6, 7);
        assertKnots(line.between(2, 4), 2, 3, 4, 1);
        assertKnots(line.between(3, 5), 3, 2, 4, 1, 4, 7, 5, 7);
        assertKnots(line.between(2.5, 3.5), 2.5, 2.5, 3.5, 1.5);
    }

    @Test
    void linesOnOtherPlacesDoNotPair() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line(0, 1, 4, 1).min(line(0, 1, 5, 1)))
                .withMessage("other must run from 0.0 to 4.0, was from 0.0 to 5.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line(0, 1, 4, 1).plus(line(1, 1, 4, 1), 1))
                .withMessage("other must run from 0.0 to 4.0, was from 1.0 to 4.0");
    }

    @Test
    void anOutOfRoundProfileHasThreeLines() {
        DiameterProfile oval = DiameterProfile.of(
                new Station(Length.ZERO, len("9 mm"), len("9.2 mm")),
                new Station(len("4 mm"), len("8 mm"), len("9 mm")));
        assertKnots(Polyline.of(oval, Diameter.LEAST), 0, 9, 4, 8);
        assertKnots(Polyline.of(oval, Diameter.MEAN), 0, 9.1, 4, 8.5);
        assertKnots(Polyline.of(oval, Diameter.GREATEST), 0, 9.2, 4, 9);
    }

    @Test
    void aTrimmedProfileCountsFromItsNewStart() {
        DiameterProfile tip =
                DiameterProfile.of(Station.of(len("1 mm"), len("8 mm")), Station.of(len("5 mm"), len("10 mm")));
        assertKnots(Polyline.of(tip, Diameter.MEAN), 0, 8, 4, 10);
        assertKnots(Polyline.of(tip.trimmedFromStart(len("2 mm")), Diameter.MEAN), 0, 9, 2, 10);
        assertKnots(Polyline.of(tip.endedAt(len("2 mm")), Diameter.MEAN), 0, 8, 2, 9);
    }

    /** Knots at 10 and 20 mm; the part from 5 to 25 mm is flat, rises, is flat; the part past 20 mm is flat. */
    @Test
    void aThicknessGoesOnFlatBeyondItsKnots() {
        ThicknessProfile wall = new ThicknessProfile(List.of(
                new ThicknessProfile.Knot(len("10 mm"), len("1 mm")),
                new ThicknessProfile.Knot(len("20 mm"), len("2 mm"))));
        assertKnots(Polyline.of(wall, len("5 mm"), 20), 0, 1, 5, 1, 15, 2, 20, 2);
        assertKnots(Polyline.of(wall, len("15 mm"), 2), 0, 1.5, 2, 1.7);
        assertKnots(Polyline.of(wall, len("30 mm"), 2), 0, 2, 2, 2);
        assertKnots(Polyline.of(ThicknessProfile.uniform(len("1 mm")), Length.ZERO, 3), 0, 1, 3, 1);
    }

    @Test
    void worksOnCopiesOfTheArraysGiven() {
        double[] at = {0, 1};
        double[] value = {5, 6};
        Polyline line = Polyline.of(at, value);
        at[0] = 9;
        value[0] = 9;
        assertKnots(line, 0, 5, 1, 6);
    }

    /** 9 at 0, 10 at 4, up to 11 there, 12 at 8: over 2 to 6 that is 9.5 at 0, the step at 2, 11.5 at 4. */
    @Test
    void aSpanOfStationsEndsBetweenThemAndKeepsTheStep() {
        List<Station> stations = List.of(
                Station.of(len("0 mm"), len("9 mm")),
                new Station(len("4 mm"), len("10 mm"), len("10.2 mm")),
                Station.of(len("4 mm"), len("11 mm")),
                Station.of(len("8 mm"), len("12 mm")));
        assertKnots(Polyline.over(stations, len("2 mm"), len("4 mm"), Diameter.LEAST), 0, 9.5, 2, 10, 2, 11, 4, 11.5);
        assertKnots(
                Polyline.over(stations, len("2 mm"), len("4 mm"), Diameter.GREATEST), 0, 9.6, 2, 10.2, 2, 11, 4, 11.5);
        assertKnots(Polyline.over(stations, len("4 mm"), len("4 mm"), Diameter.MEAN), 0, 11, 4, 12);
        assertKnots(Polyline.over(stations, len("0 mm"), len("4 mm"), Diameter.LEAST), 0, 9, 4, 10);
        assertKnots(Polyline.over(stations, len("1 mm"), len("1 mm"), Diameter.LEAST), 0, 9.25, 1, 9.5);
    }

    /** Twice off 10: 0.5 everywhere, or from 0.2 at 4 mm of the raw tip to 0.6 at 8, counted from 6. */
    @Test
    void aThicknessIsTakenOffFromThePlaceItIsCountedFrom() {
        Polyline ten = Polyline.constant(10, 0, 4);
        assertKnots(ten.plus(ThicknessProfile.uniform(len(".5 mm")), len("6 mm"), -2), 0, 9, 4, 9);
        ThicknessProfile thicker = new ThicknessProfile(List.of(
                new ThicknessProfile.Knot(len("4 mm"), len(".25 mm")),
                new ThicknessProfile.Knot(len("8 mm"), len(".75 mm"))));
        assertKnots(ten.plus(thicker, len("6 mm"), -2), 0, 9, 2, 8.5, 4, 8.5);
    }

    /** Three knots within a nanometre at 1 mm: the one between the others has no length. */
    @Test
    void roundedToStationsAtMostTwoToAPlace() {
        Polyline line = line(0, 9, 1, 9.5, 1.0000001, 9.7, 1.0000002, 9.9, 2, 9.9);
        assertThat(line.rounded(line))
                .containsExactly(
                        Station.of(len("0 mm"), len("9 mm")),
                        Station.of(len("1 mm"), len("9.5 mm")),
                        Station.of(len("1 mm"), len("9.9 mm")),
                        Station.of(len("2 mm"), len("9.9 mm")));
        Polyline oval = line(0, 9, 1, 9.5);
        assertThat(oval.rounded(oval.plus(.25)))
                .containsExactly(
                        new Station(len("0 mm"), len("9 mm"), len("9.25 mm")),
                        new Station(len("1 mm"), len("9.5 mm"), len("9.75 mm")));
    }
}
