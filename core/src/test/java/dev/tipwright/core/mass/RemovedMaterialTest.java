package dev.tipwright.core.mass;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes off a tip: cylinders by hand, unknown densities, work that reaches past what was read. */
class RemovedMaterialTest {

    private static final Reading<Density> TWO = Reading.measured(Density.ofGramsPerCubicCentimetre(2));
    private static final Reading<Density> ONE = Reading.measured(Density.ofGramsPerCubicCentimetre(1));

    /** Outside 10 mm over a finish .5 mm thick, read for 100 mm; structure of 2 g/cm3, finish of 1 g/cm3. */
    private static Build club(TipWork work) {
        Build club = Bench.club("7");
        ShaftSection section = new ShaftSection(
                DiameterProfile.cylinder(len("10 mm"), len("100 mm")),
                len("15 mm"),
                Reading.measured(new Wall(ThicknessProfile.uniform(len("2 mm")), TWO)),
                Reading.measured(new Finish(ThicknessProfile.uniform(len(".5 mm")), ONE)));
        return Bench.withShaft(club, club.parts().shaft().withSection(section))
                .withWork(club.work().withTip(work));
    }

    private static TipWork worked(String stripped, String diameter, String reach) {
        return new TipWork(
                len(stripped), List.of(Station.of(Length.ZERO, len(diameter)), Station.of(len(reach), len(diameter))));
    }

    /** Stripped for 20 mm: a ring from 10 to 9 mm, pi / 4 (100 - 81) 20 = 95 pi mm3, .095 pi g, in its middle at 10 mm. */
    @Test
    void strippingTakesFinishAlone() {
        RemovedMaterial off = RemovedMaterial.of(club(new TipWork(len("20 mm"), List.of())));
        assertThat(off.finish().cubicMillimetres()).isCloseTo(95 * Math.PI, within(1e-11));
        assertThat(off.structure().cubicMillimetres()).isCloseTo(0, within(1e-11));
        assertThat(off.mass().grams()).isCloseTo(.095 * Math.PI, within(1e-12));
        assertThat(off.momentAboutTip().over(off.mass()).millimetres()).isCloseTo(10, within(1e-6));
        // A thin span about its end: m L^2 / 3.
        assertThat(off.inertiaAboutTip().gramSquareMillimetres()).isCloseTo(.095 * Math.PI * 400 / 3, within(1e-9));
    }

    /** Worked to 8 mm for 20 mm: finish 95 pi mm3 of 1 g/cm3, structure pi / 4 (81 - 64) 20 = 85 pi mm3 of 2 g/cm3. */
    @Test
    void workingDownTakesFinishAndStructure() {
        RemovedMaterial off = RemovedMaterial.of(club(worked("0 mm", "8 mm", "20 mm")));
        assertThat(off.finish().cubicMillimetres()).isCloseTo(95 * Math.PI, within(1e-11));
        assertThat(off.structure().cubicMillimetres()).isCloseTo(85 * Math.PI, within(1e-11));
        assertThat(off.volume().cubicMillimetres()).isCloseTo(180 * Math.PI, within(1e-11));
        assertThat(off.mass().grams()).isCloseTo((.095 + .170) * Math.PI, within(1e-12));
    }

    /** Stripped for 30 mm and worked to 8 mm for 20: ten millimetres more of finish, 47.5 pi mm3. And the other way round. */
    @Test
    void strippingAndWorkingReachAsFarAsTheyReach() {
        RemovedMaterial stripped = RemovedMaterial.of(club(worked("30 mm", "8 mm", "20 mm")));
        assertThat(stripped.finish().cubicMillimetres()).isCloseTo(142.5 * Math.PI, within(1e-11));
        assertThat(stripped.structure().cubicMillimetres()).isCloseTo(85 * Math.PI, within(1e-11));
        RemovedMaterial worked = RemovedMaterial.of(club(worked("10 mm", "8 mm", "20 mm")));
        assertThat(worked.finish().cubicMillimetres()).isCloseTo(95 * Math.PI, within(1e-11));
        assertThat(worked.structure().cubicMillimetres()).isCloseTo(85 * Math.PI, within(1e-11));
    }

    /** A finished shape wider than the tip takes nothing: there is nothing to take. */
    @Test
    void aWiderShapeTakesNothing() {
        RemovedMaterial off = RemovedMaterial.of(club(worked("0 mm", "12 mm", "20 mm")));
        assertThat(off.volume().cubicMillimetres()).isCloseTo(0, within(1e-11));
        assertThat(RemovedMaterial.of(club(TipWork.NONE))).isSameAs(RemovedMaterial.NONE);
    }

    /** Nothing is neither finish nor structure, whatever it weighs. */
    @Test
    void finishAloneOrStructureAloneIsSomething() {
        assertThat(RemovedMaterial.NONE.isNothing()).isTrue();
        assertThat(RemovedMaterial.of(club(worked("0 mm", "12 mm", "20 mm"))).isNothing())
                .isTrue();
        for (Volume[] some :
                new Volume[][] {{Volume.ofCubicMillimetres(1), Volume.ZERO}, {Volume.ZERO, Volume.ofCubicMillimetres(1)}
                }) {
            assertThat(new RemovedMaterial(some[0], some[1], Mass.ZERO, FirstMoment.ZERO, Inertia.ZERO).isNothing())
                    .isFalse();
        }
    }

    @Test
    void anUnknownDensityCountsAsNothingAndAnUnknownFinishIsNone() {
        Build club = club(worked("0 mm", "8 mm", "20 mm"));
        ShaftSection section = club.parts().shaft().section();
        Reading<Density> unknown = Reading.unknown("the shaft's maker");
        Build noDensity = Bench.withShaft(
                club,
                club.parts()
                        .shaft()
                        .withSection(section.withWall(
                                Reading.measured(new Wall(ThicknessProfile.uniform(len("2 mm")), unknown)))));
        assertThat(RemovedMaterial.of(noDensity).mass().grams()).isCloseTo(.095 * Math.PI, within(1e-12));
        Build noWall = Bench.withShaft(
                club, club.parts().shaft().withSection(section.withWall(Reading.unknown("measure it"))));
        assertThat(RemovedMaterial.of(noWall)).isEqualTo(RemovedMaterial.of(noDensity));
        Build noFinish = Bench.withShaft(
                club, club.parts().shaft().withSection(section.withFinish(Reading.unknown("measure it"))));
        RemovedMaterial off = RemovedMaterial.of(noFinish);
        assertThat(off.finish().cubicMillimetres()).isCloseTo(0, within(1e-11));
        assertThat(off.structure().cubicMillimetres()).isCloseTo(180 * Math.PI, within(1e-11));
    }

    @Test
    void refusesWorkPastWhatWasRead() {
        Build club = club(worked("0 mm", "8 mm", "101 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RemovedMaterial.of(club))
                .withMessageContaining("was 101 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> RemovedMaterial.of(null))
                .withMessage("build must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> new RemovedMaterial(Volume.ZERO, null, Mass.ZERO, FirstMoment.ZERO, Inertia.ZERO))
                .withMessage("structure must not be null");
    }
}
