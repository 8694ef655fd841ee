package dev.tipwright.core.mass;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Rod;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;

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
        TipStock stock = TipStock.of(build);
        if (stock.isNothing()) {
            return NONE;
        }
        Rod rod = TipStock.weighed(build);
        return new RemovedMaterial(
                Volume.ofCubicMillimetres(stock.finish().volume()),
                Volume.ofCubicMillimetres(stock.structure().volume()),
                rod.weight(),
                FirstMoment.ofGramMillimetres(rod.first()),
                Inertia.ofGramSquareMillimetres(rod.second()));
    }

    /**
     * Whether nothing comes off.
     *
     * @return whether both volumes are zero
     */
    public boolean isNothing() {
        return finish.cubicMillimetres() == 0 && structure.cubicMillimetres() == 0;
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
