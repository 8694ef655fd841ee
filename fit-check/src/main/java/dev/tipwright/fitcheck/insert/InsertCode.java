package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.evidence.FindingCode;

/** Where a tip touches its bore, in plain words. */
public enum InsertCode implements FindingCode {
    /** Nowhere. */
    TOUCHES_NOWHERE("in {i} deep, the tip comes within {t} of the bore nowhere: nothing but a stop holds it there"),
    /** At its end. */
    TOUCHES_AT_END(
            "in {i} deep, the tip touches at its end alone, up to {z2}: it is too wide there for the bore so deep, so what is to come"
                    + " off comes off from the end up"),
    /** At the mouth. */
    TOUCHES_AT_MOUTH(
            "in {i} deep, the tip touches at the hosel mouth alone, from {z1} up: it widens there, and what is further in is free"),
    /** At neither end. */
    TOUCHES_BETWEEN(
            "in {i} deep, the tip touches between {z1} and {z2} up from its end, {y1} to {y2} down the bore, and is free at both ends: a"
                    + " thick place of the tip or a narrow one of the bore"),
    /** At end and mouth. */
    TOUCHES_AT_BOTH_ENDS(
            "in {i} deep, the tip touches at its end and at the hosel mouth and is free between: the bore is wider there, or the tip"
                    + " thinner"),
    /** Over all that is in. */
    TOUCHES_ALL_ALONG("in {i} deep, the tip touches all along: tip and bore taper alike"),
    /** In more places than that. */
    TOUCHES_IN_PLACES(
            "in {i} deep, the tip touches in {n} places, the lowest from {z1} to {z2} up from its end: take it off there first, and"
                    + " look again");

    private final String template;

    InsertCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
