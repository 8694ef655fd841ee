package dev.tipwright.core.length;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.Bench;
import dev.tipwright.core.PrintedFormula;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The pieces of a shaft add up to the shaft, the kerf lies in the waste, and cutting gives the length asked for. */
class CutToLengthProperties {

    /** L 37 1/2, g 1/8, B 1 1/4, i 1, G 1, R 39, T 1/2: S = 37 1/2 - 1/8 - 1/4 - 1 = 36 1/8, U = 39 - 1/2 - S = 2 3/8 in. */
    private static final CutToLength CUT = new CutToLength(
            len("37 1/2 in"),
            len("1/8 in"),
            len("1 1/4 in"),
            len("1 in"),
            len("1 in"),
            len("39 in"),
            len("1/2 in"),
            len("1/16 in"));

    @Example
    void byHand() {
        assertThat(CUT.cutLength()).isEqualTo(len("36 1/8 in"));
        assertThat(CUT.buttTrim()).isEqualTo(len("2 3/8 in"));
        assertThat(CUT.offcut()).isEqualTo(len("2 5/16 in"));
        assertThat(CUT.longest()).isEqualTo(len("39 7/8 in"));
        assertThat(CUT.headline()).extracting(Term::symbol).containsExactly("L", "S", "U");
        assertThat(CUT.cautions()).contains(Caution.CUTTING, Caution.COMPOSITE_DUST);
    }

    @Example
    void theWorkingGivesTheCutFromThePrintedNumbers() throws EvaluationException, ParseException {
        PrintedFormula.check(CUT.working());
        assertThat(CUT.working().lines()).hasSize(5);
    }

    @Property
    void thePiecesAddUpToTheShaft(
            @ForAll @IntRange(min = 1, max = 1_300_000) int targetUm,
            @ForAll @IntRange(min = 0, max = 100_000) int trimUm,
            @ForAll @IntRange(min = 0, max = 31_750) int insertionUm,
            @ForAll @IntRange(min = 0, max = 4_000) int kerfUm) {
        CutToLength cut = CUT.withTarget(Length.ofMicrometres(targetUm))
                .withTipTrim(Length.ofMicrometres(trimUm))
                .withInsertion(Length.ofMicrometres(insertionUm))
                .withKerf(Length.ofMicrometres(kerfUm));
        assertThat(cut.tipTrim().plus(cut.cutLength()).plus(cut.buttTrim())).isEqualTo(cut.rawLength());
        Length length = cut.buttFromTop()
                .plus(cut.cutLength())
                .plus(cut.boreDepth().minus(cut.insertion()))
                .plus(cut.bottomToGround());
        assertThat(length).isEqualTo(cut.target());
        // Marking out comes before, where both ends are cut.
        Operation first = cut.operations().stream()
                .filter(operation -> operation.stage() != BenchStage.MARK)
                .findFirst()
                .orElseThrow();
        if (cut.buttTrim().moreThan(cut.kerf())) {
            assertThat(cut.offcut().plus(cut.kerf())).isEqualTo(cut.buttTrim());
            assertThat(first.instruction()).isEqualTo(LengthInstruction.CUT_BUTT);
        } else {
            assertThat(cut.offcut()).isEqualTo(Length.ZERO);
            assertThat(first.instruction())
                    .isEqualTo(
                            cut.buttTrim().nanometres() > 0
                                    ? LengthInstruction.GRIND_BUTT
                                    : LengthInstruction.FIT_GRIP);
        }
    }

    /** The step's club measures what was asked for: from the parts and the work alone, not from the report. */
    @Property
    void theClubCutMeasuresItsTarget(
            @ForAll @IntRange(min = 100_000, max = 960_000) int targetUm,
            @ForAll @IntRange(min = 1, max = 31_750) int insertionUm,
            @ForAll @IntRange(min = 0, max = 30_000) int trimUm) {
        Build club = Bench.club("7");
        Build seated = club.withWork(club.work()
                .withSeat(new Seat(Length.ofMicrometres(insertionUm), Stop.MARK))
                .withTipTrim(Length.ofMicrometres(trimUm)));
        Length target = Length.ofMicrometres(targetUm);
        Build cut = CutToLengthStep.to(
                        new LengthPlan(List.of(new LengthTarget("7", target, LengthMeasure.ALONG_AXIS))), Length.ZERO)
                .take(seated)
                .after();
        assertThat(PlayingLength.alongAxis(cut)).isEqualTo(target);
    }

    @Example
    void refusesBadArguments() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUT.withTarget(Length.ZERO))
                .withMessage("target must be above zero, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUT.withButtFromTop(len("-1 mm")))
                .withMessage("buttFromTop must not be negative, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUT.withBoreDepth(len("1/2 in")))
                .withMessage("insertion must be at most boreDepth, 12.7 mm, was 25.4 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUT.withRawLength(len("-39 in")))
                .withMessage("rawLength must be above zero, was -990.6 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUT.withTipTrim(len("-1 mm")))
                .withMessage("tipTrim must not be negative, was -1 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> CUT.withBottomToGround(null))
                .withMessage("bottomToGround must not be null");
        assertThat(CUT.withBottomToGround(len("2 in")).cutLength()).isEqualTo(len("35 1/8 in"));
        assertThat(CUT.withButtFromTop(len("1/4 in")).cutLength()).isEqualTo(len("36 in"));
        assertThat(CUT.withRawLength(len("40 in")).buttTrim()).isEqualTo(len("3 3/8 in"));
        assertThat(CUT.withBoreDepth(len("1 1/2 in")).cutLength()).isEqualTo(len("35 7/8 in"));
    }
}
