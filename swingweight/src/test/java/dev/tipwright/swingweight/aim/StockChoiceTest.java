package dev.tipwright.swingweight.aim;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.PrintedWorking;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Pins down the choice from stock: by hand, by building every club there could be, and what stem and flange do. */
class StockChoiceTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static SwingWeight moreBy(double ounceInches) {
        return new SwingWeight((222 + ounceInches - 161) / 1.75);
    }

    private static TipWeight ounces(String label, double ounces) {
        return Clubs.weight(1).withLabel(label).withMass(Mass.ofOunces(ounces));
    }

    /**
     * On the plain club weights lie at 35.75 in, 21.75 in past the fulcrum; a second one stands on a stem of 1/2 in, 21.25 in past it. An eighth
     * and a quarter of an ounce give 2.71875 and 5.4375 oz in alone; the quarter under the eighth 8.09375, the eighth under the quarter 8.03125.
     */
    @Test
    void twoStackedByHand() {
        TipWeight eighth = ounces("eighth", 0.125);
        TipWeight quarter = ounces("quarter", 0.25);
        List<TipWeight> stock = List.of(eighth, quarter);
        StockChoice heavyBelow = StockChoice.of(Clubs.plain(), SCALE, moreBy(8.1), stock, 2);
        assertThat(heavyBelow.pieces()).extracting(TipWeight::label).containsExactly("quarter", "eighth");
        assertThat(heavyBelow.pieces().get(1).centre()).isEqualTo(Clubs.inches(.75));
        assertThat(heavyBelow.reads().over(moreBy(8.09375))).isCloseTo(0, within(1e-9));
        assertThat(heavyBelow.mass()).isEqualTo(Mass.ofOunces(0.375));
        StockChoice lightBelow = StockChoice.of(Clubs.plain(), SCALE, moreBy(8.0), stock, 2);
        assertThat(lightBelow.pieces()).extracting(TipWeight::label).containsExactly("eighth", "quarter");
        StockChoice one = StockChoice.of(Clubs.plain(), SCALE, moreBy(8.1), stock, 1);
        assertThat(one.pieces()).containsExactly(quarter);
        assertThat(heavyBelow.findings()).hasSize(1);
        assertThat(heavyBelow.findings().get(0).message(Units.METRIC))
                .isEqualTo("quarter and eighth from the stock: 10.63 g in all gives D9.5, 0.004 of a point off");
        PrintedWorking.isTrue(heavyBelow.working());
        assertThat(heavyBelow.headline().get(0).text(Units.METRIC)).isEqualTo("10.63 g");
    }

    /** Two pieces that do what one does: a sixteenth on the tip end, of no length, under another. */
    @Test
    void ofEqualsTheFewestPiecesThenTheLightestThenTheLabel() {
        TipWeight flat = ounces("flat", 0.0625).withCentre(Length.ofNanometres(1));
        TipWeight flat2 = flat.withLabel("flat 2").withCentre(Length.ZERO);
        TipWeight both = flat.withLabel("both").withMass(Mass.ofOunces(0.125)).withCentre(Length.ofNanometres(1));
        SwingWeight wanted = moreBy(0.125 * 22);
        List<TipWeight> stock = new ArrayList<>(List.of(flat, flat2, both, both.withLabel("c")));
        for (int i = 0; i < 10; i++) {
            Collections.shuffle(stock, new Random(i));
            assertThat(StockChoice.of(Clubs.plain(), SCALE, wanted, stock, 2).pieces())
                    .containsExactly(both);
        }
        assertThat(StockChoice.of(Clubs.plain(), SCALE, wanted, List.of(flat, flat2), 2)
                        .pieces())
                .hasSize(2);
    }

    @Test
    void everyClubThereCouldBe() {
        RandomClubs clubs = new RandomClubs(20_261_104);
        SplittableRandom random = new SplittableRandom(14);
        int two = 0;
        int flanged = 0;
        for (int i = 0; i < 1_000; i++) {
            Build build = blind(clubs.next());
            List<TipWeight> stock = new ArrayList<>();
            for (int n = random.nextInt(7); n > 0; n--) {
                Length flange = random.nextInt(3) == 0 ? Length.ofMillimetres(random.nextInt(1, 3)) : Length.ZERO;
                stock.add(new TipWeight(
                        "w" + n,
                        Clubs.grams(random.nextInt(1, 12)),
                        Length.ofMillimetres(1),
                        flange,
                        Length.ofMillimetres(random.nextInt(-5, 20))));
            }
            SwingWeight wanted = Balance.of(build).on(SCALE).plus(random.nextDouble(-1, 9));
            StockChoice choice = StockChoice.of(build, SCALE, wanted, stock, 2);
            two += choice.pieces().size() == 2 ? 1 : 0;
            flanged += choice.findings().size() > 1 ? 1 : 0;
            // a reading of a few hundred points in sixteen digits, and ties are told apart to 1e-9
            assertThat(Math.abs(choice.reads().over(wanted)))
                    .as("club %d", i)
                    .isCloseTo(least(build, wanted, stock), within(2e-9));
        }
        assertThat(two).isGreaterThan(200);
        assertThat(flanged).isGreaterThan(50);
    }

    private static Build blind(Build build) {
        var head = build.parts().head();
        Build blind = Clubs.withHead(
                build.withWork(build.work().withSeat(Seat.APART)),
                head.withBore(head.bore().withEnd(BoreEnd.FLAT)));
        return blind.withWork(
                build.work().withSeat(Seat.onBottomOf(blind.parts().head().bore())));
    }

    /** Builds every club with one of the stock, or one on another, and looks at what it reads. */
    private static double least(Build build, SwingWeight wanted, List<TipWeight> stock) {
        double least = Math.abs(Balance.of(build).on(SCALE).over(wanted));
        for (TipWeight lower : stock) {
            Length depth = build.parts().head().bore().depth().minus(lower.flange());
            Seat seat = lower.flange().equals(Length.ZERO) ? build.work().seat() : new Seat(depth, Stop.FLANGE);
            Build with = build.withWork(build.work().withSeat(seat).plus(lower));
            least = Math.min(least, Math.abs(Balance.of(with).on(SCALE).over(wanted)));
            for (TipWeight upper : stock) {
                boolean plain =
                        lower.flange().equals(Length.ZERO) && upper.flange().equals(Length.ZERO);
                if (!lower.equals(upper) && plain && lower.centre().moreThan(Length.ZERO)) {
                    Length up = lower.centre().times(2).plus(upper.centre());
                    Build stacked = with.withWork(with.work().plus(upper.withCentre(up)));
                    least = Math.min(
                            least, Math.abs(Balance.of(stacked).on(SCALE).over(wanted)));
                }
            }
        }
        return least;
    }

    /**
     * A flange of 1/8 in on the plain club: its tip stays 36 in from the top, its head moves out by 1/8 in, 1.25 oz in; an eighth of an ounce
     * there adds 2.71875.
     */
    @Test
    void aFlangeShortensTheInsertionAndSaysSo() {
        TipWeight flanged = ounces("flanged", 0.125).withFlange(Clubs.inches(.125));
        StockChoice choice = StockChoice.of(Clubs.plain(), SCALE, moreBy(4), List.of(flanged), 1);
        assertThat(choice.after().work().seat()).isEqualTo(new Seat(Clubs.inches(.875), Stop.FLANGE));
        assertThat(choice.reads().over(moreBy(1.25 + 2.71875))).isCloseTo(0, within(1e-9));
        Finding shortened = choice.findings().get(1);
        assertThat(shortened.code()).isEqualTo(AimCode.FLANGE_SHORTENS);
        assertThat(shortened.message(Units.INCH))
                .startsWith("the flange lifts the tip: insertion falls from 1.000 in (1) to 0.875 in (7/8)");
        Build through = Clubs.plain();
        var head = through.parts().head();
        Build hanging = Clubs.withHead(through, head.withBore(head.bore().withEnd(BoreEnd.THROUGH)));
        assertThat(StockChoice.of(hanging, SCALE, moreBy(2), List.of(flanged), 1)
                        .after()
                        .work()
                        .seat())
                .isEqualTo(through.work().seat());
        Build raised = through.withWork(through.work().withSeat(new Seat(Clubs.inches(.5), Stop.MARK)));
        assertThat(StockChoice.of(raised, SCALE, moreBy(9), List.of(flanged), 1).findings())
                .noneMatch(finding -> finding.code() == AimCode.FLANGE_SHORTENS);
    }

    @Test
    void whatDoesNotEnterIsPassedOver() {
        TipWeight wide = ounces("wide", 0.125).withStem(Clubs.inches(.1901));
        TipWeight thick = ounces("thick", 0.125).withFlange(Clubs.inches(1));
        StockChoice choice = StockChoice.of(Clubs.plain(), SCALE, moreBy(2), List.of(wide, thick), 2);
        assertThat(choice.pieces()).isEmpty();
        assertThat(choice.passedOver()).isEqualTo(2);
        assertThat(choice.after()).isEqualTo(Clubs.plain());
        assertThat(choice.findings())
                .extracting(Finding::code)
                .containsExactly(AimCode.NOTHING_NEARER, AimCode.DOES_NOT_ENTER);
        // 0.370 less twice 0.090
        assertThat(StockChoice.insideOfTip(Clubs.plain())).contains(Clubs.inches(.19));
        Build plain = Clubs.plain();
        ShaftSection section = plain.parts().shaft().section();
        Build unknown = Clubs.withShaft(
                plain,
                plain.parts()
                        .shaft()
                        .withSection(new ShaftSection(
                                section.outside(), section.butt(), Reading.unknown("its maker"), section.finish())));
        assertThat(StockChoice.insideOfTip(unknown)).isEqualTo(Optional.empty());
        assertThat(StockChoice.of(unknown, SCALE, moreBy(2), List.of(wide), 1).pieces())
                .containsExactly(wide);
        Build trimmed = plain.withWork(plain.work().withTipTrim(Clubs.inches(8)));
        assertThat(StockChoice.insideOfTip(trimmed)).isEmpty();
    }

    @Test
    void longNamesAreCounted() {
        TipWeight lower = ounces("l".repeat(60), 0.25);
        TipWeight upper = ounces("u".repeat(60), 0.125);
        StockChoice choice = StockChoice.of(Clubs.plain(), SCALE, moreBy(8.09), List.of(lower, upper), 2);
        assertThat(choice.findings().get(0).message(Units.METRIC)).startsWith("2 pieces from the stock");
    }

    @Test
    void hostileInputIsNamed() {
        Build plain = Clubs.plain();
        SwingWeight d0 = SCALE.parse("D0");
        missing("build", () -> StockChoice.of(null, SCALE, d0, List.of(), 1));
        missing("scale", () -> StockChoice.of(plain, null, d0, List.of(), 1));
        missing("wanted", () -> StockChoice.of(plain, SCALE, null, List.of(), 1));
        missing("stock", () -> StockChoice.of(plain, SCALE, d0, null, 1));
        missing("build", () -> StockChoice.insideOfTip(null));
        refused("most must be 1 or 2, was 3", () -> StockChoice.of(plain, SCALE, d0, List.of(), 3));
        refused("most must be 1 or 2, was 0", () -> StockChoice.of(plain, SCALE, d0, List.of(), 0));
        TipWeight one = Clubs.weight(1);
        refused(
                "stock must be at most 1000 pieces, was 1001",
                () -> StockChoice.of(plain, SCALE, d0, Collections.nCopies(1001, one), 1));
        refused(
                "pieces must be at most two, was 3",
                () -> new StockChoice(plain, SCALE, d0, List.of(one, one, one), 0));
        refused("passedOver must be zero or more, was -1", () -> new StockChoice(plain, SCALE, d0, List.of(), -1));
        assertThatThrownBy(() -> new StockChoice(plain, SCALE, d0, List.of(one.withFlange(Clubs.inches(1))), 0))
                .hasMessageStartingWith("pieces must leave some insertion, was ");
        assertThatThrownBy(() -> StockChoice.of(plain.withWork(Work.NONE), SCALE, d0, List.of(), 1))
                .hasMessageStartingWith("build must be seated");
    }
}
