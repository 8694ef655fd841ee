package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Clubs nudged once for all measures give what each measure nudged for itself would. */
class UncertainClubTest {

    private static final BenchUncertainty BENCH = BenchUncertainty.of(
            Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0.05), BenchInput.MASS),
            Tool.of(Instrument.ofStandard("rule", "mm", 0.4, 0), BenchInput.MOUTH_TO_GROUND, BenchInput.RAW_LENGTH));

    private static final Measure PRODUCT =
            new Measure("p", "mass times length", Measure.Kind.MASS, build -> headMass(build) * rawLength(build));

    private static double headMass(Build build) {
        return build.parts().head().mass().mass().grams();
    }

    private static double rawLength(Build build) {
        return build.parts().shaft().length().millimetres();
    }

    /** By hand: u(m l)^2 = (l 0.1)^2 + (l 0.05)^2 + (m 0.4)^2. */
    @Test
    void aBudgetByHand() {
        double m = headMass(NudgedClub.BUILD);
        double l = rawLength(NudgedClub.BUILD);
        Budget budget =
                UncertainClub.of(NudgedClub.BUILD, BENCH).budget(PRODUCT).orElseThrow();
        double expected = Math.sqrt(l * l * (0.01 + 0.0025) + m * m * 0.16);
        assertThat(budget.value()).isEqualTo(m * l);
        assertThat(budget.standardUncertainty()).isCloseTo(expected, within(1e-9 * expected));
    }

    /** The clubs made beforehand, and those made for the occasion, all with several errors at once. */
    @Test
    void everyModelValueIsThatOfTheNudgedClub() {
        Measurand measurand = UncertainClub.of(NudgedClub.BUILD, BENCH).measurand(PRODUCT);
        double[] deltas = new double[measurand.inputs().size()];
        double step = FirstOrder.STEP * 0.1;
        int head = 0;
        assertThat(measurand.inputs().at(head).name()).isEqualTo("head mass");
        for (double delta : new double[] {step, -step, 2 * step, 0}) {
            deltas[head] = delta;
            Build nudged = Nudges.HEAD_MASS.by(NudgedClub.BUILD, delta);
            assertThat(measurand.model().value(deltas))
                    .isEqualTo(PRODUCT.value().applyAsDouble(nudged));
        }
        deltas[head] = step;
        deltas[deltas.length - 1] = 0.5;
        Build both = Nudges.RAW_LENGTH.by(Nudges.HEAD_MASS.by(NudgedClub.BUILD, step), 0.5);
        assertThat(measurand.model().value(deltas)).isEqualTo(PRODUCT.value().applyAsDouble(both));
    }

    @Test
    void aClubThatCannotBeNudgedHasNoBudget() {
        assertThat(budgetWithScaleOf(10)).isPresent();
        assertThat(budgetWithScaleOf(10 * headMass(NudgedClub.BUILD))).isEmpty();
    }

    private static Optional<Budget> budgetWithScaleOf(double grams) {
        BenchUncertainty bench =
                BenchUncertainty.of(Tool.of(Instrument.ofStandard("scale", "g", grams, 0), BenchInput.MASS));
        return UncertainClub.of(NudgedClub.BUILD, bench).budget(PRODUCT);
    }

    @Test
    void aBenchWithSomeOfItsUses() {
        assertThat(BENCH.only(BenchInput.RAW_LENGTH).orElseThrow().tools())
                .containsExactly(Tool.of(Instrument.ofStandard("rule", "mm", 0.4, 0), BenchInput.RAW_LENGTH));
        assertThat(BENCH.only(BenchInput.WALL)).isEmpty();
        assertThat(BENCH.only(BenchInput.MASS, BenchInput.RAW_LENGTH, BenchInput.MOUTH_TO_GROUND))
                .contains(BENCH);
    }
}
