package dev.tipwright.core.mass;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;
import java.util.Optional;

/**
 * What the work on a tip takes off it, split into finish and structure, and where that mass was. It is worked out
 * from the shaft's section and the work alone, so it is as true for a tip that was worked by hand as for one that was
 * planned.
 *
 * @param finish finish that comes off
 * @param structure structure that comes off
 * @param mass what the two weigh; an unknown density counts as nothing
 * @param momentAboutTip their first moment about the end of the tip
 * @param inertiaAboutTip their inertia about the end of the tip
 */
public record RemovedMaterial(
        Volume finish, Volume structure, Mass mass, FirstMoment momentAboutTip, Inertia inertiaAboutTip) {

    /**
     * Checks the values.
     *
     * @param finish finish that comes off
     * @param structure structure that comes off
     * @param mass what the two weigh; an unknown density counts as nothing
     * @param momentAboutTip their first moment about the end of the tip
     * @param inertiaAboutTip their inertia about the end of the tip
     */
    public RemovedMaterial {
        Require.given("finish", finish);
        Require.given("structure", structure);
        Require.given("mass", mass);
        Require.given("momentAboutTip", momentAboutTip);
        Require.given("inertiaAboutTip", inertiaAboutTip);
    }

    /** Nothing comes off. */
    public static final RemovedMaterial NONE =
            new RemovedMaterial(Volume.ZERO, Volume.ZERO, Mass.ZERO, FirstMoment.ZERO, Inertia.ZERO);

    /**
     * What the work on the tip of a build takes off.
     *
     * @param build parts and work
     * @return volumes, mass and moments
     * @throws IllegalArgumentException if the work reaches further up than the outside of the shaft was read
     */
    public static RemovedMaterial of(Build build) {
        Require.given("build", build);
        TipWork tip = build.work().tip();
        if (tip.equals(TipWork.NONE)) {
            return NONE;
        }
        TipSurfaces surfaces = TipSurfaces.of(build);
        TipStock stock = TipStock.between(surfaces.outside(), surfaces.bare(), surfaces.after());
        double finish = density(build.parts().shaft().section().finish().known().map(Finish::density));
        double structure =
                density(build.parts().shaft().section().wall().known().map(Wall::density));
        return new RemovedMaterial(
                Volume.ofCubicMillimetres(stock.finish().volume()),
                Volume.ofCubicMillimetres(stock.structure().volume()),
                Mass.ofGrams(finish * stock.finish().volume()
                        + structure * stock.structure().volume()),
                FirstMoment.ofGramMillimetres(finish * stock.finish().first()
                        + structure * stock.structure().first()),
                Inertia.ofGramSquareMillimetres(finish * stock.finish().second()
                        + structure * stock.structure().second()));
    }

    /** Grams for a cubic millimetre; nothing if it is not known. */
    private static double density(Optional<Reading<Density>> density) {
        return density.flatMap(Reading::known).orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
    }

    /**
     * Finish and structure together.
     *
     * @return the volume that comes off
     */
    public Volume volume() {
        return finish.plus(structure);
    }
}
