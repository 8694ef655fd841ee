package dev.tipwright.fitcheck.set;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** A step that cannot put back what is cut off: where it asks for less, what is off stays off. */
record HeldStep(WorkStep step, Work done) implements WorkStep {

    @Override
    public StepOutcome take(Build build) {
        StepOutcome outcome = step.take(build);
        Work asked = outcome.after().work();
        Length tip = asked.tipTrim().max(done.tipTrim());
        Length butt = asked.buttTrim().max(done.buttTrim());
        List<Finding> findings = new ArrayList<>(outcome.findings());
        if (tip.moreThan(asked.tipTrim())) {
            findings.add(Finding.caution(
                    SetCode.OVER_TRIMMED,
                    Term.of("T", "tip trim", tip),
                    Term.of("x", "more than asked for", tip.minus(asked.tipTrim()))));
        }
        if (butt.moreThan(asked.buttTrim())) {
            findings.add(Finding.caution(
                    SetCode.OVER_CUT,
                    Term.of("U", "butt trim", butt),
                    Term.of("x", "more than asked for", butt.minus(asked.buttTrim()))));
        }
        Work held = asked.withTipTrim(tip).withButtTrim(butt);
        return new StepOutcome(outcome.after().withWork(held), findings, outcome.reports());
    }
}
