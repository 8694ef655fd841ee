package dev.tipwright.core.length;

import dev.tipwright.core.evidence.FindingCode;

/** What a cut to length can find. */
public enum LengthCode implements FindingCode {
    /** The length plan does not name the club. */
    NO_TARGET("the length plan has no length for club {club}: say which"),
    /** Without a seat there is no length. */
    NOT_SEATED("the tip is not seated, so nothing can be said about length: settle how far it goes in first"),
    /** The wanted length leaves no shaft at all. */
    TARGET_TOO_SHORT("a playing length of {L} leaves no shaft above the insertion of {i}"),
    /** The wanted length is by the 60 degree plane. */
    BY_PLANE("the wanted {L60} is by the 60 degree plane; along the shaft that is {L}"),
    /** The shaft does not reach. */
    SHAFT_TOO_SHORT(
            "the shaft is {s} too short for {L}: with nothing off its butt the club plays {Lmax}; extend the butt, take"
                    + " another blank, or agree on a shorter club"),
    /** The shaft is long enough by less than its uncertainty. */
    BARELY_LONG_ENOUGH("only {T} comes off the butt, and that is known to {U}: the shaft may come out too short");

    private final String template;

    LengthCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
