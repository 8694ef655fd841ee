package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.SampleClub;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From instruments to the inputs of a club, and the laws that its budgets keep. */
class BenchUncertaintyTest {

    private static final Build BUILD = NudgedClub.BUILD;

    /** Mass of head, shaft and grip: sensitivity 1 to each. */
    private static final Measure MASSES = new Measure("m", "mass", Measure.Kind.MASS, BenchUncertaintyTest::masses);

    private static final Measure MOUTH = Measure.length(
            "H", "mouth", build -> build.parts().head().geometry().mouthToGround());

    private static double masses(Build build) {
        return build.parts().head().mass().mass().grams()
                + build.parts().shaft().mass().mass().grams()
                + build.parts().grip().mass().grams();
    }

    private static Tool scale(double own, double shared) {
        return Tool.of(Instrument.ofStandard("scale", "g", own, shared), BenchInput.MASS);
    }

    private static Tool rule(double own) {
        return Tool.of(Instrument.ofStandard("rule", "mm", own, 0), BenchInput.MOUTH_TO_GROUND, BenchInput.RAW_LENGTH);
    }

    private static Budget budget(Measure measure, Tool... tools) {
        return measure.budget(BUILD, BenchUncertainty.of(tools)).orElseThrow();
    }

    private static List<String> names(Build build, Tool... tools) {
        return BenchUncertainty.of(tools).inputs(build).stream()
                .map(input -> input.input().name())
                .toList();
    }

    /** By hand: sqrt(3) 0.1 g for three errors, 3 times 0.1 g for one, and both in quadrature. */
    @Test
    void aSharedErrorIsNotThreeErrors() {
        assertThat(budget(MASSES, scale(0.1, 0)).standardUncertainty()).isCloseTo(0.17320508, within(1e-8));
        assertThat(budget(MASSES, scale(0, 0.1)).standardUncertainty()).isCloseTo(0.3, within(1e-9));
        assertThat(budget(MASSES, scale(0.1, 0.1)).standardUncertainty()).isCloseTo(Math.sqrt(0.12), within(1e-9));
        assertThat(names(BUILD, scale(0, 0.1))).containsExactly("all by scale");
        assertThat(names(BUILD, scale(0.1, 0.1)))
                .containsExactly("head mass", "shaft mass", "grip mass", "all by scale");
    }

    @Test
    void whatIsKnownExactlyContributesNothing() {
        Budget budget = budget(MASSES, scale(0.1, 0), rule(0));
        assertThat(budget.standardUncertainty())
                .isEqualTo(budget(MASSES, scale(0.1, 0)).standardUncertainty());
        assertThat(budget.contributions())
                .filteredOn(line -> line.input().standardUncertainty() == 0)
                .hasSize(2)
                .allMatch(line -> line.uncertainty() == 0);
        assertThat(budget(MOUTH, scale(0.1, 0)).largest()).isEmpty();
    }

    /** The same length in inches: 25.4 times fewer, and so is its uncertainty. */
    @Test
    void anotherUnitChangesNothing() {
        Measure inches = new Measure(
                "H",
                "mouth",
                Measure.Kind.POINTS,
                build -> build.parts().head().geometry().mouthToGround().inches());
        double mm = budget(MOUTH, rule(0.4)).standardUncertainty();
        assertThat(mm).isCloseTo(0.4, within(1e-9));
        assertThat(budget(inches, rule(0.4)).standardUncertainty() * 25.4).isCloseTo(mm, within(1e-12));
    }

    @Test
    void contributionsInQuadratureGiveTheTotal() {
        Budget budget = budget(MASSES, scale(0.1, 0.05), rule(0.4));
        double squares = budget.contributions().stream()
                .mapToDouble(line -> line.uncertainty() * line.uncertainty())
                .sum();
        assertThat(Math.sqrt(squares)).isCloseTo(budget.standardUncertainty(), within(1e-15));
    }

    @Test
    void everyUseHasItsInputs() {
        Tool all = Tool.of(
                Instrument.ofStandard("anything", "mm", 0.01, 0),
                BenchInput.BORE_DIAMETER,
                BenchInput.BORE_DEPTH,
                BenchInput.TIP_DIAMETER,
                BenchInput.FINISH,
                BenchInput.WALL,
                BenchInput.RAW_LENGTH,
                BenchInput.MOUTH_TO_GROUND,
                BenchInput.CUTS,
                BenchInput.FINISHED_TIP,
                BenchInput.BALANCE_POINT,
                BenchInput.HEAD_CENTRE);
        assertThat(names(BUILD, all))
                .containsExactly(
                        "bore diameter 1",
                        "bore diameter 2",
                        "bore diameter 3",
                        "pin depth 2",
                        "bore depth",
                        "tip diameter",
                        "finish",
                        "wall",
                        "raw length",
                        "mouth to ground",
                        "tip trim cut",
                        "cut length",
                        "finished tip diameter",
                        "balance point",
                        "centre of mass");
    }

    @Test
    void theFootOfAChamferCountsAsKnown() {
        Build chamfered = NudgedClub.withBore(
                BUILD,
                dev.tipwright.core.profile.Bore.ofReadings(
                        List.of(
                                Station.of(Length.ZERO, Length.ofMillimetres(10)),
                                Station.of(Length.ofMillimetres(0.4), Length.ofMillimetres(9.3)),
                                Station.of(Length.ofMillimetres(15), Length.ofMillimetres(9.2)),
                                Station.of(Length.ofMillimetres(32), Length.ofMillimetres(9))),
                        dev.tipwright.core.profile.BoreEnd.FLAT));
        Tool pins = Tool.of(Instrument.ofStandard("pins", "mm", 0.2, 0), BenchInput.BORE_DEPTH);
        assertThat(names(chamfered, pins)).containsExactly("pin depth 3", "bore depth");
    }

    @Test
    void eachReadingOfTheTipIsAnInput() {
        Build tapered = NudgedClub.withOutside(
                BUILD,
                DiameterProfile.of(
                        Station.of(Length.ZERO, Length.ofMillimetres(9)),
                        Station.of(Length.ofMillimetres(50), Length.ofMillimetres(9.4)),
                        Station.of(Length.ofMillimetres(200), Length.ofMillimetres(9.4))));
        Tool micrometer = Tool.of(Instrument.ofStandard("micrometer", "mm", 0.005, 0), BenchInput.TIP_DIAMETER);
        assertThat(names(tapered, micrometer)).containsExactly("tip diameter 1", "tip diameter 2");
    }

    @Test
    void aCentreThatWasNotMeasuredIsAsUncertainAsTheRuleSays() {
        Build unknown = NudgedClub.withCentre(BUILD, Reading.unknown("nobody"));
        List<BuildInput> inputs = BenchUncertainty.of(scale(0.1, 0)).inputs(unknown);
        assertThat(inputs.get(inputs.size() - 1).input())
                .isEqualTo(Input.ofStandard(
                        Measure.HEAD_CENTRE, "mm", 0, HeadCentreRule.STANDARD_UNCERTAINTY.millimetres()));
        Tool dowel = Tool.of(Instrument.ofStandard("dowel", "mm", 1, 0), BenchInput.HEAD_CENTRE);
        assertThat(names(unknown, scale(0.1, 0), dowel)).containsOnlyOnce(Measure.HEAD_CENTRE);
    }

    @Test
    void whatCountsAsKnownIsLeftOut() {
        BenchUncertainty bench = BenchUncertainty.of(scale(0.1, 0), rule(0.4));
        assertThat(bench.without(BenchInput.MASS)).isEqualTo(BenchUncertainty.of(rule(0.4)));
        assertThat(bench.without(BenchInput.RAW_LENGTH).tools().get(1).uses())
                .containsExactly(BenchInput.MOUTH_TO_GROUND);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bench.without(BenchInput.MASS, BenchInput.RAW_LENGTH, BenchInput.MOUTH_TO_GROUND))
                .withMessageStartingWith("known must leave");
    }

    @Test
    void aBenchThatMakesNoSenseIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BenchUncertainty.of(scale(0.1, 0), scale(0.2, 0)))
                .withMessageStartingWith("tools must name each one once");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.WALL))
                .withMessage("instrument must be in mm for WALL, was g");
        Tool balance = Tool.of(Instrument.ofStandard("balance", "g", 0.1, 0), BenchInput.MASS);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BenchUncertainty.of(scale(0.1, 0), balance))
                .withMessage("tools must name each one once, but has more than one of [MASS]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Tool.of(Instrument.ofStandard("laser", "mm", 1e-5, 0), BenchInput.WALL))
                .withMessageStartingWith("instrument must have uncertainties of 0 or at least");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Tool.of(Instrument.ofStandard("laser", "mm", 1, 9.9e-5), BenchInput.WALL))
                .withMessageStartingWith("instrument must have uncertainties of 0 or at least");
        assertThat(Tool.of(Instrument.ofStandard("laser", "mm", 1e-4, 1e-4), BenchInput.WALL)
                        .uses())
                .containsExactly(BenchInput.WALL);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BuildInput(Input.ofStandard("mass", "g", 260, 0.1), Nudges.HEAD_MASS))
                .withMessageStartingWith("input must be an error about 0");
    }

    /** A head of 260 g weighed to 1000 g may weigh less than nothing an eighth of that below, or not be there at all. */
    @Test
    void aClubThatCannotBeBuiltHasNoBudget() {
        assertThat(MASSES.budget(BUILD, BenchUncertainty.of(scale(1000, 0)))).isEmpty();
    }

    /** Two readings of one kind with one degree of freedom each would widen the factor; normal inputs leave it at 2. */
    @Test
    void theExpandedUncertaintyIsTwiceTheStandardOne() {
        Budget budget = budget(MOUTH, rule(0.4));
        assertThat(MOUTH.expanded(budget).text(Units.METRIC)).isEqualTo("0.8 mm");
        assertThat(MOUTH.uncertainty(budget, Units.INCH)).isEqualTo("0.031 in");
        assertThat(budget.expanded(Measure.TWO_SIGMA).coverageFactor()).isCloseTo(2, within(1e-9));
        Measure points = new Measure("P", "points", Measure.Kind.POINTS, MOUTH.value());
        assertThat(points.uncertainty(budget, Units.INCH)).isEqualTo("0.800 point");
    }

    @Test
    void aKindMakesTermsOfItsNumbers() {
        assertThat(new Measure("J", "inertia", Measure.Kind.INERTIA, build -> 0).term("J", "inertia", 2616.2))
                .isEqualTo(dev.tipwright.core.evidence.Term.of(
                        "J", "inertia", Inertia.ofKilogramSquareCentimetres(2616.2)));
        assertThat(MASSES.term("m", "mass", 3))
                .isEqualTo(dev.tipwright.core.evidence.Term.of("m", "mass", Mass.ofGrams(3)));
        Measure fine = Measure.fine("d", "diameter", build -> Length.ofMillimetres(9));
        assertThat(budget(fine, rule(0.4)).value()).isEqualTo(9);
        assertThat(fine.term("d", "diameter", 9))
                .isEqualTo(dev.tipwright.core.evidence.Term.fine("d", "diameter", Length.ofMillimetres(9)));
    }

    /** By hand: contributions 3 and 4 give 5, and 2 * 0.5 * 12 more with a correlation of one half. */
    @Test
    void theWorkingOfABudgetCanBeWorkedAgain() throws Exception {
        Inputs inputs = Inputs.of(Input.ofStandard("a", "mm", 1, 3), Input.ofStandard("b", "mm", 1, 4));
        Measurand alone = Measurand.of("sum", "mm", inputs, x -> x[0] + x[1]);
        dev.tipwright.core.PrintedFormula.check(Budget.of(alone).working(0.95));
        Measurand tied = Measurand.of(
                "sum", "mm", inputs.withCorrelations(List.of(new Correlation("a", "b", 0.5))), x -> x[0] + x[1]);
        dev.tipwright.core.PrintedFormula.check(Budget.of(tied).working(0.95));
        assertThat(Budget.of(tied).working(0.95).lines().get(0).formula()).isEqualTo("sqrt(u1^2 + u2^2 + r)");
        Measurand sure = Measurand.of("one", "mm", Inputs.of(Input.exact("a", "mm", 1)), x -> x[0]);
        assertThat(Budget.of(sure).working(0.95).lines().get(0).formula()).isEqualTo("sqrt(0)");
    }

    /** A shaft whose stiffness is known but that was never timed has no timing that could be off. */
    @Test
    void aShaftThatWasNotTimedHasNoTimingToBeOff() {
        Tool counter = Tool.of(Instrument.ofStandard("counter", "/min", 1, 0), BenchInput.TIMED_FREQUENCY);
        assertThat(names(SampleClub.build(), counter)).isEmpty();
        Build timed = SampleClub.with(
                SampleClub.build(),
                SampleClub.shaft()
                        .withFlex(SampleClub.flex(
                                SampleClub.stations(0, 15, 1000, 65), SampleClub.timed(290, 127, 200))));
        assertThat(names(timed, counter)).containsExactly("timed frequency");
    }

    @Test
    void aMeasureIsAMeasurandWithItsMeaningAndUnit() {
        Measurand measurand = MOUTH.measurand(BUILD, BenchUncertainty.of(rule(0.4)));
        assertThat(measurand.name()).isEqualTo("mouth");
        assertThat(measurand.unit()).isEqualTo("mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MOUTH.term("H", "mouth", Double.NaN))
                .withMessage("number must be finite, was NaN");
    }

    @Test
    void theLargestContributionIsNamed() {
        assertThat(budget(MASSES, scale(0.1, 0.3))
                        .largest()
                        .orElseThrow()
                        .input()
                        .name())
                .isEqualTo("all by scale");
    }
}
