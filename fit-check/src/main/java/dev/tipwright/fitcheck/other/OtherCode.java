package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.FindingCode;

/** Whether a shim makes up for too much taken off. */
public enum OtherCode implements FindingCode {
    /** It is loose by no more than the limit. */
    NO_SHIM_NEEDED("{x} too much is off, and {c} of clearance is within the limit of {cmax}: no shim is needed"),
    /** A shim makes up for it. */
    SHIM_SAVES("{x} too much is off: a shim of wall {t} leaves {c} of clearance"),
    /** No shim in stock fits, but one would if more came off. */
    BETWEEN_SHIMS(
            "{x} too much is off, and no shim in stock leaves a clearance within {cmax}: find one of wall {t}, and take nothing more off"
                    + " for the next thicker"),
    /** Nothing in stock makes up for it. */
    NO_SHIM_SAVES("{x} too much is off: from {xmax} on no shim in stock saves the tip; take another blank");

    private final String template;

    OtherCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
