package dev.tipwright.swingweight;

import static dev.tipwright.swingweight.Refusals.missing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Pins down the report: the points of the parts add up to the reading, its working is true when each printed formula is worked by a
 * general expression library from the values it names, and what it tells the bench. Tolerance 1e-9 of a point, or of the
 * moment of a thousandth of one.
 */
class ClubBalanceTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    @Property
    void thePointsOfThePartsAddUpToTheReading(@ForAll long seed) {
        ClubBalance report = report(new RandomClubs(seed).next());
        double sum = report.after().parts().stream().mapToDouble(report::points).sum();
        double zero = SCALE.zero().ratioTo(SCALE.perPoint());
        assertThat(sum - zero).isCloseTo(report.reads().points(), within(1e-9));
    }

    /** By hand: grip 2 x (4 - 14) = -20 oz in, shaft 3 x 4 = 12, head 10 x 23 = 230; over 1.75. */
    @Test
    void thePointsOfThePlainClub() {
        ClubBalance report = report(Clubs.plain());
        assertThat(report.points("grip")).isCloseTo(-20 / 1.75, within(1e-9));
        assertThat(report.points("shaft")).isCloseTo(12 / 1.75, within(1e-9));
        assertThat(report.points("head")).isCloseTo(230 / 1.75, within(1e-9));
        assertThat(report.reads().points()).isCloseTo((222 - 161) / 1.75, within(1e-9));
    }

    /** Two strips of tape, one label: both can be asked, and the label gives the first. */
    @Test
    void twoPartsOfOneLabelAreBothCounted() {
        Build plain = Clubs.plain();
        Build taped = plain.withWork(plain.work()
                .plus(new GripTape("tape", Clubs.grams(2), Clubs.inches(4)))
                .plus(new GripTape("tape", Clubs.grams(6), Clubs.inches(4))));
        ClubBalance report = report(taped);
        List<BalancePart> parts = report.after().parts();
        assertThat(report.points("tape")).isEqualTo(report.points(parts.get(3)));
        assertThat(report.points(parts.get(4))).isCloseTo(3 * report.points("tape"), within(1e-9));
    }

    @Test
    void theBenchIsToldWhatToFitAndWhatToRead() {
        Build plain = Clubs.plain();
        ClubBalance none = report(plain);
        assertThat(none.operations()).hasSize(1);
        assertThat(none.operations().get(0).stage()).isEqualTo(BenchStage.CHECK);
        assertThat(none.operations().get(0).text(Units.INCH))
                .isEqualTo("Weigh the finished club: it should read D4.9, weigh 425.24 g and balance 28.800 in (near 28"
                        + " 51/64) from the top of the grip.");
        SwingWeightTargets targets =
                new SwingWeightTargets(SCALE, List.of(new SwingWeightTarget("6", SCALE.parse("D6.6"), 0.5)));
        ClubBalance chosen = (ClubBalance) SwingWeightStep.towards(targets, List.of(Clubs.weight(4)))
                .take(plain)
                .reports()
                .get(0);
        assertThat(chosen.operations()).hasSize(2);
        assertThat(chosen.operations().get(0).stage()).isEqualTo(BenchStage.DRY_BUILD);
        assertThat(chosen.operations().get(0).text(Units.METRIC))
                .isEqualTo("Put tip weight 4.0 g, 4.00 g, into the tip for the dry build; weigh before any adhesive.");
        assertThat(chosen.operations().get(1).text(Units.INCH)).contains("read D6.6, weigh 429.24 g");
    }

    /** By hand, the plain club: 15 oz are 425.24 g, 28.8 in, and 15 018 oz in2 are 2746.79 kg cm2. */
    @Test
    void theHeadline() {
        List<Term> headline = report(Clubs.plain()).headline();
        assertThat(headline.stream().map(Term::symbol)).containsExactly("reads", "m", "x", "J");
        assertThat(headline.stream().map(term -> term.number(Units.INCH, 0)).limit(3))
                .containsExactly("D4.9", "425.24", "28.800");
        assertThat(headline.get(3).text(Units.METRIC)).startsWith("2746.8").endsWith("kg cm2");
    }

    @Test
    void hostileInputIsNamed() {
        Balance club = Balance.of(Clubs.plain());
        Optional<SwingWeightTarget> none = Optional.empty();
        missing("scale", () -> new ClubBalance(null, club, club, none, Optional.empty(), List.of(), List.of()));
        missing("before", () -> new ClubBalance(SCALE, null, club, none, Optional.empty(), List.of(), List.of()));
        missing("after", () -> new ClubBalance(SCALE, club, null, none, Optional.empty(), List.of(), List.of()));
        missing("target", () -> new ClubBalance(SCALE, club, club, null, Optional.empty(), List.of(), List.of()));
        missing("exactWeight", () -> new ClubBalance(SCALE, club, club, none, null, List.of(), List.of()));
        missing("chosen", () -> new ClubBalance(SCALE, club, club, none, Optional.empty(), null, List.of()));
        missing("assumptions", () -> new ClubBalance(SCALE, club, club, none, Optional.empty(), List.of(), null));
        List<TipWeight> three = Collections.nCopies(3, Clubs.weight(1));
        assertThatThrownBy(() -> new ClubBalance(SCALE, club, club, none, Optional.empty(), three, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("chosen must be at most two, was 3");
        ClubBalance report = report(Clubs.plain());
        missing("label", () -> report.points((String) null));
        missing("part", () -> report.points((BalancePart) null));
        assertThatThrownBy(() -> report.points("ferrule"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("label must be one of the parts [grip, shaft, head], was \"ferrule\"");
        BalancePart elsewhere = BalancePart.at("x", Clubs.grams(1), Length.ZERO);
        assertThat(report.points(elsewhere)).isNegative();
    }

    private static ClubBalance report(Build build) {
        return (ClubBalance) SwingWeightStep.towards(new SwingWeightTargets(SCALE, List.of()), List.of())
                .take(build)
                .reports()
                .get(0);
    }

    /** The sum of the moments and the reading, with the unrounded values; every other line is evaluated over whole jobs. */
    @Property(tries = 200)
    void theReadingFollowsFromTheMoments(@ForAll long seed) {
        List<Working.Line> lines = linesOf(report(new RandomClubs(seed).next()).working(), "M", "P");
        assertThat(lines).hasSize(2);
        for (Working.Line line : lines) {
            double scale = line.inputs().stream()
                    .mapToDouble(input -> Math.abs(value(input)))
                    .sum();
            assertThat(evaluate(line)).as(line.formula()).isCloseTo(value(line.result()), within(1e-12 * scale));
        }
    }

    /** By hand: -20 + 12 + 230 = 222 oz in, and (222 - 161) / 1.75 = 34.857 points. */
    @Test
    void theWorkingOfThePlainClub() {
        Working working = report(Clubs.plain()).working();
        Working.Line moment = linesOf(working, "M").get(0);
        assertThat(moment.formula()).isEqualTo("M1 + M2 + M3");
        assertThat(moment.inputs())
                .extracting(input -> input.text(Units.INCH))
                .containsExactly("-20.00 oz in", "12.00 oz in", "230.00 oz in");
        assertThat(moment.result().text(Units.INCH)).isEqualTo("222.00 oz in");
        Working.Line reading = linesOf(working, "P").get(0);
        assertThat(reading.inputs())
                .extracting(input -> input.text(Units.INCH))
                .containsExactly("222.00 oz in", "161.00 oz in", "1.75 oz in");
        assertThat(reading.result().text(Units.INCH)).isEqualTo("34.857");
    }

    private static List<Working.Line> linesOf(Working working, String... symbols) {
        return working.lines().stream()
                .filter(line -> List.of(symbols).contains(line.result().symbol()))
                .toList();
    }

    private static double evaluate(Working.Line line) {
        Expression formula = new Expression(line.formula());
        for (Term input : line.inputs()) {
            formula.with(input.symbol(), new BigDecimal(value(input)));
        }
        try {
            return formula.evaluate().getNumberValue().doubleValue();
        } catch (EvaluationException | ParseException e) {
            throw new AssertionError(line.formula(), e);
        }
    }

    private static double value(Term term) {
        return term instanceof Term.OfFirstMoment moment
                ? moment.value().gramMillimetres()
                : ((Term.OfNumber) term).value();
    }
}
