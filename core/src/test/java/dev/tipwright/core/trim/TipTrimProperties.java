package dev.tipwright.core.trim;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.PrintedFormula;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A tip trim by hand, its laws, its working and its cut. */
class TipTrimProperties {

    /** chart 1/2, G 1 9/32, B 1 1/4, i 1, G_ref 1: correction 1 9/32 + 1/4 - 1 = 17/32, trim 1 1/32, offcut 31/32 in. */
    private static final TipTrim TRIM =
            new TipTrim(len("1/2 in"), len("1 9/32 in"), len("1 1/4 in"), len("1 in"), len("1 in"), len("1/16 in"));

    @Example
    void byHand() {
        assertThat(TRIM.correction()).isEqualTo(len("17/32 in"));
        assertThat(TRIM.trim()).isEqualTo(len("1 1/32 in"));
        assertThat(TRIM.offcut()).isEqualTo(len("31/32 in"));
        assertThat(TRIM.headline()).extracting(Term::symbol).containsExactly("G", "T", "o");
        assertThat(TRIM.cautions()).contains(Caution.CUTTING, Caution.COMPOSITE_DUST, Caution.MAKERS_WORD);
    }

    @Example
    void theWorkingGivesTheTrimFromThePrintedNumbers() throws EvaluationException, ParseException {
        PrintedFormula.check(TRIM.working());
        assertThat(TRIM.working().lines().get(0).formula()).isEqualTo("chart + (G + B - i) - G_ref");
    }

    /** Offcut and kerf are the trim when it is more than the kerf; when it is not, there is only dust. */
    @Property
    void theKerfLiesInTheWaste(
            @ForAll @IntRange(min = 0, max = 40_000) int chartUm,
            @ForAll @IntRange(min = -20_000, max = 20_000) int groundUm,
            @ForAll @IntRange(min = 0, max = 4_000) int kerfUm) {
        Length kerf = Length.ofMicrometres(kerfUm);
        TipTrim trim = TRIM.withChart(Length.ofMicrometres(chartUm))
                .withBottomToGround(Length.ofMicrometres(groundUm))
                .withKerf(kerf);
        if (trim.trim().moreThan(kerf)) {
            assertThat(trim.offcut().plus(kerf)).isEqualTo(trim.trim());
            assertThat(instruction(trim)).isEqualTo(TrimInstruction.CUT_TIP);
        } else {
            assertThat(trim.offcut()).isEqualTo(Length.ZERO);
            if (trim.trim().nanometres() > 0) {
                assertThat(instruction(trim)).isEqualTo(TrimInstruction.GRIND_TIP);
            } else {
                assertThat(trim.operations()).isEmpty();
            }
        }
    }

    private static Object instruction(TipTrim trim) {
        assertThat(trim.operations()).hasSize(1);
        return trim.operations().get(0).instruction();
    }

    /** Whatever the numbers, the same station of the shaft stands at the same height: T less the tip's height is constant. */
    @Property
    void aHigherTipIsTrimmedAsMuchMore(
            @ForAll @IntRange(min = -20_000, max = 60_000) int groundUm,
            @ForAll @IntRange(min = 0, max = 31_750) int insertionUm) {
        TipTrim other = TRIM.withBottomToGround(Length.ofMicrometres(groundUm))
                .withInsertion(Length.ofMicrometres(insertionUm));
        Length height = other.bottomToGround().plus(other.boreDepth()).minus(other.insertion());
        assertThat(other.trim().minus(height)).isEqualTo(TRIM.chart().minus(TRIM.groundReference()));
    }

    @Example
    void theCutIsSaidInWordsAndCheckedFirst() {
        Operation cut = TRIM.operations().get(0);
        assertThat(cut.text(Units.INCH))
                .isEqualTo(
                        "Mark 1.031 in (1 1/32) from the raw tip and cut on the tip side of the mark: the kerf of 0.062 in"
                                + " (1/16) falls in the waste and leaves an offcut of 0.969 in (31/32).");
        assertThat(cut.checkFirst(Units.METRIC)).contains("Do not cut unless it reads 26.1 mm (rounded down)");
    }

    @Example
    void refusesBadArguments() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TRIM.withChart(len("-1 mm")))
                .withMessage("chart must not be negative, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TRIM.withBoreDepth(Length.ZERO))
                .withMessage("boreDepth must be above zero, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TRIM.withInsertion(len("1.3 in")))
                .withMessage("insertion must be at most boreDepth, 31.75 mm, was 33.02 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TRIM.withInsertion(len("-1 mm")))
                .withMessage("insertion must not be negative, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TRIM.withKerf(len("-1 mm")))
                .withMessage("kerf must not be negative, was -1 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> TRIM.withGroundReference(null))
                .withMessage("groundReference must not be null");
        assertThat(TRIM.withGroundReference(len("2 in")).trim()).isEqualTo(len("1/32 in"));
        assertThat(TRIM.withBoreDepth(len("1 1/2 in")).trim()).isEqualTo(len("1 9/32 in"));
    }
}
