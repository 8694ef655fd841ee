package dev.tipwright.core.flex;

import dev.tipwright.core.plan.Instruction;

/** What is to be done about frequency. */
public enum FlexInstruction implements Instruction {
    /** Time the club before the grip goes on. */
    TIME_CLUB("Clamp {c} of the butt, before tape and grip, and time the club: {f} is expected.", "");

    private final String template;
    private final String checkFirst;

    FlexInstruction(String template, String checkFirst) {
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
