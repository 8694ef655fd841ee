package dev.tipwright.core.length;

import dev.tipwright.core.plan.Instruction;

/** What is to be done when a club is cut to length. */
public enum LengthInstruction implements Instruction {
    /** Mark both ends of the raw shaft. */
    MARK_OUT(
            "Measure the raw shaft, and mark it only if it reads {R}. Tip mark: {T} from the raw tip, which is {Tb} from the raw butt."
                    + " Butt mark, in pencil: {U} from the raw butt, which is {Ut} from the raw tip. Between the marks: {S}. Waste lies"
                    + " outside them.",
            ""),
    /** Mark and cut the butt, the kerf in the waste. */
    CUT_BUTT(
            "Mark {v} up from the hosel mouth and cut on the butt side of the mark: {U} comes off, the kerf of {k} falls in the"
                    + " waste and leaves an offcut of {o}.",
            "After the cure, measure the mark again from the hosel mouth: {v}. Do not cut unless {U} of shaft stands above it; the shaft"
                    + " is then {S} long in all. Check that it is the length wanted: a cut butt does not grow back."),
    /** Grind off what is less than a kerf. */
    GRIND_BUTT(
            "Mark {v} up from the hosel mouth and grind the butt down to the mark: {U} comes off, no more than a kerf.",
            "After the cure, measure the mark again from the hosel mouth: {v}. Stop grinding when the shaft above the hosel mouth reads"
                    + " that; the shaft is then {S} long in all."),
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
