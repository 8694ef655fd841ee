package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.density;
import static dev.tipwright.fitcheck.Clubs.ferrule;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.section;
import static dev.tipwright.fitcheck.Clubs.tip;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Pins what the step finds: each code where it belongs and nowhere else, its severity, its sentence in inches and millimetres, and
 * the limits, which are met when equal.
 */
class FitFindingsTest {

    private static final Build PLAIN = Clubs.plain();

    /** .3735 stops at the mouth of .363; bare .3685 does too; 22.5 to come off in all, 5 of it finish. */
    @Test
    void aPlainClub() {
        List<Finding> findings = findings(PLAIN);
        assertThat(codes(findings)).containsExactly(FitCode.STOPS_ON_THE_WAY, FitCode.PARTLY_FINISH);
        assertThat(findings).allMatch(finding -> finding.severity() == Severity.NOTE);
        assertSays(
                findings.get(0),
                "untouched, the tip goes in 0.0000 in and binds 0.000 in (0) up from its end; with its finish off, 0.0000 in");
    }

    @Test
    void stopsOnTheWay() {
        // .365 less .005 of finish: bare .360 binds where the taper of .0064 to the inch is as wide, 3 / 6.4 in.
        Finding finding = only(Clubs.withTip(cylinder(365)), FitCode.STOPS_ON_THE_WAY);
        assertThat(finding.term("i0").number(Units.INCH, 0)).isEqualTo("0.0000");
        assertThat(finding.term("i1").number(Units.INCH, 0)).startsWith("0.468");
    }

    /** A chamfer of 15 thousandths from .396 to .366: .3735 is three quarters of the way down. */
    @Test
    void stopsInTheChamfer() {
        Build build = Clubs.withBore(bore(0, 396, 15, 366, 1250, 355));
        Finding finding = only(build, FitCode.STOPS_IN_CHAMFER);
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.term("i0").number(Units.INCH, 0)).startsWith("0.0112");
        assertSays(
                finding,
                "untouched, the tip goes in only 0.0112 in and stops in the chamfer; with its finish off, 0.0138 in");
    }

    /** Bare .3499 in .355: .0051 at the bottom, where .004 is wanted. A thousandth more than wanted is not yet loose. */
    @Test
    void loose() {
        Finding finding = only(Clubs.withTip(cylinder(354.9)), FitCode.LOOSE);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(codes(findings(Clubs.withTip(cylinder(354.9))))).doesNotContain(FitCode.ENTERS);
        assertThat(codes(findings(Clubs.withTip(cylinder(355)))))
                .contains(FitCode.ENTERS)
                .doesNotContain(FitCode.LOOSE);
    }

    /** Bare .351 in .355: just the .004 that is wanted. */
    @Test
    void enters() {
        List<FitCode> codes = codes(findings(Clubs.withTip(cylinder(356))));
        assertThat(codes).contains(FitCode.ENTERS).doesNotContain(FitCode.LOOSE, FitCode.ENTERS_TIGHT);
    }

    /** Bare .353 goes in all the way, with .002 where .004 is wanted: .002 of structure has to come off all the same. */
    @Test
    void entersTight() {
        Build build = Clubs.withTip(cylinder(358));
        Finding finding = only(build, FitCode.ENTERS_TIGHT);
        assertThat(codes(findings(build))).doesNotContain(FitCode.ENTERS, FitCode.LOOSE);
        assertThat(fit(build).removal().structureAtEnd()).isEqualTo(mil(2));
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void partlyFinishWhenBothComeOff() {
        Finding finding = only(PLAIN, FitCode.PARTLY_FINISH);
        assertSays(
                finding,
                "of the 0.0225 in to take off the end of the tip, 0.0050 in is finish and 0.0175 in is structure");
        Build bare = Clubs.withSection(section(cylinder(368.5), 0, 88));
        assertThat(codes(findings(bare))).doesNotContain(FitCode.PARTLY_FINISH);
        assertThat(codes(findings(Clubs.withTip(cylinder(356))))).doesNotContain(FitCode.PARTLY_FINISH);
    }

    @Test
    void shortInsertionIsUnderTheLimitAndNotAtIt() {
        FitTarget at = Clubs.TARGET.withLeastInsertion(Reading.measured(mil(1250)));
        FitTarget over = Clubs.TARGET.withLeastInsertion(Reading.assumed(mil(1250.1), Source.assumption("a test")));
        assertThat(codes(findings(PLAIN, at))).doesNotContain(FitCode.SHORT_INSERTION);
        Finding finding = only(findings(PLAIN, over), FitCode.SHORT_INSERTION);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void withoutALimitForTheInsertionItSaysWhomToAsk() {
        FitTarget none = Clubs.TARGET.withLeastInsertion(Reading.unknown("the maker of the glue"));
        Finding finding = only(findings(PLAIN, none), FitCode.NO_INSERTION_LIMIT);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.message(Units.INCH)).endsWith("ask the maker of the glue");
    }

    /** .351 less an inside of .3735 - 2 x .0905 = .1925 leaves .07925 of wall at the end. */
    @Test
    void aThinWallIsUnderTheLimitAndNotAtIt() {
        FitTarget at = Clubs.TARGET.withLeastWall(Reading.measured(mil(79.25)));
        assertThat(codes(findings(PLAIN, at))).doesNotContain(FitCode.THIN_WALL);
        FitTarget over = Clubs.TARGET.withLeastWall(Reading.measured(mil(79.26)));
        Finding finding = only(findings(PLAIN, over), FitCode.THIN_WALL);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void withoutALimitForTheWallItSaysWhomToAsk() {
        FitTarget none = Clubs.TARGET.withLeastWall(Reading.unknown("the maker of the shaft"));
        Finding finding = only(findings(PLAIN, none), FitCode.NO_WALL_LIMIT);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.message(Units.INCH)).endsWith("ask the maker of the shaft");
        // Nothing of the structure comes off, so its limit is not asked for.
        assertThat(codes(findings(Clubs.withTip(cylinder(356)), none))).doesNotContain(FitCode.NO_WALL_LIMIT);
    }

    @Test
    void unknownWallFinishAndDensity() {
        ShaftSection section = PLAIN.parts().shaft().section();
        Build noWall = Clubs.withSection(section.withWall(Reading.unknown("the maker")));
        assertThat(codes(findings(noWall)))
                .contains(FitCode.WALL_UNKNOWN, FitCode.DENSITY_UNKNOWN)
                .doesNotContain(FitCode.THIN_WALL, FitCode.NO_WALL_LIMIT);
        Build noFinish = Clubs.withSection(section.withFinish(Reading.unknown("scrape it")));
        assertThat(only(noFinish, FitCode.FINISH_UNKNOWN).message(Units.INCH)).endsWith("ask scrape it");
        assertThat(codes(findings(noFinish))).doesNotContain(FitCode.DENSITY_UNKNOWN, FitCode.PARTLY_FINISH);
        Finish unweighed = new Finish(ThicknessProfile.uniform(mil(2.5)), Reading.unknown("the maker"));
        Build noDensity = Clubs.withSection(section.withFinish(Reading.measured(unweighed)));
        assertThat(codes(findings(noDensity))).contains(FitCode.DENSITY_UNKNOWN);
    }

    @Test
    void pinsSeeTheLeast() {
        Build build = Clubs.withBore(Clubs.pinned(0, 396, 15, 366, 400, 363, 1250, 355));
        assertThat(codes(findings(build))).contains(FitCode.PINS_SEE_LEAST);
        assertThat(codes(findings(PLAIN))).doesNotContain(FitCode.PINS_SEE_LEAST);
    }

    /** Of 1.250 in of insertion a chamfer of .015 in leaves 1.235 in: a limit of 1.235 is met below it, one of 1.236 is not. */
    @Test
    void theChamferHoldsNothing() {
        Build build = Clubs.withBore(bore(0, 396, 15, 366, 1250, 355));
        FitTarget met = new FitTarget(mil(4), Reading.measured(mil(1235)), Reading.measured(mil(75)));
        Finding note = findings(build, met).stream()
                .filter(finding -> finding.code() == FitCode.CHAMFER_HOLDS_NOTHING)
                .findFirst()
                .orElseThrow();
        assertThat(note.severity()).isEqualTo(Severity.NOTE);
        assertThat(note.term("ib").number(Units.INCH, 0)).isEqualTo("1.235");
        FitTarget missed = new FitTarget(mil(4), Reading.measured(mil(1236)), Reading.measured(mil(75)));
        assertThat(codes(findings(build, missed)))
                .contains(FitCode.SHORT_BELOW_CHAMFER)
                .doesNotContain(FitCode.CHAMFER_HOLDS_NOTHING, FitCode.SHORT_INSERTION);
        FitTarget far = new FitTarget(mil(4), Reading.measured(mil(1251)), Reading.measured(mil(75)));
        assertThat(codes(findings(build, far)))
                .contains(FitCode.SHORT_INSERTION)
                .doesNotContain(FitCode.SHORT_BELOW_CHAMFER);
        assertThat(codes(findings(PLAIN))).doesNotContain(FitCode.CHAMFER_HOLDS_NOTHING);
    }

    @Test
    void aDrilledBoreEndsInACone() {
        Build drilled = Clubs.withBore(Clubs.taper().withEnd(BoreEnd.CONE));
        assertThat(only(drilled, FitCode.CONE_AT_BOTTOM).severity()).isEqualTo(Severity.NOTE);
    }

    /** .3735 over the finish, .3685 bare: .370 goes over the one and not the other; as wide is wide enough. */
    @Test
    void ferrules() {
        assertThat(codes(findings(with(PLAIN, 373.5)))).doesNotContain(FitCode.FERRULE_OVER_FINISH);
        Finding over = only(with(PLAIN, 370), FitCode.FERRULE_OVER_FINISH);
        assertThat(over.severity()).isEqualTo(Severity.NOTE);
        assertSays(
                over,
                "the bore of black, 0.3700 in, is smaller than the shaft over its finish, 0.3735 in, and larger than the bare"
                        + " shaft: strip on to 1.950 in (near 1 61/64) up from the end of the tip, to where the ferrule ends"
                        + " and no further, or the bare shaft shows");
        assertThat(codes(findings(with(PLAIN, 368.5)))).contains(FitCode.FERRULE_OVER_FINISH);
        Finding small = only(with(PLAIN, 368.4), FitCode.FERRULE_TOO_SMALL);
        assertThat(small.severity()).isEqualTo(Severity.CAUTION);
        assertThat(codes(findings(with(PLAIN, 368.4)))).doesNotContain(FitCode.FERRULE_OVER_FINISH);
    }

    /** A swelling half way up the ferrule is what it has to pass. */
    @Test
    void aFerrulePassesTheWidestPlaceUnderIt() {
        Build swollen = Clubs.withTip(tip(0, 373.5, 1250, 373.5, 1600, 385, 1950, 373.5, 8000, 373.5));
        assertThat(codes(findings(with(swollen, 374)))).contains(FitCode.FERRULE_TOO_SMALL);
        assertThat(codes(findings(with(swollen, 380)))).contains(FitCode.FERRULE_OVER_FINISH);
        assertThat(codes(findings(with(swollen, 385))))
                .doesNotContain(FitCode.FERRULE_OVER_FINISH, FitCode.FERRULE_TOO_SMALL);
    }

    /** A shoulder right at the top of the ferrule is above it. */
    @Test
    void aFerruleEndsBelowAShoulderAtItsTop() {
        Build shouldered = Clubs.withTip(tip(0, 373.5, 1950, 373.5, 1950, 420, 8000, 420));
        assertThat(codes(findings(with(shouldered, 374))))
                .doesNotContain(FitCode.FERRULE_OVER_FINISH, FitCode.FERRULE_TOO_SMALL);
    }

    @Test
    void anOvalShaftIsAsWideAsItsGreatestDiameterToAFerrule() {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mil(0), mil(372), mil(375)), new Station(mil(8000), mil(372), mil(375)));
        assertThat(codes(findings(with(Clubs.withTip(oval), 374)))).contains(FitCode.FERRULE_OVER_FINISH);
    }

    @Test
    void aFerruleOverATipThatWasReadNoFurtherThanItGoesIn() {
        Build build = Clubs.withTip(tip(0, 373.5, 1250, 373.5));
        assertThat(codes(findings(with(build, 370)))).contains(FitCode.FERRULE_OVER_FINISH);
    }

    @Test
    void aThroughBoreNeedsAStop() {
        Build through = Clubs.withBore(Clubs.taper().withEnd(BoreEnd.THROUGH));
        StepOutcome outcome = take(through);
        assertNotTaken(outcome, through, FitCode.NO_STOP);
        Build marked = through.withWork(through.work().withSeat(new Seat(mil(1200), Stop.MARK)));
        assertThat(take(marked).after().work().seat()).isEqualTo(new Seat(mil(1200), Stop.MARK));
        assertThat(codes(findings(marked))).doesNotContain(FitCode.NO_STOP);
    }

    @Test
    void aTipThatWasNotReadFarEnough() {
        Build build = Clubs.withTip(tip(0, 373.5, 1249, 373.5));
        StepOutcome outcome = take(build);
        assertNotTaken(outcome, build, FitCode.TIP_NOT_READ);
        assertThat(outcome.findings().get(0).message(Units.INCH))
                .contains("only 1.249 in")
                .contains("1.250 in");
        assertThat(codes(findings(Clubs.withTip(tip(0, 373.5, 1250, 373.5))))).doesNotContain(FitCode.TIP_NOT_READ);
    }

    /** Two inches trimmed off a tip that was read for one: nothing of what is left was read. */
    @Test
    void aTipThatIsTrimmedPastItsReadings() {
        Build raw = Clubs.withTip(tip(0, 373.5, 1000, 373.5));
        for (double trim : new double[] {1000, 2000}) {
            Build trimmed = raw.withWork(raw.work().withTipTrim(mil(trim)));
            StepOutcome outcome = take(trimmed);
            assertNotTaken(outcome, trimmed, FitCode.TIP_NOT_READ);
            assertThat(outcome.findings().get(0).message(Units.INCH)).contains("only 0.000 in");
        }
    }

    @Test
    void aBoreNarrowerThanTheClearance() {
        FitTarget wide = Clubs.TARGET.withClearance(mil(355));
        StepOutcome outcome = TipFitStep.with(wide).take(PLAIN);
        assertNotTaken(outcome, PLAIN, FitCode.BORE_TOO_NARROW);
        assertThat(TipFitStep.with(Clubs.TARGET.withClearance(mil(354.9)))
                        .take(PLAIN)
                        .reports())
                .hasSize(1);
    }

    /** A finish of .19 in on a tip of .3735 in leaves less than nothing. */
    @Test
    void aFinishThickerThanTheTip() {
        Build build = Clubs.withSection(section(cylinder(373.5), 190, 90.5));
        StepOutcome outcome = take(build);
        assertNotTaken(outcome, build, FitCode.FINISH_TOO_THICK);
        Build half = Clubs.withSection(section(cylinder(373.5), 373.5 / 2, 90.5));
        assertNotTaken(take(half), half, FitCode.FINISH_TOO_THICK);
    }

    /** Further up than the tip goes in too: the bare tip is judged over all that was read. */
    @Test
    void aFinishThickerThanTheTipFurtherUp() {
        ThicknessProfile growing = new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(mil(0), mil(2.5)), new ThicknessProfile.Knot(mil(8000), mil(200))));
        Build build = Clubs.withSection(
                PLAIN.parts().shaft().section().withFinish(Reading.measured(new Finish(growing, density(1.25)))));
        assertNotTaken(take(build), build, FitCode.FINISH_TOO_THICK);
    }

    /**
     * Every code is reached by a club of this page or by the review of a set, and has a sentence without a brace left in it; but for
     * the two of {@link FitDoubt}, whose test is its own.
     */
    @Test
    void everyCodeIsReachedAndSaysItsSentence() {
        Set<FitCode> reached = EnumSet.noneOf(FitCode.class);
        for (Finding finding : everything()) {
            reached.add((FitCode) finding.code());
            for (Units units : Units.values()) {
                assertThat(finding.message(units)).isNotBlank().doesNotContain("{", "}");
            }
        }
        assertThat(reached)
                .isEqualTo(
                        EnumSet.complementOf(EnumSet.of(FitCode.LIMIT_KEPT_BY_LITTLE, FitCode.FIRST_ORDER_MISLEADS)));
    }

    private static List<Finding> everything() {
        ShaftSection section = PLAIN.parts().shaft().section();
        FitTarget none = FitTarget.of(mil(4));
        FitTarget strict = new FitTarget(mil(4), Reading.measured(mil(2000)), Reading.measured(mil(90)));
        List<Finding> all = new ArrayList<>();
        all.addAll(findings(PLAIN, none));
        all.addAll(findings(PLAIN, strict));
        all.addAll(findings(Clubs.withBore(Clubs.pinned(0, 396, 15, 366, 400, 363, 1250, 355))));
        for (double tip : new double[] {350, 356, 358}) {
            all.addAll(findings(Clubs.withTip(cylinder(tip))));
        }
        all.addAll(findings(Clubs.withSection(section.withWall(Reading.<Wall>unknown("the maker")))));
        all.addAll(findings(Clubs.withSection(section.withFinish(Reading.<Finish>unknown("the maker")))));
        all.addAll(findings(with(PLAIN, 370)));
        all.addAll(findings(with(PLAIN, 300)));
        all.addAll(findings(Clubs.withBore(Clubs.taper().withEnd(BoreEnd.THROUGH))));
        all.addAll(findings(Clubs.withTip(tip(0, 373.5, 1000, 373.5))));
        all.addAll(findings(PLAIN, none.withClearance(mil(400))));
        FitTarget close = new FitTarget(mil(4), Reading.measured(mil(1240)), Reading.measured(mil(75)));
        all.addAll(findings(Clubs.withBore(bore(0, 396, 15, 366, 1250, 355)), close));
        all.addAll(findings(Clubs.withBore(Clubs.taper().withEnd(BoreEnd.CONE))));
        all.addAll(new BoreDepthCheck(Clubs.taper(), mil(1100), mil(20)).findings());
        all.addAll(new BoreDepthCheck(Clubs.taper(), mil(1400), mil(20)).findings());
        all.addAll(new BoreDepthCheck(Clubs.taper().withEnd(BoreEnd.CONE), mil(1400), mil(20)).findings());
        all.addAll(findings(Clubs.withSection(section(cylinder(373.5), 190, 90.5))));
        ClubSet set = ClubSet.of(
                Clubs.club("a", Clubs.taper(), section(cylinder(373.5), 2.5, 90.5)),
                Clubs.club("b", Clubs.taper(), section(cylinder(379), 5, 93)),
                Clubs.club("c", Clubs.taper(), section(cylinder(373.5), 2.5, 90.5)),
                Clubs.club("d", Clubs.taper(), section(cylinder(379), 2.5, 93)),
                Clubs.club("e", Clubs.taper(), section(cylinder(373.5), 2.5, 90.5)));
        JobPlanner.of(TipFitStep.with(Clubs.TARGET))
                .reviewedBy(new StockReview())
                .plan(set)
                .clubs()
                .forEach(club -> all.addAll(club.findings()));
        return all;
    }

    private static void assertNotTaken(StepOutcome outcome, Build build, FitCode code) {
        assertThat(outcome.after()).isSameAs(build);
        assertThat(outcome.reports()).isEmpty();
        assertThat(codes(outcome.findings())).containsExactly(code);
        assertThat(outcome.findings().get(0).severity()).isEqualTo(Severity.STOP);
    }

    private static void assertSays(Finding finding, String inches) {
        assertThat(finding.message(Units.INCH)).isEqualTo(inches);
    }

    private static Build with(Build build, double ferrule) {
        return build.withWork(build.work().plus(ferrule(ferrule)));
    }

    private static StepOutcome take(Build build) {
        return TipFitStep.with(Clubs.TARGET).take(build);
    }

    private static TipFit fit(Build build) {
        return (TipFit) take(build).reports().get(0);
    }

    private static List<Finding> findings(Build build) {
        return findings(build, Clubs.TARGET);
    }

    private static List<Finding> findings(Build build, FitTarget target) {
        return TipFitStep.with(target).take(build).findings();
    }

    private static List<FitCode> codes(List<Finding> findings) {
        return findings.stream().map(finding -> (FitCode) finding.code()).toList();
    }

    private static Finding only(Build build, FitCode code) {
        return only(findings(build), code);
    }

    private static Finding only(List<Finding> findings, FitCode code) {
        List<Finding> found =
                findings.stream().filter(finding -> finding.code() == code).toList();
        assertThat(found).as("%s among %s", code, codes(findings)).hasSize(1);
        return found.get(0);
    }
}
