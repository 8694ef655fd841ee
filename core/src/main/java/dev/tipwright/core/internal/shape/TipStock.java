package dev.tipwright.core.internal.shape;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;

/**
 * What comes off a tip, split into finish and structure, with moments about the end of the tip. The bare tip is {@code outside - 2
 * finish}; the finish is stripped from the end up to a place, and the tip is then worked down to a finished shape wherever that is less.
 *
 * @param finish the finish that comes off
 * @param structure the structure that comes off
 */
public record TipStock(Solid finish, Solid structure) {

    private static final Solid NOTHING = new Solid(0, 0, 0);

    /**
     * What the work on the tip of a build takes off.
     *
     * @param build parts and work
     * @return finish and structure that come off
     * @throws IllegalArgumentException if the work reaches further up than the outside of the shaft was read
     */
    public static TipStock of(Build build) {
        ShaftSection section = build.parts().shaft().section();
        return new TipStock(sum(section, build.work(), 1, 0), sum(section, build.work(), 0, 1));
    }

    /**
     * What that weighs, as mass along the tip; a density that is not known counts as nothing.
     *
     * @param build parts and work
     * @return mass and moments about the end of the tip
     * @throws IllegalArgumentException if the work reaches further up than the outside of the shaft was read
     */
    public static Rod weighed(Build build) {
        return weighed(build.parts().shaft().section(), build.work());
    }

    /**
     * The same of a shaft that is on no club.
     *
     * @param section the raw shaft's tip
     * @param work what was done to it
     * @return mass and moments about the end of the tip
     * @throws IllegalArgumentException if the work reaches further up than the outside of the shaft was read
     */
    public static Rod weighed(ShaftSection section, Work work) {
        double wall = section.wall() instanceof Reading.Unknown<Wall>
                ? 0
                : grams(section.wall().known().orElseThrow().density());
        Solid off =
                sum(section, work, grams(section.finish().orElse(Finish.NONE).density()), wall);
        return new Rod(off.volume(), off.first(), off.second());
    }

    /**
     * Whether nothing comes off.
     *
     * @return whether both volumes are zero
     */
    public boolean isNothing() {
        return finish.volume() == 0 && structure.volume() == 0;
    }

    private static Solid sum(ShaftSection section, Work work, double finishWeight, double structureWeight) {
        TipWork tip = work.tip();
        Length reach = tip.reach();
        if (reach.nanometres() == 0) {
            return NOTHING;
        }
        DiameterProfile outside = section.outside();
        Length trim = work.tipTrim();
        Length from = trim.plus(outside.from());
        if (from.plus(reach).moreThan(outside.to())) {
            Length read = outside.to().minus(from);
            throw Require.broken("build", "must have work on its tip no further up than was read, " + read, reach);
        }
        return TipWalk.up(
                Stations.of(outside.stations()),
                from.nanometres(),
                section.finish().orElse(Finish.NONE).thickness(),
                trim.nanometres(),
                (double) tip.stripped().nanometres(),
                Stations.of(tip.finished()),
                finishWeight,
                structureWeight);
    }

    /** Grams for a cubic millimetre; nothing if it is not known. */
    private static double grams(Reading<Density> density) {
        return density.orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
    }
}
