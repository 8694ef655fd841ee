package dev.tipwright.core.internal.shape;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;

/**
 * What comes off a tip, split into finish and structure, with moments about the end of the tip.
 *
 * @param finish the finish that comes off
 * @param structure the structure that comes off
 */
public record TipStock(Solid finish, Solid structure) {

    private static final TipStock NOTHING = new TipStock(new Solid(0, 0, 0), new Solid(0, 0, 0));

    /**
     * What the work on the tip of a build takes off.
     *
     * @param build parts and work
     * @return finish and structure that come off
     * @throws IllegalArgumentException if the work reaches further up than the outside of the shaft was read
     */
    public static TipStock of(Build build) {
        TipWork tip = build.work().tip();
        Length reach = tip.reach();
        if (reach.nanometres() == 0) {
            return NOTHING;
        }
        ShaftSection section = build.parts().shaft().section();
        DiameterProfile outside = section.outside();
        Length trim = build.work().tipTrim();
        Length from = trim.plus(outside.from());
        if (from.plus(reach).moreThan(outside.to())) {
            Length read = outside.to().minus(from);
            throw Require.broken("build", "must have work on its tip no further up than was read, " + read, reach);
        }
        Stations shape = Stations.of(tip.finished());
        return TipWalk.up(
                Stations.of(outside.stations()),
                from,
                section.finish().orElse(Finish.NONE).thickness(),
                trim,
                (double) tip.stripped().nanometres(),
                Course.of(shape, Length.ZERO),
                shape.isEmpty() ? 0 : (double) shape.atNanometres(shape.size() - 1));
    }

    /**
     * The material between a tip as it was and as it becomes. The bare tip is {@code outside - 2 finish}; the finish is stripped
     * from the end up to a place, and the tip is then worked down to a finished shape wherever that is less.
     *
     * @param outside over the finish, from the end of the tip as far as the work reaches or further
     * @param finish what is on it
     * @param trimmed where the end of the tip is on the raw shaft, from which the finish counts
     * @param stripped how far up the finish comes off
     * @param finished diameter of the finished shape in mm, from the end of the tip, 0; beyond its last knot nothing is worked down
     * @return finish and structure that come off
     */
    public static TipStock of(
            DiameterProfile outside, Finish finish, Length trimmed, Length stripped, Polyline finished) {
        return TipWalk.up(
                Stations.of(outside.stations()),
                outside.from(),
                finish.thickness(),
                trimmed,
                (double) stripped.nanometres(),
                Course.of(finished),
                Course.nanometres(finished.to()));
    }

    /**
     * Whether nothing comes off.
     *
     * @return whether both volumes are zero
     */
    public boolean isNothing() {
        return finish.volume() == 0 && structure.volume() == 0;
    }

    /**
     * What it weighs, as mass along the tip.
     *
     * @param section finish and wall with their densities; one that is not known counts as nothing
     * @return mass and moments about the end of the tip
     */
    public Rod weighed(ShaftSection section) {
        double finishDensity = grams(section.finish().orElse(Finish.NONE).density());
        double wallDensity =
                section.wall().known().map(wall -> grams(wall.density())).orElse(0.0);
        return new Rod(
                finishDensity * finish.volume() + wallDensity * structure.volume(),
                finishDensity * finish.first() + wallDensity * structure.first(),
                finishDensity * finish.second() + wallDensity * structure.second());
    }

    /** Grams for a cubic millimetre; nothing if it is not known. */
    private static double grams(Reading<Density> density) {
        return density.orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
    }
}
