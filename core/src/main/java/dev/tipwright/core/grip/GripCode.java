package dev.tipwright.core.grip;

import dev.tipwright.core.evidence.FindingCode;

/** What a grip on its butt can find. */
public enum GripCode implements FindingCode {
    /** The core of the grip was not given. */
    SIZE_UNKNOWN("the core of grip {grip} is not known, so nothing can be said of its finished size: ask {ask}"),
    /** The butt is thinner than the core. */
    LOOSE(
            "the butt with its tape, {dt}, is {s} smaller than the core of grip {grip}: it would turn; add tape or take a smaller core"),
    /** The grip is longer than the shaft that shows. */
    TOO_LONG("grip {grip} reaches {s} past the hosel: take a shorter one");

    private final String template;

    GripCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
