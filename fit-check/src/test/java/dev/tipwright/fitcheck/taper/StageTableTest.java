package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.insert.FirstContact;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Stages of working a tip down, worked by hand: a bore of .008 in taper in 1 1/4 in, so q = .0064 and .001 in is worth .15625 in. */
class StageTableTest {

    private static final Bore TAPER = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT);
    private static final StagedTip TIP = tip(".3685", ".351", ".359", TAPER);

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static Length thou(double thousandths) {
        return Length.ofThousandths(thousandths);
    }

    private static StagedTip tip(String outside, String end, String mouth, Bore bore) {
        return new StagedTip(
                DiameterProfile.cylinder(in(outside), in("8")),
                DiameterProfile.of(Station.of(Length.ZERO, in(end)), Station.of(bore.depth(), in(mouth))),
                bore,
                bore.depth());
    }

    @Test
    void aThousandthIsWorthItsShareOfTheTaper() {
        // Tip end .351 + e meets the bore at y = (.363 - .351 - e) / .0064: .012 - e over .0064.
        for (int e = 5; e <= 12; e++) {
            assertThat(TIP.contact(thou(e)).insertion().inches()).isEqualTo((12 - e) / 6.4);
        }
        assertThat(TIP.stage(thou(8)).perThousandth().inches()).isEqualTo(1 / 6.4);
        assertThat(TIP.seatsAt()).isEqualTo(thou(4));
        assertThat(TIP.stock()).isEqualTo(thou(17.5));
    }

    @Test
    void stopsHalveWhatIsLeftAndStopWhereItSeats() {
        assertThat(StageTable.of(TIP, thou(1)).stages().stream()
                        .map(stage -> stage.stock().thousandths())
                        .toList())
                .containsExactly(17.5, 8.75, 4.375, 4.0, 2.0, 1.0, 0.0);
        assertThat(StageTable.equalSteps(TIP, thou(5)).stages().stream()
                        .map(stage -> stage.stock().thousandths())
                        .toList())
                .containsExactly(17.5, 12.5, 7.5, 2.5, 0.0);
    }

    @Test
    void depthIsSilentAtBothEnds() {
        StageTable table = StageTable.of(TIP, thou(1));
        StockLeft outside = TIP.stock(Length.ZERO, Length.ZERO);
        assertThat(outside.kind()).isEqualTo(StockLeft.Kind.NOT_ENTERED);
        assertThat(outside.holds(thou(17.5))).isTrue();
        assertThat(outside.holds(thou(12))).isTrue();
        assertThat(outside.holds(thou(11.99))).isFalse();
        assertThat(table.next(outside).means()).isEqualTo(NextMeasurement.Means.CALIPER);
        assertThat(table.next(outside).wanted()).isEqualTo(TIP.finished().stations());

        StockLeft seated = TIP.stock(in("1.25"), Length.ZERO);
        assertThat(seated.kind()).isEqualTo(StockLeft.Kind.BOTTOMED);
        assertThat(seated.most()).isEqualTo(thou(4));
        assertThat(seated.least()).isEmpty();
        assertThat(seated.holds(thou(-50))).isTrue();
        assertThat(table.next(seated).means()).isEqualTo(NextMeasurement.Means.CALIPER_OR_SWEEP);
    }

    @Test
    void aReadingWithATolerance() {
        StockLeft left = TIP.stock(in(".625"), in("1/64"));
        assertThat(left.kind()).isEqualTo(StockLeft.Kind.READING);
        // A sixty-fourth of depth is .0001 in of stock here.
        assertThat(left.most()).isEqualTo(thou(8.1));
        assertThat(left.least().orElseThrow().thousandths()).isBetween(7.8999, 7.9);
        assertThat(StageTable.of(TIP, thou(1)).next(left).means()).isEqualTo(NextMeasurement.Means.DEPTH);
    }

    @Test
    void aParallelBoreMakesItDropInAtOnce() {
        StagedTip parallel =
                tip(".372", ".360", ".360", Bore.ofTwoDiameters(in(".364"), in(".364"), in("1.25"), BoreEnd.FLAT));
        assertThat(parallel.contact(thou(4.001)).insertion()).isEqualTo(Length.ZERO);
        assertThat(parallel.contact(thou(4)).insertion()).isEqualTo(in("1.25"));
        StockLeft between = parallel.stock(in("1/2"), in("1/64"));
        assertThat(between.kind()).isEqualTo(StockLeft.Kind.JUMP);
        assertThat(between.most()).isEqualTo(thou(4));
        assertThat(between.least()).contains(thou(4));
        NextMeasurement next = StageTable.of(parallel, thou(1)).next(between);
        assertThat(next.means()).isEqualTo(NextMeasurement.Means.CALIPER);
        assertThat(next.wanted()).hasSize(1);
    }

    @Test
    void aShoulderHoldsTheTip() {
        Bore counterbored = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, in(".372")),
                        Station.of(in(".5"), in(".372")),
                        Station.of(in(".5"), in(".360")),
                        Station.of(in("1.25"), in(".355"))),
                BoreEnd.FLAT);
        StagedTip held = new StagedTip(
                DiameterProfile.cylinder(in(".371"), in("8")),
                DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1.25"), in(".356"))),
                counterbored,
                in("1.25"));
        StockLeft atShoulder = held.stock(in(".5"), Length.ZERO);
        assertThat(atShoulder.kind()).isEqualTo(StockLeft.Kind.NOT_ENTERED);
        assertThat(atShoulder.most()).isEqualTo(held.stock());
        assertThat(atShoulder.holds(thou(9.001))).isTrue();
        assertThat(atShoulder.holds(thou(8.9))).isFalse();
    }

    @Test
    void lessDeepThanUntouchedDisagrees() {
        StagedTip slim = tip(".359", ".351", ".359", TAPER);
        assertThat(slim.contact(slim.stock()).insertion()).isEqualTo(in(".625"));
        StockLeft left = slim.stock(in(".5"), in("1/64"));
        assertThat(left.kind()).isEqualTo(StockLeft.Kind.DISAGREES);
        assertThat(StageTable.of(slim, thou(1)).next(left).means()).isEqualTo(NextMeasurement.Means.MEASURE_AGAIN);
    }

    /** As wide as the bore along a stretch, at .7 in all over it, and at 1 in from the mouth to half an inch up. */
    @Test
    void ofPlacesWithOneInsertionTheLowestOnTheTipIsNamed() {
        Bore bore = Bore.ofTwoDiameters(in(".360"), in(".350"), in("1"), BoreEnd.FLAT);
        StagedTip alike = tip(".375", ".351", ".361", bore);
        assertThat(alike.contact(thou(2)))
                .isEqualTo(new FirstContact(in(".7"), Length.ZERO, FirstContact.Kind.TOUCHES));
        StagedTip bent = new StagedTip(
                DiameterProfile.cylinder(in(".375"), in("8")),
                DiameterProfile.of(Station.of(Length.ZERO, in(".338")), Station.of(in("2"), in(".378"))),
                Bore.ofReadings(
                        List.of(
                                Station.of(Length.ZERO, in(".360")),
                                Station.of(in(".5"), in(".350")),
                                Station.of(in("2"), in(".350"))),
                        BoreEnd.FLAT),
                in("2"));
        assertThat(bent.contact(thou(2))).isEqualTo(new FirstContact(in("1"), in(".5"), FirstContact.Kind.TOUCHES));
    }

    @Property(tries = 300)
    void whereDepthIsAMicrometerTheInverseGivesTheStage(
            @ForAll @IntRange(min = 4_001, max = 11_999) int millionths,
            @ForAll @IntRange(min = 200_000, max = 3_000_000) int depthNanometresTimesTen) {
        Bore bore = Bore.ofTwoDiameters(
                in(".363"), in(".355"), Length.ofNanometres(depthNanometresTimesTen * 10L), BoreEnd.FLAT);
        StagedTip staged = tip(".3735", ".351", ".359", bore);
        Length stock = Length.ofThousandths(millionths / 1000.0);
        StockLeft left = staged.stock(staged.contact(stock).insertion(), Length.ZERO);
        assertThat(left.kind()).isEqualTo(StockLeft.Kind.READING);
        assertThat(left.holds(stock)).isTrue();
        // One nanometre of depth, at the steepest .1 on the diameter here, and one of rounding at each end.
        assertThat(left.most().minus(left.least().orElseThrow()).nanometres()).isLessThanOrEqualTo(3);
    }

    @Property(tries = 200)
    void everyTableRunsFromAllToNoneAndNeverBack(@ForAll @IntRange(min = 360, max = 400) int outside) {
        StageTable table = StageTable.of(tip("." + outside, ".351", ".359", TAPER), thou(1));
        List<Stage> stages = table.stages();
        assertThat(stages.get(stages.size() - 1).stock()).isEqualTo(Length.ZERO);
        for (int k = 1; k < stages.size(); k++) {
            assertThat(stages.get(k).stock()).isLessThan(stages.get(k - 1).stock());
            assertThat(stages.get(k).insertion())
                    .isGreaterThanOrEqualTo(stages.get(k - 1).insertion());
        }
        Length last = stages.get(stages.size() - 2).stock();
        assertThat(last).isLessThanOrEqualTo(thou(1));
    }

    /** In a bore that narrows, widens and narrows again the tip must pass what it has behind it. */
    @Test
    void aFinishedTipSeatsInABarrelledBore() {
        Bore barrel = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, in(".360")),
                        Station.of(in(".6"), in(".366")),
                        Station.of(in("1.25"), in(".360"))),
                BoreEnd.FLAT);
        TipSection section = TipSection.of(DiameterProfile.cylinder(in(".3735"), in("8")), Finish.NONE);
        TipFit fit = TipFit.of(section, barrel, in("1.25"), in(".001"));
        assertThat(fit.stages().tip().seatsAt()).isEqualTo(in(".001"));
        assertThat(fit.removal().finished().get(0).mean()).isEqualTo(in(".359"));
        assertThat(fit.working().text(Units.INCH))
                .contains("D = 0.360000000 in   narrowest bore down to the insertion");
        Working.Line least = fit.working().lines().stream()
                .filter(line -> line.result().symbol().equals("c"))
                .findFirst()
                .orElseThrow();
        assertThat(least.formula()).isEqualTo("D - f");
        assertThat(least.result().number(Units.INCH, 0)).isEqualTo("0.0010");
        assertThat(least.inputs().get(0).number(Units.INCH, 0)).isEqualTo("0.3600");
        assertThat(least.inputs().get(1).number(Units.INCH, 0)).isEqualTo("0.3590");
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> TIP.stock(in("1.3"), Length.ZERO)).hasMessageContaining("measured");
        assertThatThrownBy(() -> TIP.stock(in("1"), thou(-1))).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> TIP.contact(Length.ofMillimetres(101))).hasMessageContaining("stock");
        assertThatThrownBy(() -> StageTable.of(TIP, Length.ZERO)).hasMessageContaining("pass");
        assertThatThrownBy(() -> StageTable.equalSteps(TIP, Length.ofMicrometres(1)))
                .hasMessageContaining("pass");
        assertThatThrownBy(() -> new StagedTip(TIP.tip(), TIP.finished(), TAPER, in("1.26")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("insertion");
        assertThatThrownBy(() -> new StageTable(TIP, thou(1), List.of())).hasMessageContaining("stages");
    }
}
