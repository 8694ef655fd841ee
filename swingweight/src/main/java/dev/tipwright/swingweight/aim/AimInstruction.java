package dev.tipwright.swingweight.aim;

import dev.tipwright.core.plan.Instruction;

/** What is to be done with what was solved for. */
public enum AimInstruction implements Instruction {
    /** Put a tip weight in. */
    FIT_TIP_WEIGHT(
            "Put tip weight {weight}, {m}, into the tip for the dry build, its centre {z} above the end of the tip; weigh before any"
                    + " adhesive.");

    private final String template;

    AimInstruction(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }

    @Override
    public String checkFirst() {
        return "";
    }
}
