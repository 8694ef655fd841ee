package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.section;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.plan.Instruction;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Pins what the step hands on: the work it adds, the working, the operations in words, the headline, the cautions, the measures. */
class TipFitReportTest {

    private static final Build PLAIN = Clubs.plain();
    private static final List<Instruction> STOPS = List.of(FitInstruction.STOP, FitInstruction.STOP_SEATED);

    @Test
    void theWorkIsSeatAndShape() {
        Build after = take(PLAIN).after();
        assertThat(after.work().seat()).isEqualTo(new Seat(mil(1250), Stop.BORE_BOTTOM));
        assertThat(after.work().tip())
                .isEqualTo(
                        new TipWork(mil(1250), List.of(Station.of(mil(0), mil(351)), Station.of(mil(1250), mil(359)))));
        assertThat(after.parts()).isEqualTo(PLAIN.parts());
        assertThat(after.work().tipTrim()).isEqualTo(PLAIN.work().tipTrim());
        // Its own work does not change its mind.
        assertThat(take(after).after()).isEqualTo(after);
    }

    /**
     * Each formula with its printed inputs gives its printed value, and that is the value of the report: also where tip and bore are
     * oval, stepped or barrelled.
     */
    @Test
    void eachPrintedFormulaGivesThePrintedValue() throws EvaluationException, ParseException {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mil(0), mil(372), mil(375)), new Station(mil(8000), mil(372), mil(375)));
        Bore barrel = Bore.ofReadings(
                List.of(
                        new Station(mil(0), mil(363), mil(364)),
                        new Station(mil(500), mil(354), mil(356)),
                        new Station(mil(1250), mil(357), mil(358))),
                BoreEnd.FLAT);
        DiameterProfile ovalAndThin =
                DiameterProfile.of(new Station(mil(0), mil(352), mil(355)), new Station(mil(8000), mil(352), mil(355)));
        DiameterProfile shouldered = Clubs.tip(0, 340, 600, 340, 600, 380, 8000, 380);
        Bore counterbored = bore(0, 370, 500, 370, 500, 355, 1250, 355);
        for (Build build : List.of(
                PLAIN,
                Clubs.withTip(oval),
                Clubs.withTip(ovalAndThin),
                Clubs.withTip(cylinder(350)),
                Clubs.withTip(shouldered),
                Clubs.withBore(barrel),
                Clubs.withBore(counterbored),
                // Loose, and tightest just below the step.
                Clubs.club("7", bore(0, 370, 500, 370, 500, 355, 1250, 365), section(cylinder(345), 2.5, 90.5)),
                Clubs.club("7", counterbored, section(shouldered, 2.5, 90.5)))) {
            TipFit fit = fit(build);
            for (Working.Line line : fit.working().lines()) {
                // Halves of a nanometre are rounded once more, and volumes are differences of a thousand.
                assertThat(evaluate(line))
                        .as("%s = %s", line.result().symbol(), line.formula())
                        .isCloseTo(number(line.result()), within(1e-6));
            }
            assertThat(printed(fit, "c")).isCloseTo(fit.seated().least().millimetres(), within(1e-6));
            assertThat(printed(fit, "t"))
                    .isCloseTo(fit.removal().leastWall().orElseThrow().millimetres(), within(1e-6));
        }
    }

    /** Oval in oval: they touch where the greatest of the one is the least of the other. */
    @Test
    void theResidualOfAContactIsZeroWhereTheyTouch() {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mil(0), mil(358), mil(359)), new Station(mil(8000), mil(358), mil(359)));
        Bore taper = Bore.ofReadings(
                List.of(new Station(mil(0), mil(363), mil(365)), new Station(mil(1250), mil(355), mil(357))),
                BoreEnd.FLAT);
        TipFit fit = fit(Clubs.club("7", taper, section(oval, 0, 90.5)));
        assertThat(printed(fit, "i0")).isCloseTo(15.875, within(1e-6));
        assertThat(printed(fit, "r0")).isZero();
    }

    private static double printed(TipFit fit, String symbol) {
        return fit.working().lines().stream()
                .map(Working.Line::result)
                .filter(term -> term.symbol().equals(symbol))
                .mapToDouble(TipFitReportTest::number)
                .findFirst()
                .orElseThrow();
    }

    private static double evaluate(Working.Line line) throws EvaluationException, ParseException {
        // The library takes d and D for one name.
        Expression expression = new Expression(line.formula().replaceAll("\\bD\\b", "bore"));
        for (Term input : line.inputs()) {
            expression = expression.with(input.symbol().equals("D") ? "bore" : input.symbol(), number(input));
        }
        return expression.evaluate().getNumberValue().doubleValue();
    }

    /** In metric units with nine digits more than at the bench. */
    private static double number(Term term) {
        return Double.parseDouble(term.number(Units.METRIC, 9));
    }

    /** Without the stops on the way, whose table has tests of its own. */
    @Test
    void theOperationsOfAPlainClub() {
        assertThat(instructions(PLAIN))
                .containsSubsequence(FitInstruction.STATION, FitInstruction.STOP, FitInstruction.STOP_SEATED)
                .filteredOn(instruction -> !STOPS.contains(instruction))
                .containsExactly(
                        FitInstruction.STRIP,
                        FitInstruction.WORK_DOWN,
                        FitInstruction.STATION,
                        FitInstruction.STATION,
                        FitInstruction.TRY_FIT,
                        FitInstruction.BOND);
        assertThat(texts(PLAIN, Units.INCH))
                .containsExactly(
                        "Strip the finish 1.250 in (1 1/4) up from the end of the tip, down to the structure and no further;"
                                + " where a finding asks for more under the ferrule, strip as far as it says.",
                        "Work the tip down by 0.0175 in at its end, fading out towards 1.250 in (1 1/4), a little at a"
                                + " time and turning it all the while, to the diameters below.",
                        "Finished diameter 0.3510 in at 0.000 in (0) from the end of the tip.",
                        "Finished diameter 0.3590 in at 1.250 in (1 1/4) from the end of the tip.",
                        "Dry fit: the tip seats 1.250 in (1 1/4) deep and turns freely, 0.0040 in loose on the diameter.",
                        "Roughen and clean tip and bore, put the ferrule on, coat both with adhesive, turn the tip in"
                                + " until it is seated 1.250 in (1 1/4) deep, line up, and let it cure as the adhesive's"
                                + " maker says.");
    }

    @Test
    void nothingIsAskedForThatNeedsNoDoing() {
        Build bare = Clubs.withSection(section(cylinder(368.5), 0, 88));
        assertThat(instructions(bare)).doesNotContain(FitInstruction.STRIP).contains(FitInstruction.WORK_DOWN);
        assertThat(instructions(Clubs.withTip(cylinder(356))))
                .containsExactly(FitInstruction.STRIP, FitInstruction.TRY_FIT, FitInstruction.BOND);
    }

    /**
     * A tip of .351 bare up to an inch and .3685 from there on: in the bore of .363 to .355 nothing comes off at its end, and at
     * an inch, where .3574 is wanted, .0111.
     */
    @Test
    void whereTheMostComesOffFurtherUpItSaysWhere() {
        Build shouldered = Clubs.withSection(section(Clubs.tip(0, 351, 1000, 351, 1000, 368.5, 8000, 368.5), 0, 80));
        List<String> texts = texts(shouldered, Units.INCH);
        assertThat(texts)
                .contains(
                        "Work the tip down by 0.0111 in at 1.000 in (1) from its end, where the most comes off, and by"
                                + " 0.0000 in at its end, fading out towards 1.250 in (1 1/4), a little at a time and turning it"
                                + " all the while, to the diameters below.");
        assertThat(instructions(shouldered))
                .contains(FitInstruction.WORK_DOWN_FURTHER_UP)
                .doesNotContain(FitInstruction.WORK_DOWN);
        assertThat(fit(shouldered).operations().get(0).checkFirst(Units.INCH)).startsWith("Caliper every station");
    }

    /** The foot of the chamfer, .015 below the mouth, is 1.235 up the tip: the last place to make a diameter. */
    @Test
    void whatFacesTheChamferIsNoStationToMake() {
        Build build = Clubs.withBore(bore(0, 396, 15, 366, 1250, 355));
        List<String> texts = texts(build, Units.INCH);
        assertThat(texts).anyMatch(text -> text.contains("at 1.235 in"));
        assertThat(texts).noneMatch(text -> text.startsWith("Finished") && text.contains("at 1.25"));
    }

    @Test
    void everyInstructionIsReachedAndSaysItsSentences() {
        Set<FitInstruction> reached = EnumSet.noneOf(FitInstruction.class);
        for (Operation operation : fit(PLAIN).operations()) {
            reached.add((FitInstruction) operation.instruction());
            for (Units units : Units.values()) {
                assertThat(operation.text(units)).isNotBlank().doesNotContain("{", "}");
                assertThat(operation.checkFirst(units)).doesNotContain("{", "}");
            }
            assertThat(operation.oneWay())
                    .isEqualTo(!operation.checkFirst(Units.INCH).isEmpty());
        }
        assertThat(reached)
                .containsExactlyInAnyOrderElementsOf(
                        EnumSet.complementOf(EnumSet.of(FitInstruction.WORK_DOWN_FURTHER_UP)));
        assertThat(fit(PLAIN).operations().get(0).checkFirst(Units.INCH))
                .contains("Stop when the end of the tip reads 0.3685 in or the colour ends");
    }

    @Test
    void headlineAndCautions() {
        TipFit fit = fit(PLAIN);
        List<String> symbols = fit.headline().stream().map(Term::symbol).toList();
        assertThat(symbols).containsExactly("i", "ib", "i0", "i1", "e", "es", "V", "c", "t", "EI/EI0");
        assertThat(fit.headline().stream().map(term -> term.text(Units.METRIC)).toList())
                .noneMatch(String::isBlank);
        assertThat(fit.seated().least()).isEqualTo(mil(4));
        assertThat(fit.cautions()).contains(Caution.COMPOSITE_DUST, Caution.MAKERS_WORD, Caution.HEAD_CAN_COME_OFF);
        Build noWall = Clubs.withSection(PLAIN.parts().shaft().section().withWall(Reading.unknown("the maker")));
        assertThat(fit(noWall).headline().stream().map(Term::symbol)).doesNotContain("t", "EI/EI0");
        assertThat(fit(noWall).measures()).hasSize(fit.measures().size() - 1);
    }

    /** What uncertainty asks of a club is what the report says of it, to the nanometre. */
    @Test
    void theMeasuresOfTheFinishedClubAreThoseOfTheReport() {
        StepOutcome outcome = take(PLAIN);
        TipFit fit = (TipFit) outcome.reports().get(0);
        List<Double> said = List.of(
                fit.insertion().millimetres(),
                fit.untouched().insertion().millimetres(),
                fit.bare().insertion().millimetres(),
                fit.removal().stockAtEnd().millimetres(),
                fit.removal().structureAtEnd().millimetres(),
                fit.seated().least().millimetres(),
                fit.removal().leastWall().orElseThrow().millimetres());
        List<Double> measured = new ArrayList<>();
        fit.measures().forEach(measure -> measured.add(measure.value().applyAsDouble(outcome.after())));
        assertThat(measured).isEqualTo(said);
    }

    private static List<Instruction> instructions(Build build) {
        return fit(build).operations().stream().map(Operation::instruction).toList();
    }

    private static List<String> texts(Build build, Units units) {
        return fit(build).operations().stream()
                .filter(operation -> !STOPS.contains(operation.instruction()))
                .map(operation -> operation.text(units))
                .toList();
    }

    private static StepOutcome take(Build build) {
        return TipFitStep.with(Clubs.TARGET).take(build);
    }

    private static TipFit fit(Build build) {
        return (TipFit) take(build).reports().get(0);
    }
}
