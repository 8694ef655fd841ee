package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;
import java.util.List;
import java.util.Optional;

/**
 * The shape a tip must be worked down to so that it seats with a wanted clearance, and what that takes off.
 *
 * <p>The finish comes off over the whole insertion, because adhesive holds the shaft and not its paint; where the bare tip is still too
 * wide, structure comes off too: {@code f(z) = min(d(z) - 2 p(z), D(i - z) - w)}. Each place of the tip must also pass all of the bore
 * above where it comes to lie, so {@code D} is the least diameter from the mouth down to there: in a barrelled bore the tip keeps the
 * width of the mouth. Where readings are out of round, the tip's greatest and the bore's least diameter give the shape, and mean
 * diameters the volume. The shape is rounded to the nanometre in place and diameter.
 *
 * <p>Stiffness left is the second moment of the worked section over that of the bare one, {@code (f^4 - b^4) / (s^4 - b^4)} with bare
 * outside {@code s} and inside {@code b}; for a round tube the polar moment keeps the same share. Whether a tip may be tapered at
 * all is the word of the shaft's maker.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".3735 in"), Length.parse("8 in"));
 * Finish finish = Finish.NONE.withThickness(ThicknessProfile.uniform(Length.parse(".0025 in")));
 * MaterialRemoval removal = MaterialRemoval.of(TipSection.of(tip, finish), bore, bore.depth(), Length.parse(".004 in"));
 * removal.stockAtEnd().thousandths();       // = 22.5
 * removal.structureAtEnd().thousandths();   // = 17.5
 * }</pre>
 *
 * @param finished diameter after the work at its stations, up from the end of the tip, over the insertion
 * @param stockAtEnd what comes off the diameter at the end of the tip ({@code e(0)})
 * @param structureAtEnd how much of that is structure
 * @param finishVolume finish that comes off
 * @param structureVolume structure that comes off
 * @param mass what the two weigh; empty while a density is unknown
 * @param leastWall least wall of structure left; empty while the wall is unknown
 * @param leastWallAt where, up from the end of the tip; zero while the wall is unknown
 * @param leastStiffness least share of bending and torsional stiffness left; empty while the wall is unknown
 * @param stiffnessAtMouth share left at the hosel mouth, where shafts break; empty while the wall is unknown
 */
public record MaterialRemoval(
        List<Station> finished,
        Length stockAtEnd,
        Length structureAtEnd,
        Volume finishVolume,
        Volume structureVolume,
        Optional<Mass> mass,
        Optional<Length> leastWall,
        Length leastWallAt,
        Optional<Double> leastStiffness,
        Optional<Double> stiffnessAtMouth) {

    /**
     * Checks the values.
     *
     * @param finished diameter after the work at its stations
     * @param stockAtEnd what comes off the diameter at the end of the tip
     * @param structureAtEnd how much of that is structure
     * @param finishVolume finish that comes off
     * @param structureVolume structure that comes off
     * @param mass what the two weigh
     * @param leastWall least wall of structure left
     * @param leastWallAt where
     * @param leastStiffness least share of stiffness left
     * @param stiffnessAtMouth share left at the hosel mouth
     */
    public MaterialRemoval {
        finished = finished instanceof Stations ? finished : Stations.of(Require.list("finished", finished));
        Require.that(!finished.isEmpty(), "finished", "must not be empty", finished);
        Require.given("stockAtEnd", stockAtEnd);
        Require.given("structureAtEnd", structureAtEnd);
        Require.given("finishVolume", finishVolume);
        Require.given("structureVolume", structureVolume);
        Require.given("mass", mass);
        Require.given("leastWall", leastWall);
        Require.given("leastWallAt", leastWallAt);
        Require.given("leastStiffness", leastStiffness);
        Require.given("stiffnessAtMouth", stiffnessAtMouth);
    }

    /**
     * The shape and what it takes off.
     *
     * @param tip outside, finish and wall of the tip as it stands
     * @param bore the bore it is to go into
     * @param insertion how far ({@code i}); above zero, at most the depth of the bore and what was read of the tip
     * @param clearance wanted clearance on the diameter ({@code w}); zero or more, less than the bore is wide
     * @return finished shape, stock, volumes, mass, wall and stiffness left
     * @throws IllegalArgumentException if an argument is out of its range, or the finish is as thick as the tip
     */
    public static MaterialRemoval of(TipSection tip, Bore bore, Length insertion, Length clearance) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.between(
                "insertion",
                insertion,
                Length.ofNanometres(1),
                bore.depth().min(tip.outside().length()));
        Require.notNegative("clearance", clearance);
        tip.checkFinish();
        double length = insertion.millimetres();
        Polyline room = Polyline.of(bore.profile(), Polyline.Diameter.LEAST)
                .between(0, length)
                .mirrored(length)
                .leastAhead()
                .plus(-clearance.millimetres());
        Require.that(
                room.value(room.least()) > 0,
                "clearance",
                "must be less than the bore is wide over the insertion",
                clearance);
        Polyline outside = tip.outsideOver(insertion, Polyline.Diameter.MEAN);
        Polyline bare = tip.bare(outside);
        boolean round = tip.round();
        Polyline widest = round ? outside : tip.outsideOver(insertion, Polyline.Diameter.GREATEST);
        Polyline widestBare = round ? bare : tip.bare(widest);
        Polyline finished = widestBare.min(room);
        Polyline worked = round ? finished : bare.min(finished);
        TipStock stock = new TipStock(outside.around(bare), bare.around(worked));
        Optional<SectionLeft> left = tip.wall()
                .known()
                .map(wall -> SectionLeft.of(outside.plus(wall.thickness(), tip.trimmed(), -2), bare, worked, length));
        return new MaterialRemoval(
                finished.rounded(finished),
                Length.ofMillimetres(widest.value(0) - finished.value(0)),
                Length.ofMillimetres(widestBare.value(0) - finished.value(0)),
                Volume.ofCubicMillimetres(stock.finish().volume()),
                Volume.ofCubicMillimetres(stock.structure().volume()),
                mass(tip, stock),
                left.map(SectionLeft::leastWall),
                left.map(SectionLeft::leastWallAt).orElse(Length.ZERO),
                left.map(SectionLeft::leastStiffness),
                left.map(SectionLeft::stiffnessAtMouth));
    }

    private static Optional<Mass> mass(TipSection tip, TipStock stock) {
        Optional<Density> finish = tip.finish().density().known();
        Optional<Density> structure = tip.wall().known().map(Wall::density).flatMap(Reading::known);
        boolean finishKnown = finish.isPresent() || stock.finish().volume() == 0;
        boolean structureKnown = structure.isPresent() || stock.structure().volume() == 0;
        return finishKnown && structureKnown
                ? Optional.of(Mass.ofGrams(grams(stock.finish().volume(), finish)
                        + grams(stock.structure().volume(), structure)))
                : Optional.empty();
    }

    private static double grams(double volume, Optional<Density> density) {
        return volume / 1000 * density.orElse(Density.ZERO).gramsPerCubicCentimetre();
    }

    /**
     * Finish and structure together.
     *
     * @return the volume that comes off
     */
    public Volume volume() {
        return finishVolume.plus(structureVolume);
    }

    /**
     * How much of the stock at the end of the tip is finish.
     *
     * @return stock less structure, on the diameter
     */
    public Length finishAtEnd() {
        return stockAtEnd.minus(structureAtEnd);
    }

    /**
     * The finished tip as a profile.
     *
     * @return diameter up from the end of the tip, over the insertion
     */
    public DiameterProfile profile() {
        return DiameterProfile.of(finished);
    }
}
