package dev.tipwright.core.internal.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected values by hand: rings, cones, and where straight lines cross. */
class TipStockTest {

    private static final DiameterProfile TEN = DiameterProfile.cylinder(mm(10), mm(100));
    private static final Finish HALF = Finish.NONE.withThickness(ThicknessProfile.uniform(mm(.5)));

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    private static TipStock worked(double[] at, double[] diameter) {
        return TipStock.of(club(TEN, HALF, 0, 0, Stations.ofMillimetres(at, diameter, diameter)));
    }

    private static TipStock stripped(DiameterProfile outside, Finish finish, double trimmed, double stripped) {
        return TipStock.of(club(outside, finish, trimmed, stripped, List.of()));
    }

    private static Build club(
            DiameterProfile outside, Finish finish, double trimmed, double stripped, List<Station> finished) {
        Build club = Bench.club("6");
        Shaft shaft = club.parts().shaft();
        ShaftSection section = shaft.section().withOutside(outside).withFinish(Reading.measured(finish));
        return Bench.withShaft(club, shaft.withSection(section))
                .withWork(Work.NONE.withTipTrim(mm(trimmed)).withTip(new TipWork(mm(stripped), finished)));
    }

    private static double[] of(double... values) {
        return values;
    }

    /** Outside 10, bare 9, worked to 8 over the first half of 10 mm: structure 17 pi / 4 times 5, finish 19 pi / 4 times 5. */
    @Test
    void stockIsSplitIntoFinishAndStructure() {
        TipStock stock = worked(of(0, 5, 5, 10), of(8, 8, 10, 10));
        assertThat(stock.structure().volume()).isCloseTo(17 * Math.PI / 4 * 5, within(1e-12 * 70));
        assertThat(stock.finish().volume()).isCloseTo(19 * Math.PI / 4 * 5, within(1e-12 * 75));
        assertThat(stock.finish().first()).isCloseTo(19 * Math.PI / 4 * 5 * 2.5, within(1e-12 * 200));
        assertThat(stock.structure().second()).isCloseTo(17 * Math.PI / 4 * 125 / 3, within(1e-12 * 600));
    }

    /**
     * Worked from 8 at the end straight up to 11 at 3 mm: it comes through the bare tip of 9 at 1 mm and through the outside of 10 at 2 mm.
     * Structure: a cylinder of 9 less a cone from 8 to 9, both 1 mm high. Finish: a cylinder of 10 less one of 9 up to there, and less a
     * cone from 9 to 10 on. The same the other way round, from 11 down to 8.
     */
    @Test
    void shapeThatCrossesBothSurfaces() {
        double structure = 81 - (64 + 72 + 81) / 3.0;
        double finish = (100 - 81) + (100 - (81 + 90 + 100) / 3.0);
        for (TipStock stock : List.of(worked(of(0, 3), of(8, 11)), worked(of(0, 3), of(11, 8)))) {
            assertThat(stock.structure().volume()).isCloseTo(Math.PI / 4 * structure, within(1e-12 * 10));
            assertThat(stock.finish().volume()).isCloseTo(Math.PI / 4 * finish, within(1e-12 * 30));
        }
    }

    /** Finish stripped up to 7 mm, nothing worked: a tube of 10 and 9, 7 mm long. */
    @Test
    void finishAlone() {
        TipStock stock = stripped(TEN, HALF, 0, 7);
        assertThat(stock.finish().volume()).isCloseTo(Math.PI / 4 * 19 * 7, within(1e-12 * 105));
        assertThat(stock.structure().volume()).isZero();
        assertThat(stock.isNothing()).isFalse();
    }

    @Test
    void shapeWiderThanTheTipTakesNothing() {
        assertThat(worked(of(0, 5), of(12, 12)).isNothing()).isTrue();
        assertThat(worked(of(0, 5), of(10, 10)).isNothing()).isTrue();
    }

    /**
     * A finish of 0.2 mm at 30 mm from the raw tip and 0.6 at 40, the same before and beyond; trimmed at 32 and stripped over 10 mm. It is
     * 0.28 thick at the end, 0.6 at 8 mm and on. Bare 9.44 to 8.8 over 8 mm, then 8.8 over 2.
     */
    @Test
    void finishOfManyThicknessesCountsFromTheRawTip() {
        Finish finish = Finish.NONE.withThickness(new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(mm(30), mm(.2)), new ThicknessProfile.Knot(mm(40), mm(.6)))));
        TipStock stock = stripped(TEN, finish, 32, 10);
        double cone = 8 * (100 - (9.44 * 9.44 + 9.44 * 8.8 + 8.8 * 8.8) / 3);
        double beyond = 2 * (100 - 8.8 * 8.8);
        assertThat(stock.finish().volume()).isCloseTo(Math.PI / 4 * (cone + beyond), within(1e-12 * 160));
    }

    /** Readings out of round count by their mean: 9.8 and 10.2 as 10, stripped of 0.5 over 7 mm. */
    @Test
    void outOfRoundCountsByItsMean() {
        DiameterProfile oval = DiameterProfile.of(
                new Station(Length.ZERO, mm(9.8), mm(10.2)), new Station(mm(100), mm(9.8), mm(10.2)));
        TipStock stock = stripped(oval, HALF, 0, 7);
        assertThat(stock.finish().volume()).isCloseTo(Math.PI / 4 * 19 * 7, within(1e-12 * 105));
    }

    /** What it weighs is volume times density, part by part: 17 pi / 4 times 5 of structure at 1.6, 19 pi / 4 times 5 of finish at 1.2. */
    @Test
    void weighsItsPartsByTheirDensities() {
        Finish dense = HALF.withDensity(Reading.measured(Density.ofGramsPerCubicCentimetre(1.2)));
        double[] at = of(0, 5, 5, 10);
        double[] diameter = of(8, 8, 10, 10);
        Rod off = TipStock.weighed(club(TEN, dense, 0, 0, Stations.ofMillimetres(at, diameter, diameter)));
        double perMillimetre = Math.PI / 4 * (17 * 1.6e-3 + 19 * 1.2e-3);
        assertThat(off.mass()).isCloseTo(5 * perMillimetre, within(1e-12));
        assertThat(off.first()).isCloseTo(12.5 * perMillimetre, within(1e-12));
        assertThat(off.second()).isCloseTo(125 / 3.0 * perMillimetre, within(1e-11));
        assertThat(off.weight()).isEqualTo(Mass.ofGrams(5 * perMillimetre));
    }

    /** A density that is not known counts as nothing. */
    @Test
    void unknownDensityWeighsNothing() {
        Build club = club(TEN, HALF, 0, 7, List.of());
        assertThat(TipStock.weighed(club).mass()).isZero();
        assertThat(TipStock.of(club).isNothing()).isFalse();
    }
}
