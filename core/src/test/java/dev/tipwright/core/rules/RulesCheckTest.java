package dev.tipwright.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ezylang.evalex.Expression;
import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The limits against the published table, and what is said on either side of each. */
class RulesCheckTest {

    private static final Length SIXTEENTH = Length.parse("1/16 in");

    private static final Length NANOMETRE = Length.ofNanometres(1);

    private static Length published(String limit) {
        return Length.ofInches(
                CheckTable.named("rules-limits").row("limit", limit).number("value_in"));
    }

    @Test
    void theLimitsAreThePublishedOnes() {
        ClubLimits limits = ClubLimits.EQUIPMENT_RULES;
        assertThat(limits.longest()).isEqualTo(published("longest club"));
        assertThat(limits.shortest()).isEqualTo(published("shortest club"));
        assertThat(limits.neck()).isEqualTo(published("neck length")).isEqualTo(published("straight shaft"));
        assertThat(limits.gripWidest()).isEqualTo(published("grip width"));
        assertThat(limits.gripShortest()).isEqualTo(published("grip length"));
        ClubLimits local = ClubLimits.WITH_LOCAL_RULE_G10;
        assertThat(local.longest()).isEqualTo(published("longest club under Model Local Rule G-10"));
        assertThat(local.withLongest(limits.longest()).withEdition(limits.edition()))
                .isEqualTo(limits);
    }

    @Test
    void aLimitOfAnotherEditionIsAnotherValue() {
        Length other = SampleClub.mm(100);
        ClubLimits all = ClubLimits.EQUIPMENT_RULES
                .withEdition("another")
                .withLongest(other)
                .withShortest(other)
                .withNeck(other)
                .withGripWidest(other)
                .withGripShortest(other);
        assertThat(all).isEqualTo(new ClubLimits("another", other, other, other, other, other));
    }

    @Test
    void theNeckAndTheGripOfAPutterHaveTheSameLimits() {
        assertThat(CheckTable.named("rules-limits").row("limit", "neck length").text("applies_to"))
                .isEqualTo("all clubs");
        Build putter = kind(neck(SampleClub.build(), published("neck length").plus(NANOMETRE)), ClubKind.PUTTER);
        assertThat(codes(putter, Length.ZERO)).containsExactly(RulesCode.NECK_TOO_LONG, RulesCode.NOT_CHECKED);
    }

    /** The sample club with a hosel mouth so high, or a grip cap so thick, that it is as long as wanted by the Rules' measure. */
    private static Build asLongAs(Length wanted) {
        Build build = SampleClub.build();
        Length more = wanted.minus(RulesCheck.length(build));
        return SampleClub.with(
                build, build.parts().grip().withCap(build.parts().grip().cap().plus(more)));
    }

    private static Build neck(Build build, Length neck) {
        return SampleClub.with(
                build,
                build.parts()
                        .head()
                        .withGeometry(build.parts().head().geometry().withMouthToGround(neck)));
    }

    private static Build kind(Build build, ClubKind kind) {
        return SampleClub.with(build, build.parts().head().withKind(kind));
    }

    private static Build shortOne(Length wanted) {
        Build build = SampleClub.build();
        Build cut = build.withWork(build.work().withButtTrim(SampleClub.mm(900)));
        Length more = wanted.minus(RulesCheck.length(cut));
        return SampleClub.with(
                cut, cut.parts().grip().withCap(cut.parts().grip().cap().plus(more)));
    }

    private static List<FindingCode> codes(Build build, Length uncertainty) {
        return RulesCheck.of(build, ClubLimits.EQUIPMENT_RULES, uncertainty).stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void theUncertaintyDecidesTheWordingNearALimit() {
        Length limit = published("longest club");
        assertThat(codes(asLongAs(limit.minus(SIXTEENTH)), SIXTEENTH))
                .containsExactly(RulesCode.NOT_CHECKED, RulesCode.WITHIN_LIMITS);
        assertThat(codes(asLongAs(limit.minus(SIXTEENTH).plus(NANOMETRE)), SIXTEENTH))
                .contains(RulesCode.TOO_NEAR);
        assertThat(codes(asLongAs(limit), SIXTEENTH)).contains(RulesCode.TOO_NEAR);
        assertThat(codes(asLongAs(limit.plus(SIXTEENTH)), SIXTEENTH)).contains(RulesCode.TOO_NEAR);
        assertThat(codes(asLongAs(limit.plus(SIXTEENTH).plus(NANOMETRE)), SIXTEENTH))
                .contains(RulesCode.TOO_LONG);
        // Without uncertainty a limit met to the digit is kept, and passed by the next nanometre.
        assertThat(codes(asLongAs(limit), Length.ZERO)).contains(RulesCode.WITHIN_LIMITS);
        assertThat(codes(asLongAs(limit.plus(NANOMETRE)), Length.ZERO)).contains(RulesCode.TOO_LONG);
        Length shortest = published("shortest club");
        assertThat(codes(shortOne(shortest), Length.ZERO)).contains(RulesCode.WITHIN_LIMITS);
        assertThat(codes(shortOne(shortest.minus(NANOMETRE)), Length.ZERO)).contains(RulesCode.TOO_SHORT);
        assertThat(codes(shortOne(shortest.plus(SIXTEENTH).minus(NANOMETRE)), SIXTEENTH))
                .contains(RulesCode.TOO_NEAR);
        assertThat(codes(shortOne(shortest.plus(SIXTEENTH)), SIXTEENTH)).contains(RulesCode.WITHIN_LIMITS);
    }

    @Test
    void neckAndGrip() {
        Build build = SampleClub.build();
        assertThat(codes(neck(build, published("neck length")), Length.ZERO)).contains(RulesCode.WITHIN_LIMITS);
        assertThat(codes(neck(build, published("neck length").plus(NANOMETRE)), Length.ZERO))
                .contains(RulesCode.NECK_TOO_LONG);
        assertThat(codes(grip(build, published("grip length"), published("grip width")), Length.ZERO))
                .containsExactly(RulesCode.WITHIN_LIMITS);
        assertThat(codes(grip(build, published("grip length").minus(NANOMETRE), published("grip width")), Length.ZERO))
                .containsExactly(RulesCode.GRIP_TOO_SHORT);
        assertThat(codes(
                        grip(
                                build,
                                published("grip length"),
                                published("grip width").plus(NANOMETRE)),
                        Length.ZERO))
                .containsExactly(RulesCode.GRIP_TOO_WIDE);
        assertThat(codes(grip(build, SampleClub.mm(267), published("grip width")), SIXTEENTH))
                .containsExactly(RulesCode.TOO_NEAR);
    }

    private static Build grip(Build build, Length length, Length width) {
        return SampleClub.with(
                build,
                build.parts()
                        .grip()
                        .withLength(length)
                        .withSize(Reading.measured(new GripSize(SampleClub.mm(15), width))));
    }

    @Test
    void aPutterMayBeLongButNotShortAndIsMeasuredAlongItsAxis() {
        Build putter = kind(asLongAs(SampleClub.mm(1500)), ClubKind.PUTTER);
        assertThat(codes(putter, Length.ZERO)).containsExactly(RulesCode.NOT_CHECKED, RulesCode.WITHIN_LIMITS);
        assertThat(RulesCheck.length(putter)).isEqualTo(PlayingLength.alongAxis(putter));
        Build iron = kind(putter, ClubKind.IRON);
        assertThat(RulesCheck.length(iron))
                .isEqualTo(SixtyDegreePlane.of(iron.parts().head()).length(PlayingLength.alongAxis(iron)));
        assertThat(codes(kind(shortOne(SampleClub.mm(400)), ClubKind.PUTTER), Length.ZERO))
                .contains(RulesCode.TOO_SHORT);
    }

    @Test
    void everyFindingSaysItsNumbersInBothUnits() {
        Build build = SampleClub.build();
        assertSays(asLongAs(SampleClub.mm(1300)), RulesCode.TOO_LONG, "1300.0 mm", "51.181 in");
        assertSays(shortOne(SampleClub.mm(400)), RulesCode.TOO_SHORT, "400.0 mm", "15.748 in");
        assertSays(neck(build, SampleClub.mm(130)), RulesCode.NECK_TOO_LONG, "130.0 mm", "5.118 in");
        assertSays(
                grip(build, SampleClub.mm(150), SampleClub.mm(30)), RulesCode.GRIP_TOO_SHORT, "150.0 mm", "5.906 in");
        assertSays(
                grip(build, SampleClub.mm(270), SampleClub.mm(47)), RulesCode.GRIP_TOO_WIDE, "47.000 mm", "1.8504 in");
        assertSays(build, RulesCode.NOT_CHECKED, "calliper it", "calliper it");
        assertSays(build, RulesCode.WITHIN_LIMITS, "no ruling", "no ruling");
        assertSays(asLongAs(SampleClub.mm(1219)), RulesCode.TOO_NEAR, "length, 1219.0 mm", "47.992 in");
        assertSays(grip(build, SampleClub.mm(270), SampleClub.mm(44)), RulesCode.TOO_NEAR, "44.000 mm", "1.7323 in");
    }

    private static void assertSays(Build build, RulesCode code, String metric, String inch) {
        Finding finding = RulesCheck.of(build, ClubLimits.EQUIPMENT_RULES, SIXTEENTH).stream()
                .filter(found -> found.code() == code)
                .findFirst()
                .orElseThrow();
        assertThat(finding.message(Units.METRIC)).contains(metric).doesNotContain("{");
        assertThat(finding.message(Units.INCH)).contains(inch).doesNotContain("{");
    }

    @Test
    void theStepReportsTheLengthWithItsWorkingAndAssumptions() throws Exception {
        RulesStep step = RulesStep.within(ClubLimits.EQUIPMENT_RULES, SIXTEENTH);
        StepOutcome outcome = step.take(SampleClub.build());
        RulesReport report = (RulesReport) outcome.reports().get(0);
        assertThat(outcome.after()).isEqualTo(SampleClub.build());
        assertThat(report.headline().get(0).text(Units.METRIC)).isEqualTo("949.2 mm");
        assertThat(report.assumptions()).hasSize(2);
        assertThat(report.working().lines().get(0).result())
                .isEqualTo(Term.of("L60", "length by the 60 degree plane", report.length()));
        RulesReport putter = new RulesReport(kind(SampleClub.build(), ClubKind.PUTTER), ClubLimits.EQUIPMENT_RULES);
        // 3 + 1000 - 20 - 60 - 30 + 60.
        assertThat(putter.length()).isEqualTo(SampleClub.mm(953));
        assertThat(putter.assumptions()).isEmpty();
        Working.Line line = putter.working().lines().get(0);
        Expression expression = new Expression(line.formula());
        line.inputs()
                .forEach(
                        term -> expression.with(term.symbol(), new java.math.BigDecimal(term.number(Units.METRIC, 6))));
        assertThat(expression.evaluate().getNumberValue().doubleValue()).isEqualTo(953);
    }

    @Test
    void aClubThatIsNotSeatedIsANoteForTheStepAndMisuseOfTheCheck() {
        Build apart = SampleClub.build().withWork(SampleClub.build().work().withSeat(Seat.APART));
        StepOutcome outcome =
                RulesStep.within(ClubLimits.EQUIPMENT_RULES, Length.ZERO).take(apart);
        assertThat(outcome.findings()).extracting(Finding::code).containsExactly(RulesCode.NOT_SEATED);
        assertThat(outcome.findings().get(0).message(Units.INCH)).contains("not seated");
        assertThatThrownBy(() -> RulesCheck.of(apart, ClubLimits.EQUIPMENT_RULES, Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RulesReport(apart, ClubLimits.EQUIPMENT_RULES))
                .hasMessageContaining("build");
        assertThatThrownBy(() -> RulesStep.within(ClubLimits.EQUIPMENT_RULES, NANOMETRE.negated()))
                .hasMessageContaining("uncertainty");
    }
}
