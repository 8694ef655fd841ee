package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.section;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.set.Rescue;
import dev.tipwright.fitcheck.set.RescueChoice;
import dev.tipwright.fitcheck.set.SetCode;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Spoilt shafts over the heads of a set, in thousandths of an inch: a raw tip of .3735 with .0025 of finish and a wall of .0905, and
 * heads that want an inch off the tip (8) or two (9), and three or four off the butt.
 */
class RescueTest {

    private static final Shaft SHAFT = Clubs.plain().parts().shaft();
    private static final ClubSet SET = ClubSet.of(
            Clubs.club("8", Clubs.taper(), section(cylinder(373.5), 2.5, 90.5)),
            Clubs.club("9", bore(0, 359, 1250, 351), section(cylinder(373.5), 2.5, 90.5)));

    /** Asks for trims by the label of the head, as a chart and a length would. */
    private static final WorkStep TRIMS = build -> {
        double tip = build.label().equals("8") ? 1000 : 2000;
        return new StepOutcome(
                build.withWork(build.work().withTipTrim(mil(tip)).withButtTrim(mil(3000 + tip / 2))),
                List.of(),
                List.of());
    };

    private static final JobPlanner PLANNER = JobPlanner.of(TRIMS, TipFitStep.with(Clubs.TARGET));

    @Test
    void aTipCutTooShortForOneHeadServesTheNext() {
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withTipTrim(mil(1500)));
        List<RescueChoice> choices = rescue.over(SET, PLANNER);
        assertThat(choices).extracting(RescueChoice::head).containsExactly("9", "8");
        assertThat(choices).allMatch(RescueChoice::possible);
        assertThat(codes(choices.get(0))).doesNotContain(SetCode.OVER_TRIMMED);
        assertThat(choices.get(0).plan().after().work().tipTrim()).isEqualTo(mil(2000));
        RescueChoice over = choices.get(1);
        assertThat(over.plan().after().work().tipTrim()).isEqualTo(mil(1500));
        assertThat(message(over, SetCode.OVER_TRIMMED))
                .startsWith("1.500 in (1 1/2) is off the tip, 0.500 in (1/2) more than this head asks for");
        assertThat(over.cautions()).isEqualTo(1);
    }

    @Test
    void aButtCutTooShortComesOutShort() {
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withButtTrim(mil(3750)));
        RescueChoice eight = rescue.over(SET, PLANNER).get(1);
        assertThat(eight.head()).isEqualTo("8");
        assertThat(eight.plan().after().work().buttTrim()).isEqualTo(mil(3750));
        assertThat(message(eight, SetCode.OVER_CUT)).contains("0.250 in (1/4) more than this head asks for");
    }

    /** Sanded .010 below .351 to .359: loose in the 8, with .004 to come off still for the 9. */
    @Test
    void anOverSandedTipSeatsInANarrowerBoreOrIsCutOff() {
        TipWork sanded = new TipWork(mil(1250), List.of(Station.of(mil(0), mil(341)), Station.of(mil(1250), mil(349))));
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withTipTrim(mil(1000)).withTip(sanded));
        JobPlanner fit = JobPlanner.of(TipFitStep.with(Clubs.TARGET.withLeastWall(Reading.measured(mil(70)))));
        List<RescueChoice> choices = rescue.over(SET, fit);
        assertThat(choices).hasSize(4);
        // Wanted in the 9: .347 at its end. As it is .341 there: loose by .006 more than wanted.
        RescueChoice nine = choice(choices, "9", 1000);
        assertThat(message(nine, FitCode.LOOSE)).contains("0.0100 in");
        RescueChoice eight = choice(choices, "8", 1000);
        assertThat(message(eight, FitCode.LOOSE)).contains("0.0140 in");
        // With the worked part cut off, each is as good as new.
        for (String head : List.of("8", "9")) {
            RescueChoice cut = choice(choices, head, 2250);
            assertThat(codes(cut)).doesNotContain(FitCode.LOOSE);
            assertThat(cut.possible()).isTrue();
        }
        assertThat(choices.get(0).cautions()).isZero();
        assertThat(choices.get(3).cautions()).isEqualTo(1);
    }

    /**
     * Worked for the 8 from .351 to .359, a tip is done for the 8. For a bore a thousandth narrower a thousandth comes off all along, to .350 and
     * .358, and leaves (.358^4 - .1925^4) / (.359^4 - .1925^4) = .98790 of the stiffness at the mouth: nothing thinner is asked for where the
     * work ended.
     */
    @Test
    void aTipThatIsWorkedAlreadyIsWorkedOnFromThere() {
        TipWork done = new TipWork(mil(1250), List.of(Station.of(mil(0), mil(351)), Station.of(mil(1250), mil(359))));
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withTipTrim(mil(1000)).withTip(done));
        ClubSet set = ClubSet.of(
                Clubs.club("8", Clubs.taper(), section(cylinder(373.5), 2.5, 90.5)),
                Clubs.club("tight", bore(0, 362, 1250, 354), section(cylinder(373.5), 2.5, 90.5)));
        List<RescueChoice> choices = rescue.over(set, JobPlanner.of(TipFitStep.with(Clubs.TARGET)));
        TipFit same = choice(choices, "8", 1000).plan().report(TipFit.class);
        assertThat(same.removal().finished()).isEqualTo(done.finished());
        assertThat(same.removal().volume().cubicMillimetres()).isZero();
        TipFit tight = choice(choices, "tight", 1000).plan().report(TipFit.class);
        assertThat(tight.removal().finished())
                .containsExactly(Station.of(mil(0), mil(350)), Station.of(mil(1250), mil(358)));
        assertThat(tight.removal().finishVolume().cubicMillimetres()).isZero();
        assertThat(tight.removal().stiffnessAtMouth().orElseThrow()).isCloseTo(0.98790, within(5e-6));
    }

    private static RescueChoice choice(List<RescueChoice> choices, String head, double trim) {
        return choices.stream()
                .filter(choice ->
                        choice.head().equals(head) && choice.work().tipTrim().equals(mil(trim)))
                .findFirst()
                .orElseThrow();
    }

    /** The hole of .1925 stays: .341 leaves .07425 of wall at the end, a wall under .080 is a stop. */
    @Test
    void theShaftAsItStandsHasTheWallThatIsLeft() {
        TipWork sanded = new TipWork(mil(2000), List.of(Station.of(mil(0), mil(341)), Station.of(mil(1250), mil(349))));
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withTipTrim(mil(1000)).withTip(sanded));
        ShaftSection now = rescue.asItStands().section();
        assertThat(now.outside().diameterAt(mil(500))).isEqualTo(mil(373.5));
        assertThat(now.outside().diameterAt(mil(1000))).isEqualTo(mil(341));
        assertThat(now.outside().diameterAt(mil(2000))).isEqualTo(mil(347.4));
        // Stripped, not worked, from 2.25 to 3.
        assertThat(now.outside().diameterAt(mil(2600))).isEqualTo(mil(368.5));
        assertThat(now.outside().diameterAt(mil(3001))).isEqualTo(mil(373.5));
        assertThat(now.wall().known().orElseThrow().thickness().at(mil(1001)).thousandths())
                .isBetween(74.25, 74.26);
        assertThat(now.wall().known().orElseThrow().thickness().at(mil(2600))).isEqualTo(mil(88));
        assertThat(now.finish().known().orElseThrow().thickness().at(mil(2600))).isEqualTo(Length.ZERO);
        assertThat(now.finish().known().orElseThrow().thickness().at(mil(5000))).isEqualTo(mil(2.5));
        Source why = Source.assumption("like its neighbour");
        Finish finish = SHAFT.section().finish().known().orElseThrow();
        assertThat(stands(rescue, Reading.assumed(finish, why)).finish()).isInstanceOf(Reading.Assumed.class);
        assertThat(stands(rescue, Reading.unknown("the maker")).finish()).isInstanceOf(Reading.Unknown.class);
    }

    /**
     * Two inches stripped of .0025 in of finish at 1.25 g/cm3 above a trim of an inch: pi / 4 (.3735^2 - .3685^2) x 2 in3, .11937 g, whose
     * centre is an inch up. What is left of the shaft weighs so much less and has so much less moment; cut off with the stripped part, it is
     * gone from neither twice.
     */
    @Test
    void whatCameOffIsNotWeighedAgain() {
        Work trim = Work.NONE.withTipTrim(mil(1000));
        Rescue rescue = new Rescue(SHAFT, trim.withTip(new TipWork(mil(2000), List.of())));
        double grams = Math.PI / 4 * (.3735 * .3735 - .3685 * .3685) * 2 * 16.387064 * 1.25;
        Shaft now = rescue.asItStands();
        assertThat(now.mass().mass().grams()).isCloseTo(88 - grams, within(1e-9));
        assertThat(now.mass().balance().inches()).isCloseTo((88 * 20.3 - grams * 2) / (88 - grams), within(1e-7));
        ShaftCut left = new ShaftCut(now, mil(1000), mil(39_000));
        ShaftCut raw = new ShaftCut(SHAFT, mil(1000), mil(39_000));
        assertThat(left.mass().grams()).isCloseTo(raw.mass().grams() - grams, within(1e-6));
        assertThat(left.momentAboutTip().gramMillimetres())
                .isCloseTo(raw.momentAboutTip().gramMillimetres() - grams * 25.4, within(1e-5));
        assertThat(new ShaftCut(now, mil(3000), mil(39_000)).mass().grams())
                .isCloseTo(new ShaftCut(SHAFT, mil(3000), mil(39_000)).mass().grams(), within(1e-6));
        assertThat(now.mass().along()).isInstanceOf(Reading.Assumed.class);
    }

    /**
     * Worked from .351 to .359 over an inch and a quarter above a trim of an inch: finish all along at 1.25 g/cm3, and structure from .3685
     * down to a cone at 1.55. Mass and first moment of both by Simpson's rule, which is exact for polynomials of the third degree; whether the
     * mass along the shaft was taken to be straight or had been found out, with a knot where the tip was worked.
     */
    @Test
    void aTaperIsTakenOffWhereItCameOff() {
        Work done = Work.NONE
                .withTipTrim(mil(1000))
                .withTip(
                        new TipWork(mil(1250), List.of(Station.of(mil(0), mil(351)), Station.of(mil(1250), mil(359)))));
        double[] line = {lineOff(0), lineOff(.625), lineOff(1.25)};
        double grams = 1.25 / 6 * (line[0] + 4 * line[1] + line[2]);
        double gramInches = 1.25 / 6 * (4 * line[1] * .625 + line[2] * 1.25);
        LineDensityProfile found = new LineDensityProfile(List.of(
                new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerInch(1.9)),
                new LineDensityProfile.Knot(mil(1500), LineDensity.ofGramsPerInch(2.1)),
                new LineDensityProfile.Knot(mil(20_000), LineDensity.ofGramsPerInch(2.2)),
                new LineDensityProfile.Knot(mil(39_000), LineDensity.ofGramsPerInch(2.4))));
        for (Shaft shaft : List.of(SHAFT, SHAFT.withMass(SHAFT.mass().withAlong(Reading.measured(found))))) {
            Shaft now = new Rescue(shaft, done).asItStands();
            ShaftCut left = new ShaftCut(now, mil(1000), mil(39_000));
            ShaftCut raw = new ShaftCut(shaft, mil(1000), mil(39_000));
            assertThat(left.mass().grams()).isCloseTo(raw.mass().grams() - grams, within(1e-6));
            assertThat(left.momentAboutTip().gramMillimetres())
                    .isCloseTo(raw.momentAboutTip().gramMillimetres() - gramInches * 25.4, within(1e-5));
            for (double above : new double[] {2250, 2251, 5000, 20_500}) {
                assertThat(new ShaftCut(now, mil(above), mil(39_000)).mass().grams())
                        .isCloseTo(
                                new ShaftCut(shaft, mil(above), mil(39_000))
                                        .mass()
                                        .grams(),
                                within(1e-6));
            }
            assertThat(new ShaftCut(now, Length.ZERO, mil(1000)).mass().grams())
                    .isCloseTo(
                            new ShaftCut(shaft, Length.ZERO, mil(1000)).mass().grams(), within(1e-6));
        }
    }

    /** What came off so far above the end of the tip, g/in. */
    private static double lineOff(double inches) {
        double worked = .351 + inches * .0064;
        double finish = .3735 * .3735 - .3685 * .3685;
        double structure = .3685 * .3685 - worked * worked;
        return Math.PI / 4 * 16.387064 * (1.25 * finish + 1.55 * structure);
    }

    /** At a density of a thousand more comes off than is there: then the mass is left as it was read. */
    @Test
    void aMassThatCannotBeIsLeftAsItWas() {
        ShaftSection lead = SHAFT.section()
                .withFinish(Reading.measured(
                        SHAFT.section().finish().known().orElseThrow().withDensity(Clubs.density(1000))));
        Rescue rescue = new Rescue(SHAFT.withSection(lead), Work.NONE.withTip(new TipWork(mil(2000), List.of())));
        assertThat(rescue.asItStands().mass()).isEqualTo(SHAFT.mass());
    }

    private static ShaftSection stands(Rescue rescue, Reading<Finish> finish) {
        return rescue.withShaft(SHAFT.withSection(SHAFT.section().withFinish(finish)))
                .asItStands()
                .section();
    }

    @Test
    void anUnworkedShaftStandsAsItWas() {
        Rescue rescue = new Rescue(SHAFT, Work.NONE.withTipTrim(mil(1000)));
        assertThat(rescue.asItStands()).isEqualTo(SHAFT);
        assertThat(rescue.works()).containsExactly(Work.NONE.withTipTrim(mil(1000)));
        Rescue stripped = rescue.withDone(Work.NONE.withTip(new TipWork(mil(600), List.of())));
        assertThat(stripped.asItStands().section().outside().diameterAt(mil(300)))
                .isEqualTo(mil(368.5));
        assertThat(stripped.works()).hasSize(2);
        // Nothing would be left to cut the stripped part off.
        Work most = Work.NONE.withButtTrim(SHAFT.length().minus(mil(600)));
        assertThat(rescue.withDone(most.withTip(new TipWork(mil(600), List.of())))
                        .works())
                .hasSize(1);
    }

    /** A stop of the planner comes last. */
    @Test
    void whatCannotBeBuiltComesLast() {
        ClubSet set = SET.withBuilds(List.of(
                Clubs.club("1", bore(0, 363, 900, 355), section(cylinder(373.5), 2.5, 90.5)),
                SET.builds().get(0)));
        List<RescueChoice> choices = new Rescue(SHAFT, Work.NONE).over(set, PLANNER);
        assertThat(choices).extracting(RescueChoice::head).containsExactly("8", "1");
        assertThat(choices.get(1).possible()).isFalse();
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> new Rescue(SHAFT, Work.NONE.withTipTrim(mil(8000))))
                .hasMessageContaining("done");
        assertThatThrownBy(() -> new Rescue(SHAFT, Work.NONE.withButtTrim(mil(39_000))))
                .hasMessageContaining("done");
    }

    private static String message(RescueChoice choice, FindingCode code) {
        return choice.plan().findings().stream()
                .filter(finding -> finding.code() == code)
                .findFirst()
                .orElseThrow()
                .message(Units.INCH);
    }

    private static List<FindingCode> codes(RescueChoice choice) {
        return choice.plan().findings().stream().map(Finding::code).toList();
    }
}
