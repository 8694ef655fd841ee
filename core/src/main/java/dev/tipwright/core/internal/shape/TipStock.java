package dev.tipwright.core.internal.shape;

/**
 * What comes off a tip, split into finish and structure, with moments about the end of the tip.
 *
 * @param finish the finish that comes off
 * @param structure the structure that comes off
 */
public record TipStock(Solid finish, Solid structure) {

    /**
     * The material between a tip as it was and as it becomes. The bare tip is {@code outside - 2 finish}; the finish is stripped
     * from the end up to a place, and the tip is then worked down to a finished shape wherever that is less.
     *
     * @param outside diameter over the finish, from the end of the tip or before it, as far as the work reaches or further
     * @param finish its thickness, as far
     * @param stripped how far up the finish comes off
     * @param finished diameter of the finished shape, from the end of the tip; beyond its last knot nothing is worked down
     * @param reach how far up the work reaches
     * @return finish and structure that come off
     */
    public static TipStock of(Polyline outside, Polyline finish, double stripped, Polyline finished, double reach) {
        return new TipWalk(outside, finish, stripped, finished).upTo(reach);
    }
}
