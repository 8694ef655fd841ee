package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.bore;
import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.tip;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.MonteCarlo;
import org.junit.jupiter.api.Test;

/** Budgets of a fit against sums of squares by hand, in millimetres. */
class FitBudgetTest {

    private static final Instrument EXACT = gauge(0, 0);
    private static final double INCH = 25.4;

    /** Sensitivities are differences over a few micrometres of numbers rounded to a nanometre. */
    private static final double ROUNDING = 1e-3;

    private static Instrument gauge(double own, double shared) {
        return Instrument.ofStandard("gauge", "mm", own, shared);
    }

    private static Budget budget(FitQuantity quantity, DiameterProfile tip, Bore bore, Length insertion, FitGauges g) {
        return Budget.of(FitBudget.measurand(quantity, new FitReadings(tip, bore, insertion), g));
    }

    private static void expect(Budget budget, double uncertainty) {
        assertThat(budget.standardUncertainty()).isCloseTo(uncertainty, within(ROUNDING * uncertainty));
    }

    @Test
    void theMeanOfFourReadings() {
        // Each end of tip and of bore counts half.
        FitGauges gauges = new FitGauges(gauge(.003, 0), gauge(.004, 0), EXACT);
        DiameterProfile tip = DiameterProfile.cylinder(mil(350), mil(1250));
        Budget own = budget(FitQuantity.MEAN_CLEARANCE, tip, bore(0, 363, 1250, 355), mil(1250), gauges);
        expect(own, Math.sqrt(2 * .0015 * .0015 + 2 * .002 * .002));
        assertThat(own.value()).isCloseTo(.009 * INCH, within(1e-9));
        // A shared error counts whole.
        FitGauges shared = new FitGauges(gauge(0, .003), gauge(0, .004), EXACT);
        expect(budget(FitQuantity.MEAN_CLEARANCE, tip, bore(0, 363, 1250, 355), mil(1250), shared), .005);
    }

    @Test
    void firstContactIsTheDiametersOverTheTaper() {
        // q = .0064: an error of either diameter is worth 1 / q of depth.
        FitGauges gauges = new FitGauges(gauge(0, .003), gauge(0, .004), EXACT);
        expect(
                budget(FitQuantity.FIRST_CONTACT, cylinder(359), bore(0, 363, 1250, 355), mil(1250), gauges),
                .005 / .0064);
    }

    @Test
    void leastClearanceOfASeatedTipMovesWithTheBottom() {
        FitGauges gauges = new FitGauges(EXACT, EXACT, gauge(.2, 0));
        // With the same diameter at the bottom, wherever it is, the end of the tip keeps its clearance.
        expect0(budget(FitQuantity.LEAST_CLEARANCE, cylinder(350), bore(0, 363, 1250, 355), mil(1250), gauges));
        // Held by a mark an inch in, it has .0064 less of it for each unit of depth.
        expect(
                budget(FitQuantity.LEAST_CLEARANCE, cylinder(350), bore(0, 363, 1250, 355), mil(1000), gauges),
                .2 * .0064);
    }

    private static void expect0(Budget budget) {
        // A nanometre of rounding over the step of the difference.
        assertThat(budget.standardUncertainty()).isLessThan(2e-6);
    }

    @Test
    void leanIsTheClearanceOverTheLength() {
        FitGauges gauges = new FitGauges(EXACT, gauge(0, .01), EXACT);
        double length = 1.25 * INCH;
        // tan a = c / i at .015 of clearance: a small angle, in degrees.
        double slope = .015 / 1.25;
        expect(
                budget(FitQuantity.LEAN, cylinder(355), bore(0, 370, 1250, 370), mil(1250), gauges),
                Math.toDegrees(.01 / length / (1 + slope * slope)));
    }

    @Test
    void aShimTakesNothingOfTheDoubt() {
        FitGauges gauges = new FitGauges(EXACT, gauge(0, .01), EXACT);
        Budget budget =
                budget(FitQuantity.besideShim(mil(5)), cylinder(355), bore(0, 370, 1250, 370), mil(1250), gauges);
        assertThat(budget.value()).isCloseTo(.005 * INCH, within(1e-9));
        expect(budget, .01);
    }

    @Test
    void stockFromDepthIsTheTaperTimesTheDepth() {
        FitGauges gauges = new FitGauges(EXACT, EXACT, gauge(.4, 0));
        FitQuantity stock = FitQuantity.stockAtDepth(tip(0, 351, 1250, 359), mil(1250));
        Budget budget = budget(stock, cylinder(368.5), bore(0, 363, 1250, 355), mil(625), gauges);
        assertThat(budget.value()).isCloseTo(.008 * INCH, within(2e-6));
        expect(budget, .4 * .0064);
    }

    @Test
    void shearGoesWithTheSquareOfTheDiameter() {
        FitGauges gauges = new FitGauges(gauge(0, .05), EXACT, EXACT);
        double d = .350 * INCH;
        double shear = 12_000 / (Math.PI * d * d / 2 * 1.25 * INCH);
        Budget budget = budget(
                FitQuantity.shear(Torque.ofNewtonMetres(12)),
                cylinder(350),
                bore(0, 363, 1250, 355),
                mil(1250),
                gauges);
        assertThat(budget.value()).isCloseTo(shear, within(1e-9));
        expect(budget, 2 * shear * .05 / d);
    }

    @Test
    void theWallOfAHoselGoesWithTheBoreOnlyWhereTheCutterIsNarrower() {
        FitGauges gauges = new FitGauges(EXACT, gauge(0, .02), EXACT);
        Bore bore = bore(0, 363, 1250, 355);
        Budget cut = budget(FitQuantity.hoselWall(mil(530), mil(370)), cylinder(350), bore, mil(1250), gauges);
        assertThat(cut.value()).isCloseTo(.080 * INCH, within(1e-9));
        assertThat(cut.standardUncertainty()).isZero();
        expect(budget(FitQuantity.hoselWall(mil(530), mil(350)), cylinder(350), bore, mil(1250), gauges), .01);
    }

    /** Trials take what the sum of squares takes. */
    @Test
    void trialsAgreeWithTheSumOfSquares() {
        FitGauges gauges = new FitGauges(gauge(.003, .002), gauge(.004, .001), gauge(.2, 0));
        FitReadings readings = new FitReadings(cylinder(350), bore(0, 363, 1250, 355), mil(1000));
        double first = Budget.of(FitBudget.measurand(FitQuantity.MEAN_CLEARANCE, readings, gauges))
                .standardUncertainty();
        double trials = MonteCarlo.of(4000, 7)
                .run(FitBudget.measurand(FitQuantity.MEAN_CLEARANCE, readings, gauges))
                .standardUncertainty();
        // A standard deviation from 4000 trials is known to 1 / sqrt(8000), 1.1 %; three times that.
        assertThat(trials).isCloseTo(first, within(.034 * first));
    }

    @Test
    void hostileInputAndCopies() {
        FitGauges gauges = new FitGauges(EXACT, EXACT, EXACT);
        assertThatThrownBy(() -> gauges.withTip(Instrument.ofStandard("rule", "in", 1, 0)))
                .hasMessageContaining("tip")
                .hasMessageContaining("mm");
        assertThat(gauges.withTip(EXACT).withBore(EXACT).withDepth(EXACT)).isEqualTo(gauges);
        FitReadings readings = new FitReadings(cylinder(350), Clubs.taper(), mil(1250));
        assertThat(readings.withTip(readings.tip()).withBore(readings.bore()).withInsertion(mil(1250)))
                .isEqualTo(readings);
        assertThatThrownBy(() -> readings.withInsertion(mil(1251))).hasMessageContaining("insertion");
        assertThatThrownBy(() -> new FitQuantity(" ", "mm", r -> 1)).hasMessageContaining("name");
    }
}
