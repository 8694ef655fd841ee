package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.evidence.FindingCode;

/** What a stop on the way down can find. */
public enum TaperCode implements FindingCode {
    /** A reading shows that too much is off. */
    OVER_REMOVED("{x} too much is off at {z}: {c} of clearance where {w} is wanted; a shim of wall {t} would fill it"),
    /** A reading leaves it open whether too much is off. */
    MAY_BE_OVER(
            "up to {x} too much may be off at {z}, within the error of the reading: measure it better before another pass"),
    /** Depth does not tell. */
    DEPTH_SILENT("depth no longer tells what comes off: caliper the stations, or read the sweep of the seated shaft"),
    /** The tip is in less far than it can be. */
    DEPTH_DISAGREES("the tip went in {i}, less than it should untouched: measure tip, bore and depth again");

    private final String template;

    TaperCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
