package dev.tipwright.core.orient;

import dev.tipwright.core.plan.Instruction;

/** How a shaft is to be turned. */
public enum OrientInstruction implements Instruction {
    /** Line a mark up. */
    TURN(
            "Before the adhesive sets, turn the shaft so that {mark} points {turn} {sense} of the target, seen from the butt ({hand}-handed"
                    + " club).",
            "Draw a line along shaft and hosel at the dry fit: bond only with the two halves of the line in one.");

    private final String template;
    private final String checkFirst;

    OrientInstruction(String template, String checkFirst) {
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
