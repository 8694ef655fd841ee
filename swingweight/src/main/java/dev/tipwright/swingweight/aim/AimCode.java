package dev.tipwright.swingweight.aim;

import dev.tipwright.core.evidence.FindingCode;

/** What working backwards from a target can find. */
public enum AimCode implements FindingCode {
    /** The target is reached within the bounds. */
    REACHED("{what} of {value} gives {reads}"),
    /** The answer lies out of bounds. */
    OUT_OF_BOUNDS(
            "{what} would have to be {value}, which is not from {least} to {most}: at the bound it reads {reads}"),
    /** Mass at the fulcrum changes nothing. */
    AT_FULCRUM("{what} would lie {x} from the top of the grip, at the fulcrum: no mass there changes the reading"),
    /** No length within the bounds gives the target. */
    NO_LENGTH("no cut length from {least} to {most} gives what is wanted: the nearest, {value}, gives {reads}"),
    /** The stock brings the club nearer. */
    STOCK_CHOSEN("{pieces} from the stock: {value} in all gives {reads}, {off} of a point off"),
    /** Nothing in the stock brings the club nearer. */
    NOTHING_NEARER("{off} points off, and nothing in the stock comes nearer"),
    /** A flange shortens the insertion. */
    FLANGE_SHORTENS(
            "the flange lifts the tip: insertion falls from {before} to {i}, so fit the tip and cut to length again before anything is"
                    + " glued"),
    /** A flange shortens the insertion, and the club went back through fit and cut. */
    FLANGE_REFITTED(
            "the flange lifts the tip: insertion falls from {before} to {i}, and the plan is that of a tip seated on the flange"),
    /** Some of the stock does not enter the tip, or its flange the bore. */
    DOES_NOT_ENTER("{n} of the stock were passed over: the stem does not enter the tip, or the flange the bore"),
    /** Bending is within the limit. */
    BEND_WITHIN("bend {bend} to keep the hands where they were, within the {limit} that the head may be bent"),
    /** Bending goes over the limit. */
    BEND_TOO_FAR("bend {bend} to keep the hands where they were, more than the {limit} that the head may be bent"),
    /** The limit is not known. */
    BEND_LIMIT_UNKNOWN(
            "bend {bend} to keep the hands where they were, but how far the head may be bent is not known: ask {ask}"),
    /** The club is too short for the hands. */
    HANDS_TOO_HIGH("a club {L} long does not reach hands {h} over the ground at any lie");

    private final String template;

    AimCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
