package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** A nudge moves what it is named for, by what it is told, and leaves what the plan decided. */
class NudgesTest {

    private static final double DELTA = 0.25;

    private final Build build = worked(NudgedClub.BUILD);

    private static Build worked(Build parts) {
        Work work = Work.NONE
                .withTipTrim(Length.ofMillimetres(12))
                .withButtTrim(Length.ofMillimetres(40))
                .withTip(new TipWork(
                        Length.ofMillimetres(30),
                        List.of(
                                Station.of(Length.ZERO, Length.ofMillimetres(8.9)),
                                Station.of(Length.ofMillimetres(30), Length.ofMillimetres(9.1)))))
                .withSeat(Seat.onBottomOf(parts.parts().head().bore()));
        return parts.withWork(work);
    }

    private void moves(Nudge nudge, ToDoubleFunction<Build> value) {
        Build moved = nudge.by(build, DELTA);
        assertThat(value.applyAsDouble(moved) - value.applyAsDouble(build)).isCloseTo(DELTA, within(1e-9));
        assertThat(nudge.by(moved, -DELTA)).isEqualTo(build);
    }

    @Test
    void eachMovesItsValueAndBack() {
        moves(Nudges.HEAD_MASS, b -> b.parts().head().mass().mass().grams());
        moves(Nudges.SHAFT_MASS, b -> b.parts().shaft().mass().mass().grams());
        moves(Nudges.GRIP_MASS, b -> b.parts().grip().mass().grams());
        moves(
                Nudges.MOUTH_TO_GROUND,
                b -> b.parts().head().geometry().mouthToGround().millimetres());
        moves(Nudges.BALANCE_POINT, b -> b.parts().shaft().mass().balance().millimetres());
        moves(Nudges.RAW_LENGTH, b -> b.parts().shaft().length().millimetres());
        moves(Nudges.BORE_DEPTH, b -> b.parts().head().bore().depth().millimetres());
        moves(
                Nudges.BORE_DIAMETERS,
                b -> b.parts().head().bore().profile().stations().get(1).least().millimetres());
        moves(
                Nudges.boreDiameter(1),
                b -> b.parts().head().bore().profile().stations().get(1).least().millimetres());
        moves(
                Nudges.boreStation(1),
                b -> b.parts().head().bore().profile().stations().get(1).at().millimetres());
        moves(
                Nudges.TIP_DIAMETERS,
                b -> b.parts()
                        .shaft()
                        .section()
                        .outside()
                        .stations()
                        .get(0)
                        .least()
                        .millimetres());
        moves(Nudges.LIE, b -> b.parts().head().geometry().lie().degrees());
        moves(Nudges.HOSEL_OUTSIDE, b -> b.parts().head().hosel().outside().millimetres());
        moves(Nudges.GRIP_CAP, b -> b.parts().grip().cap().millimetres());
        moves(Nudges.GRIP_CENTRE, b -> b.parts().grip().centre().millimetres());
        moves(Nudges.TIP_CUT, b -> b.work().tipTrim().millimetres());
        moves(Nudges.BUTT_CUT, b -> b.cutLength().millimetres());
        moves(Nudges.FINISHED_TIP, b -> b.work().tip().finished().get(1).least().millimetres());
    }

    private static ShaftFlex.Timed timing(Build build) {
        return build.parts().shaft().flex().known().orElseThrow().measured().get(0);
    }

    private static SoleShape sole(Build build) {
        return build.parts().head().geometry().sole().known().orElseThrow();
    }

    @Test
    void aTimingAndASoleMoveWhereThereAreAny() {
        for (Nudge nudge :
                List.of(Nudges.SOLE_LOWEST, Nudges.SOLE_RADIUS, Nudges.TIMED_FREQUENCY, Nudges.TIMED_CLAMP)) {
            assertThat(nudge.by(SampleClub.build(), DELTA)).isEqualTo(SampleClub.build());
        }
        Build bare = SampleClub.build();
        Build timed = SampleClub.with(
                bare,
                bare.parts()
                        .shaft()
                        .withFlex(SampleClub.flex(
                                SampleClub.stations(0, 15, 1000, 65), SampleClub.timed(290, 130, 200))));
        assertThat(timing(Nudges.TIMED_FREQUENCY.by(timed, DELTA)).frequency().perMinute())
                .isCloseTo(290.25, within(1e-9));
        assertThat(timing(Nudges.TIMED_CLAMP.by(timed, DELTA)).clamp()).isEqualTo(SampleClub.mm(130.25));
        Head head = bare.parts().head();
        Build measured = SampleClub.with(
                bare,
                head.withGeometry(head.geometry()
                        .withSole(Reading.measured(new SoleShape(SampleClub.mm(20), SampleClub.mm(200))))));
        assertThat(sole(Nudges.SOLE_LOWEST.by(measured, DELTA)).lowest()).isEqualTo(SampleClub.mm(20.25));
        assertThat(sole(Nudges.SOLE_RADIUS.by(measured, DELTA)).radius()).isEqualTo(SampleClub.mm(200.25));
        assertThat(sole(Nudges.SOLE_RADIUS.by(measured, -1000)).radius()).isEqualTo(Length.ZERO);
    }

    /** What was read up to the butt of a raw shaft is read up to it when the shaft is a little longer or shorter. */
    @Test
    void sectionAndStiffnessGoAlongWithTheButt() {
        for (double delta : new double[] {DELTA, -DELTA}) {
            Shaft moved =
                    Nudges.RAW_LENGTH.by(SampleClub.build(), delta).parts().shaft();
            assertThat(moved.section().outside().to()).isEqualTo(moved.length());
            StiffnessShape.AtStations shape = (StiffnessShape.AtStations)
                    moved.flex().known().orElseThrow().shape().known().orElseThrow();
            assertThat(shape.knots().get(1).at().lessThan(moved.length())).isFalse();
        }
    }

    @Test
    void theCutLengthIsKept() {
        for (Nudge nudge : List.of(Nudges.RAW_LENGTH, Nudges.TIP_CUT, Nudges.BORE_DEPTH)) {
            assertThat(nudge.by(build, DELTA).cutLength()).isEqualTo(build.cutLength());
        }
        assertThat(Nudges.BORE_DEPTH.by(build, DELTA).work().seat().insertion().millimetres()
                        - build.work().seat().insertion().millimetres())
                .isCloseTo(DELTA, within(1e-9));
    }

    /** A flange stands on the bottom of the bore, and goes down with it as a bare tip does; a mark on the shaft stays where it is. */
    @Test
    void aFlangeGoesWithTheBottomOfTheBore() {
        Length lifted = build.work().seat().insertion().minus(Length.ofMillimetres(2));
        Build flanged = build.withWork(build.work().withSeat(new Seat(lifted, Stop.FLANGE)));
        assertThat(Nudges.BORE_DEPTH.by(flanged, DELTA).work().seat())
                .isEqualTo(new Seat(lifted.plus(Length.ofMillimetres(DELTA)), Stop.FLANGE));
        Build marked = build.withWork(build.work().withSeat(new Seat(lifted, Stop.MARK)));
        assertThat(Nudges.BORE_DEPTH.by(marked, DELTA).work().seat()).isEqualTo(new Seat(lifted, Stop.MARK));
    }

    /** No saw comes near a tip that is not cut, so there is no cut to be wrong. */
    @Test
    void aTipThatIsNotCutIsNotCutWrong() {
        Build uncut = build.withWork(build.work().withTipTrim(Length.ZERO));
        assertThat(Nudges.TIP_CUT.by(uncut, DELTA)).isEqualTo(uncut);
        assertThat(Nudges.TIP_CUT.by(uncut, -DELTA)).isEqualTo(uncut);
    }

    @Test
    void aButtThatIsNotCutTakesNothingUp() {
        Build uncut = build.withWork(build.work().withButtTrim(Length.ZERO));
        assertThat(Nudges.BUTT_CUT.by(uncut, DELTA)).isEqualTo(uncut);
        assertThat(Nudges.RAW_LENGTH.by(uncut, DELTA).cutLength())
                .isEqualTo(uncut.cutLength().plus(Length.ofMillimetres(DELTA)));
    }

    @Test
    void wallAndFinishMoveAndAFinishThatIsNotThereDoesNot() {
        assertThat(Nudges.WALL.by(build, 0.01)).isNotEqualTo(build);
        assertThat(Nudges.FINISH.by(build, 0.01)).isNotEqualTo(build);
        Build bare = NudgedClub.without(build);
        assertThat(Nudges.WALL.by(bare, 0.01)).isEqualTo(bare);
        assertThat(Nudges.FINISH.by(bare, 0.01)).isEqualTo(bare);
    }

    @Test
    void aCentreThatIsNotKnownMovesFromWhereTheRulePutsIt() {
        Build unknown = NudgedClub.withCentre(build, Reading.unknown("nobody"));
        HeadCentre moved = Nudges.HEAD_CENTRE
                .by(unknown, DELTA)
                .parts()
                .head()
                .mass()
                .centre()
                .known()
                .orElseThrow();
        Length ruled = HeadCentreRule.of(unknown.parts().head()).along();
        assertThat(moved.along()).isEqualTo(ruled.plus(Length.ofMillimetres(DELTA)));
    }

    @Test
    void aPinDoesNotPassItsNeighbours() {
        Build far = Nudges.boreStation(1).by(build, 1000);
        List<Station> stations = far.parts().head().bore().profile().stations();
        assertThat(stations.get(1).at().lessThan(stations.get(2).at())).isTrue();
        for (int station : new int[] {-1, 0, stations.size() - 1, 99}) {
            assertThat(Nudges.boreStation(station).by(build, DELTA)).isEqualTo(build);
        }
        assertThat(Nudges.boreDiameter(99).by(build, DELTA)).isEqualTo(build);
        assertThat(Nudges.boreDiameter(-1).by(build, DELTA)).isEqualTo(build);
    }

    /** The bottom of a bore that is cut short of its last reading moves no further than that reading. */
    @Test
    void aShallowedBoreMovesToItsLastReadingAtMost() {
        Bore bore = Bore.ofTwoDiameters(
                        Length.ofMillimetres(9.6), Length.ofMillimetres(9.2), Length.ofMillimetres(32), BoreEnd.FLAT)
                .shallowedTo(Length.ofMillimetres(31.9));
        Build shallow = NudgedClub.withBore(build, bore);
        assertThat(Nudges.BORE_DEPTH.by(shallow, DELTA).parts().head().bore().depth())
                .isEqualTo(Length.ofMillimetres(32));
    }

    @Test
    void oneReadingOfTheTipMovesAlone() {
        DiameterProfile tip = DiameterProfile.of(
                Station.of(Length.ZERO, Length.ofMillimetres(9)),
                Station.of(Length.ofMillimetres(100), Length.ofMillimetres(9.5)));
        Build tapered = NudgedClub.withOutside(build, tip);
        List<Station> moved = Nudges.tipDiameter(tip.stations().get(1))
                .by(tapered, DELTA)
                .parts()
                .shaft()
                .section()
                .outside()
                .stations();
        assertThat(moved.get(0)).isEqualTo(tip.stations().get(0));
        assertThat(moved.get(1).least()).isEqualTo(Length.ofMillimetres(9.75));
    }

    /**
     * A line density that was found out to be the straight one changes what a cut shaft weighs, and its moment, as the straight one of
     * another mass or balance point does.
     */
    @Test
    void whatIsKnownAlongAShaftGoesWithItsMassAndBalance() {
        Shaft shaft = build.parts().shaft();
        Build known = NudgedClub.withAlong(build, ShaftCut.lineDensity(shaft).orElseThrow());
        for (Nudge nudge : List.of(Nudges.SHAFT_MASS, Nudges.BALANCE_POINT)) {
            ShaftCut along = ShaftCut.of(nudge.by(known, DELTA));
            ShaftCut straight = ShaftCut.of(nudge.by(build, DELTA));
            assertThat(along.mass().grams()).isCloseTo(straight.mass().grams(), within(1e-9));
            assertThat(along.momentAboutTip().gramMillimetres())
                    .isCloseTo(straight.momentAboutTip().gramMillimetres(), within(1e-6));
            assertThat(straight.mass().grams())
                    .isNotCloseTo(ShaftCut.of(build).mass().grams(), within(1e-3));
        }
    }

    @Test
    void aLineDensityReachesTheLongerShaft() {
        LineDensityProfile along = new LineDensityProfile(List.of(
                new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerInch(2)),
                new LineDensityProfile.Knot(build.parts().shaft().length(), LineDensity.ofGramsPerInch(2.2))));
        Build known = NudgedClub.withAlong(build, along);
        Build longer = Nudges.RAW_LENGTH.by(known, DELTA);
        assertThat(longer.parts().shaft().mass().along().known().orElseThrow().end())
                .isEqualTo(longer.parts().shaft().length());
    }

    @Test
    void anAbsurdAmountIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Nudges.HEAD_MASS.by(build, Double.NaN))
                .withMessageStartingWith("delta must be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Nudges.GRIP_CAP.by(build, 1e9))
                .withMessageStartingWith("delta must be");
    }
}
