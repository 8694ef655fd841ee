package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A stop by hand, in the bore of .008 in taper in 1 1/4 in (q = .0064): what marks, depth and caliper tell. */
class StopReadingTest {

    private static final Bore TAPER = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT);
    private static final DiameterProfile FINISHED =
            DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1.25"), in(".359")));
    private static final StagedTip TIP =
            new StagedTip(DiameterProfile.cylinder(in(".3685"), in("8")), FINISHED, TAPER, in("1.25"));
    private static final Length WANTED = in(".004");

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static Length thou(double thousandths) {
        return Length.ofThousandths(thousandths);
    }

    @Test
    void whatCannotBeIsNotTaken() {
        assertThatThrownBy(() -> StopReading.ofDepth(Length.ofMillimetres(3001)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("insertion must be from 0 mm to 3000 mm");
        assertThatThrownBy(() -> new StopReading(Optional.empty(), List.of(Length.ZERO), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("marks must come with an insertion");
        assertThatThrownBy(() -> new StockLeft(StockLeft.Kind.READING, Optional.of(thou(5)), thou(4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("least must be at most most");
    }

    @Test
    void aMarkIsADiameter() {
        // y = 5/8 - 1/8 = 1/2: .363 - .0064 / 2 = .3598; a sixty-fourth of doubt is .0001 either way.
        StopReading stop = StopReading.ofDepth(in("5/8")).withMarks(List.of(in("1/8")));
        assertThat(KnownTip.of(TAPER, stop, Length.ZERO, Length.ZERO).readings())
                .containsExactly(Station.of(in("1/8"), in(".3598")));
        assertThat(KnownTip.of(TAPER, stop, in("1/64"), Length.ZERO).readings())
                .containsExactly(new Station(in("1/8"), in(".3597"), in(".3599")));
    }

    @Test
    void goingInIsAnUpperEnvelope() {
        KnownTip known = KnownTip.of(TAPER, StopReading.ofDepth(in("5/8")), Length.ZERO, Length.ZERO);
        assertThat(known.readings()).isEmpty();
        assertThat(known.atMost())
                .containsExactly(Station.of(Length.ZERO, in(".359")), Station.of(in("5/8"), in(".363")));
        assertThat(KnownTip.of(TAPER, StopReading.ofDepth(in("1/64")), in("1/64"), Length.ZERO)
                        .atMost())
                .isEmpty();
    }

    @Test
    void whatLiesPastANarrowPlaceMustHavePassedIt() {
        Bore lump = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, in(".370")),
                        Station.of(in(".5"), in(".360")),
                        Station.of(in("1"), in(".370"))),
                BoreEnd.FLAT);
        assertThat(KnownTip.of(lump, StopReading.ofDepth(in("1")), Length.ZERO, Length.ZERO)
                        .atMost())
                .containsExactly(
                        Station.of(Length.ZERO, in(".360")),
                        Station.of(in(".5"), in(".360")),
                        Station.of(in("1"), in(".370")));
    }

    @Test
    void depthAndCaliperTogether() {
        StopReading stop = StopReading.ofDepth(in("5/8"))
                .withCalipers(List.of(Station.of(Length.ZERO, in(".3588")), Station.of(in("1.25"), in(".3671"))));
        StopReport report = StopReport.of(TIP, stop, WANTED, in("1/64"), thou(.2));
        assertThat(report.depth().orElseThrow().kind()).isEqualTo(StockLeft.Kind.READING);
        // Caliper: .3588 - .351 = 7.8 and .3671 - .359 = 8.1, each within .2.
        assertThat(report.stock()).contains(new StockRange(thou(7.6), thou(8.3)));
        assertThat(report.findings()).isEmpty();
        assertThat(report.shimWall()).isEmpty();
    }

    /** Half way down, a sixty-fourth of depth is .0001 in of stock: 8 within .1 thousandths, the lower end a nanometre of depth further. */
    @Test
    void depthAloneTellsTheStockWhileTheTipIsOnItsWay() {
        StopReport report = StopReport.of(TIP, StopReading.ofDepth(in(".625")), WANTED, in("1/64"), thou(.2));
        StockRange stock = report.stock().orElseThrow();
        assertThat(stock.most()).isEqualTo(thou(8.1));
        assertThat(stock.least().thousandths()).isBetween(7.8999, 7.9);
    }

    @Test
    void depthAloneBoundsStockOnOneSideWhenSeated() {
        StopReport report = StopReport.of(TIP, StopReading.ofDepth(in("1.25")), WANTED, in("1/64"), thou(.2));
        assertThat(report.stock()).isEmpty();
        assertThat(codes(report)).containsExactly(TaperCode.DEPTH_SILENT);
        assertThat(report.next().orElseThrow().means()).isEqualTo(NextMeasurement.Means.CALIPER_OR_SWEEP);
    }

    @Test
    void overRemovalIsSaidAsSoonAsAReadingShowsIt() {
        StopReading stop = StopReading.ofCalipers(List.of(Station.of(Length.ZERO, in(".3480"))));
        StopReport report = StopReport.of(TIP, stop, WANTED, in("1/64"), thou(.2));
        assertThat(codes(report)).containsExactly(TaperCode.OVER_REMOVED);
        Finding finding = report.findings().get(0);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        // .351 - .348 = .003 too much; clearance .355 - .348 = .007; a shim of half of .003 brings the wanted .004
        // back.
        assertThat(finding.toString()).contains("0.0762 mm");
        assertThat(report.shimWall()).contains(thou(1.5));

        StopReading within = StopReading.ofCalipers(List.of(Station.of(Length.ZERO, in(".35085"))));
        assertThat(codes(StopReport.of(TIP, within, WANTED, in("1/64"), thou(.2))))
                .containsExactly(TaperCode.MAY_BE_OVER);
    }

    /** Untouched, a tip of .359 goes in .625: in .5 only, something was misread. */
    @Test
    void lessDeepThanUntouchedIsSaid() {
        StagedTip slim = new StagedTip(DiameterProfile.cylinder(in(".359"), in("8")), FINISHED, TAPER, in("1.25"));
        StopReport report = StopReport.of(slim, StopReading.ofDepth(in(".5")), WANTED, in("1/64"), thou(.2));
        assertThat(codes(report)).containsExactly(TaperCode.DEPTH_DISAGREES);
        assertThat(report.next().orElseThrow().means()).isEqualTo(NextMeasurement.Means.MEASURE_AGAIN);
    }

    /** Seated, but calipered: depth may be silent, the reading speaks; what was read past the insertion is not the fit's. */
    @Test
    void aReadingOfASeatedTipMakesUpForItsDepth() {
        StopReading stop = StopReading.ofDepth(in("1.25"))
                .withCalipers(List.of(Station.of(in("1"), in(".3594")), Station.of(in("2"), in(".340"))));
        StopReport report = StopReport.of(TIP, stop, WANTED, in("1/64"), thou(.2));
        assertThat(report.findings()).isEmpty();
        assertThat(report.next()).isEmpty();
        // .3594 less .3574, within .2.
        assertThat(report.stock()).contains(new StockRange(thou(1.8), thou(2.2)));
    }

    /** A tip that has nothing to come off: the end is what is left to caliper. */
    @Test
    void aFinishedTipIsCaliperedAtItsEnd() {
        StagedTip finished = new StagedTip(FINISHED, FINISHED, TAPER, in("1.25"));
        StopReport report = StopReport.of(finished, StopReading.ofDepth(in("1.25")), WANTED, in("1/64"), thou(.2));
        assertThat(report.next().orElseThrow().wanted()).containsExactly(Station.of(Length.ZERO, in(".351")));
        // Of a finished shape read further up than the tip goes in, only what is in counts.
        DiameterProfile far = DiameterProfile.of(
                Station.of(Length.ZERO, in(".351")),
                Station.of(in("1.25"), in(".359")),
                Station.of(in("2"), in(".360")));
        StagedTip longer = new StagedTip(TIP.tip(), far, TAPER, in("1.25"));
        assertThat(StopReport.of(longer, StopReading.ofDepth(in("1.25")), WANTED, in("1/64"), thou(.2))
                        .next()
                        .orElseThrow()
                        .wanted())
                .isEqualTo(FINISHED.stations());
    }

    @Test
    void everyFindingSaysItsSentence() {
        EnumSet<TaperCode> seen = EnumSet.noneOf(TaperCode.class);
        StagedTip slim = new StagedTip(DiameterProfile.cylinder(in(".359"), in("8")), FINISHED, TAPER, in("1.25"));
        for (StopReport report : List.of(
                StopReport.of(slim, StopReading.ofDepth(in(".5")), WANTED, in("1/64"), thou(.2)),
                StopReport.of(TIP, StopReading.ofDepth(in("1.25")), WANTED, in("1/64"), thou(.2)),
                StopReport.of(TIP, caliper(".348"), WANTED, in("1/64"), thou(.2)),
                StopReport.of(TIP, caliper(".35085"), WANTED, in("1/64"), thou(.2)))) {
            for (Finding finding : report.findings()) {
                seen.add((TaperCode) finding.code());
                assertThat(finding.message(Units.INCH)).doesNotContain("{", "}");
            }
        }
        assertThat(seen).containsExactlyInAnyOrder(TaperCode.values());
        assertThat(StopReport.of(TIP, caliper(".348"), WANTED, in("1/64"), thou(.2))
                        .findings()
                        .get(0)
                        .message(Units.INCH))
                .isEqualTo(
                        "0.0030 in too much is off at 0.000 in (0): 0.0070 in of clearance where 0.0040 in is wanted; a"
                                + " shim of wall 0.0015 in would fill it");
    }

    private static StopReading caliper(String end) {
        return StopReading.ofCalipers(List.of(Station.of(Length.ZERO, in(end))));
    }

    @Test
    void theRateIsLearnt() {
        PassRate rate = PassRate.learnt(new StockRange(thou(17), thou(18)), new StockRange(thou(8), thou(9)), 4);
        assertThat(rate).isEqualTo(new PassRate(thou(2), thou(2.5)));
        assertThat(rate.safePasses(new StockRange(thou(8), thou(9)))).isEqualTo(3);
        assertThat(rate.nextPasses(new StockRange(thou(8), thou(9)))).isEqualTo(1);
        assertThat(rate.nextPasses(StockRange.exactly(thou(2)))).isZero();
        assertThat(rate.nextPasses(StockRange.exactly(thou(2.5)))).isEqualTo(1);
        assertThat(rate.or(new PassRate(thou(1), thou(2)))).isEqualTo(new PassRate(thou(1), thou(2.5)));
        assertThat(PassRate.learnt(StockRange.exactly(thou(1)), StockRange.exactly(thou(2)), 1)
                        .most())
                .isEqualTo(Length.ofNanometres(1));
    }

    /** The truth lies in every range: a tip with so much left, marked where it binds, is read back. */
    @Property(tries = 300)
    void whatIsReadHoldsTheTruth(@ForAll @IntRange(min = 4_001, max = 11_999) int millionths) {
        Length stock = Length.ofThousandths(millionths / 1000.0);
        Stage stage = TIP.stage(stock);
        StopReading stop = StopReading.ofDepth(stage.insertion())
                .withMarks(List.of(stage.contact().tipStation()));
        StopReport report = StopReport.of(TIP, stop, WANTED, Length.ofMicrometres(1), Length.ZERO);
        StockRange range = report.stock().orElseThrow();
        assertThat(stock).isBetween(range.least(), range.most());
    }

    @Property(tries = 300)
    void safePassesNeverTakeTooMuch(
            @ForAll @IntRange(min = 0, max = 500_000) int least,
            @ForAll @IntRange(min = 0, max = 100_000) int width,
            @ForAll @IntRange(min = 1, max = 60_000) int most) {
        StockRange left = new StockRange(Length.ofNanometres(least), Length.ofNanometres(least + (long) width));
        PassRate rate = new PassRate(Length.ZERO, Length.ofNanometres(most));
        assertThat(rate.nextPasses(left)).isLessThanOrEqualTo(rate.safePasses(left));
        assertThat(rate.safePasses(left) * most).isLessThanOrEqualTo(least);
        assertThat((rate.safePasses(left) + 1) * most).isGreaterThan(least);
        assertThat(rate.nextPasses(left) > 0).isEqualTo(rate.safePasses(left) > 0);
    }

    @Test
    void hostileInput() {
        StagedTip shallow = new StagedTip(TIP.tip(), FINISHED, TAPER, in("1"));
        assertThatThrownBy(() -> StopReport.of(shallow, StopReading.ofDepth(in("1.1")), WANTED, in("1/64"), thou(.2)))
                .hasMessageContaining("stop")
                .hasMessageContaining("planned");
        assertThatThrownBy(() -> new StopReading(Optional.empty(), List.of(in("1")), List.of()))
                .hasMessageContaining("marks");
        assertThatThrownBy(() -> StopReading.ofDepth(in("1")).withMarks(List.of(in("1.1"))))
                .hasMessageContaining("marks");
        assertThatThrownBy(() -> KnownTip.of(TAPER, StopReading.ofDepth(in("2")), Length.ZERO, Length.ZERO))
                .hasMessageContaining("stop");
        assertThatThrownBy(() -> KnownTip.of(
                        TAPER, StopReading.ofCalipers(List.of(Station.of(Length.ZERO, thou(1)))), Length.ZERO, thou(2)))
                .hasMessageContaining("caliperTolerance");
        assertThatThrownBy(() -> PassRate.learnt(StockRange.exactly(thou(1)), StockRange.exactly(thou(0)), 0))
                .hasMessageContaining("passes");
    }

    private static List<FindingCode> codes(StopReport report) {
        return report.findings().stream().map(Finding::code).toList();
    }
}
