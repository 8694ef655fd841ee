package dev.tipwright.core.trim;

import dev.tipwright.core.evidence.FindingCode;

/** What a tip trim can find. */
public enum TrimCode implements FindingCode {
    /** The chart has no row for the club on its blank. */
    NOT_ON_CHART(
            "the chart has no trim for club {club} on blank {blank}, so its tip is left untrimmed here: ask the shaft's maker, and do not"
                    + " cut this shaft before"),
    /** Nothing stops the tip in a through bore. */
    NO_STOP("the bore goes through and nothing stops the tip: set a mark or a stop at the wanted insertion first"),
    /** The trim is negative. */
    CANNOT_TRIM(
            "the trim comes to {T}, which cannot be cut: left untrimmed, the club plays softer than the chart means; take another"
                    + " blank or another head, or agree on it"),
    /** The tip ends higher or lower over the ground than the chart assumes. */
    BORE_CORRECTED(
            "the tip's end will stand {t} over the ground where the chart assumes {G_ref}: the chart's {chart} is corrected by"
                    + " {c}"),
    /** The tip ends a little higher or lower, but no one can be sure of it. */
    CORRECTION_IN_DOUBT(
            "the tip's end will stand {t} over the ground where the chart assumes {G_ref}, and the chart's {chart} is corrected by"
                    + " {c}; that is no more than {u}, by which the height may be wrong: measure hosel and bore again, or trim by"
                    + " the chart"),
    /** More is to be cut off than there is. */
    SHAFT_TOO_SHORT("a trim of {T} leaves nothing of a shaft {R} long"),
    /** The trimmed tip is no longer parallel over the insertion. */
    PAST_PARALLEL(
            "the trim of {T} and the insertion of {i} reach past the parallel section, {p} long: the tip is wider higher up"),
    /** The tip was not measured far enough up. */
    TIP_NOT_READ(
            "the tip was measured only to {z}, short of the trim of {T} and the insertion of {i}: measure further up");

    private final String template;

    TrimCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
