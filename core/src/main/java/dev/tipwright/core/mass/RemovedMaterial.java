package dev.tipwright.core.mass;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
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

    /** A finished shape that reaches nowhere. */
    private static final Polyline UNWORKED = Polyline.constant(1, 0, 0);

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
        if (tip.reach().equals(Length.ZERO)) {
            return NONE;
        }
        ShaftSection section = build.parts().shaft().section();
        Finish finish = section.finish().orElse(Finish.NONE);
        TipStock stock = stock(section.outside(), finish, tip, build.work().tipTrim());
        double finishDensity = grams(finish.density());
        double structureDensity = section.wall()
                .known()
                .map(Wall::density)
                .map(RemovedMaterial::grams)
                .orElse(0.0);
        return new RemovedMaterial(
                Volume.ofCubicMillimetres(stock.finish().volume()),
                Volume.ofCubicMillimetres(stock.structure().volume()),
                Mass.ofGrams(finishDensity * stock.finish().volume()
                        + structureDensity * stock.structure().volume()),
                FirstMoment.ofGramMillimetres(finishDensity * stock.finish().first()
                        + structureDensity * stock.structure().first()),
                Inertia.ofGramSquareMillimetres(finishDensity * stock.finish().second()
                        + structureDensity * stock.structure().second()));
    }

    private static TipStock stock(DiameterProfile outside, Finish finish, TipWork tip, Length trim) {
        Length reach = tip.reach();
        Length from = trim.plus(outside.from());
        if (from.plus(reach).moreThan(outside.to())) {
            Length read = outside.to().minus(from);
            throw Require.broken("build", "must have work on its tip no further up than was read, " + read, reach);
        }
        double length = reach.millimetres();
        return TipStock.of(
                Polyline.through(outside.stations(), from, Polyline.Diameter.MEAN),
                Polyline.through(finish.thickness(), trim, length),
                tip.stripped().millimetres(),
                tip.finished().isEmpty()
                        ? UNWORKED
                        : Polyline.through(tip.finished(), Length.ZERO, Polyline.Diameter.MEAN),
                length);
    }

    /** Grams for a cubic millimetre; nothing if it is not known. */
    private static double grams(Reading<Density> density) {
        return density.orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
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
