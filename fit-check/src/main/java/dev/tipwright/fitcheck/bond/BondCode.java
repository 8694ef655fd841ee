package dev.tipwright.fitcheck.bond;

import dev.tipwright.core.evidence.FindingCode;

/** What a glued joint can find. */
public enum BondCode implements FindingCode {
    /** A tip that does not go into the bore, whatever is put between. */
    TIP_TOO_WIDE(
            "the tip is up to {b} wider than the bore around it: it does not go in, and nothing bonds where there is no room"),
    /** Beads that hold the tip off centre or out of the bore. */
    BEADS_TOO_THICK("beads of {b} do not go into a centred bond line of {ta}: smaller beads, or none"),
    /** The bonded length is under the caller's limit. */
    TOO_SHORT("the bonded length, {l}, is under the limit of {lmin}"),
    /** The bond line is thicker than the caller allows. */
    THICK_LINE(
            "the bond line, {ta} at its mean, is over the limit of {tamax}: a shim or another blank, not more adhesive"),
    /** Shear past the allowable. */
    OVER_ALLOWABLE("shear under {load} is {tau} where {allowed} is allowed"),
    /** No allowable was given. */
    NO_ALLOWABLE(
            "no allowable shear was given: ask {ask}; a lap-shear result compares adhesives and is no design value"),
    /** A margin in pull says little. */
    PULL_NO_COMFORT("the margin in pull, {n} times, is no comfort: torque, bond line, length and preparation decide");

    private final String template;

    BondCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
