package dev.tipwright.core.flex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.Expression;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** What the step and the review of a set find about frequency, and what they print. */
class FlexStepTest {

    private static final FlexStep STEP = FlexStep.clamping(SampleClub.mm(127), Frequency.ofPerMinute(3));

    private static final StiffnessShape SHAPE = SampleClub.stations(0, 15, 1000, 65);

    private static Finding only(Build build) {
        StepOutcome outcome = STEP.take(build);
        assertThat(outcome.after()).isEqualTo(build);
        assertThat(outcome.findings()).hasSize(1);
        return outcome.findings().get(0);
    }

    private static Build with(Shaft shaft) {
        return SampleClub.with(SampleClub.build(), shaft);
    }

    @Test
    void everyFindingIsReachedAndSaysItsNumbersInBothUnits() {
        Build build = SampleClub.build();
        Shaft shaft = SampleClub.shaft();
        Set<FlexCode> reached = EnumSet.noneOf(FlexCode.class);
        Build apart = build.withWork(build.work().withSeat(Seat.APART));
        assertSays(reached, only(apart), FlexCode.NOT_SEATED, "not seated", "not seated");
        Build shortOne = build.withWork(build.work().withButtTrim(SampleClub.mm(850)));
        assertSays(reached, only(shortOne), FlexCode.NO_BEAM, "127.0 mm leaves nothing of the 100.0 mm", "3.937 in");
        assertSays(
                reached,
                only(with(shaft.withFlex(Reading.unknown("time it")))),
                FlexCode.STIFFNESS_UNKNOWN,
                "ask: time it",
                "ask: time it");
        Reading<ShaftFlex> timedAlone =
                Reading.measured(new ShaftFlex(Reading.unknown("the maker"), List.of(SampleClub.timed(300, 127, 200))));
        assertSays(
                reached, only(with(shaft.withFlex(timedAlone))), FlexCode.STIFFNESS_UNKNOWN, "the maker", "the maker");
        Shaft tube = shaft.withFlex(SampleClub.flex(new StiffnessShape.Tube(Stress.ofGigapascals(200))));
        assertSays(reached, only(with(tube)), FlexCode.STIFFNESS_SHORT, "tip to butt", "tip to butt");
        Shaft odd = shaft.withMass(ShaftMass.of(Mass.ofGrams(80), SampleClub.mm(300)));
        assertSays(reached, only(with(odd)), FlexCode.MASS_UNKNOWN, "300.0 mm", "11.811 in");
        Head head = SampleClub.head();
        Head unknown = head.withMass(head.mass().withCentre(Reading.unknown("balance it")));
        assertSays(reached, only(SampleClub.with(build, unknown)), FlexCode.CENTRE_UNKNOWN, "balance it", "balance it");
        assertSays(reached, only(build), FlexCode.NOT_TIMED, "/min rests", "/min rests");
        Shaft contradicted =
                shaft.withFlex(SampleClub.flex(SHAPE, SampleClub.timed(290, 127, 200), SampleClub.timed(600, 150, 50)));
        assertSays(
                reached, only(with(contradicted)), FlexCode.SHAPE_OFF, "50.00 g on the tip and 150.0 mm", "5.906 in");
        reviewed(reached);
        assertThat(reached).isEqualTo(EnumSet.allOf(FlexCode.class));
    }

    private static void assertSays(Set<FlexCode> reached, Finding finding, FlexCode code, String metric, String inch) {
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.message(Units.METRIC)).contains(metric).doesNotContain("{");
        assertThat(finding.message(Units.INCH)).contains(inch).doesNotContain("{");
        reached.add(code);
    }

    @Test
    void aSecondTimingThatAgreesIsNoFinding() {
        ShaftFlex.Timed first = SampleClub.timed(290, 127, 200);
        Shaft once = SampleClub.shaft().withFlex(SampleClub.flex(SHAPE, first));
        ShaftFlex.Timed other = SampleClub.timed(1, 200, 50);
        double predicted = ShaftBend.of(once).orElseThrow().raw(once, other).perMinute();
        Shaft agreeing = once.withFlex(SampleClub.flex(SHAPE, first, SampleClub.timed(predicted + 2.9, 200, 50)));
        assertThat(STEP.take(with(agreeing)).findings()).isEmpty();
        Shaft not = once.withFlex(SampleClub.flex(SHAPE, first, SampleClub.timed(predicted - 3.1, 200, 50)));
        Term d = only(with(not)).term("d");
        assertThat(((Term.OfFrequency) d).value().perMinute()).isCloseTo(-3.1, within(1e-6));
    }

    /** As far off as is tolerated is no finding, the least bit further is one; where nothing is tolerated any difference is. */
    @Test
    void aTimingMayBeAsFarOffAsIsTolerated() {
        Shaft shaft = SampleClub.shaft()
                .withFlex(SampleClub.flex(SHAPE, SampleClub.timed(290, 127, 200), SampleClub.timed(280, 200, 50)));
        double off = ShaftBend.of(shaft)
                .orElseThrow()
                .checks(shaft)
                .get(1)
                .residual()
                .perMinute();
        assertThat(codes(Math.abs(off), shaft)).isEmpty();
        assertThat(codes(Math.nextDown(Math.abs(off)), shaft)).containsExactly(FlexCode.SHAPE_OFF);
        assertThat(codes(0, shaft)).containsExactly(FlexCode.SHAPE_OFF);
    }

    private static List<FindingCode> codes(double tolerance, Shaft shaft) {
        return FlexStep.clamping(SampleClub.mm(127), Frequency.ofPerMinute(tolerance))
                .take(with(shaft))
                .findings()
                .stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void aClubMayBeAsFarOffItsLineAsIsTolerated() {
        List<ClubPlan> clubs = plan(1.02).clubs();
        double off = Math.abs(FlexReview.line(clubs).orElseThrow().off("7").perMinute());
        assertThat(new FlexReview(Frequency.ofPerMinute(off)).review(clubs))
                .noneMatch(found -> found.label().equals("7"));
        assertThat(new FlexReview(Frequency.ofPerMinute(Math.nextDown(off))).review(clubs))
                .anyMatch(found -> found.label().equals("7"));
    }

    /** A stiffness that was worked out for one shaft says nothing of one whose mass is not believable. */
    @Test
    void checksAreOfAShaftThatCanBe() {
        Shaft odd = SampleClub.shaft().withMass(ShaftMass.of(Mass.ofGrams(80), SampleClub.mm(300)));
        ShaftBend bend = ShaftBend.of(SampleClub.shaft()).orElseThrow();
        assertThat(bend.checks(SampleClub.shaft())).isEmpty();
        assertThatThrownBy(() -> bend.checks(odd)).hasMessageStartingWith("shaft must");
    }

    /** Four clubs half an inch apart whose heads grow by 7 g, the third shaft half again as stiff. */
    private static ClubSet set(double stiffer) {
        return ClubSet.of(numbered(0, 1), numbered(1, 1), numbered(2, stiffer), numbered(3, 1));
    }

    private static Build numbered(int number, double stiffer) {
        Head head = SampleClub.head()
                .withLabel("" + (5 + number))
                .withMass(SampleClub.head().mass().withMass(Mass.ofGrams(253 + 7 * number)));
        Shaft shaft = SampleClub.shaft()
                .withFlex(SampleClub.flex(
                        SampleClub.stations(0, 15 * stiffer, 1000, 65 * stiffer),
                        SampleClub.timed(290 * Math.sqrt(stiffer), 127, 200)));
        Build build = SampleClub.with(SampleClub.with(SampleClub.build(), head), shaft);
        return build.withWork(build.work().withButtTrim(SampleClub.mm(40 + 12.7 * number)));
    }

    private static JobPlan plan(double stiffer) {
        return JobPlanner.of(STEP)
                .reviewedBy(new FlexReview(Frequency.ofPerMinute(1)))
                .plan(set(stiffer));
    }

    private static void reviewed(Set<FlexCode> reached) {
        Finding near = plan(1.02).club("7").findings().get(0);
        assertSays(reached, near, FlexCode.OFF_LINE, "faster than the line", "in (");
        assertThat(near.message(Units.METRIC)).contains(" mm in place of 20.0 mm, the rest off the butt");
        Finding far = plan(1.5).club("7").findings().get(0);
        assertSays(reached, far, FlexCode.OFF_LINE_FOR_GOOD, "no tip trim", "no tip trim");
        reached.addAll(EnumSet.of(FlexCode.MARGINAL, FlexCode.OFF_BY_LITTLE)); // see FlexDoubtTest
    }

    @Test
    void aSetOfOneModelIsOnItsLine() {
        assertThat(plan(1).clubs()).allMatch(club -> club.findings().isEmpty());
    }

    @Test
    void theTrimThatIsNamedBringsTheClubToTheLine() {
        JobPlan plan = plan(1.02);
        Finding finding = plan.club("7").findings().get(0);
        Length trim = ((Term.OfLength) finding.term("T")).value();
        Frequency wanted = ((Term.OfFrequency) finding.term("l")).value();
        ClubFrequency club = plan.club("7").report(ClubFrequency.class);
        assertThat(trim).isLessThan(club.build().work().tipTrim());
        assertThat(club.withTipTrim(trim).frequency().perMinute()).isCloseTo(wanted.perMinute(), within(1e-4));
    }

    @Test
    void theLineIsTheOneOfAStatisticsLibrary() throws Exception {
        FrequencyLine line = FlexReview.line(plan(1.05).clubs()).orElseThrow();
        SimpleRegression regression = new SimpleRegression();
        line.points()
                .forEach(point -> regression.addData(
                        point.length().inches(), point.frequency().perMinute()));
        assertThat(line.perInch().perMinute()).isCloseTo(regression.getSlope(), within(1e-9));
        assertThat(line.at(SampleClub.mm(950)).perMinute()).isCloseTo(regression.predict(950 / 25.4), within(1e-9));
        double sum = 0;
        for (FrequencyLine.Point point : line.points()) {
            sum += line.off(point.club()).perMinute();
        }
        assertThat(sum).isCloseTo(0, within(1e-9));
        List<Working.Line> lines = line.working().lines();
        for (Working.Line one : lines.subList(1, lines.size())) {
            Expression expression = new Expression(one.formula());
            one.inputs().forEach(term -> expression.with(term.symbol(), new BigDecimal(term.number(Units.INCH, 9))));
            assertThat(expression.evaluate().getNumberValue().doubleValue())
                    .isCloseTo(((Term.OfFrequency) one.result()).value().perMinute(), within(1e-7));
        }
    }

    @Test
    void thereIsNoLineThroughTwoClubsOrThroughClubsOfOneLength() {
        List<dev.tipwright.core.plan.ClubPlan> clubs = plan(1).clubs();
        assertThat(FlexReview.line(clubs.subList(0, 2))).isEmpty();
        assertThat(FlexReview.line(clubs.subList(0, 3))).isPresent();
        assertThat(new FlexReview(Frequency.ZERO).review(clubs.subList(0, 2))).isEmpty();
        Build one = SampleClub.build();
        ClubSet same = ClubSet.of(
                one,
                SampleClub.with(one, one.parts().head().withLabel("b")),
                SampleClub.with(one, one.parts().head().withLabel("c")));
        assertThat(FlexReview.line(JobPlanner.of(STEP).plan(same).clubs())).isEmpty();
        assertThat(FlexReview.line(JobPlanner.of(build -> StepOutcome.notTaken(build))
                        .plan(same)
                        .clubs()))
                .isEmpty();
    }

    @Test
    void thePlanPrintsTheFrequency() {
        String text = PlanText.plain(plan(1), Units.METRIC);
        assertThat(text).contains("frequency without grip").contains("time the club");
    }

    @Test
    void hostileInputIsRefusedByName() {
        assertThatThrownBy(() -> FlexStep.clamping(SampleClub.mm(-1), Frequency.ZERO))
                .hasMessageContaining("clamp");
        assertThatThrownBy(() -> FlexStep.clamping(Length.ZERO, Frequency.ofPerMinute(-1)))
                .hasMessageContaining("tolerance");
        assertThatThrownBy(() -> new FlexReview(Frequency.ofPerMinute(-1))).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> new FrequencyLine(List.of())).hasMessageContaining("points");
        FrequencyLine.Point point = new FrequencyLine.Point("6", SampleClub.mm(950), Frequency.ofPerMinute(300));
        assertThatThrownBy(() -> new FrequencyLine(List.of(point))).hasMessageContaining("points");
        assertThatThrownBy(() -> new FrequencyLine(List.of(point, point))).hasMessageContaining("points");
        assertThatThrownBy(() -> new FrequencyLine.Point("6", Length.ZERO, Frequency.ofPerMinute(1)))
                .hasMessageContaining("length");
        assertThatThrownBy(() -> new FrequencyLine.Point("6", SampleClub.mm(1), Frequency.ZERO))
                .hasMessageContaining("frequency");
        assertThat(new FrequencyLine.Point("6", SampleClub.mm(1), Frequency.ofPerMinute(1e30))
                        .frequency()
                        .perMinute())
                .isEqualTo(1e30);
        assertThatThrownBy(() -> new FrequencyLine.Point("6", SampleClub.mm(1), Frequency.ofPerMinute(1e31)))
                .hasMessageContaining("frequency");
        FrequencyLine line = new FrequencyLine(
                List.of(point, new FrequencyLine.Point("7", SampleClub.mm(940), Frequency.ofPerMinute(304))));
        assertThatThrownBy(() -> line.off("8")).hasMessageContaining("club");
    }
}
