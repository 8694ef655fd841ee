package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Pins what working a tip down takes off and leaves, on tubes of round numbers of millimetres that a reader can work with a pencil:
 * stock, volumes, mass, wall, second moment; a finish that fades out, a shoulder, an oval tip, what is not known.
 */
class MaterialRemovalByHandTest {

    /** Doubles: sixteen digits of numbers under a thousand. */
    private static final Offset<Double> DOUBLES = within(1e-12);

    /** 10 over the finish, .1 of it, wall 2.5 in all: bare 9.8, inside 5. */
    private static final TipSection TUBE = tube(cylinder(10), 0.1);

    /** 9.5 wide and .1 wanted: the tip becomes 9.4. */
    private static final MaterialRemoval REMOVAL = MaterialRemoval.of(TUBE, bore(9.5, 20), mm(20), mm(0.1));

    @Test
    void shapeAndStock() {
        assertThat(REMOVAL.finished()).containsExactly(at(0, 9.4), at(20, 9.4));
        assertThat(REMOVAL.profile()).isEqualTo(DiameterProfile.of(at(0, 9.4), at(20, 9.4)));
        assertThat(REMOVAL.stockAtEnd()).isEqualTo(mm(0.6));
        assertThat(REMOVAL.structureAtEnd()).isEqualTo(mm(0.4));
        assertThat(REMOVAL.finishAtEnd()).isEqualTo(mm(0.2));
    }

    /** pi / 4 (100 - 96.04) 20 and pi / 4 (96.04 - 88.36) 20. */
    @Test
    void volumes() {
        assertThat(REMOVAL.finishVolume().cubicMillimetres()).isCloseTo(19.8 * Math.PI, DOUBLES);
        assertThat(REMOVAL.structureVolume().cubicMillimetres()).isCloseTo(38.4 * Math.PI, DOUBLES);
        assertThat(REMOVAL.volume().cubicMillimetres()).isCloseTo(58.2 * Math.PI, DOUBLES);
    }

    /** 19.8 pi mm3 at 1.25 and 38.4 pi mm3 at 1.55 mg/mm3, each rounded to the picogram. */
    @Test
    void mass() {
        assertThat(REMOVAL.mass().orElseThrow().grams())
                .isCloseTo((19.8 * 1.25 + 38.4 * 1.55) * Math.PI / 1000, within(1.01e-12));
    }

    /** (9.4 - 5) / 2. */
    @Test
    void wallLeft() {
        assertThat(REMOVAL.leastWall()).contains(mm(2.2));
        assertThat(REMOVAL.leastWallAt()).isEqualTo(Length.ZERO);
    }

    /** (9.4^4 - 5^4) / (9.8^4 - 5^4) = (7807.4896 - 625) / (9223.6816 - 625), the whole way up. */
    @Test
    void secondMomentLeft() {
        assertThat(REMOVAL.leastStiffness().orElseThrow()).isCloseTo(7182.4896 / 8598.6816, DOUBLES);
        assertThat(REMOVAL.stiffnessAtMouth().orElseThrow()).isCloseTo(7182.4896 / 8598.6816, DOUBLES);
    }

    /** From 9.5 to 10.1 up the bore, less .1: worked from 9.4 at the end to the bare 9.8 at z = 13 1/3 and left alone above. */
    @Test
    void aTaperFadesOut() {
        Bore taper = Bore.ofTwoDiameters(mm(10.1), mm(9.5), mm(20), BoreEnd.FLAT);
        MaterialRemoval removal = MaterialRemoval.of(TUBE, taper, mm(20), mm(0.1));
        assertThat(removal.finished())
                .containsExactly(at(0, 9.4), Station.of(Length.ofNanometres(13_333_333), mm(9.8)), at(20, 9.8));
        // A bare cylinder less the frustum in it: pi h (D2 + D d + d2) / 12 over 40 / 3 mm.
        double frustum = (9.8 * 9.8 + 9.8 * 9.4 + 9.4 * 9.4) / 12;
        assertThat(removal.structureVolume().cubicMillimetres())
                .isCloseTo(Math.PI * 40 / 3 * (9.8 * 9.8 / 4 - frustum), DOUBLES);
        assertThat(removal.leastStiffness().orElseThrow()).isCloseTo(7182.4896 / 8598.6816, DOUBLES);
        assertThat(removal.stiffnessAtMouth()).contains(1.0);
    }

    /** A finish of .1 at the end that is gone 20 mm up: bare is a frustum from 9.8 to 10. */
    @Test
    void aFinishThatFadesOut() {
        ThicknessProfile fading = new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(mm(0), mm(0.1)), new ThicknessProfile.Knot(mm(20), mm(0))));
        TipSection tip = tube(cylinder(10), fading);
        MaterialRemoval removal = MaterialRemoval.of(tip, bore(10.1, 20), mm(20), mm(0.1));
        assertThat(removal.finished()).containsExactly(at(0, 9.8), at(20, 10));
        assertThat(removal.finishVolume().cubicMillimetres())
                .isCloseTo(Math.PI * 20 * (100.0 / 4 - (9.8 * 9.8 + 98 + 100) / 12), DOUBLES);
        assertThat(removal.structureVolume().cubicMillimetres()).isZero();
        assertThat(removal.leastStiffness()).contains(1.0);
    }

    /** The finish is counted from the raw tip: 10 mm trimmed, half of it is left at the end. */
    @Test
    void aTrimmedTipHasTheFinishOfThePlaceItWasCut() {
        ThicknessProfile fading = new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(mm(0), mm(0.1)), new ThicknessProfile.Knot(mm(20), mm(0))));
        TipSection tip = new TipSection(cylinder(10), finish(fading), Reading.unknown("the maker"), mm(10));
        MaterialRemoval removal = MaterialRemoval.of(tip, bore(11, 20), mm(20), mm(0.1));
        assertThat(removal.finished()).containsExactly(at(0, 9.9), at(10, 10), at(20, 10));
        assertThat(removal.stockAtEnd()).isEqualTo(mm(0.1));
    }

    /** A shoulder from 9.2 to 10 at 12 mm: below it the tip already fits, above it .6 comes off. */
    @Test
    void aShoulderInTheTip() {
        DiameterProfile shouldered = DiameterProfile.of(at(0, 9.2), at(12, 9.2), at(12, 10), at(200, 10));
        MaterialRemoval removal = MaterialRemoval.of(tube(shouldered, 0), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(removal.finished()).containsExactly(at(0, 9.2), at(12, 9.2), at(12, 9.4), at(20, 9.4));
        assertThat(removal.stockAtEnd()).isEqualTo(Length.ZERO);
        // pi / 4 (100 - 88.36) 8
        assertThat(removal.structureVolume().cubicMillimetres()).isCloseTo(23.28 * Math.PI, DOUBLES);
        // Inside 4.2 below, 5 above; walls 2.5 and 2.2.
        assertThat(removal.leastWall()).contains(mm(2.2));
        assertThat(removal.leastWallAt()).isEqualTo(mm(12));
    }

    /**
     * A shoulder where the finish has a station too: bare 9.0 and 9.8 there. Each trim makes other sums of decimal fractions, and the
     * shape must keep both values of the step.
     */
    @Test
    void aShoulderWhereTheFinishChanges() {
        for (int trim = 0; trim < 3000; trim += 7) {
            Length trimmed = Length.ofMicrometres(trim);
            Length shoulder = Length.ofMicrometres(12_007).minus(trimmed);
            DiameterProfile shouldered = DiameterProfile.of(
                    Station.of(Length.ZERO, mm(9.2)),
                    Station.of(shoulder, mm(9.2)),
                    Station.of(shoulder, mm(10)),
                    at(200, 10));
            ThicknessProfile bent = new ThicknessProfile(List.of(
                    new ThicknessProfile.Knot(mm(0), mm(0.1)),
                    new ThicknessProfile.Knot(Length.ofMicrometres(12_007), mm(0.1)),
                    new ThicknessProfile.Knot(mm(150), mm(0.05))));
            TipSection tip = new TipSection(shouldered, finish(bent), Reading.unknown("the maker"), trimmed);
            assertThat(tip.stripped().stations()).contains(Station.of(shoulder, mm(9)), Station.of(shoulder, mm(9.8)));
            MaterialRemoval removal = MaterialRemoval.of(tip, bore(9.5, 20), mm(20), mm(0.1));
            assertThat(removal.finished())
                    .containsExactly(at(0, 9), Station.of(shoulder, mm(9)), Station.of(shoulder, mm(9.4)), at(20, 9.4));
        }
    }

    /**
     * The room crosses 9.400005 at 19.200001 x 5 / 8 = 12.000000625 mm, which is rounded to the place of the shoulder: of three knots
     * there the shoulder's two must stay.
     */
    @Test
    void aCrossingRightBelowAShoulder() {
        Length shoulder = Length.ofNanometres(12_000_001);
        Length low = Length.ofNanometres(9_400_005);
        DiameterProfile shouldered = DiameterProfile.of(
                Station.of(mm(0), low), Station.of(shoulder, low), Station.of(shoulder, mm(9)), at(200, 9));
        Length depth = Length.ofNanometres(19_200_001);
        Bore bore = Bore.ofTwoDiameters(Length.ofNanometres(9_500_008), mm(9.5), depth, BoreEnd.FLAT);
        MaterialRemoval removal = MaterialRemoval.of(tube(shouldered, 0), bore, depth, mm(0.1));
        assertThat(removal.finished())
                .containsExactly(
                        at(0, 9.4), Station.of(shoulder, low), Station.of(shoulder, mm(9)), Station.of(depth, mm(9)));
    }

    /** From 9.8 to 10.2 across: contact takes the 10.2, volume the mean of 10. */
    @Test
    void anOvalTip() {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mm(0), mm(9.8), mm(10.2)), new Station(mm(200), mm(9.8), mm(10.2)));
        Bore oval95 = Bore.ofReadings(
                List.of(new Station(mm(0), mm(9.5), mm(9.7)), new Station(mm(20), mm(9.5), mm(9.7))), BoreEnd.FLAT);
        MaterialRemoval removal = MaterialRemoval.of(tube(oval, 0.1), oval95, mm(20), mm(0.1));
        assertThat(removal.finished()).containsExactly(at(0, 9.4), at(20, 9.4));
        assertThat(removal.stockAtEnd()).isEqualTo(mm(0.8));
        assertThat(removal.structureAtEnd()).isEqualTo(mm(0.6));
        assertThat(removal.finishVolume().cubicMillimetres()).isCloseTo(19.8 * Math.PI, DOUBLES);
        assertThat(removal.structureVolume().cubicMillimetres()).isCloseTo(38.4 * Math.PI, DOUBLES);
        assertThat(removal.leastWall()).contains(mm(2.2));
    }

    /** Bare and bore are sums of decimal fractions; a last bit between them is no stock. */
    @Test
    void aTipThatFitsExactlyLosesNothing() {
        Length wanted = Length.ofThousandths(4);
        for (int nm = 9_000_013; nm < 9_500_000; nm += 1_237) {
            Length bare = Length.ofNanometres(nm);
            Length finish = Length.ofNanometres(nm / 191);
            DiameterProfile outside = DiameterProfile.cylinder(bare.plus(finish.times(2)), mm(200));
            TipSection tip = tube(outside, ThicknessProfile.uniform(finish));
            Bore bore = Bore.ofTwoDiameters(bare.plus(wanted), bare.plus(wanted), mm(20), BoreEnd.FLAT);
            MaterialRemoval removal = MaterialRemoval.of(tip, bore, mm(20), wanted);
            assertThat(removal.structureVolume().cubicMillimetres()).isZero();
            assertThat(removal.structureAtEnd()).isEqualTo(Length.ZERO);
        }
    }

    /** A finish read as nothing at places that are no binary fractions: nothing is not nearly nothing. */
    @Test
    void withoutFinishNoFinishComesOff() {
        DiameterProfile bent = DiameterProfile.of(at(0, 9.3), at(7.3, 9.1), at(11.9, 9.77), at(200, 10.3));
        ThicknessProfile none = new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(mm(3.1), mm(0)), new ThicknessProfile.Knot(mm(13.7), mm(0))));
        Finish unweighed = new Finish(none, Reading.unknown("there is none"));
        MaterialRemoval removal = MaterialRemoval.of(
                new TipSection(bent, unweighed, wall(2.5), Length.ZERO), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(removal.finishVolume().cubicMillimetres()).isZero();
        assertThat(removal.mass().orElseThrow().grams())
                .isCloseTo(1.55e-3 * removal.structureVolume().cubicMillimetres(), within(1.01e-12));
    }

    @Test
    void withoutAWallNothingIsSaidOfIt() {
        MaterialRemoval removal = MaterialRemoval.of(
                TipSection.of(cylinder(10), finish(ThicknessProfile.uniform(mm(0.1)))), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(removal.leastWall()).isEmpty();
        assertThat(removal.leastStiffness()).isEmpty();
        assertThat(removal.stiffnessAtMouth()).isEmpty();
        assertThat(removal.mass()).isEmpty();
    }

    @Test
    void whatComesOffIsWeighedIfItsDensityIsKnown() {
        Finish unweighed = new Finish(ThicknessProfile.uniform(mm(0.1)), Reading.unknown("the maker"));
        TipSection tip = TUBE.withWall(Reading.unknown("the maker"));
        // Bare it fits: nothing but finish comes off, 19.8 pi mm3 at 1.25 mg/mm3.
        assertThat(MaterialRemoval.of(tip, bore(10, 20), mm(20), mm(0.1))
                        .mass()
                        .orElseThrow()
                        .grams())
                .isCloseTo(19.8 * Math.PI * 1.25e-3, within(1.01e-12));
        TipSection unknownFinish = new TipSection(cylinder(10), unweighed, wall(2.5), Length.ZERO);
        assertThat(MaterialRemoval.of(unknownFinish, bore(9.5, 20), mm(20), mm(0.1))
                        .mass())
                .isEmpty();
        Wall unweighedWall = new Wall(ThicknessProfile.uniform(mm(2.5)), Reading.unknown("the maker"));
        assertThat(MaterialRemoval.of(TUBE.withWall(Reading.measured(unweighedWall)), bore(9.5, 20), mm(20), mm(0.1))
                        .mass())
                .isEmpty();
    }

    /** A wall of .2 in all, .1 of it finish: .4 of structure comes off the diameter, and .1 of wall is missing. */
    @Test
    void aWallThatIsGoneIsNegativeAndHasNoStiffness() {
        MaterialRemoval removal = MaterialRemoval.of(TUBE.withWall(wall(0.2)), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(removal.leastWall()).contains(mm(-0.1));
        assertThat(removal.leastStiffness()).contains(0.0);
        MaterialRemoval finishOnly = MaterialRemoval.of(TUBE.withWall(wall(0.05)), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(finishOnly.leastStiffness()).contains(0.0);
    }

    /** 8.5 less twice .25 is 8, bare and inside: binary fractions, so nothing at all is left of the wall. */
    @Test
    void aWallThatIsAllFinishHasNoStiffness() {
        TipSection shell = tube(cylinder(8.5), 0.25).withWall(wall(0.25));
        MaterialRemoval removal = MaterialRemoval.of(shell, bore(8.5, 20), mm(20), mm(0.1));
        assertThat(removal.leastWall()).contains(Length.ZERO);
        assertThat(removal.leastStiffness()).contains(0.0);
        assertThat(removal.stiffnessAtMouth()).contains(0.0);
    }

    @Test
    void aFinishAsThickAsTheTipIsRefused() {
        assertThatThrownBy(() -> tube(cylinder(8), 4).stripped())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("finish must leave some of the tip under it, was 0 mm");
        assertThatThrownBy(() -> MaterialRemoval.of(tube(cylinder(8), 4), bore(9.5, 20), mm(20), mm(0.1)))
                .hasMessage("finish must leave some of the tip under it, was 0 mm");
        assertThat(tube(cylinder(8), 3.5).stripped().stations()).containsExactly(at(0, 1), at(200, 1));
    }

    @Test
    void aClearanceAsWideAsTheBoreIsRefused() {
        assertThatThrownBy(() -> MaterialRemoval.of(TUBE, bore(9.5, 20), mm(20), mm(9.5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("clearance must be less than the bore is wide");
        assertThat(MaterialRemoval.of(TUBE, bore(9.5, 20), mm(20), mm(9)).finished())
                .containsExactly(at(0, 0.5), at(20, 0.5));
    }

    /** Solid: (9.4 / 9.8)^4. */
    @Test
    void aSolidTipHasNoHole() {
        MaterialRemoval removal = MaterialRemoval.of(TUBE.withWall(wall(6)), bore(9.5, 20), mm(20), mm(0.1));
        assertThat(removal.leastStiffness().orElseThrow()).isCloseTo(7807.4896 / 9223.6816, DOUBLES);
    }

    @Test
    void aTipCanBeSeatedShortOfTheBottom() {
        Bore taper = Bore.ofTwoDiameters(mm(9.9), mm(9.5), mm(40), BoreEnd.FLAT);
        MaterialRemoval removal = MaterialRemoval.of(TUBE, taper, mm(20), mm(0.1));
        assertThat(removal.finished()).containsExactly(at(0, 9.6), at(20, 9.8));
    }

    @Test
    void theBareTipKeepsWhatIsOutOfRound() {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mm(0), mm(9.8), mm(10.2)), new Station(mm(200), mm(9.8), mm(10.2)));
        assertThat(tube(oval, 0.1).stripped().stations())
                .containsExactly(new Station(mm(0), mm(9.6), mm(10)), new Station(mm(200), mm(9.6), mm(10)));
    }

    private static TipSection tube(DiameterProfile outside, double finish) {
        return tube(outside, ThicknessProfile.uniform(mm(finish)));
    }

    private static TipSection tube(DiameterProfile outside, ThicknessProfile finish) {
        return new TipSection(outside, finish(finish), wall(2.5), Length.ZERO);
    }

    private static Finish finish(ThicknessProfile thickness) {
        return new Finish(thickness, Reading.measured(Density.ofGramsPerCubicCentimetre(1.25)));
    }

    private static Reading<Wall> wall(double thickness) {
        return Reading.measured(new Wall(
                ThicknessProfile.uniform(mm(thickness)), Reading.measured(Density.ofGramsPerCubicCentimetre(1.55))));
    }

    private static DiameterProfile cylinder(double diameter) {
        return DiameterProfile.cylinder(mm(diameter), mm(200));
    }

    private static Bore bore(double diameter, double depth) {
        return Bore.ofTwoDiameters(mm(diameter), mm(diameter), mm(depth), BoreEnd.FLAT);
    }

    private static Station at(double place, double diameter) {
        return Station.of(mm(place), mm(diameter));
    }

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
