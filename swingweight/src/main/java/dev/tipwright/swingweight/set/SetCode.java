package dev.tipwright.swingweight.set;

import dev.tipwright.core.evidence.FindingCode;

/** What a look at a whole set can find. */
public enum SetCode implements FindingCode {
    /** How far apart the clubs are before and after. */
    SPREAD(
            "swing weights from {before} points apart to {after}; total mass off an even step from {massBefore} to {massAfter}"),
    /** The change makes one better and the other worse. */
    TRADED(
            "one got better and the other worse: swing weights from {before} points apart to {after}, total mass off an even step from"
                    + " {massBefore} to {massAfter}"),
    /** A club cannot be brought to what is wanted. */
    NOT_REACHED("{club} cannot be brought to it: choose another target, or another way");

    private final String template;

    SetCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
