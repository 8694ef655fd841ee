package dev.tipwright.core.uncertainty;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A first-order uncertainty budget (JCGM 100:2008, 5.1 and 5.2).
 *
 * <pre>
 * u^2 = sum of (ci ui)^2 + 2 sum over pairs of r(i,j) (ci ui) (cj uj)
 * </pre>
 *
 * <p>Each sensitivity {@code c} is a central difference with a step of one eighth of the input's standard uncertainty,
 * at least 2^-30 of the estimate; the model is called twice for each uncertain input and once for the value. Whether
 * first order is good enough says {@link LinearityCheck}; what it leaves out says {@link SecondOrder}.
 *
 * <pre>{@code
 * Inputs inputs = Inputs.of(
 *         Input.ofStandard("head", "g", 262, 0.1), Input.ofStandard("centre", "in", 37.35, 0.04));
 * Budget budget = Budget.of(Measurand.of(
 *         "points", "points", inputs, x -> (x[0] * (x[1] - 14) / 28.349523125 - 161) / 1.75));
 * Math.round(1000 * budget.standardUncertainty());                  // = 216
 * Math.round(1000 * budget.expanded(0.95).coverageFactor());        // = 1960
 * budget.largest().orElseThrow().input().name();                    // = centre
 * }</pre>
 */
public final class Budget {

    private final Measurand measurand;
    private final double value;
    private final double standardUncertainty;
    private final DegreesOfFreedom degreesOfFreedom;
    private final List<Contribution> contributions;

    private Budget(Measurand measurand) {
        FirstOrder first = FirstOrder.of(measurand);
        this.measurand = measurand;
        this.value = first.value();
        this.standardUncertainty = first.combined();
        this.degreesOfFreedom = first.effectiveDegreesOfFreedom(standardUncertainty);
        this.contributions = List.copyOf(lines(measurand, first, standardUncertainty));
    }

    private static List<Contribution> lines(Measurand measurand, FirstOrder first, double combined) {
        double[] shares = first.shares(combined);
        return IntStream.range(0, measurand.inputs().size())
                .mapToObj(i -> new Contribution(
                        measurand.inputs().at(i), first.sensitivity(i), first.contribution(i), shares[i]))
                .sorted(largestFirst())
                .toList();
    }

    private static Comparator<Contribution> largestFirst() {
        return Comparator.comparingDouble((Contribution c) -> -Math.abs(c.uncertainty()))
                .thenComparing(c -> c.input().name());
    }

    /**
     * Works out the budget.
     *
     * @param measurand the measurand
     * @return its budget
     * @throws NullPointerException if the measurand is null
     * @throws IllegalArgumentException if the model gives a value that is not finite; the text names the output and the
     *     inputs
     * @throws ArithmeticException if a result overflows
     */
    public static Budget of(Measurand measurand) {
        return new Budget(Objects.requireNonNull(measurand, "measurand"));
    }

    /**
     * The measurand the budget was worked out for, inputs and model included.
     *
     * @return the measurand
     */
    public Measurand measurand() {
        return measurand;
    }

    /**
     * The value at the estimates.
     *
     * @return the value, in the unit of the measurand
     */
    public double value() {
        return value;
    }

    /**
     * The combined standard uncertainty.
     *
     * @return the uncertainty, in the unit of the measurand
     */
    public double standardUncertainty() {
        return standardUncertainty;
    }

    /**
     * The effective degrees of freedom by the Welch-Satterthwaite formula (JCGM 100:2008, G.4.1), not truncated.
     *
     * <p>The formula is for uncorrelated inputs. Inputs tied by correlations, directly or through others, enter it as
     * one component with the least degrees of freedom among those that contribute: exact for readings taken together
     * ({@code n - 1}), cautious otherwise; an assumption of this library.
     *
     * @return the degrees of freedom; infinite if every contribution's are
     */
    public DegreesOfFreedom degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /**
     * One line for each input, the largest contribution first, ties by name.
     *
     * @return an unmodifiable list
     */
    public List<Contribution> contributions() {
        return contributions;
    }

    /**
     * The line that contributes most.
     *
     * @return the first of the contributions; empty where none contributes anything
     */
    public Optional<Contribution> largest() {
        return contributions.stream().filter(line -> line.uncertainty() != 0).findFirst();
    }

    /**
     * The expanded uncertainty {@code U = t_p(nu) u}, with the effective degrees of freedom truncated to a whole number
     * (JCGM 100:2008, G.4.1 and G.6.4). For a factor without truncation ask {@link #degreesOfFreedom()} itself.
     *
     * @param probability the coverage probability, at least 0.5 and below 1
     * @return the expanded uncertainty with its factor
     * @throws IllegalArgumentException if the probability is outside its range
     * @throws ArithmeticException if the result overflows
     */
    public Expanded expanded(double probability) {
        DegreesOfFreedom whole = degreesOfFreedom.truncated();
        double factor = whole.coverageFactor(probability);
        return new Expanded(probability, whole, factor, factor * standardUncertainty);
    }

    /**
     * How the uncertainty comes about: contributions in quadrature, and the expanded uncertainty.
     *
     * @param probability the coverage probability, at least 0.5 and below 1
     * @return the working, in the unit of the measurand
     * @throws IllegalArgumentException if the probability is outside its range
     */
    public Working working(double probability) {
        Expanded wide = expanded(probability);
        List<Term> parts = new ArrayList<>();
        StringBuilder sum = new StringBuilder("sqrt(");
        for (Contribution line : contributions) {
            if (line.uncertainty() != 0) {
                String name = "u" + (parts.size() + 1);
                sum.append(parts.isEmpty() ? "" : " + ").append(name).append("^2");
                parts.add(Term.number(name, "contribution of " + line.input().name(), line.uncertainty()));
            }
        }
        boolean alone = measurand.inputs().correlations().isEmpty();
        double together = Quadrature.of(
                contributions.stream().mapToDouble(Contribution::uncertainty).toArray());
        if (!alone) {
            sum.append(parts.isEmpty() ? "" : " + ").append("r");
            double rest = standardUncertainty * standardUncertainty - together * together;
            parts.add(Term.number("r", "what correlations add to the variance", rest));
        }
        sum.append(parts.isEmpty() ? "0)" : ")");
        Term combined = Term.number("u", "standard uncertainty, " + measurand.unit(), standardUncertainty);
        Source guide = Source.published("JCGM 100:2008", "5.1.2, 5.2.2 and G.6.4");
        return new Working(
                "Uncertainty of " + measurand.name(),
                List.of(
                        new Working.Line(combined, sum.toString(), parts, guide),
                        new Working.Line(
                                Term.number("U", "expanded uncertainty, " + measurand.unit(), wide.uncertainty()),
                                "k * u",
                                List.of(Term.number("k", "coverage factor", wide.coverageFactor()), combined),
                                guide)));
    }

    /**
     * The output with its standard uncertainty, rounded to two figures of it.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return measurand.name() + " = " + Figures.of(value, standardUncertainty, measurand.unit());
    }
}
