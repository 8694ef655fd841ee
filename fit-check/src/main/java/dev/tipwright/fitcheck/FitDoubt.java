package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Interval;
import dev.tipwright.core.uncertainty.LinearityCheck;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.core.uncertainty.MonteCarloResult;
import dev.tipwright.core.uncertainty.UncertainClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at how sure the fits of a plan are. A wall or a bonded length that keeps its limit by less than its expanded
 * uncertainty is said to do so.
 *
 * <p>The first contact jumps where a tip is about as wide as a step in the bore, and the least clearance bends where it
 * moves from one place to another: then a budget to first order misleads, and trials by Monte Carlo say more. The trials are always the same, so the finding is too.
 */
public final class FitDoubt implements SetReview {

    /** How far first order and trials may be apart, as a part of the larger; an assumption of this library. */
    public static final double TOLERANCE = 0.1;

    /** All that moves a first contact: the bore and the tip as it is. */
    static final List<BenchInput> OF_CONTACT = List.of(
            BenchInput.BORE_DIAMETER,
            BenchInput.BORE_DEPTH,
            BenchInput.TIP_DIAMETER,
            BenchInput.FINISH,
            BenchInput.CUTS);

    /** All that moves the clearance of a finished tip: the bore, and how the tip is finished. */
    static final List<BenchInput> OF_CLEARANCE =
            List.of(BenchInput.BORE_DIAMETER, BenchInput.BORE_DEPTH, BenchInput.FINISHED_TIP);

    /** Enough to know a standard uncertainty to about three per cent, well inside the tolerance. */
    private static final MonteCarlo TRIALS = MonteCarlo.of(500, 1);

    private final BenchUncertainty bench;
    private final FitTarget target;

    /**
     * A review with this bench.
     *
     * @param bench what things are measured and made with
     * @param target the limits of the fit
     */
    public FitDoubt(BenchUncertainty bench, FitTarget target) {
        this.bench = Require.given("bench", bench);
        this.target = Require.given("target", target);
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubFinding> found = new ArrayList<>();
        for (ClubPlan club : Require.<ClubPlan>list("clubs", clubs)) {
            club.find(TipFit.class).ifPresent(fit -> {
                UncertainClub all = UncertainClub.of(club.after(), bench);
                Optional<UncertainClub> contact = some(club, OF_CONTACT);
                Optional<UncertainClub> clearance = some(club, OF_CLEARANCE);
                List<Finding> findings = new ArrayList<>();
                for (Measure measure : fit.measures()) {
                    switch (measure.symbol()) {
                        case "i0", "i1" ->
                            contact.flatMap(some -> straight(measure, some)).ifPresent(findings::add);
                        case "c" ->
                            clearance.flatMap(some -> straight(measure, some)).ifPresent(findings::add);
                        case "i" ->
                            limit(measure, all, target.leastInsertion().known()).ifPresent(findings::add);
                        case "t" ->
                            limit(measure, all, target.leastWall().known()).ifPresent(findings::add);
                        default -> {}
                    }
                }
                findings.forEach(finding -> found.add(new ClubFinding(club.label(), finding)));
            });
        }
        return found;
    }

    private Optional<UncertainClub> some(ClubPlan club, List<BenchInput> uses) {
        return bench.only(uses.toArray(BenchInput[]::new)).map(left -> UncertainClub.of(club.after(), left));
    }

    private Optional<Finding> limit(Measure measure, UncertainClub club, Optional<Length> least) {
        Optional<Budget> budget = club.budget(measure);
        if (budget.isEmpty() || least.isEmpty()) {
            return Optional.empty();
        }
        double over = budget.get().value() - least.get().millimetres();
        double expanded = budget.get().expanded(Measure.TWO_SIGMA).uncertainty();
        return over < 0 || over >= expanded
                ? Optional.empty()
                : Optional.of(Finding.note(
                        FitCode.LIMIT_KEPT_BY_LITTLE,
                        Term.of("what", "what is near its limit", measure.meaning()),
                        measure.term("v", measure.meaning(), budget.get().value()),
                        measure.term("min", "the limit", least.get().millimetres()),
                        measure.expanded(budget.get())));
    }

    private Optional<Finding> straight(Measure measure, UncertainClub club) {
        try {
            return parting(measure, club.measurand(measure));
        } catch (IllegalArgumentException | ArithmeticException notBuilt) {
            // A club two standard uncertainties away cannot be built; what stops it has a finding of its own.
            return Optional.empty();
        }
    }

    private static Optional<Finding> parting(Measure measure, Measurand measurand) {
        Optional<String> stray = LinearityCheck.straysWith(measurand, TOLERANCE);
        if (stray.isEmpty()) {
            return Optional.empty();
        }
        Budget budget = Budget.of(measurand);
        MonteCarloResult trials = TRIALS.run(measurand);
        double first = budget.standardUncertainty();
        double second = trials.standardUncertainty();
        if (Math.abs(first - second) <= TOLERANCE * Math.max(first, second)) {
            return Optional.empty();
        }
        Interval interval = trials.shortestInterval(0.95);
        return Optional.of(Finding.note(
                FitCode.FIRST_ORDER_MISLEADS,
                Term.of("what", "of which number", measure.meaning()),
                measure.term("v", measure.meaning(), budget.value()),
                Term.of("input", "what it bends or jumps with", stray.get()),
                measure.expanded(budget),
                measure.term("low", "lower end of 95 % of the trials", interval.low()),
                measure.term("high", "upper end of 95 % of the trials", interval.high())));
    }
}
