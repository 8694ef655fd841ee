package dev.tipwright.core.rules;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds a planned club against the limits of the Equipment Rules that its measurements can speak to. A finding here is arithmetic, not
 * a ruling; only the bodies that govern the game rule.
 *
 * <p>Woods and irons are measured by the 60 degree plane, a putter from the top of its grip along the axis to the sole (from memory);
 * a putter has no longest length. The straight part of the shaft must reach to within 5 in of the sole: that is the same measurement as the neck's here, since a shaft
 * is straight down to the hosel mouth.
 *
 * <pre>{@code
 * List<Finding> findings = RulesCheck.of(Samples.build(), ClubLimits.EQUIPMENT_RULES, Length.parse("1/16 in"));
 * findings.get(0).code();   // = NOT_CHECKED
 * findings.get(1).code();   // = WITHIN_LIMITS
 * }</pre>
 */
public final class RulesCheck {

    private final ClubLimits limits;
    private final Length uncertainty;
    private final List<Finding> findings = new ArrayList<>();

    private RulesCheck(ClubLimits limits, Length uncertainty) {
        this.limits = limits;
        this.uncertainty = uncertainty;
    }

    /**
     * Checks a seated club.
     *
     * @param build parts and work
     * @param limits what to hold it against
     * @param uncertainty expanded uncertainty of its lengths; zero or more. Within it of a limit, the finding says so
     * @return one finding for each limit that is passed or too near, or a note that all are kept, and a note for each that
     *     could not be checked
     * @throws IllegalArgumentException if the tip is not seated
     */
    public static List<Finding> of(Build build, ClubLimits limits, Length uncertainty) {
        Require.given("build", build);
        Require.given("limits", limits);
        Require.within("uncertainty", uncertainty, 0, 1000);
        RulesCheck check = new RulesCheck(limits, uncertainty);
        check.clubLength(build);
        check.neck(build.parts().head());
        check.grip(build.parts().grip());
        if (check.findings.stream().allMatch(finding -> finding.severity() == Severity.NOTE)) {
            check.findings.add(Finding.note(RulesCode.WITHIN_LIMITS, check.edition()));
        }
        return List.copyOf(check.findings);
    }

    /**
     * The length the Rules measure: by the 60 degree plane, or for a putter along the axis.
     *
     * @param build a seated club
     * @return the length
     * @throws IllegalArgumentException if the tip is not seated
     */
    public static Length length(Build build) {
        Length alongAxis = PlayingLength.alongAxis(build);
        Head head = build.parts().head();
        return head.kind() == ClubKind.PUTTER
                ? alongAxis
                : SixtyDegreePlane.of(head).length(alongAxis);
    }

    private void clubLength(Build build) {
        Length length = length(build);
        Term term = Term.of("L60", "length", length);
        if (build.parts().head().kind() != ClubKind.PUTTER) {
            atMost(RulesCode.TOO_LONG, term, length, limits.longest());
        }
        atLeast(RulesCode.TOO_SHORT, term, length, limits.shortest());
    }

    private void neck(Head head) {
        Length neck = head.geometry().mouthToGround();
        atMost(RulesCode.NECK_TOO_LONG, Term.of("H", "neck", neck), neck, limits.neck());
    }

    private void grip(Grip grip) {
        atLeast(
                RulesCode.GRIP_TOO_SHORT,
                Term.of("l", "grip length", grip.length()),
                grip.length(),
                limits.gripShortest());
        if (grip.size() instanceof Reading.Unknown<GripSize> unknown) {
            findings.add(Finding.note(
                    RulesCode.NOT_CHECKED,
                    Term.of("what", "what", "grip width"),
                    limit(limits.gripWidest()),
                    edition(),
                    Term.of("ask", "whom to ask", unknown.ask())));
        }
        grip.size().known().map(GripSize::outside).ifPresent(width -> {
            atMost(RulesCode.GRIP_TOO_WIDE, Term.fine("d", "grip width", width), width, limits.gripWidest());
        });
    }

    private void atMost(RulesCode code, Term term, Length value, Length limit) {
        judge(code, term, limit.minus(value), limit);
    }

    private void atLeast(RulesCode code, Term term, Length value, Length limit) {
        judge(code, term, value.minus(limit), limit);
    }

    /** Past the limit by more than the uncertainty, too near to say, or well within. A limit met to the digit is within. */
    private void judge(RulesCode code, Term term, Length room, Length limit) {
        if (room.plus(uncertainty).nanometres() < 0) {
            findings.add(Finding.caution(code, term, limit(limit), edition()));
        } else if (room.lessThan(uncertainty)) {
            findings.add(Finding.caution(
                    RulesCode.TOO_NEAR,
                    Term.of("what", "what", term.meaning()),
                    named("value", term),
                    limit(limit),
                    edition(),
                    Term.of("U", "expanded uncertainty", uncertainty)));
        }
    }

    /** The same value under another symbol. */
    private static Term named(String symbol, Term term) {
        return term instanceof Term.OfDiameter diameter
                ? Term.fine(symbol, diameter.meaning(), diameter.value())
                : Term.of(symbol, term.meaning(), ((Term.OfLength) term).value());
    }

    private static Term limit(Length limit) {
        return Term.of("limit", "limit", limit);
    }

    private Term edition() {
        return Term.of("edition", "edition", limits.edition());
    }
}
