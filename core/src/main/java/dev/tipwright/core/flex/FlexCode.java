package dev.tipwright.core.flex;

import dev.tipwright.core.evidence.FindingCode;

/** What a look at the frequency of a club can find. */
public enum FlexCode implements FindingCode {
    /** Without a seat there is no beam. */
    NOT_SEATED("the tip is not seated, so the club has no frequency yet: settle how far it goes in first"),
    /** Nothing is known of the stiffness. */
    STIFFNESS_UNKNOWN("no frequency: how the shaft bends is not known; ask: {ask}"),
    /** Stations or section do not reach the butt. */
    STIFFNESS_SHORT(
            "no frequency: the stiffness of the shaft, or the section it follows from, is not known from tip to butt"),
    /** The mass along the shaft is not known. */
    MASS_UNKNOWN(
            "no frequency: a balance point at {b} says too little about the mass along the shaft; weigh pieces of one like it"),
    /** The head's centre is not known. */
    CENTRE_UNKNOWN("no frequency: where the head's centre of mass lies is not known; ask: {ask}"),
    /** The clamp reaches the hosel. */
    NO_BEAM("no frequency: a clamp of {c} leaves nothing of the {v} of shaft above the hosel mouth"),
    /** No timing calibrates the shape. */
    NOT_TIMED("{f} rests on the shape of the stiffness alone: time the raw shaft once to calibrate it"),
    /** A further timing contradicts the shape. */
    SHAPE_OFF(
            "timed with {m} on the tip and {c} in the clamp the raw shaft swings at {t}, but the stiffness gives {p}: {d} off,"
                    + " so its shape is not right, or one timing is not"),
    /** Off the line through the set. */
    OFF_LINE(
            "{f} is {d} {way} than the line through the set, {l} at this length; a tip trim of {T} in place of {N}, the rest off the"
                    + " butt, would bring it there"),
    /** Off the line, and no trim helps. */
    OFF_LINE_FOR_GOOD(
            "{f} is {d} {way} than the line through the set, {l} at this length, and no tip trim of this shaft brings it there: take"
                    + " another shaft"),
    /** On the line, but only within the uncertainty. */
    MARGINAL(
            "{f} is {d} {way} than the line through the set, which is within {within}, but known only to {U}, for which {most} counts most:"
                    + " on the line only within its uncertainty"),
    /** Off the line by less than the uncertainty. */
    OFF_BY_LITTLE(
            "{f} is {d} {way} than the line through the set, which is over {within}, but known only to {U}, for which {most} counts most: it"
                    + " may be on the line, so measure that again before its trim is moved");

    private final String template;

    FlexCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
