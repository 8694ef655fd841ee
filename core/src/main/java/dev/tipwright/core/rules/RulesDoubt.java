package dev.tipwright.core.rules;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.UncertainClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at how sure the lengths are that were held against the Rules, each with its own budget: within its expanded uncertainty of a limit
 * nobody can tell on which side a club is. It goes with a {@link RulesStep} that was told of no uncertainty.
 */
public final class RulesDoubt implements SetReview {

    private static final Measure NECK =
            Measure.length("H", "neck", build -> build.parts().head().geometry().mouthToGround());

    private final BenchUncertainty bench;

    /**
     * A review with this bench.
     *
     * @param bench what things are measured and made with
     */
    public RulesDoubt(BenchUncertainty bench) {
        this.bench = Require.given("bench", bench);
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubFinding> found = new ArrayList<>();
        for (ClubPlan club : Require.<ClubPlan>list("clubs", clubs)) {
            club.find(RulesReport.class)
                    .ifPresent(report ->
                            tooNear(report).forEach(finding -> found.add(new ClubFinding(club.label(), finding))));
        }
        return found;
    }

    private List<Finding> tooNear(RulesReport report) {
        UncertainClub club = UncertainClub.of(report.build(), bench);
        ClubLimits limits = report.limits();
        Measure length = report.measures().get(0);
        boolean putter = report.build().parts().head().kind() == ClubKind.PUTTER;
        List<Finding> findings = new ArrayList<>();
        if (!putter) {
            tooNear(club, length, limits.longest(), limits).ifPresent(findings::add);
        }
        tooNear(club, length, limits.shortest(), limits).ifPresent(findings::add);
        tooNear(club, NECK, limits.neck(), limits).ifPresent(findings::add);
        return findings;
    }

    private static Optional<Finding> tooNear(UncertainClub club, Measure measure, Length limit, ClubLimits limits) {
        Optional<Budget> budget = club.budget(measure);
        return budget.filter(known -> Math.abs(known.value() - limit.millimetres())
                        < known.expanded(Measure.TWO_SIGMA).uncertainty())
                .map(known -> Finding.caution(
                        RulesCode.TOO_NEAR,
                        Term.of("what", "what", measure.meaning()),
                        measure.term("value", measure.meaning(), known.value()),
                        Term.of("limit", "limit", limit),
                        Term.of("edition", "edition", limits.edition()),
                        measure.expanded(known)));
    }
}
