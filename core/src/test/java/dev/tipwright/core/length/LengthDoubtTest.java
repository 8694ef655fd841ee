package dev.tipwright.core.length;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A shaft of 39 in, nothing off its tip, plays 39 + 1/8 + 1 = 40 1/8 in with nothing off its butt. Raw length and mouth to ground by
 * a rule of 0.4 mm: the butt trim is known to 2 sqrt(2) 0.4 = 1.13 mm.
 */
class LengthDoubtTest {

    private static final BenchUncertainty BENCH = BenchUncertainty.of(BenchUncertainty.Tool.of(
            Instrument.ofStandard("rule", "mm", 0.4, 0), BenchInput.RAW_LENGTH, BenchInput.MOUTH_TO_GROUND));

    private static List<ClubFinding> found(String shorter) {
        Build club = Bench.club("6");
        Build seated = club.withWork(
                club.work().withSeat(Seat.onBottomOf(club.parts().head().bore())));
        Length target = Bench.len("40 1/8 in").minus(Bench.len(shorter));
        LengthPlan lengths = new LengthPlan(List.of(new LengthTarget("6", target, LengthMeasure.ALONG_AXIS)));
        ClubPlan plan =
                JobPlanner.of(CutToLengthStep.to(lengths, Bench.len("1/16 in"))).plan(seated);
        return new LengthDoubt(BENCH).review(List.of(plan));
    }

    @Test
    void aButtTrimUnderItsUncertaintyIsACaution() {
        List<ClubFinding> found = found("1.1 mm");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).finding().code()).isEqualTo(LengthCode.BARELY_LONG_ENOUGH);
        Term.OfLength uncertainty = (Term.OfLength) found.get(0).finding().term("U");
        assertThat(uncertainty.value().within(Length.ofMillimetres(1.131371), Length.ofMillimetres(1e-4)))
                .isTrue();
    }

    @Test
    void aLongEnoughShaftAndOneThatIsTooShortAreNot() {
        assertThat(found("1.2 mm")).isEmpty();
        assertThat(found("-1 mm")).isEmpty();
    }

    /** A shaft that is just long enough is so only within the uncertainty. */
    @Test
    void noButtTrimAtAllIsACaution() {
        assertThat(found("0 mm"))
                .extracting(found -> found.finding().code())
                .containsExactly(LengthCode.BARELY_LONG_ENOUGH);
    }
}
