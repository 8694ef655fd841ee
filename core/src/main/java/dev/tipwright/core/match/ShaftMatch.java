package dev.tipwright.core.match;

import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * How the shafts of a job were shared out.
 *
 * @param set the clubs with the shafts they take, in the order they came in, nothing done to them yet
 * @param pairs before and after, by the label of the head
 * @param left shafts that no head takes, by label
 * @param findings what came of it
 */
public record ShaftMatch(ClubSet set, List<MatchedPair> pairs, List<Shaft> left, List<Finding> findings)
        implements SetReview {

    /**
     * Checks the values.
     *
     * @param set the clubs with the shafts they take, in the order they came in, nothing done to them yet
     * @param pairs before and after, by the label of the head
     * @param left shafts that no head takes, by label
     * @param findings what came of it
     */
    public ShaftMatch {
        Require.given("set", set);
        pairs = Require.someOf("pairs", pairs);
        left = Require.list("left", left);
        findings = Require.list("findings", findings);
    }

    /**
     * The cost of the set as it came.
     *
     * @return the sum by the label of the head; empty if one of the pairs is not allowed
     */
    public OptionalDouble totalBefore() {
        return sum(MatchedPair::costBefore);
    }

    /**
     * The cost of the set as it is matched.
     *
     * @return the sum by the label of the head; empty if nothing could be shared out
     */
    public OptionalDouble totalAfter() {
        return sum(MatchedPair::costAfter);
    }

    /**
     * The cost of the worst club as the set came.
     *
     * @return the greatest; empty if one of the pairs is not allowed
     */
    public OptionalDouble worstBefore() {
        return worst(MatchedPair::costBefore);
    }

    /**
     * The cost of the worst club as the set is matched.
     *
     * @return the greatest; empty if nothing could be shared out
     */
    public OptionalDouble worstAfter() {
        return worst(MatchedPair::costAfter);
    }

    /**
     * What a plan of {@link #set()} says of it: which heads take another shaft, and, with the first of them, what that
     * does to the cost of the set; what was found if none does, with the first club.
     *
     * @param clubs the planned clubs
     * @return the findings
     */
    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<String> labels = Require.<ClubPlan>list("clubs", clubs).stream()
                .map(ClubPlan::label)
                .toList();
        List<MatchedPair> shown =
                pairs.stream().filter(pair -> labels.contains(pair.head())).toList();
        List<MatchedPair> changed = shown.stream().filter(MatchedPair::changed).toList();
        List<ClubFinding> found = new ArrayList<>();
        for (MatchedPair pair : changed) {
            found.add(new ClubFinding(
                    pair.head(),
                    Finding.note(
                            MatchCode.TAKES_ANOTHER,
                            Term.of("shaft", "shaft it takes", pair.after()),
                            Term.of("before", "shaft it came with", pair.before()))));
        }
        (changed.isEmpty() ? shown : changed)
                .stream()
                        .findFirst()
                        .ifPresent(first ->
                                findings.forEach(finding -> found.add(new ClubFinding(first.head(), finding))));
        return found;
    }

    private OptionalDouble sum(Function<MatchedPair, OptionalDouble> cost) {
        double sum = 0;
        for (MatchedPair pair : pairs) {
            if (cost.apply(pair).isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += cost.apply(pair).getAsDouble();
        }
        if (Double.isInfinite(sum)) {
            throw new ArithmeticException("the sum of the costs of the pairs overflows");
        }
        return OptionalDouble.of(sum);
    }

    private OptionalDouble worst(Function<MatchedPair, OptionalDouble> cost) {
        double worst = Double.NEGATIVE_INFINITY;
        for (MatchedPair pair : pairs) {
            if (cost.apply(pair).isEmpty()) {
                return OptionalDouble.empty();
            }
            worst = Math.max(worst, cost.apply(pair).getAsDouble());
        }
        return OptionalDouble.of(worst);
    }
}
