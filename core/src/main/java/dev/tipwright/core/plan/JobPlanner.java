package dev.tipwright.core.plan;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.internal.arg.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Plans a job: takes every club of a set through the same steps, in the order in which one step needs another, and
 * then reviews the set. It knows nothing of what the steps do; the modules supply them.
 *
 * <pre>{@code
 * JobPlanner planner = JobPlanner.of(
 *         TipTrimStep.by(Samples.chart(), Length.parse("1/16 in")),
 *         CutToLengthStep.to(Samples.lengths(), Length.parse("1/16 in")));
 * ClubPlan six = planner.plan(Samples.set()).club("6");
 * six.report(TipTrim.class).trim().inches();             // = 0.5
 * six.report(CutToLength.class).cutLength().inches();    // = 36.375
 * }</pre>
 *
 * @param steps one or more, in the order of need
 * @param reviews looks at the set when all clubs are planned; may be empty
 */
public record JobPlanner(List<WorkStep> steps, List<SetReview> reviews) {

    /**
     * Checks the values.
     *
     * @param steps one or more, in the order of need
     * @param reviews looks at the set when all clubs are planned; may be empty
     */
    public JobPlanner {
        steps = Require.someOf("steps", steps);
        reviews = Require.list("reviews", reviews);
    }

    /**
     * A planner without reviews.
     *
     * @param steps one or more, in the order of need
     * @return the planner
     */
    public static JobPlanner of(WorkStep... steps) {
        return new JobPlanner(Arrays.asList(Require.given("steps", steps)), List.of());
    }

    /**
     * This planner with reviews of the set.
     *
     * @param reviews what to look at when all clubs are planned
     * @return a copy that does
     */
    public JobPlanner reviewedBy(SetReview... reviews) {
        return new JobPlanner(steps, Arrays.asList(Require.given("reviews", reviews)));
    }

    /**
     * Plans a set. One club that cannot be built yields findings; the rest is still planned.
     *
     * @param set the clubs
     * @return a plan for each
     * @throws IllegalArgumentException if a review names a club that the set has not
     */
    public JobPlan plan(ClubSet set) {
        return plan(set, Progress.UNHEARD);
    }

    /**
     * Plans a set and says after each club how far it has come: a step may take long, and a set may be a stock of thousands.
     *
     * @param set the clubs
     * @param progress told after each club
     * @return a plan for each
     */
    public JobPlan plan(ClubSet set, Progress progress) {
        Require.given("set", set);
        Require.given("progress", progress);
        List<ClubPlan> clubs = new ArrayList<>();
        for (Build build : set.builds()) {
            clubs.add(plan(build));
            progress.at(clubs.size(), set.builds().size());
        }
        List<ClubFinding> found = reviews.stream()
                .flatMap(review -> review.review(clubs).stream())
                .toList();
        List<String> labels = set.builds().stream().map(Build::label).toList();
        for (ClubFinding finding : found) {
            Require.that(
                    labels.contains(finding.label()), "reviews", "must find only in clubs of the set", finding.label());
        }
        return new JobPlan(
                clubs.stream().map(club -> club.plus(of(club, found))).toList());
    }

    private static List<Finding> of(ClubPlan club, List<ClubFinding> found) {
        return found.stream()
                .filter(finding -> finding.label().equals(club.label()))
                .map(ClubFinding::finding)
                .toList();
    }

    /**
     * Plans one club, without review.
     *
     * @param build the club
     * @return its plan
     */
    public ClubPlan plan(Build build) {
        Require.given("build", build);
        StepOutcome[] outcomes = new StepOutcome[steps.size()];
        Build after = build;
        int findings = 0;
        int reports = 0;
        for (int i = 0; i < outcomes.length; i++) {
            outcomes[i] = steps.get(i).take(after);
            after = outcomes[i].after();
            findings += outcomes[i].findings().size();
            reports += outcomes[i].reports().size();
        }
        Finding[] found = new Finding[findings];
        StepReport[] reported = new StepReport[reports];
        findings = 0;
        reports = 0;
        for (StepOutcome outcome : outcomes) {
            for (int k = 0; k < outcome.findings().size(); k++) {
                found[findings++] = outcome.findings().get(k);
            }
            for (int k = 0; k < outcome.reports().size(); k++) {
                reported[reports++] = outcome.reports().get(k);
            }
        }
        return new ClubPlan(build, after, List.of(found), List.of(reported));
    }
}
