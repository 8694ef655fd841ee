package dev.tipwright.core.length;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.codes;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.length;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cutting to length: cap 1/8 in, bore 1 1/4 in deep and an inch over the ground, shaft 39 in. */
class CutMarksTest {

    private static final Length KERF = in("1/16");

    private static Build seated(String tipTrim) {
        Build build = club("6", "M1", "mid");
        return build.withWork(build.work().withTipTrim(in(tipTrim)).withSeat(new Seat(in("1 1/4"), Stop.BORE_BOTTOM)));
    }

    private static StepOutcome cut(String length, Build build) {
        LengthTarget target = new LengthTarget("6", in(length), LengthMeasure.ALONG_AXIS);
        return CutToLengthStep.to(new LengthPlan(List.of(target)), KERF).take(build);
    }

    private static CutToLength report(StepOutcome outcome) {
        return (CutToLength) outcome.reports().get(0);
    }

    private static List<String> instructions(CutToLength cut) {
        return cut.operations().stream()
                .map(operation -> operation.instruction().name())
                .toList();
    }

    /** 37 1/2 - 1/8 - 1 = 36 3/8 of shaft; 39 - 1/2 - 36 3/8 = 2 1/8 of waste. */
    @Test
    void cutsToTheLength() {
        StepOutcome outcome = cut("37 1/2", seated("1/2"));
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.after().work().buttTrim()).isEqualTo(in("2 1/8"));
        assertThat(PlayingLength.alongAxis(outcome.after())).isEqualTo(in("37 1/2"));
        assertThat(report(outcome).sheet().butt().fromTip()).isEqualTo(in("36 7/8"));
        assertThat(instructions(report(outcome))).containsExactly("MARK_OUT", "CUT_BUTT", "FIT_GRIP", "MEASURE_LENGTH");
    }

    @Test
    void marksTheRawShaftFromBothEndsBeforeAnythingIsCut() {
        Operation mark = report(cut("37 1/2", seated("1/2"))).operations().get(0);
        assertThat(mark.text(Units.INCH))
                .isEqualTo(
                        "Measure the raw shaft, and mark it only if it reads 39.000 in (39). Tip mark: 0.500 in (1/2) from the raw"
                                + " tip, which is 38.500 in (38 1/2) from the raw butt. Butt mark, in pencil: 2.125 in (2 1/8) from the raw"
                                + " butt, which is 36.875 in (36 7/8) from the raw tip. Between the marks: 36.375 in (36 3/8). Waste lies"
                                + " outside them.");
        assertThat(mark.oneWay()).isFalse();
    }

    /** A butt trim of the kerf is ground; none at all leaves only the grip to put on. */
    @Test
    void grindsWhatIsNoWiderThanTheKerfAndCutsNothingWhereNothingIsLeft() {
        assertThat(instructions(report(cut("39 9/16", seated("1/2")))))
                .containsExactly("MARK_OUT", "GRIND_BUTT", "FIT_GRIP", "MEASURE_LENGTH");
        assertThat(instructions(report(cut("39 5/8", seated("1/2"))))).containsExactly("FIT_GRIP", "MEASURE_LENGTH");
        assertThat(instructions(report(cut("39", seated("0"))))).doesNotContain("MARK_OUT");
    }

    @Test
    void whatMustBeLeftIsRoundedUpAndWhatComesOffDown() {
        CutToLength odd = report(cut("37.3333", seated(".3333")));
        String cut = odd.operations().get(1).text(Units.INCH);
        // S = 36.2083, so v = 34.9583, and U = 39 - .3333 - 36.2083 = 2.4584.
        assertThat(cut).startsWith("Mark 34.959 in (under 34 31/32) up").contains("2.458 in (over 2 29/64) comes off");
        assertThat(odd.operations().get(1).text(Units.METRIC))
                .startsWith("Mark 888.0 mm (rounded up) up")
                .contains("62.4 mm (rounded down) comes off");
    }

    @Test
    void aShaftThatIsTooShortIsLeftWhole() {
        StepOutcome outcome = cut("40", seated("1/2"));
        assertThat(codes(outcome.findings())).containsExactly("SHAFT_TOO_SHORT");
        assertThat(length(outcome.findings().get(0), "s")).isEqualTo(in("3/8"));
        assertThat(outcome.after().work().buttTrim()).isEqualTo(Length.ZERO);
        assertThat(report(outcome).longest()).isEqualTo(in("39 5/8"));
        assertThatThrownBy(() -> report(outcome).sheet())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("target");
    }

    @Test
    void whatCannotBeSaidIsSaid() {
        assertThat(codes(cut("37", club("6", "M1", "mid")).findings())).containsExactly("NOT_SEATED");
        assertThat(codes(cut("2 1/4", seated("1/2")).findings())).containsExactly("TARGET_TOO_SHORT");
        LengthPlan other = new LengthPlan(List.of(new LengthTarget("9", in("36"), LengthMeasure.ALONG_AXIS)));
        assertThat(codes(CutToLengthStep.to(other, KERF).take(seated("1/2")).findings()))
                .containsExactly("NO_TARGET");
    }

    /** The shaft used up to its butt is a cut of nothing; 1 1/8 in are cap and height alone, and leave no shaft to mark. */
    @Test
    void aSheetNeedsShaftAndNoWaste() {
        assertThat(report(cut("39 5/8", seated("1/2"))).sheet().buttTrim()).isEqualTo(Length.ZERO);
        CutToLength none =
                new CutToLength(in("1 1/8"), in("1/8"), in("1 1/4"), in("1 1/4"), in("1"), in("39"), in("1/2"), KERF);
        assertThat(none.cutLength()).isEqualTo(Length.ZERO);
        assertThat(instructions(none)).containsExactly("CUT_BUTT", "FIT_GRIP", "MEASURE_LENGTH");
        assertThatThrownBy(none::sheet).hasMessage("target must be within reach of the shaft, was 28.575 mm");
    }

    /** 37 1/2 in, of which 36 3/8 in is shaft, 2 1/8 in off the butt; 1 in more of raw shaft is 1 in more off it. */
    @Test
    void whatItMeasuresIsWorkedOutAgainFromTheParts() {
        StepOutcome outcome = cut("37 1/2", seated("1/2"));
        Build longer = outcome.after()
                .withParts(outcome.after()
                        .parts()
                        .withShaft(outcome.after().parts().shaft().withLength(in("40"))));
        List<Measure> measures = report(outcome).measures();
        assertThat(measures).extracting(Measure::symbol).containsExactly("L", "S", "U");
        assertThat(measures)
                .extracting(measure -> measure.value().applyAsDouble(outcome.after()))
                .containsExactly(952.5, 923.925, 53.975);
        assertThat(measures.get(2).value().applyAsDouble(longer)).isEqualTo(79.375);
        assertThat(measures.get(1).value().applyAsDouble(longer)).isEqualTo(923.925);
    }
}
