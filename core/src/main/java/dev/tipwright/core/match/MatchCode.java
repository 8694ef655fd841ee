package dev.tipwright.core.match;

import dev.tipwright.core.evidence.FindingCode;

/** What the sharing out of shafts can find. */
public enum MatchCode implements FindingCode {
    /** Some heads would get no shaft. */
    TOO_FEW_SHAFTS(
            "no shaft is left for {head}: {heads} can be built with {shafts} only, so the shafts stay where they were; find another"
                    + " shaft, or allow another pair"),
    /** The shafts that come with the heads are as good as any. */
    AS_IT_WAS("no other way to share out the shafts is better"),
    /** Some shafts go to other heads. */
    BETTER(
            "{n} of the heads take another shaft: the cost of the set falls from {before} to {after}, of its worst club from {worstBefore}"
                    + " to {worstAfter}"),
    /** The shafts were paired in a way that is not allowed. */
    MENDED(
            "{n} of the heads take another shaft, because the pairs they came in are not all allowed: the cost of the set is {after}, of its"
                    + " worst club {worstAfter}"),
    /** A head takes another shaft. */
    TAKES_ANOTHER("takes shaft {shaft}; shaft {before}, which it came with, goes elsewhere");

    private final String template;

    MatchCode(String template) {
        this.template = template;
    }

    @Override
    public String template() {
        return template;
    }
}
