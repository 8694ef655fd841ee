package dev.tipwright.core.plan;

import dev.tipwright.core.club.Build;

/**
 * One step of the job: it takes a build and gives it back with more work, findings, and what it has to report. Each module has
 * steps of its own; a caller may write others.
 *
 * <p>A step is a pure function of the build and of what it was made with. It may revise earlier work only by returning it in its
 * own, and then says so in a finding. A club that cannot be built yields findings; a step throws only when it is misused.
 *
 * <pre>{@code
 * WorkStep halfInchOff = build -> new StepOutcome(
 *         build.withWork(build.work().withTipTrim(Length.parse("1/2 in"))), List.of(), List.of());
 * ClubPlan six = JobPlanner.of(halfInchOff).plan(Samples.set()).club("6");
 * six.before().work().tipTrim().inches();   // = 0.0
 * six.after().work().tipTrim().inches();    // = 0.5
 * }</pre>
 */
@FunctionalInterface
public interface WorkStep {

    /**
     * Takes the step.
     *
     * @param build parts and the work planned so far
     * @return the build with more work, findings and reports
     */
    StepOutcome take(Build build);
}
