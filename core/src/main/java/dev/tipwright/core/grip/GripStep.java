package dev.tipwright.core.grip;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import java.util.ArrayList;
import java.util.List;

/**
 * The step that sizes each grip. It needs the butt trim, and adds the tape to the club as an attachment centred half way down the grip;
 * a caller who lists the tape among the attachments gives layers without mass. A club that has this very tape on it is not taped again.
 */
public final class GripStep implements WorkStep {

    private final TapeLayers tape;

    private GripStep(TapeLayers tape) {
        this.tape = tape;
    }

    /**
     * A step that puts every grip on the same tape.
     *
     * @param tape the layers
     * @return the step
     */
    public static GripStep over(TapeLayers tape) {
        return new GripStep(Require.given("tape", tape));
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        GripFit fit = GripFit.of(build, tape);
        Term label = Term.of("grip", "grip", fit.grip().label());
        List<Finding> findings = new ArrayList<>();
        if (fit.grip().size() instanceof Reading.Unknown<GripSize> unknown) {
            findings.add(Finding.note(GripCode.SIZE_UNKNOWN, label, Term.of("ask", "whom to ask", unknown.ask())));
        }
        fit.overCore()
                .filter(over -> over.nanometres() < 0)
                .ifPresent(over -> findings.add(Finding.caution(
                        GripCode.LOOSE,
                        label,
                        Term.fine("dt", "butt with its tape", fit.taped()),
                        Term.fine("s", "smaller by", over.negated()))));
        if (fit.bareBelow().nanometres() < 0) {
            findings.add(Finding.stop(
                    GripCode.TOO_LONG,
                    label,
                    Term.of("s", "past the hosel", fit.bareBelow().negated())));
        }
        return StepOutcome.of(taped(build), findings, fit);
    }

    /** With the tape on, unless it has none that weighs anything, or the same is on already because the club is planned again. */
    private Build taped(Build build) {
        if (tape.total().picograms() == 0) {
            return build;
        }
        Attachment wound =
                new GripTape("tape", tape.total(), build.parts().grip().length().half());
        return build.work().attached().contains(wound)
                ? build
                : build.withWork(build.work().plus(wound));
    }
}
