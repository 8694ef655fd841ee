package dev.tipwright.core.length;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;
import java.util.Optional;

/**
 * Looks at how sure the lengths of a plan are: a shaft that is long enough only within the expanded uncertainty of its
 * butt trim may come out too short.
 */
public final class LengthDoubt implements SetReview {

    private final BenchUncertainty bench;

    /**
     * A review with this bench.
     *
     * @param bench what things are measured and made with
     */
    public LengthDoubt(BenchUncertainty bench) {
        this.bench = Require.given("bench", bench);
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        return Require.<ClubPlan>list("clubs", clubs).stream()
                .flatMap(club -> club.find(CutToLength.class).flatMap(cut -> barelyLongEnough(club, cut)).stream())
                .toList();
    }

    private Optional<ClubFinding> barelyLongEnough(ClubPlan club, CutToLength cut) {
        Measure measure = cut.buttTrimMeasure();
        Optional<Budget> budget = measure.budget(club.after(), bench);
        Length trim = cut.buttTrim();
        if (budget.isEmpty() || trim.nanometres() < 0) {
            return Optional.empty();
        }
        double expanded = budget.get().expanded(Measure.TWO_SIGMA).uncertainty();
        return expanded <= trim.millimetres()
                ? Optional.empty()
                : Optional.of(new ClubFinding(
                        club.label(),
                        Finding.caution(
                                LengthCode.BARELY_LONG_ENOUGH,
                                Term.of("T", "butt trim", trim),
                                measure.expanded(budget.get()))));
    }
}
