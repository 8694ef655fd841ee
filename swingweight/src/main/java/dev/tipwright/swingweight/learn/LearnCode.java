package dev.tipwright.swingweight.learn;

import dev.tipwright.core.evidence.FindingCode;

/** What a reading of the scale can find. */
public enum LearnCode implements FindingCode {
    /** The centre of mass is known better now. */
    CENTRE_LEARNT(
            "the scale reads {off} points over what was predicted: the head's centre of mass is {c} below the hosel mouth, not {c0}, and known"
                    + " to {u} instead of {u0}"),
    /** The reading is far from what was assumed. */
    FAR_FROM_ASSUMED(
            "the scale reads {off} points over what was predicted, {n} standard uncertainties: look at what is on the club, its"
                    + " masses and the zero of the scale before believing a centre of mass {c} below the hosel mouth"),
    /** No head has its centre of mass there. */
    NOT_A_HEAD(
            "the scale reads {off} points over what was predicted, which would put the head's centre of mass {c} below the hosel mouth,"
                    + " outside the head: read again, nothing was learnt"),
    /** The finished club is as predicted. */
    AS_PREDICTED("found {found}, predicted {predicted}: {off} points apart, within the {U} that the two are known to"),
    /** The finished club is not as predicted. */
    NOT_AS_PREDICTED(
            "found {found}, predicted {predicted}: {off} points apart, more than the {U} that the two are known to, so something is not as it"
                    + " was taken to be");

    private final String template;

    LearnCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
