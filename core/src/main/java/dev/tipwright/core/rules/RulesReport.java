package dev.tipwright.core.rules;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The length of a club as the Rules measure it, and what it was held against.
 *
 * @param build a seated club
 * @param limits what it was held against
 */
public record RulesReport(Build build, ClubLimits limits) implements StepReport {

    /**
     * Checks the values.
     *
     * @param build a seated club
     * @param limits what it was held against
     */
    public RulesReport {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().nanometres() > 0,
                "build",
                "must be seated",
                build.work().seat());
        Require.given("limits", limits);
    }

    /**
     * The length the Rules measure: by the 60 degree plane, or for a putter along the axis.
     *
     * @return the length
     */
    public Length length() {
        return RulesCheck.length(build);
    }

    private boolean putter() {
        return build.parts().head().kind() == ClubKind.PUTTER;
    }

    @Override
    public List<Term> headline() {
        return List.of(Term.of("L60", "length by the Rules", length()));
    }

    @Override
    public Working working() {
        if (!putter()) {
            return SixtyDegreePlane.of(build.parts().head()).working(PlayingLength.alongAxis(build));
        }
        return new Working(
                "Length of a putter",
                List.of(new Working.Line(
                        Term.of("L", "length along the axis", length()),
                        "x + H",
                        List.of(
                                Term.of("x", "top of the grip to the hosel mouth", build.mouthFromTop()),
                                Term.of(
                                        "H",
                                        "hosel mouth to ground",
                                        build.parts().head().geometry().mouthToGround())),
                        new Source(
                                Source.Kind.FROM_MEMORY,
                                "R&A and USGA, Equipment Rules",
                                "Part 2, length of putters"))));
    }

    @Override
    public List<Assumption> assumptions() {
        Head head = build.parts().head();
        return putter() ? List.of() : SixtyDegreePlane.assumptions(head);
    }
}
