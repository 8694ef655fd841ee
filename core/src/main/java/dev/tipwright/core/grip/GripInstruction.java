package dev.tipwright.core.grip;

import dev.tipwright.core.plan.Instruction;

/** What is to be done when a grip is put on. */
public enum GripInstruction implements Instruction {
    /** Read the butt before the tape. */
    CALIPER_BUTT("Caliper the cut butt: about {db} is expected. If it reads otherwise, change the layers of tape.", ""),
    /** Wind the tape. */
    WIND_TAPE("Tape in layers: {n}, no further than {b} down from the butt; the butt then reads about {dt}.", ""),
    /** Where the mouth of the grip comes to lie. */
    SEAT_GRIP(
            "The mouth of the grip seats {b} down from the butt: mark it, and push until the mouth meets the mark.",
            "");

    private final String template;
    private final String checkFirst;

    GripInstruction(String template, String checkFirst) {
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
