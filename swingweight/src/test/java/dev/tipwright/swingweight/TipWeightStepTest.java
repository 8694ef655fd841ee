package dev.tipwright.swingweight;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.aim.AimCode;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins down the step that fits, cuts and weighs. The plain club is cut to the length it has, 37 1/4 in, so that its shaft stays 36 in long
 * and it reads 222 oz in. On a flange of 1/8 in the head moves out by that and the cut takes it back: head at 37 in as before, shaft 35.875
 * in of 3 oz in 36: 3 - 1/96 oz at 17.9375 in, 11.771484 oz in; tip end at 35.875 in.
 */
class TipWeightStepTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static final WorkStep FIT = build -> StepOutcome.notTaken(
            build.work().seat().equals(Seat.APART)
                    ? build.withWork(build.work()
                            .withSeat(Seat.onBottomOf(build.parts().head().bore())))
                    : build);

    private static final WorkStep CUT = CutToLengthStep.to(
            new LengthPlan(List.of(new LengthTarget("6", Clubs.inches(37.25), LengthMeasure.ALONG_AXIS))),
            Clubs.inches(.0625));

    private static final TipWeight PLAIN = Clubs.weight(1).withLabel("plain").withMass(Mass.ofOunces(.125));

    private static final TipWeight FLANGED = PLAIN.withLabel("flanged").withFlange(Clubs.inches(.125));

    private static StepOutcome take(double ounceInches, double within, int most, TipWeight... stock) {
        SwingWeightTarget target =
                new SwingWeightTarget("6", new SwingWeight((222 + ounceInches - 161) / 1.75), within);
        return TipWeightStep.of(List.of(FIT, CUT), new SwingWeightTargets(SCALE, List.of(target)), List.of(stock), most)
                .take(Build.of(Clubs.plain().parts()));
    }

    private static List<FindingCode> codes(StepOutcome outcome) {
        return outcome.findings().stream()
                .map(Finding::code)
                .filter(code -> code instanceof AimCode || code instanceof SwingWeightCode)
                .toList();
    }

    @Test
    void aPlainWeightLeavesTheFitAsItIs() {
        StepOutcome outcome = take(2.7, 0.1, 1, PLAIN, FLANGED);
        assertThat(codes(outcome)).containsExactly(AimCode.STOCK_CHOSEN, SwingWeightCode.ON_TARGET);
        assertThat(outcome.after().work().seat().stop()).isEqualTo(Stop.BORE_BOTTOM);
        assertThat(outcome.after().work().attached()).containsExactly(PLAIN);
        assertThat(outcome.reports()).hasExactlyElementsOfTypes(CutToLength.class, ClubBalance.class);
    }

    /** 230 - 20 + 11.771484 + 0.125 x (35.875 - 0.25 - 14) = 224.474609 oz in. */
    @Test
    void aFlangeSendsTheClubBackThroughFitAndCutOnce() {
        double then = 230 - 20 + (3 - 1.0 / 96) * 3.9375 + 0.125 * 21.625;
        StepOutcome outcome = take(then - 222, 0.1, 1, PLAIN.withMass(Mass.ofOunces(.25)), FLANGED);
        assertThat(codes(outcome))
                .containsExactly(AimCode.STOCK_CHOSEN, AimCode.FLANGE_REFITTED, SwingWeightCode.ON_TARGET);
        Build after = outcome.after();
        assertThat(after.work().seat()).isEqualTo(new Seat(Clubs.inches(.875), Stop.FLANGE));
        assertThat(PlayingLength.alongAxis(after)).isEqualTo(Clubs.inches(37.25));
        assertThat(after.work().buttTrim()).isEqualTo(Clubs.inches(.125));
        assertThat(Balance.of(after).momentAbout(SCALE.fulcrum()).ounceInches()).isCloseTo(then, within(1e-6));
        // without the weight, in the same place: 230 - 20 + 11.771484 oz in; what is missing is 2.703125 oz in at
        // 35.625 in
        ClubBalance balance = (ClubBalance) outcome.reports().get(1);
        assertThat(balance.chosen()).containsExactly(FLANGED);
        assertThat(balance.before().momentAbout(SCALE.fulcrum()).ounceInches())
                .isCloseTo(then - 0.125 * 21.625, within(1e-6));
        assertThat(balance.exactWeight().orElseThrow().ounces()).isCloseTo(0.125, within(1e-6));
        assertThat(balance.after()).isEqualTo(Balance.of(after));
        Operation first = balance.operations().get(0);
        assertThat(first.stage()).isEqualTo(BenchStage.FIT);
        assertThat(first.text(Units.INCH))
                .isEqualTo(
                        "Put tip weight flanged, 3.54 g, into the tip before the dry fit: its flange lies under the end of the"
                                + " tip. No adhesive before the club is weighed.");
        // one report each, those of the club as it is to be built
        assertThat(outcome.reports()).hasExactlyElementsOfTypes(CutToLength.class, ClubBalance.class);
        assertThat(outcome.findings().stream()
                        .filter(finding -> finding.code() == AimCode.FLANGE_REFITTED)
                        .findFirst()
                        .orElseThrow()
                        .message(Units.INCH))
                .startsWith("the flange lifts the tip: insertion falls from 1.000 in (1) to 0.875 in (7/8)");
    }

    @Test
    void anUnknownInsideIsTriedByHand() {
        Build plain = Clubs.plain();
        Build unread = Clubs.withShaft(
                Build.of(plain.parts()),
                plain.parts()
                        .shaft()
                        .withSection(plain.parts().shaft().section().withWall(Reading.unknown("caliper it"))));
        SwingWeightTargets wanted = new SwingWeightTargets(
                SCALE, List.of(new SwingWeightTarget("6", new SwingWeight((224.7 - 161) / 1.75), 0.1)));
        assertThat(codes(TipWeightStep.of(List.of(FIT, CUT), wanted, List.of(PLAIN), 1)
                        .take(unread)))
                .containsExactly(AimCode.STOCK_CHOSEN, SwingWeightCode.ON_TARGET, SwingWeightCode.INSIDE_UNKNOWN);
        assertThat(codes(take(2.7, 0.1, 1, PLAIN))).doesNotContain(SwingWeightCode.INSIDE_UNKNOWN);
    }

    /** The same flange where the fit says stop under an inch of insertion: better a quarter ounce too much than a joint too short. */
    @Test
    void aFlangeThatBringsAStopIsPassedOver() {
        double then = 230 - 20 + (3 - 1.0 / 96) * 3.9375 + 0.125 * 21.625;
        TipWeight quarter = PLAIN.withMass(Mass.ofOunces(.25));
        WorkStep stopped = build -> {
            Build seated = FIT.take(build).after();
            return seated.work().seat().insertion().lessThan(Clubs.inches(1))
                    ? StepOutcome.notTaken(seated, Finding.stop(SwingWeightCode.NOT_SEATED))
                    : StepOutcome.notTaken(seated);
        };
        SwingWeightTargets wanted = new SwingWeightTargets(
                SCALE, List.of(new SwingWeightTarget("6", new SwingWeight((then - 161) / 1.75), 0.1)));
        Build raw = Build.of(Clubs.plain().parts());
        assertThat(TipWeightStep.of(List.of(FIT, CUT), wanted, List.of(quarter, FLANGED), 1)
                        .take(raw)
                        .after()
                        .work()
                        .attached())
                .containsExactly(FLANGED);
        StepOutcome outcome = TipWeightStep.of(List.of(stopped, CUT), wanted, List.of(quarter, FLANGED), 1)
                .take(raw);
        assertThat(outcome.after().work().attached()).doesNotContain(FLANGED);
        assertThat(outcome.findings()).noneMatch(finding -> finding.severity() == Severity.STOP);
    }

    @Test
    void twoAreStackedWhereTwoAreAllowed() {
        TipWeight quarter = PLAIN.withLabel("quarter").withMass(Mass.ofOunces(.25));
        assertThat(take(8.09, 0.1, 2, PLAIN, quarter).after().work().attached()).hasSize(2);
        StepOutcome one = take(8.09, 0.1, 1, PLAIN, quarter);
        assertThat(one.after().work().attached()).containsExactly(quarter);
        assertThat(codes(one)).containsExactly(AimCode.STOCK_CHOSEN, SwingWeightCode.STOCK_NOT_ENOUGH);
        assertThat(one.findings()).anyMatch(finding -> finding.severity() == Severity.CAUTION);
    }

    /** 2.7 oz in missing: 1/8 oz gives 2.72, and 0.1 oz and a flange come nearer in vain, for the plain piece is near enough. */
    @Test
    void whatIsNearEnoughIsNotMadeNearer() {
        TipWeight tenth = PLAIN.withLabel("tenth").withMass(Mass.ofOunces(.1));
        TipWeight fortieth = PLAIN.withLabel("fortieth").withMass(Mass.ofOunces(.0245));
        assertThat(take(2.7, 0.1, 2, tenth, fortieth, PLAIN).after().work().attached())
                .containsExactly(PLAIN);
        assertThat(take(2.7, 0, 2, tenth, fortieth, PLAIN).after().work().attached())
                .hasSize(2);
        double then = 230 - 20 + (3 - 1.0 / 96) * 3.9375 + 0.125 * 21.625 - 222;
        TipWeight near = PLAIN.withMass(Mass.ofOunces(then / 21.75 + .001));
        assertThat(take(then, 0.1, 1, near, FLANGED).after().work().attached()).containsExactly(near);
        assertThat(take(then, 0, 1, near, FLANGED).after().work().attached()).containsExactly(FLANGED);
    }

    @Test
    void whereNothingIsToBeDoneNothingIsDone() {
        assertThat(codes(take(0.1, 0.1, 1, PLAIN))).containsExactly(SwingWeightCode.ON_TARGET);
        assertThat(codes(take(-5, 0.1, 1, PLAIN))).containsExactly(SwingWeightCode.TOO_HEAVY);
        assertThat(codes(take(0.3, 0.1, 1, PLAIN)))
                .containsExactly(AimCode.NOTHING_NEARER, SwingWeightCode.NOTHING_IN_STOCK);
        assertThat(codes(take(3, 0.1, 1, FLANGED.withStem(Clubs.inches(.2)), FLANGED.withFlange(Clubs.inches(1)))))
                .containsExactly(AimCode.NOTHING_NEARER, AimCode.DOES_NOT_ENTER, SwingWeightCode.NOTHING_IN_STOCK);
        SwingWeightTargets none = new SwingWeightTargets(SCALE, List.of());
        assertThat(codes(TipWeightStep.of(List.of(FIT, CUT), none, List.of(PLAIN), 1)
                        .take(Build.of(Clubs.plain().parts()))))
                .containsExactly(SwingWeightCode.NO_TARGET);
        SwingWeightTargets wanted =
                new SwingWeightTargets(SCALE, List.of(new SwingWeightTarget("6", SCALE.parse("E0"), 0)));
        assertThat(codes(TipWeightStep.of(List.of(), wanted, List.of(PLAIN), 1)
                        .take(Clubs.plain().withWork(Work.NONE))))
                .containsExactly(SwingWeightCode.NOT_SEATED);
        Build weighted = Clubs.plain().withWork(Clubs.plain().work().plus(PLAIN));
        assertThat(codes(TipWeightStep.of(List.of(), wanted, List.of(PLAIN), 1).take(weighted)))
                .containsExactly(SwingWeightCode.TIP_WEIGHT_IN_PLACE);
    }

    /** A fit that does not honour the seat it is given cannot be trusted with a flange. */
    @Test
    void aFitThatSeatsElsewhereLeavesTheFlangeOut() {
        WorkStep stubborn = build -> StepOutcome.notTaken(build.withWork(
                build.work().withSeat(Seat.onBottomOf(build.parts().head().bore()))));
        SwingWeightTargets wanted = new SwingWeightTargets(
                SCALE, List.of(new SwingWeightTarget("6", new SwingWeight((224.5 - 161) / 1.75), 0.1)));
        StepOutcome outcome =
                TipWeightStep.of(List.of(stubborn), wanted, List.of(FLANGED), 1).take(Clubs.plain());
        assertThat(outcome.after().work().attached()).isEmpty();
    }

    @Test
    void thePlanSaysWhatToPutIn() {
        SwingWeightTargets wanted = new SwingWeightTargets(
                SCALE, List.of(new SwingWeightTarget("6", new SwingWeight((224.7 - 161) / 1.75), 0.1)));
        String text = JobPlanner.of(TipWeightStep.of(List.of(FIT, CUT), wanted, List.of(PLAIN), 1))
                .plan(Build.of(Clubs.plain().parts()))
                .operations()
                .get(0)
                .text(Units.INCH);
        assertThat(text)
                .isEqualTo("Put tip weight plain, 3.54 g, into the tip for the dry build; weigh before any adhesive.");
    }

    @Test
    void hostileInputIsNamed() {
        SwingWeightTargets none = new SwingWeightTargets(SCALE, List.of());
        missing("fitAndCut", () -> TipWeightStep.of(null, none, List.of(), 1));
        missing("targets", () -> TipWeightStep.of(List.of(), null, List.of(), 1));
        missing("stock", () -> TipWeightStep.of(List.of(), none, null, 1));
        missing("build", () -> TipWeightStep.of(List.of(), none, List.of(), 1).take(null));
        refused("most must be 1 or 2, was 0", () -> TipWeightStep.of(List.of(), none, List.of(), 0));
        refused("most must be 1 or 2, was 3", () -> TipWeightStep.of(List.of(), none, List.of(), 3));
        refused(
                "stock must be at most 1000 pieces, was 1001",
                () -> TipWeightStep.of(List.of(), none, Collections.nCopies(1001, PLAIN), 1));
        missing("build", () -> StockChoice.seatOn(null, Length.ZERO));
        refused(
                "flange must not be negative, was -1 mm",
                () -> StockChoice.seatOn(Clubs.plain(), Length.ofMillimetres(-1)));
    }
}
