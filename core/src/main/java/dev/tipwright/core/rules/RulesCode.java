package dev.tipwright.core.rules;

import dev.tipwright.core.evidence.FindingCode;

/** What a look at the limits of the Equipment Rules can find. None of these is a ruling. */
public enum RulesCode implements FindingCode {
    /** Every limit that could be checked is met by more than the uncertainty. */
    WITHIN_LIMITS("within every limit that could be checked of {edition}; this is no ruling"),
    /** Longer than the longest club. */
    TOO_LONG("{L60} by the 60 degree plane is longer than the {limit} of {edition}; this is no ruling"),
    /** Shorter than the shortest club. */
    TOO_SHORT("{L60} is shorter than the {limit} of {edition}; this is no ruling"),
    /** The neck is longer than allowed. */
    NECK_TOO_LONG(
            "the neck, {H} from hosel mouth to sole along the axis, is longer than the {limit} of {edition}; this is no ruling"),
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
