package dev.tipwright.core.trim;

import dev.tipwright.core.plan.Instruction;

/** What is to be done when a tip is trimmed. */
public enum TrimInstruction implements Instruction {
    /** Mark and cut, the kerf in the waste. */
    CUT_TIP(
            "Mark {T} from the raw tip and cut on the tip side of the mark: the kerf of {k} falls in the waste and leaves an"
                    + " offcut of {o}.",
            "Measure the mark again from the raw tip. Do not cut unless it reads {T}: a trimmed tip does not grow back."),
    /** Grind off what is less than a kerf. */
    GRIND_TIP(
            "Mark {T} from the raw tip and grind down to the mark; it is no more than a kerf, so there is nothing to cut.",
            "Measure the mark again from the raw tip. Do not grind past {T}: a trimmed tip does not grow back.");

    private final String template;
    private final String checkFirst;

    TrimInstruction(String template, String checkFirst) {
        this.template = template;
        this.checkFirst = checkFirst;
    }

    @Override
    public String template() {
        return template;
    }

    @Override
    public String checkFirst() {
        return checkFirst;
    }
}
