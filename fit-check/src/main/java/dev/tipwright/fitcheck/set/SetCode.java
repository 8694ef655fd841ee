package dev.tipwright.fitcheck.set;

import dev.tipwright.core.evidence.FindingCode;

/** What sharing out a set can find. */
public enum SetCode implements FindingCode {
    /** Some get no partner. */
    TOO_FEW(
            "{who} go without: {contenders} can be paired with {contested} only, so nothing was paired; find another part, or loosen a"
                    + " limit"),
    /** More tip is off than the head asks for. */
    OVER_TRIMMED(
            "{T} is off the tip, {x} more than this head asks for: it plays stiffer than planned, and the plan goes on with what is off"),
    /** More butt is off than the head asks for. */
    OVER_CUT("{U} is off the butt, {x} more than this head asks for: the club comes out shorter than planned by that");

    private final String template;

    SetCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
