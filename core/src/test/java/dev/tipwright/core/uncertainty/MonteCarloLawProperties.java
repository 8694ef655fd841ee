package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of runs with 500 trials, exact in doubles: doubling, turning the sign, and what a law of any sample is. */
class MonteCarloLawProperties {

    private static MonteCarloResult run(long seed, Distribution distribution, Model model) {
        Input a = Input.ofStandard("a", "mm", 3, 0.25)
                .withDegreesOfFreedom(DegreesOfFreedom.of(5))
                .withDistribution(distribution);
        Input b = Input.ofStandard("b", "mm", -1, 0.5)
                .withDegreesOfFreedom(DegreesOfFreedom.of(5))
                .withDistribution(distribution);
        return MonteCarlo.of(500, seed).run(Measurand.of("y", "mm", Inputs.of(a, b), model));
    }

    private static double model(double[] x) {
        return x[0] * x[1] + x[0];
    }

    @Property(tries = 100)
    void twiceTheModelIsTwiceEveryNumber(@ForAll long seed, @ForAll Distribution distribution) {
        MonteCarloResult once = run(seed, distribution, MonteCarloLawProperties::model);
        MonteCarloResult twice = run(seed, distribution, x -> 2 * model(x));
        assertThat(twice.mean()).isEqualTo(2 * once.mean());
        assertThat(twice.standardUncertainty()).isEqualTo(2 * once.standardUncertainty());
        assertThat(twice.sorted()).containsExactlyElementsOf(doubled(once));
    }

    private static List<Double> doubled(MonteCarloResult result) {
        return result.sorted().map(y -> 2 * y).boxed().toList();
    }

    @Property(tries = 100)
    void theOtherSignTurnsTheSampleRound(@ForAll long seed, @ForAll Distribution distribution) {
        double[] plus =
                run(seed, distribution, MonteCarloLawProperties::model).sorted().toArray();
        double[] minus = run(seed, distribution, x -> -model(x)).sorted().toArray();
        for (int i = 0; i < plus.length; i++) {
            assertThat(minus[plus.length - 1 - i]).isEqualTo(-plus[i]);
        }
    }

    @Property(tries = 100)
    void theShortestIntervalIsNoWiderThanTheSymmetricOne(
            @ForAll long seed, @ForAll Distribution distribution, @ForAll @IntRange(min = 50, max = 99) int percent) {
        MonteCarloResult result = run(seed, distribution, MonteCarloLawProperties::model);
        double probability = percent / 100.0;
        assertThat(result.shortestInterval(probability).width())
                .isLessThanOrEqualTo(result.symmetricInterval(probability).width());
    }

    @Property(tries = 100)
    void aWiderProbabilityHasAWiderInterval(
            @ForAll long seed,
            @ForAll Distribution distribution,
            @ForAll @IntRange(min = 50, max = 90) int percent,
            @ForAll @IntRange(min = 0, max = 9) int more) {
        MonteCarloResult result = run(seed, distribution, MonteCarloLawProperties::model);
        Interval inner = result.symmetricInterval(percent / 100.0);
        Interval outer = result.symmetricInterval((percent + more) / 100.0);
        assertThat(outer.low()).isLessThanOrEqualTo(inner.low());
        assertThat(outer.high()).isGreaterThanOrEqualTo(inner.high());
    }
}
