package dev.tipwright.core.length;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The step that cuts each club to its playing length. It needs the insertion.
 *
 * <pre>{@code
 * CutToLengthStep step = CutToLengthStep.to(Samples.lengths(), Length.parse("1/16 in"));
 * StepOutcome outcome = step.take(Samples.build());
 * outcome.after().cutLength().inches();                       // = 36.375
 * PlayingLength.alongAxis(outcome.after()).inches();          // = 37.5
 * }</pre>
 */
public final class CutToLengthStep implements WorkStep {

    private final LengthPlan lengths;
    private final Length kerf;

    private CutToLengthStep(LengthPlan lengths, Length kerf) {
        this.lengths = lengths;
        this.kerf = kerf;
    }

    /**
     * A step that cuts to a length plan.
     *
     * @param lengths a target for each club
     * @param kerf width of the saw cut; zero or more
     * @return the step
     */
    public static CutToLengthStep to(LengthPlan lengths, Length kerf) {
        return new CutToLengthStep(Require.given("lengths", lengths), Require.notNegative("kerf", kerf));
    }

    @Override
    public StepOutcome take(Build build) {
        Require.given("build", build);
        Optional<LengthTarget> target = lengths.target(build.label());
        if (target.isEmpty()) {
            return StepOutcome.notTaken(
                    build, Finding.stop(LengthCode.NO_TARGET, Term.of("club", "club", build.label())));
        }
        if (build.work().seat().insertion().equals(Length.ZERO)) {
            return StepOutcome.notTaken(build, Finding.stop(LengthCode.NOT_SEATED));
        }
        Head head = build.parts().head();
        Work work = build.work();
        Length alongAxis = alongAxis(target.get(), head);
        if (alongAxis.nanometres() <= 0) {
            return StepOutcome.notTaken(build, tooShort(alongAxis, work.seat().insertion()));
        }
        CutToLength cut = new CutToLength(
                alongAxis,
                build.buttFromTop(),
                head.bore().depth(),
                work.seat().insertion(),
                head.bottomToGround(),
                build.parts().shaft().length(),
                work.tipTrim(),
                kerf);
        StepOutcome outcome = made(build, cut);
        if (target.get().measure() == LengthMeasure.ALONG_AXIS) {
            return outcome;
        }
        List<Finding> findings = new ArrayList<>(outcome.findings());
        findings.add(Finding.note(
                LengthCode.BY_PLANE,
                Term.of("L60", "length by the 60 degree plane", target.get().length()),
                Term.of("L", "playing length", cut.target())));
        return new StepOutcome(outcome.after(), findings, outcome.reports());
    }

    private static Length alongAxis(LengthTarget target, Head head) {
        return switch (target.measure()) {
            case ALONG_AXIS -> target.length();
            case SIXTY_DEGREE_PLANE -> SixtyDegreePlane.of(head).alongAxis(target.length());
        };
    }

    private static Finding tooShort(Length alongAxis, Length insertion) {
        return Finding.stop(
                LengthCode.TARGET_TOO_SHORT,
                Term.of("L", "playing length", alongAxis),
                Term.of("i", "insertion", insertion));
    }

    private static StepOutcome made(Build build, CutToLength cut) {
        Term length = Term.of("L", "playing length", cut.target());
        if (!cut.cutLength().moreThan(cut.insertion())) {
            return StepOutcome.notTaken(build, tooShort(cut.target(), cut.insertion()));
        }
        if (cut.buttTrim().nanometres() < 0) {
            Finding tooShort = Finding.stop(
                    LengthCode.SHAFT_TOO_SHORT,
                    Term.of("s", "missing", cut.buttTrim().negated()),
                    length,
                    Term.of("Lmax", "longest playing length", cut.longest()));
            return StepOutcome.of(build.withWork(build.work().withButtTrim(Length.ZERO)), List.of(tooShort), cut);
        }
        return StepOutcome.of(build.withWork(build.work().withButtTrim(cut.buttTrim())), List.of(), cut);
    }
}
