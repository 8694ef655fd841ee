package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.tip;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.limits.FitClass;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.limits.SizeLimits;
import dev.tipwright.fitcheck.other.BoreOpening;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.StopReading;
import dev.tipwright.fitcheck.taper.StopReport;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The workings of the headline functions: a general expression library, given each printed formula and the printed numbers, comes to the
 * printed value, and that is the value of the result. Tips and bores are plain, tapered, stepped and barrelled.
 */
class WorkingsTest {

    private static final Length INCH = mil(1000);

    private static final List<Bore> BORES = List.of(
            Clubs.taper(),
            bore(0, 363, 500, 354, 1250, 357),
            bore(0, 370, 500, 370, 500, 355, 1250, 355),
            bore(0, 363, 1250, 363));

    private static final List<DiameterProfile> TIPS = List.of(
            cylinder(350),
            tip(0, 340, 1250, 350, 8000, 350),
            tip(0, 340, 600, 340, 600, 352, 8000, 352),
            tip(0, 342, 300, 353, 600, 341, 8000, 345),
            cylinder(362));

    @Test
    void clearanceAndLean() throws EvaluationException, ParseException {
        for (Bore bore : BORES) {
            for (DiameterProfile tip : TIPS) {
                Clearance clearance = Clearance.of(tip, bore, INCH);
                Working working = checked(Clearance.working(tip, bore, INCH));
                // Rounded to a nanometre once more.
                assertThat(value(working, "c")).isCloseTo(clearance.least().millimetres(), within(1.1e-6));
                assertThat(value(working, "cmax"))
                        .isCloseTo(clearance.greatest().millimetres(), within(1.1e-6));
                Lean lean = Lean.of(tip, bore, INCH);
                Working slope = checked(Lean.working(tip, bore, INCH));
                if (lean.free()) {
                    assertThat(value(slope, "a")).isCloseTo(lean.angle().degrees(), within(1e-6));
                } else {
                    assertThat(value(slope, "c1")).isCloseTo(clearance.least().millimetres(), within(1.1e-6));
                }
            }
        }
    }

    /** A tip that ends in the bore: what lies above its last reading does not count. */
    @Test
    void clearanceOfAShortTip() throws EvaluationException, ParseException {
        DiameterProfile shortTip = tip(0, 350, 600, 345);
        Working working = checked(Clearance.working(shortTip, Clubs.taper(), mil(1250)));
        Clearance clearance = Clearance.of(shortTip, Clubs.taper(), mil(1250));
        assertThat(value(working, "c")).isCloseTo(clearance.least().millimetres(), within(1.1e-6));
        assertThat(value(working, "cmax")).isCloseTo(clearance.greatest().millimetres(), within(1.1e-6));
    }

    @Test
    void classOfFit() throws EvaluationException, ParseException {
        Working working = checked(FitClass.working(SizeLimits.of(mil(355), mil(.2)), SizeLimits.of(mil(351), mil(1))));
        // .3548 - .352 and .3552 - .350.
        assertThat(value(working, "cmin")).isCloseTo(.0028 * 25.4, within(1e-12));
        assertThat(value(working, "cmax")).isCloseTo(.0052 * 25.4, within(1e-12));
        assertThat(working.lines().get(0).source().text()).contains("ISO 286-1");
    }

    @Test
    void boreOpening() throws EvaluationException, ParseException {
        Source why = Source.assumption("a drill in a fixed head");
        Working working = checked(BoreOpening.working(Clubs.taper(), mil(530), mil(368), Reading.assumed(mil(2), why)));
        assertThat(value(working, "Dc")).isCloseTo(.370 * 25.4, within(1e-12));
        assertThat(value(working, "t")).isCloseTo(.080 * 25.4, within(1e-12));
        assertThat(working.lines().get(0).source()).isEqualTo(why);
        Working measured = BoreOpening.working(Clubs.taper(), mil(530), mil(368), Reading.measured(mil(2)));
        assertThat(measured.lines().get(0).source()).isNotEqualTo(why);
        assertThatThrownBy(() -> BoreOpening.working(Clubs.taper(), mil(530), mil(368), Reading.unknown("its maker")))
                .hasMessageContaining("oversize");
    }

    @Test
    void shim() throws EvaluationException, ParseException {
        Bore wide = bore(0, 371, 1250, 370);
        ShimFit filled = ShimFit.of(cylinder(355), wide, mil(1250), mil(4), mil(6), List.of(mil(5)));
        Working working = checked(filled.working(cylinder(355), wide));
        assertThat(value(working, "c")).isCloseTo(.005 * 25.4, within(1e-12));
        assertThat(value(working, "cmax")).isCloseTo(.006 * 25.4, within(1e-12));
        ShimFit none = ShimFit.of(cylinder(366), wide, mil(1250), mil(4), mil(6), List.of(mil(5)));
        assertThat(value(checked(none.working(cylinder(366), wide)), "c")).isCloseTo(.004 * 25.4, within(1e-12));
    }

    @Test
    void bond() throws EvaluationException, ParseException {
        Bond bond = Bond.of(cylinder(350), Clubs.taper(), mil(1250));
        Working working = checked(bond.working(Torque.ofNewtonMetres(12), Force.ofNewtons(2000)));
        assertThat(value(working, "tau"))
                .isCloseTo(bond.shear(Torque.ofNewtonMetres(12)).megapascals(), within(1e-10));
        assertThat(value(working, "sigma"))
                .isCloseTo(bond.shear(Force.ofNewtons(2000)).megapascals(), within(1e-10));
    }

    @Test
    void stageTable() throws EvaluationException, ParseException {
        for (Bore bore : List.of(Clubs.taper(), bore(0, 363, 300, 361, 1250, 355))) {
            StagedTip staged = new StagedTip(cylinder(368.5), tip(0, 351, 1250, 359), bore, mil(1250));
            StageTable table = StageTable.of(staged, mil(1));
            Working working = checked(table.working());
            for (int k = 0; k < table.stages().size(); k++) {
                if (table.stages().get(k).insertion().lessThan(mil(1250))) {
                    assertThat(value(working, "i" + k))
                            .isCloseTo(table.stages().get(k).insertion().millimetres(), within(1e-12));
                    // Half a nanometre of rounding on each side. Outside, at the face, the tip is simply too wide.
                    assertThat(value(working, "r" + k))
                            .isLessThan(table.stages().get(k).insertion().equals(Length.ZERO) ? 0 : 2e-6);
                }
            }
            assertThat(working.lines()).isNotEmpty();
        }
    }

    @Test
    void stopReading() throws EvaluationException, ParseException {
        StagedTip staged = new StagedTip(cylinder(368.5), tip(0, 351, 1250, 359), Clubs.taper(), mil(1250));
        StopReading stop = StopReading.ofCalipers(
                List.of(Station.of(mil(0), mil(355)), Station.of(mil(625), mil(360)), Station.of(mil(2000), mil(368))));
        StopReport report = StopReport.of(staged, stop, mil(4), mil(15.625), mil(.2));
        Working working = checked(report.working(staged));
        // The third lies past the insertion.
        assertThat(working.lines()).hasSize(4);
        assertThat(value(working, "e1")).isCloseTo(.0038 * 25.4, within(1e-12));
        assertThat(value(working, "e2")).isCloseTo(.0042 * 25.4, within(1e-12));
    }

    private static Working checked(Working working) throws EvaluationException, ParseException {
        List<Double> printed = new ArrayList<>();
        List<Double> evaluated = new ArrayList<>();
        for (Working.Line line : working.lines()) {
            printed.add(number(line.result()));
            evaluated.add(evaluate(line));
        }
        for (int k = 0; k < printed.size(); k++) {
            // Lengths are whole nanometres, halves are rounded once more; a slope of a clearance over lengths carries
            // both.
            assertThat(evaluated.get(k)).as(working.lines().get(k).formula()).isCloseTo(printed.get(k), within(1.1e-6));
        }
        return working;
    }

    private static double evaluate(Working.Line line) throws EvaluationException, ParseException {
        // The library takes d and D for one name.
        Expression expression = new Expression(line.formula().replaceAll("\\bD(min|max)?\\b", "bore$1"));
        for (Term input : line.inputs()) {
            expression = expression.with(input.symbol().replaceAll("^D(min|max)?$", "bore$1"), number(input));
        }
        return expression.evaluate().getNumberValue().doubleValue();
    }

    private static double value(Working working, String symbol) {
        return working.lines().stream()
                .map(Working.Line::result)
                .filter(term -> term.symbol().equals(symbol))
                .mapToDouble(WorkingsTest::number)
                .findFirst()
                .orElseThrow();
    }

    private static double number(Term term) {
        return Double.parseDouble(term.number(Units.METRIC, 9));
    }
}
