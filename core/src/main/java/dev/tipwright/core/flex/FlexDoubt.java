package dev.tipwright.core.flex;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Distribution;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks at how sure it is that a club is on the line of frequency through its set, or off it: one that is nearer to what is allowed than
 * the expanded uncertainty of its distance is said to be so. The line goes through all the clubs, so the uncertainty of each is in the
 * distance of every other; what is most to blame is told of the club itself.
 *
 * <p>Each club counts as if it were wrong by itself, and its length as known. What all of them are wrong in alike, or in step with their
 * lengths, falls out of every distance: for a timer that is always one a minute ahead, or a clamp that is always half a millimetre deeper, the
 * uncertainty is too large and never too small. What some of them share and others do not may come to more than is counted here, by up to the
 * square root of the number of clubs: time the shafts of a set in one sitting. It goes with a {@link FlexReview}.
 */
public final class FlexDoubt implements SetReview {

    private final BenchUncertainty bench;
    private final Frequency tolerance;

    /**
     * A review with this bench.
     *
     * @param bench what things are measured and made with
     * @param tolerance how far off the line a club may be; zero or more
     */
    public FlexDoubt(BenchUncertainty bench, Frequency tolerance) {
        this.bench = Require.given("bench", bench);
        this.tolerance = new FlexReview(tolerance).tolerance();
    }

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubFinding> found = new ArrayList<>();
        Optional<FrequencyLine> line = FlexReview.line(clubs);
        Optional<Inputs> frequencies = line.flatMap(known -> frequencies(clubs));
        for (ClubPlan club : clubs) {
            if (frequencies.isPresent() && club.find(ClubFrequency.class).isPresent()) {
                nearTheEdge(club, line.get(), frequencies.get())
                        .ifPresent(finding -> found.add(new ClubFinding(club.label(), finding)));
            }
        }
        return found;
    }

    /** The frequency of each club with its uncertainty; none if that of one is not known. */
    private Optional<Inputs> frequencies(List<ClubPlan> clubs) {
        List<Input> inputs = new ArrayList<>();
        for (ClubPlan club : clubs) {
            Optional<ClubFrequency> planned = club.find(ClubFrequency.class);
            if (planned.isPresent()) {
                Optional<Budget> budget = budget(planned.get());
                if (budget.isEmpty()) {
                    return Optional.empty();
                }
                inputs.add(new Input(
                        club.label(),
                        "/min",
                        budget.get().value(),
                        budget.get().standardUncertainty(),
                        budget.get().degreesOfFreedom(),
                        Distribution.NORMAL));
            }
        }
        return Optional.of(Inputs.of(inputs));
    }

    private Optional<Budget> budget(ClubFrequency club) {
        return club.measures().stream().findFirst().flatMap(measure -> measure.budget(club.build(), bench));
    }

    private Optional<Finding> nearTheEdge(ClubPlan club, FrequencyLine line, Inputs frequencies) {
        Frequency off = line.off(club.label());
        double expanded = Budget.of(Measurand.of(
                        "off the line",
                        "/min",
                        frequencies,
                        values -> line.through(values).off(club.label()).perMinute()))
                .expanded(Measure.TWO_SIGMA)
                .uncertainty();
        double distance = Math.abs(off.perMinute());
        if (Math.abs(distance - tolerance.perMinute()) > expanded) {
            return Optional.empty();
        }
        ClubFrequency planned = club.report(ClubFrequency.class);
        return budget(planned)
                .flatMap(Budget::largest)
                .map(largest -> Finding.note(
                        distance <= tolerance.perMinute() ? FlexCode.MARGINAL : FlexCode.OFF_BY_LITTLE,
                        Term.of("f", "frequency", planned.frequency()),
                        FlexReview.distance(off),
                        FlexReview.way(off),
                        Term.of("within", "off the line as allowed", tolerance),
                        Term.of("U", "expanded uncertainty of the distance", Frequency.ofPerMinute(expanded)),
                        Term.of(
                                "most",
                                "most of the club's own uncertainty",
                                largest.input().name())));
    }
}
