package shop.bench;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import java.util.List;

/**
 * A step that the library knows nothing of: how much of the shop's rack a raw shaft takes.
 *
 * @param rack length of the rack
 */
record OwnStep(Length rack) implements WorkStep {

    @Override
    public StepOutcome take(Build build) {
        OnTheRack report = new OnTheRack(build.parts().shaft().length(), rack);
        List<Finding> findings = report.left().nanometres() < 0
                ? List.of(Finding.caution(Code.OVERHANGS, Term.of("R", "raw shaft", report.shaft())))
                : List.of();
        return StepOutcome.of(build, findings, report);
    }

    enum Code implements FindingCode {
        OVERHANGS;

        @Override
        public String template() {
            return "a shaft of {R} is longer than the rack";
        }
    }

    record OnTheRack(Length shaft, Length rack) implements StepReport {

        Length left() {
            return rack.minus(shaft);
        }

        @Override
        public Working working() {
            return new Working(
                    "On the rack",
                    List.of(new Working.Line(
                            Term.of("l", "left of the rack", left()),
                            "A - R",
                            List.of(Term.of("A", "rack", rack), Term.of("R", "raw shaft", shaft)),
                            Source.given("the shop"))));
        }
    }

    /** The finding in words, for the page. */
    static String words(Finding finding) {
        return finding.message(Units.INCH);
    }
}
