package dev.tipwright.core.length;

import dev.tipwright.core.plan.Instruction;

/** What is to be done when a club is cut to length. */
public enum LengthInstruction implements Instruction {
    /** Mark and cut the butt, the kerf in the waste. */
    CUT_BUTT(
            "Mark {v} up from the hosel mouth and cut on the butt side of the mark: {U} comes off, the kerf of {k} falls in the"
                    + " waste and leaves an offcut of {o}.",
            "After the cure, measure the mark again from the hosel mouth. Do not cut unless {U} stands above it: the shaft is to be"
                    + " {S} long."),
    /** Grind off what is less than a kerf. */
    GRIND_BUTT(
            "Mark {v} up from the hosel mouth and grind the butt down to the mark: {U} comes off, no more than a kerf.",
            "After the cure, measure the mark again from the hosel mouth. Do not grind below it: the shaft is to be {S} long."),
    /** Tape and grip. */
    FIT_GRIP("Put on tape and grip, the cap hard against the butt: it adds {g}.", ""),
    /** Measure the finished club. */
    MEASURE_LENGTH("Measure the finished club along the shaft: {L} from the top of the grip to the ground.", "");

    private final String template;
    private final String checkFirst;

    LengthInstruction(String template, String checkFirst) {
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
