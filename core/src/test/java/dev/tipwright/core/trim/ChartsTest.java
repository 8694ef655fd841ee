package dev.tipwright.core.trim;

import static dev.tipwright.core.TradeBench.codes;
import static dev.tipwright.core.TradeBench.grip;
import static dev.tipwright.core.TradeBench.head;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.length;
import static dev.tipwright.core.TradeBench.shaft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Charts, corrections and what can be wrong with a trim, in sixteenths that a reader can add. */
class ChartsTest {

    private static final Length KERF = in("1/16");

    /** For heads whose bore bottoms an inch over the ground, as those of {@code TradeBench} do. */
    private static final TrimChart CHART =
            TrimChart.stepped("mid", List.of("6", "7", "8"), in("1/2"), in("1/2"), in("1"));

    private static Build club(Head head) {
        return Build.of(new Parts(head, shaft("M1", "mid"), grip()));
    }

    private static Build club(String label) {
        return club(head(label, ClubKind.IRON, BoreEnd.FLAT));
    }

    private static Build higher(String label, String mouthToGround) {
        Head head = head(label, ClubKind.IRON, BoreEnd.FLAT);
        return club(head.withGeometry(head.geometry().withMouthToGround(in(mouthToGround))));
    }

    private static StepOutcome trim(Build build) {
        return TipTrimStep.by(CHART, KERF).take(build);
    }

    @ParameterizedTest
    @CsvSource({"6, 1/2", "7, 1", "8, 1 1/2"})
    void aHeadAsTheChartAssumesIsTrimmedByTheChart(String label, String trim) {
        StepOutcome outcome = trim(club(label));
        assertThat(outcome.after().work().tipTrim()).isEqualTo(in(trim));
        assertThat(outcome.after().work().seat()).isEqualTo(new Seat(in("1 1/4"), Stop.BORE_BOTTOM));
        assertThat(outcome.findings()).isEmpty();
    }

    /** Every kind of club is trimmed alike: what differs is in its chart and its bore. */
    @ParameterizedTest
    @EnumSource(ClubKind.class)
    void anyKindOfClub(ClubKind kind) {
        TrimChart chart = new TrimChart(List.of(new TrimChart.Row(kind.name(), "mid", in("1"))), in("1"));
        for (BoreEnd end : List.of(BoreEnd.FLAT, BoreEnd.CONE)) {
            StepOutcome outcome = TipTrimStep.by(chart, KERF).take(club(head(kind.name(), kind, end)));
            assertThat(outcome.after().work().tipTrim()).isEqualTo(in("1"));
        }
        Build through = club(head(kind.name(), kind, BoreEnd.THROUGH));
        StepOutcome unstopped = TipTrimStep.by(chart, KERF).take(through);
        assertThat(codes(unstopped.findings())).containsExactly("NO_STOP");
        assertThat(unstopped.reports()).isEmpty();
        // On a mark at 1 in the tip ends a quarter inch higher than at the bottom, so it is trimmed so much more.
        Build marked = through.withWork(through.work().withSeat(new Seat(in("1"), Stop.MARK)));
        assertThat(TipTrimStep.by(chart, KERF).take(marked).after().work().tipTrim())
                .isEqualTo(in("1 1/4"));
    }

    @Test
    void aClubTheChartDoesNotNameIsStoppedAndLeftUncut() {
        for (Build build : List.of(
                club("5"),
                club("6").withParts(new Parts(head("6", ClubKind.IRON, BoreEnd.FLAT), shaft("S1", "short"), grip())))) {
            StepOutcome outcome = trim(build);
            assertThat(outcome.findings()).extracting(Finding::severity).containsExactly(Severity.STOP);
            assertThat(codes(outcome.findings())).containsExactly("NOT_ON_CHART");
            assertThat(outcome.after().work().tipTrim()).isEqualTo(Length.ZERO);
            assertThat(outcome.reports()).isEmpty();
        }
        assertThat(trim(club("5")).findings().get(0).message(Units.INCH))
                .contains("club 5 on blank mid")
                .contains("ask the shaft's maker");
    }

    @Test
    void aHigherBoreIsTrimmedMoreAndALowerOneLess() {
        StepOutcome more = trim(higher("7", "2 17/32"));
        assertThat(more.after().work().tipTrim()).isEqualTo(in("1 9/32"));
        assertThat(more.findings().get(0).message(Units.INCH))
                .isEqualTo(
                        "the tip's end will stand 1.281 in (1 9/32) over the ground where the chart assumes 1.000 in (1):"
                                + " the chart's 1.000 in (1) is corrected by 0.281 in (9/32)");
        StepOutcome less = trim(higher("7", "2 1/8"));
        assertThat(less.after().work().tipTrim()).isEqualTo(in("7/8"));
        assertThat(less.findings().get(0).message(Units.INCH)).contains("is corrected by -0.125 in (-1/8)");
    }

    /** A rule good to 1/64 in: the height is known to twice that, 1/32 in. A bore depth read by it doubles the variance. */
    @Test
    void theDoubtIsThatOfTheInstruments() {
        Instrument rule = Instrument.ofStandard("rule", "mm", in("1/64").millimetres(), 0);
        TipTrimStep one = TipTrimStep.by(CHART, KERF)
                .measuredWith(BenchUncertainty.of(BenchUncertainty.Tool.of(rule, BenchInput.MOUTH_TO_GROUND)));
        Finding doubted = one.take(higher("7", "2 17/64")).findings().get(0);
        assertThat(doubted.code()).isEqualTo(TrimCode.CORRECTION_IN_DOUBT);
        assertThat(length(doubted, "u").inches()).isCloseTo(1.0 / 32, within(1e-6));
        assertThat(codes(one.take(higher("7", "2 19/64")).findings())).containsExactly("BORE_CORRECTED");
        TipTrimStep both = TipTrimStep.by(CHART, KERF)
                .measuredWith(BenchUncertainty.of(
                        BenchUncertainty.Tool.of(rule, BenchInput.MOUTH_TO_GROUND, BenchInput.BORE_DEPTH)));
        Finding more = both.take(higher("7", "2 17/64")).findings().get(0);
        assertThat(length(more, "u").inches()).isCloseTo(Math.sqrt(2) / 32, within(1e-6));
    }

    @Test
    void aCorrectionWithinItsDoubtIsMadeAndSaidToBeInDoubt() {
        TipTrimStep step = TipTrimStep.by(CHART, KERF).withDoubt(in("1/32"));
        StepOutcome outcome = step.take(higher("7", "2 9/32"));
        assertThat(codes(outcome.findings())).containsExactly("CORRECTION_IN_DOUBT");
        assertThat(outcome.findings().get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(length(outcome.findings().get(0), "u")).isEqualTo(in("1/32"));
        assertThat(outcome.after().work().tipTrim()).isEqualTo(in("1 1/32"));
        assertThat(codes(step.take(higher("7", "2 19/64")).findings())).containsExactly("BORE_CORRECTED");
        assertThat(codes(step.take(club("7")).findings())).isEmpty();
    }

    @Test
    void aNegativeTrimIsFoundAndNeverClamped() {
        StepOutcome outcome = trim(higher("6", "1 5/8"));
        assertThat(codes(outcome.findings())).containsExactly("BORE_CORRECTED", "CANNOT_TRIM");
        assertThat(outcome.after().work().tipTrim()).isEqualTo(Length.ZERO);
        TipTrim trim = (TipTrim) outcome.reports().get(0);
        assertThat(trim.trim()).isEqualTo(in("1/8").negated());
        assertThat(trim.offcut()).isEqualTo(Length.ZERO);
        assertThat(trim.operations()).isEmpty();
        assertThat(length(outcome.findings().get(1), "T")).isEqualTo(in("1/8").negated());
    }

    @Test
    void aTrimNoWiderThanTheKerfIsGroundAndAWiderOneCut() {
        assertThat(instruction("1/16")).isEqualTo("GRIND_TIP");
        assertThat(instruction("5/64")).isEqualTo("CUT_TIP");
        assertThat(new TipTrim(Length.ZERO, in("1"), in("1"), in("1"), in("1"), KERF).operations())
                .isEmpty();
    }

    private static String instruction(String chart) {
        List<Operation> operations =
                new TipTrim(in(chart), in("1"), in("1 1/4"), in("1 1/4"), in("1"), KERF).operations();
        assertThat(operations).hasSize(1).allMatch(Operation::oneWay);
        return operations.get(0).instruction().name();
    }

    /** The blank is parallel for 8 in and was read as far: 6 3/4 in of trim and 1 1/4 in of insertion just go. */
    @Test
    void theParallelSectionAndWhatWasReadAreLimits() {
        assertThat(codes(byHand("6 3/4"))).isEmpty();
        assertThat(codes(byHand("6 13/16"))).containsExactly("TIP_NOT_READ", "PAST_PARALLEL");
        Shaft taper = shaft("W1", "mid").withBlank(new Blank("mid", Length.ZERO, ShaftMaterial.STEEL));
        Build build = Build.of(new Parts(head("6", ClubKind.WEDGE, BoreEnd.FLAT), taper, grip()));
        assertThat(codes(TipTrimStep.by(row("6 3/4"), KERF).take(build).findings()))
                .isEmpty();
    }

    /** 39 in of shaft less 1 1/4 in of insertion are 37 3/4 in. */
    @Test
    void somethingMustBeLeftOfTheShaft() {
        assertThat(codes(byHand("37 3/4"))).containsExactly("SHAFT_TOO_SHORT");
        assertThat(codes(byHand("37 11/16"))).doesNotContain("SHAFT_TOO_SHORT");
    }

    private static TrimChart row(String trim) {
        return new TrimChart(List.of(new TrimChart.Row("6", "mid", in(trim))), in("1"));
    }

    private static List<Finding> byHand(String trim) {
        return TipTrimStep.by(row(trim), KERF).take(club("6")).findings();
    }

    /** .355 in at the tip and .381 in four inches up is .0065 in an inch: after an inch and a half of trim, .36475 in. */
    @Test
    void aTrimmedTaperTipIsWider() {
        Shaft taper = shaft("W1", "mid").withBlank(new Blank("mid", Length.ZERO, ShaftMaterial.STEEL));
        DiameterProfile outside =
                DiameterProfile.of(List.of(Station.of(Length.ZERO, in(".355")), Station.of(in("4"), in(".381"))));
        taper = taper.withSection(taper.section().withOutside(outside));
        Build build = Build.of(new Parts(head("8", ClubKind.WEDGE, BoreEnd.FLAT), taper, grip()));
        Build after = trim(build).after();
        assertThat(after.trimmedTip().diameterAt(Length.ZERO)).isEqualTo(in(".36475"));
        assertThat(build.trimmedTip().diameterAt(Length.ZERO)).isEqualTo(in(".355"));
    }

    @Test
    void aChartMayHaveSeveralBlanksAndEachClubOnceOnEach() {
        TrimChart.Row mid = new TrimChart.Row("8", "mid", in("1 1/2"));
        TrimChart.Row shorter = new TrimChart.Row("8", "short", Length.ZERO);
        TrimChart chart = new TrimChart(List.of(mid, shorter), in("1"));
        assertThat(chart.trim("8", "mid")).contains(in("1 1/2"));
        assertThat(chart.trim("8", "short")).contains(Length.ZERO);
        assertThat(chart.trim("8", "long")).isEqualTo(Optional.empty());
        assertThatThrownBy(() -> new TrimChart(List.of(mid, mid), in("1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rows must name each one once");
    }

    @Test
    void thePrintedTrimIsNeverMoreThanTheTrim() {
        TipTrim odd = new TipTrim(in(".3339"), in("1"), in("1 1/4"), in("1 1/4"), in("1"), KERF);
        assertThat(odd.operations().get(0).text(Units.INCH)).startsWith("Mark 0.333 in (over 21/64) from the raw tip");
        assertThat(odd.operations().get(0).text(Units.METRIC)).startsWith("Mark 8.4 mm (rounded down) from");
        assertThat(odd.operations().get(0).checkFirst(Units.INCH)).contains("unless it reads 0.333 in (over 21/64)");
        assertThat(odd.working().text(Units.INCH)).contains("chart + (G + B - i) - G_ref");
        assertThat(odd.cautions()).isNotEmpty();
        assertThat(odd.headline()).hasSize(3);
    }
}
