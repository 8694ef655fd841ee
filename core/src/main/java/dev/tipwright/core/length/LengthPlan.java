package dev.tipwright.core.length;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The playing lengths of a set: a table, a step, the customer's old clubs with or without a change, or a rule of the caller's. For the
 * longest set that the given shafts allow see {@link LongestSet}.
 *
 * <pre>{@code
 * LengthPlan plan = LengthPlan.byStep(
 *         List.of("5", "6", "7"), Length.parse("38 in"), Length.parse("1/2 in"), LengthMeasure.SIXTY_DEGREE_PLANE);
 * plan.target("6").orElseThrow().length().inches();   // = 37.5
 * }</pre>
 *
 * @param targets one a club, clubs distinct
 */
public record LengthPlan(List<LengthTarget> targets) {

    /**
     * Checks the values.
     *
     * @param targets one a club, clubs distinct
     */
    public LengthPlan {
        targets = Require.distinct("targets", Require.someOf("targets", targets), LengthTarget::club);
    }

    /**
     * A plan by step: each club shorter than the one before by the same amount.
     *
     * <pre>{@code
     * LengthPlan plan = LengthPlan.byStep(
     *         List.of("5", "6", "7"), Length.parse("38 in"), Length.parse("1/2 in"), LengthMeasure.ALONG_AXIS);
     * plan.target("7").orElseThrow().length().inches();   // = 37.0
     * }</pre>
     *
     * @param clubs labels, the longest club first; distinct
     * @param first length of the first
     * @param step how much shorter each next club is; a negative step makes it longer
     * @param measure what the lengths are measured by
     * @return the plan
     * @throws IllegalArgumentException if a length is not above zero and at most 3 m
     */
    public static LengthPlan byStep(List<String> clubs, Length first, Length step, LengthMeasure measure) {
        Require.someOf("clubs", clubs);
        Require.someUpTo("first", first, 3000);
        Require.within("step", step, -3000, 3000);
        Require.given("measure", measure);
        List<LengthTarget> targets = new ArrayList<>();
        Length length = first;
        for (String club : Require.distinct("clubs", Require.<String>list("clubs", clubs), label -> label)) {
            Require.that(
                    length.nanometres() > 0 && !length.moreThan(Length.ofMillimetres(3000)),
                    "step",
                    "must leave every one of clubs above zero and at most 3 m",
                    step + " from " + first);
            targets.add(new LengthTarget(Require.label("clubs", club), length, measure));
            length = length.minus(step);
        }
        return new LengthPlan(targets);
    }

    /**
     * A plan by a rule of the caller's: equal moment of inertia, say, or anything else that gives a length for a club.
     *
     * @param set the clubs
     * @param measure what the lengths are measured by
     * @param length gives the length of each club; above zero, at most 3 m
     * @return the plan
     */
    public static LengthPlan byRule(ClubSet set, LengthMeasure measure, Function<Build, Length> length) {
        Require.given("set", set);
        Require.given("measure", measure);
        Require.given("length", length);
        return new LengthPlan(set.builds().stream()
                .map(build -> new LengthTarget(build.label(), length.apply(build), measure))
                .toList());
    }

    /**
     * The same plan with every club longer: the customer's old clubs as measured, and half an inch more, say.
     *
     * @param by how much longer; negative for shorter
     * @return the plan
     * @throws IllegalArgumentException if a length is then not above zero and at most 3 m
     */
    public LengthPlan lengthenedBy(Length by) {
        Require.within("by", by, -3000, 3000);
        return new LengthPlan(targets.stream()
                .map(target -> {
                    Length length = target.length().plus(by);
                    Require.that(
                            length.nanometres() > 0 && !length.moreThan(Length.ofMillimetres(3000)),
                            "by",
                            "must leave club " + target.club() + " above zero and at most 3 m",
                            by);
                    return target.withLength(length);
                })
                .toList());
    }

    /**
     * The target of one club.
     *
     * @param club label of the club
     * @return the target, empty if the plan has none
     */
    public Optional<LengthTarget> target(String club) {
        Require.given("club", club);
        for (LengthTarget target : targets) {
            if (target.club().equals(club)) {
                return Optional.of(target);
            }
        }
        return Optional.empty();
    }

    /**
     * This one with another value in one place.
     *
     * @param targets one a club, clubs distinct
     * @return a copy that differs in that alone
     */
    public LengthPlan withTargets(List<LengthTarget> targets) {
        return new LengthPlan(targets);
    }
}
