package dev.tipwright.swingweight;

import dev.tipwright.core.evidence.FindingCode;

/** What the weighing of a club can find. */
public enum SwingWeightCode implements FindingCode {
    /** Without a seat there is no balance. */
    NOT_SEATED("the tip is not seated, so nothing can be said about balance: settle how far it goes in first"),
    /** The work on the tip reaches further up than was measured. */
    TIP_NOT_READ("the work on the tip reaches {z} up where it was measured only {read}: measure further up"),
    /** No target was given. */
    NO_TARGET("no swing weight was asked for; it comes to {reads}"),
    /** The target is met as the club stands. */
    ON_TARGET("reads {reads}, {off} of a point from {wanted}: near enough"),
    /** A weight from the stock brings it near enough. */
    WEIGHT_CHOSEN("{off} points low: exactly {m} in the tip would mend it, and {chosen} from the stock gives {reads}"),
    /** The nearest the stock can do is not near enough. */
    STOCK_NOT_ENOUGH(
            "{off} points low: exactly {m} in the tip would mend it; the nearest of the stock gives {reads}, not near"
                    + " enough"),
    /** Nothing in the stock helps. */
    NOTHING_IN_STOCK("{off} points low: exactly {m} in the tip would mend it, and nothing in the stock comes nearer"),
    /** The club is too heavy at the head. */
    TOO_HEAVY("{off} points high: {m} would have to come off the head end, or a counterweight go in the butt"),
    /** The tip ends above the fulcrum, or at it. */
    TIP_NOT_PAST_FULCRUM(
            "{off} points off, and a weight in the tip would lie {x} from the top of the grip, not past the fulcrum at {F}:"
                    + " none there mends it"),
    /** There is a tip weight in the tip already. */
    TIP_WEIGHT_IN_PLACE(
            "{off} points low: exactly {m} more in the tip would mend it, but there is a tip weight in it already: take it out"
                    + " and plan again"),
    /** Weights that do not go into the tip. */
    STEM_TOO_WIDE("{n} of the stock were passed over: their stems do not enter a tip {d} wide inside"),
    /** The inside of the tip is not known. */
    INSIDE_UNKNOWN(
            "the inside of the tip is not known, so try the stem of the weight in the tip before anything is cut"),
    /** Weights with a flange would change the insertion. */
    FLANGE_PASSED_OVER("{n} of the stock were passed over: a flange under the tip would change the insertion"),
    /** The centre of mass of the head was not measured. */
    HEAD_CENTRE_ASSUMED(
            "the head's centre of mass is assumed {c} below the hosel mouth, and a millimetre of it is about {p} of a"
                    + " point: ask for it, or {ask}"),
    /** The shaft balances where a straight line density goes below zero. */
    BALANCE_NOT_BELIEVED(
            "the shaft balances {b} from its tip, outside the middle third of {R}: read it again, or weigh offcuts"),
    /** A shaft that is heavier or lighter than the others of its blank. */
    SHAFT_STANDS_OUT(
            "the shaft is {m} {heavier} than the others of blank {blank}: {p} of a point only, but {total} of total mass"),
    /** The target is met by less than the uncertainty. */
    MARGINAL(
            "reads {reads}, {off} of a point from {wanted}, which is within {within}, but known only to {U} of a point: met only within"
                    + " its uncertainty"),
    /** The target is missed by less than the uncertainty. */
    MISSED_BY_LITTLE(
            "reads {reads}, {off} of a point from {wanted}, which is over {within}, but known only to {U} of a point: it may be met"),
    /** The head's centre of mass contributes most. */
    DRY_BUILD_WORTH(
            "known to {U} of a point, and {share} % of that variance is the head's centre of mass: a reading of the dry build is worth"
                    + " taking before anything is glued");

    private final String template;

    SwingWeightCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
