package dev.tipwright.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws every budget keeps. */
class BudgetProperties {

    /**
     * Rounding of a difference over an eighth of u, where the value is at most 1e5 times u: 1e5 * 8 * 1e-16 and room.
     */
    private static final double ROUNDING = 1e-9;

    @Provide
    Arbitrary<Input> input() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-100, 100),
                        Arbitraries.doubles().between(0.01, 10),
                        Arbitraries.doubles().between(1, 200))
                .as((estimate, u, nu) ->
                        Input.ofStandard("x", "mm", estimate, u).withDegreesOfFreedom(DegreesOfFreedom.of(nu)));
    }

    private static Inputs named(List<Input> inputs) {
        List<Input> named = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            named.add(inputs.get(i).withName("x" + i));
        }
        return Inputs.of(named);
    }

    private static double coefficient(int i) {
        return (i % 2 == 0 ? 1 : -1) * (1 + i);
    }

    private static double linear(double[] x) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += coefficient(i) * x[i];
        }
        return sum;
    }

    private static Budget budget(Inputs inputs, Model model) {
        return Budget.of(Measurand.of("y", "mm", inputs, model));
    }

    @Property
    void linearModelsCombineInQuadrature(@ForAll @Size(min = 1, max = 6) List<@From("input") Input> list) {
        Inputs inputs = named(list);
        double squares = 0;
        for (int i = 0; i < list.size(); i++) {
            squares += Math.pow(coefficient(i) * list.get(i).standardUncertainty(), 2);
        }
        double expected = Math.sqrt(squares);
        assertThat(budget(inputs, BudgetProperties::linear).standardUncertainty())
                .isCloseTo(expected, within(ROUNDING * expected));
    }

    @Property
    void anInputWithoutUncertaintyAddsNothing(
            @ForAll("input") Input x, @ForAll @DoubleRange(min = -100, max = 100) double y) {
        Input exact = Input.exact("y", "mm", y);
        Budget with = budget(Inputs.of(x, exact), v -> v[0] * v[0] + v[1] * v[1]);
        Budget without = budget(Inputs.of(x), v -> v[0] * v[0] + y * y);
        assertThat(with.standardUncertainty()).isEqualTo(without.standardUncertainty());
        assertThat(with.value()).isEqualTo(without.value());
        assertThat(with.contributions()).contains(new Contribution(exact, 0, 0, 0));
    }

    @Property
    void anotherUnitChangesNothing(@ForAll("input") Input x, @ForAll("input") Input y) {
        // Millimetres and inches, in and out.
        Model model = v -> v[0] * v[1] / (200 + v[0]);
        Budget mm = budget(Inputs.of(x, y.withName("y")), model);
        Inputs inches = Inputs.of(
                Input.ofStandard("x", "in", x.estimate() / 25.4, x.standardUncertainty() / 25.4)
                        .withDegreesOfFreedom(x.degreesOfFreedom()),
                Input.ofStandard("y", "in", y.estimate() / 25.4, y.standardUncertainty() / 25.4)
                        .withDegreesOfFreedom(y.degreesOfFreedom()));
        Budget in = budget(inches, v -> model.value(new double[] {25.4 * v[0], 25.4 * v[1]}) / 25.4);
        double u = mm.standardUncertainty();
        assertThat(25.4 * in.standardUncertainty()).isCloseTo(u, within(ROUNDING * u + 1e-12));
        assertThat(25.4 * in.value()).isCloseTo(mm.value(), within(1e-12 * (1 + Math.abs(mm.value()))));
    }

    @Property
    void theOrderOfInputsChangesNothing(@ForAll @Size(min = 2, max = 6) List<@From("input") Input> list) {
        Inputs inputs = named(list);
        List<Input> reversed = new ArrayList<>(inputs.list());
        Collections.reverse(reversed);
        Budget one = budget(inputs, BudgetProperties::linear);
        Budget other = budget(Inputs.of(reversed), x -> {
            double[] back = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                back[x.length - 1 - i] = x[i];
            }
            return linear(back);
        });
        assertThat(other.standardUncertainty())
                .isCloseTo(one.standardUncertainty(), within(1e-14 * one.standardUncertainty()));
        assertThat(other.contributions())
                .extracting(c -> c.input().name())
                .containsExactlyElementsOf(
                        one.contributions().stream().map(c -> c.input().name()).toList());
    }

    @Property
    void contributionsAreSortedAndTheirSharesAddUpToOne(
            @ForAll @Size(min = 1, max = 6) List<@From("input") Input> list) {
        List<Contribution> lines = budget(named(list), BudgetProperties::linear).contributions();
        assertThat(lines)
                .isSortedAccordingTo((a, b) -> Double.compare(Math.abs(b.uncertainty()), Math.abs(a.uncertainty())));
        assertThat(lines.stream().mapToDouble(Contribution::share).sum()).isCloseTo(1, within(1e-12));
    }

    @Property
    void effectiveDegreesOfFreedomLieBetweenTheLeastAndTheSum(
            @ForAll @Size(min = 1, max = 6) List<@From("input") Input> list) {
        double least = list.stream()
                .mapToDouble(i -> i.degreesOfFreedom().count().orElseThrow())
                .min()
                .orElseThrow();
        double sum = list.stream()
                .mapToDouble(i -> i.degreesOfFreedom().count().orElseThrow())
                .sum();
        double nu = budget(named(list), BudgetProperties::linear)
                .degreesOfFreedom()
                .count()
                .orElseThrow();
        // JCGM 100:2008, G.4.1, note 1: not above the sum.
        assertThat(nu).isBetween(least * (1 - 1e-12), sum * (1 + 1e-12));
    }

    @Property
    void readingsThatShareABiasDoNotAverageItOut(
            @ForAll @DoubleRange(min = 0.01, max = 1) double b, @ForAll @IntRange(min = 2, max = 6) int n) {
        // n readings without spread of their own: n b with one bias between them, sqrt(n) b with one each.
        List<Input> shared = List.of(Input.exact("reading", "mm", 9.4), Input.ofStandard("bias", "mm", 0, b));
        double together = budget(Inputs.of(shared), x -> n * (x[0] + x[1])).standardUncertainty();
        List<Input> each = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            each.add(Input.ofStandard("bias" + i, "mm", 0, b));
        }
        double apart = budget(Inputs.of(each), x -> {
                    double sum = n * 9.4;
                    for (double bias : x) {
                        sum += bias;
                    }
                    return sum;
                })
                .standardUncertainty();
        assertThat(together).isCloseTo(n * b, within(ROUNDING * n * b));
        assertThat(apart).isCloseTo(Math.sqrt(n) * b, within(ROUNDING * n * b));
    }

    @Example
    void twoReadingsWithTheSameBias() {
        // By hand: (r1 + b) + (r2 + b) has 2 u(b) = 0.04; with a bias each, sqrt 2 u(b) = 0.0283.
        Instrument caliper = Instrument.ofStandard("caliper", "mm", 0, 0.02);
        Inputs same =
                Inputs.of(caliper.ownReading("r1", 9.4), caliper.ownReading("r2", 25.1), caliper.sharedError("bias"));
        assertThat(budget(same, x -> x[0] + x[2] + x[1] + x[2]).standardUncertainty())
                .isCloseTo(0.04, within(1e-12));
        Inputs own = Inputs.of(caliper.reading("r1", 9.4), caliper.reading("r2", 25.1));
        assertThat(budget(own, x -> x[0] + x[1]).standardUncertainty()).isCloseTo(0.02 * Math.sqrt(2), within(1e-12));
        // A difference of two readings is free of it.
        assertThat(budget(same, x -> x[1] + x[2] - (x[0] + x[2])).standardUncertainty())
                .isCloseTo(0, within(1e-12));
    }

    @Example
    void theExampleOfThePackagePageIsRight() {
        Inputs inputs = Inputs.of(
                Input.ofStandard("first", "mm", 9.40, 0.003),
                Input.ofStandard("second", "mm", 25.10, 0.003),
                Input.ofLimits("caliper", "mm", 0, 0.02));
        Budget budget = Budget.of(Measurand.of("sum", "mm", inputs, x -> x[0] + x[2] + x[1] + x[2]));
        assertThat(budget.standardUncertainty()).isCloseTo(0.0235, within(0.00005));
        assertThat(budget.contributions().get(0).input().name()).isEqualTo("caliper");
        assertThat(budget.contributions().get(0).uncertainty()).isCloseTo(0.0231, within(0.00005));
        assertThat(budget.expanded(0.95).uncertainty()).isCloseTo(0.046, within(0.0005));
        assertThat(budget.expanded(0.95).degreesOfFreedom()).isEqualTo(DegreesOfFreedom.INFINITE);
    }

    @Example
    void tiesAreInOrderOfName() {
        Input b = Input.ofStandard("b", "mm", 0, 1);
        Budget budget = budget(Inputs.of(b, b.withName("c"), b.withName("a")), x -> x[0] - x[1] + x[2]);
        assertThat(budget.contributions()).extracting(c -> c.input().name()).containsExactly("a", "b", "c");
    }

    @Example
    void nothingUncertainIsCertain() {
        Budget budget = budget(Inputs.of(Input.exact("x", "mm", 3)), x -> x[0]);
        assertThat(budget.standardUncertainty()).isZero();
        assertThat(budget.degreesOfFreedom()).isEqualTo(DegreesOfFreedom.INFINITE);
        assertThat(budget.expanded(0.95).uncertainty()).isZero();
        assertThat(budget.measurand().model().value(new double[] {2})).isEqualTo(2);
        assertThat(budget.measurand().inputs().correlations()).isEmpty();
    }

    @Example
    void anInputKnownToTheLastDigitIsStillDifferentiated() {
        // u is 1e-14 of the estimate: an eighth of it is below the last digit, so the step is 2^-30 of the estimate.
        Budget budget = budget(Inputs.of(Input.ofStandard("x", "mm", 1000, 1e-11)), x -> x[0] * x[0]);
        // The rounding of a value of 1e6 over a step of 1e-6: 1e-10 / 1e-6 in a slope of 2000.
        assertThat(budget.contributions().get(0).sensitivity()).isCloseTo(2000, within(1e-3));
    }
}
