package dev.tipwright.core.plan;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.internal.arg.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The plan of one club.
 *
 * @param before parts and work as they came in
 * @param after with all the work that is planned
 * @param findings what the builder must know, in the order of the steps
 * @param reports what the steps report
 */
public record ClubPlan(Build before, Build after, List<Finding> findings, List<StepReport> reports) {

    /**
     * Checks the values.
     *
     * @param before parts and work as they came in
     * @param after with all the work that is planned
     * @param findings what the builder must know, in the order of the steps
     * @param reports what the steps report
     */
    public ClubPlan {
        Require.given("before", before);
        Require.given("after", after);
        findings = Require.list("findings", findings);
        reports = Require.list("reports", reports);
    }

    /**
     * How the bench calls this club.
     *
     * @return the label of its head
     */
    public String label() {
        return after.label();
    }

    /**
     * The report of one kind, if a step made it.
     *
     * @param type the kind of report
     * @param <R> the kind of report
     * @return the last of that kind, empty if there is none
     */
    public <R extends StepReport> Optional<R> find(Class<R> type) {
        Require.given("type", type);
        for (int i = reports.size() - 1; i >= 0; i--) {
            if (type.isInstance(reports.get(i))) {
                return Optional.of(type.cast(reports.get(i)));
            }
        }
        return Optional.empty();
    }

    /**
     * The report of one kind.
     *
     * @param type the kind of report
     * @param <R> the kind of report
     * @return the last of that kind
     * @throws IllegalArgumentException if no step made one; the findings say why
     */
    public <R extends StepReport> R report(Class<R> type) {
        Require.given("type", type);
        return find(type)
                .orElseThrow(() -> new IllegalArgumentException("type must be a report that a step made for club "
                        + label() + ", was " + type.getSimpleName() + "; findings: "
                        + findings.stream()
                                .map(finding -> finding.code().name())
                                .toList()));
    }

    /**
     * How grave the gravest finding is. A club is not to be built as planned while it is a {@link Severity#STOP}.
     *
     * @return the greatest severity; empty if there are no findings
     */
    public Optional<Severity> worst() {
        return findings.stream().map(Finding::severity).max(Severity::compareTo);
    }

    /**
     * What is to be done, in bench order.
     *
     * @return the operations of all reports, by stage, those of one stage in the order of the steps
     */
    public List<Operation> operations() {
        return reports.stream()
                .flatMap(report -> report.operations().stream())
                .sorted(Comparator.comparing(Operation::stage))
                .toList();
    }

    /**
     * This plan with more findings.
     *
     * @param more what a review found
     * @return a copy with them at the end
     */
    ClubPlan plus(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new ClubPlan(before, after, all, reports);
    }
}
