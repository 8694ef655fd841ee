package dev.tipwright.core.internal.shape;

/**
 * What comes off a tip, split into finish and structure, with moments about the end of the tip.
 *
 * @param finish the finish that comes off
 * @param structure the structure that comes off
 */
public record TipStock(Solid finish, Solid structure) {

    /**
     * The material between the tip as it was and as it becomes.
     *
     * @param outside diameter over the finish, from the tip's end
     * @param bare diameter under the finish, on the same places
     * @param after diameter when the work is done, on the same places
     * @return finish and structure that come off
     */
    public static TipStock between(Polyline outside, Polyline bare, Polyline after) {
        return new TipStock(outside.around(bare.max(after)), bare.around(bare.min(after)));
    }
}
