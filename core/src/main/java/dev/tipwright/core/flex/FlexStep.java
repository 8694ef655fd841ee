package dev.tipwright.core.flex;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The step that says how fast each club will swing. It changes no work and needs the insertion and both cuts; where too little is known
 * it says whom to ask.
 *
 * <pre>{@code
 * FlexStep step = FlexStep.clamping(Length.parse("5 in"), Frequency.ofPerMinute(3));
 * step.take(Samples.build()).reports().size();   // = 1
 * }</pre>
 */
public final class FlexStep implements WorkStep {

    private final Length clamp;
    private final Frequency tolerance;

    private FlexStep(Length clamp, Frequency tolerance) {
        this.clamp = clamp;
        this.tolerance = tolerance;
    }

    /**
     * A step for clubs clamped alike.
     *
     * @param clamp length held in the clamp, from the cut butt; zero or more
     * @param tolerance how far further timings of a raw shaft may be from what its stiffness gives before that is a finding; zero or
     *     more
     * @return the step
     */
    public static FlexStep clamping(Length clamp, Frequency tolerance) {
        Require.notNegative("clamp", clamp);
        Require.given("tolerance", tolerance);
        Require.that(tolerance.perMinute() >= 0, "tolerance", "must not be negative", tolerance);
        return new FlexStep(clamp, tolerance);
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        Optional<Finding> missing = missing(build);
        Optional<ClubFrequency> club = missing.isPresent() ? Optional.empty() : ClubFrequency.of(build, clamp);
        return club.map(known -> StepOutcome.of(build, findings(known), known))
                .orElseGet(() ->
                        StepOutcome.notTaken(build, missing.orElseGet(() -> Finding.note(FlexCode.STIFFNESS_SHORT))));
    }

    /** Why there can be no frequency, as far as that can be seen before the stiffness is worked out. */
    private Optional<Finding> missing(Build build) {
        Shaft shaft = build.parts().shaft();
        if (build.work().seat().insertion().equals(Length.ZERO)) {
            return Optional.of(Finding.note(FlexCode.NOT_SEATED));
        }
        Length above = ClubFrequency.aboveMouth(build);
        if (!clamp.lessThan(above)) {
            return Optional.of(Finding.caution(
                    FlexCode.NO_BEAM,
                    Term.of("c", "length in the clamp", clamp),
                    Term.of("v", "shaft above the hosel mouth", above)));
        }
        if (shaft.flex() instanceof Reading.Unknown<ShaftFlex> flex) {
            return Optional.of(unknown(FlexCode.STIFFNESS_UNKNOWN, flex));
        }
        if (shaft.flex().known().orElseThrow().shape() instanceof Reading.Unknown<?> shape) {
            return Optional.of(unknown(FlexCode.STIFFNESS_UNKNOWN, shape));
        }
        if (ShaftCut.lineDensity(shaft).isEmpty()) {
            return Optional.of(Finding.note(
                    FlexCode.MASS_UNKNOWN,
                    Term.of("b", "balance point", shaft.mass().balance())));
        }
        return build.parts().head().mass().centre() instanceof Reading.Unknown<?> centre
                ? Optional.of(unknown(FlexCode.CENTRE_UNKNOWN, centre))
                : Optional.empty();
    }

    private static Finding unknown(FlexCode code, Reading.Unknown<?> reading) {
        return Finding.note(code, Term.of("ask", "whom to ask", reading.ask()));
    }

    private List<Finding> findings(ClubFrequency club) {
        List<ShapeCheck> checks = club.bend().checks(club.build().parts().shaft());
        List<Finding> findings = new ArrayList<>();
        if (checks.isEmpty()) {
            findings.add(Finding.note(FlexCode.NOT_TIMED, Term.of("f", "frequency", club.frequency())));
        }
        // The first was used to scale the shape and is met by it.
        for (ShapeCheck check : checks.subList(Math.min(1, checks.size()), checks.size())) {
            if (Math.abs(check.residual().perMinute()) > tolerance.perMinute()) {
                findings.add(Finding.caution(
                        FlexCode.SHAPE_OFF,
                        Term.of("m", "mass on the tip", check.timed().tipMass()),
                        Term.of("c", "length in the clamp", check.timed().clamp()),
                        Term.of("t", "timed", check.timed().frequency()),
                        Term.of("p", "by the stiffness", check.predicted()),
                        Term.of("d", "timed less that", check.residual())));
            }
        }
        return findings;
    }
}
