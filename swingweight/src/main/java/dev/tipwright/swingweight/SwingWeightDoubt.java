package dev.tipwright.swingweight;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at how sure the swing weights of a plan are: a target that is met, or missed, by less than the expanded
 * uncertainty is said to be so; and where the head's centre of mass contributes most, a reading of the dry build is
 * worth taking, because it makes up for that.
 */
public final class SwingWeightDoubt implements SetReview {

    private final BenchUncertainty bench;

    /**
     * A review with this bench.
     *
     * @param bench what things are measured and made with
     */
    public SwingWeightDoubt(BenchUncertainty bench) {
        this.bench = Require.given("bench", bench);
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubFinding> found = new ArrayList<>();
        for (ClubPlan club : Require.<ClubPlan>list("clubs", clubs)) {
            club.find(ClubBalance.class)
                    .ifPresent(balance -> balance.pointsMeasure()
                            .budget(club.after(), bench)
                            .ifPresent(budget -> findings(balance, budget)
                                    .forEach(finding -> found.add(new ClubFinding(club.label(), finding)))));
        }
        return found;
    }

    private static List<Finding> findings(ClubBalance balance, Budget budget) {
        Term uncertainty = balance.pointsMeasure().expanded(budget);
        List<Finding> findings = new ArrayList<>();
        balance.target().flatMap(target -> nearTheEdge(balance, target, budget)).ifPresent(findings::add);
        Optional<Contribution> largest = budget.largest();
        if (largest.isPresent() && largest.get().input().name().equals(Measure.HEAD_CENTRE)) {
            findings.add(Finding.note(
                    SwingWeightCode.DRY_BUILD_WORTH,
                    uncertainty,
                    Term.count(
                            "share",
                            "per cent of the variance",
                            Math.round(100 * largest.get().share()))));
        }
        return findings;
    }

    private static Optional<Finding> nearTheEdge(ClubBalance balance, SwingWeightTarget target, Budget budget) {
        double off = Math.abs(balance.reads().over(target.wanted()));
        double expanded = budget.expanded(Measure.TWO_SIGMA).uncertainty();
        if (Math.abs(off - target.within()) > expanded) {
            return Optional.empty();
        }
        return Optional.of(Finding.note(
                off <= target.within() ? SwingWeightCode.MARGINAL : SwingWeightCode.MISSED_BY_LITTLE,
                Term.of("reads", "swing weight", balance.scale().designation(balance.reads())),
                Term.number("off", "points off", off),
                Term.of("wanted", "wanted", balance.scale().designation(target.wanted())),
                Term.number("within", "points allowed", target.within()),
                balance.pointsMeasure().expanded(budget)));
    }
}
