package dev.tipwright.core.rules;

import dev.tipwright.core.evidence.FindingCode;

/** What a look at the limits of the Equipment Rules can find. None of these is a ruling. */
public enum RulesCode implements FindingCode {
    /** Every limit that could be checked is met by more than the uncertainty. */
    WITHIN_LIMITS("within every limit that could be checked of {edition}; this is no ruling"),
    /** Without a seat there is no length. */
    NOT_SEATED("the tip is not seated, so no length can be held against a limit: settle how far it goes in first"),
    /** Nothing was read to hold against a limit. */
    NOT_CHECKED("{what} was not measured, so the limit of {limit} in {edition} was not checked; ask: {ask}"),
    /** Longer than the longest club. */
    TOO_LONG("{L60}, as the Rules measure length, is longer than the {limit} of {edition}; this is no ruling"),
    /** Shorter than the shortest club. */
    TOO_SHORT("{L60}, as the Rules measure length, is shorter than the {limit} of {edition}; this is no ruling"),
    /** The neck is longer than allowed. */
    NECK_TOO_LONG(
            "the neck, {H} from hosel mouth to sole along the axis, is longer than the {limit} of {edition}; the shaft must be"
                    + " straight from the grip down to within the same distance of the sole; this is no ruling"),
    /** The grip is wider than allowed. */
    GRIP_TOO_WIDE("the grip, {d} wide, is wider than the {limit} of {edition}; this is no ruling"),
    /** The grip is shorter than allowed. */
    GRIP_TOO_SHORT("the grip, {l} long, is shorter than the {limit} of {edition}; this is no ruling"),
    /** The uncertainty reaches over a limit. */
    TOO_NEAR(
            "{what}, {value}, is so near the limit of {limit} in {edition} that an uncertainty of {U} decides: measure again, or"
                    + " stay further off");

    private final String template;

    RulesCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
