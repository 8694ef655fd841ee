package dev.tipwright.core.rules;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;

/**
 * The step that holds each club against the limits of the Equipment Rules. It changes no work and needs the cut to length.
 *
 * <pre>{@code
 * RulesStep step = RulesStep.within(ClubLimits.WITH_LOCAL_RULE_G10, Length.parse("1/16 in"));
 * step.take(Samples.build()).reports().get(0).headline().get(0).meaning();   // = length by the Rules
 * }</pre>
 */
public final class RulesStep implements WorkStep {

    private final ClubLimits limits;
    private final Length uncertainty;

    private RulesStep(ClubLimits limits, Length uncertainty) {
        this.limits = limits;
        this.uncertainty = uncertainty;
    }

    /**
     * A step for one set of limits.
     *
     * @param limits what to hold clubs against
     * @param uncertainty expanded uncertainty of their lengths; zero to 1 m. Within it of a limit, the finding says so
     * @return the step
     */
    public static RulesStep within(ClubLimits limits, Length uncertainty) {
        return new RulesStep(Require.given("limits", limits), Require.within("uncertainty", uncertainty, 0, 1000));
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        return build.work().seat().insertion().equals(Length.ZERO)
                ? StepOutcome.notTaken(build, Finding.note(RulesCode.NOT_SEATED))
                : StepOutcome.of(build, RulesCheck.of(build, limits, uncertainty), new RulesReport(build, limits));
    }
}
