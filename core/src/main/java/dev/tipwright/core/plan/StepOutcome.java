package dev.tipwright.core.plan;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.internal.arg.Require;
import java.util.List;

/**
 * What came of a step.
 *
 * @param after the build with the work of this step
 * @param findings what the builder must know
 * @param reports what the step has to report; empty if it could not be taken
 */
public record StepOutcome(Build after, List<Finding> findings, List<StepReport> reports) {

    /**
     * Checks the values.
     *
     * @param after the build with the work of this step
     * @param findings what the builder must know
     * @param reports what the step has to report; empty if it could not be taken
     */
    public StepOutcome {
        Require.given("after", after);
        findings = Require.list("findings", findings);
        reports = Require.list("reports", reports);
    }

    /**
     * A step that was taken.
     *
     * @param after the build with the work of this step
     * @param findings what the builder must know
     * @param report what the step has to report
     * @return the outcome
     */
    public static StepOutcome of(Build after, List<Finding> findings, StepReport report) {
        return new StepOutcome(after, findings, List.of(Require.given("report", report)));
    }

    /**
     * A step that could not be taken, and why.
     *
     * @param unchanged the build as it was
     * @param why findings
     * @return the outcome
     */
    public static StepOutcome notTaken(Build unchanged, Finding... why) {
        return new StepOutcome(Require.given("unchanged", unchanged), Require.all("why", why), List.of());
    }
}
