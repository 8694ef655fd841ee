package dev.tipwright.core.mass;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Rod;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a shaft between two places: what it weighs, where it balances, how it resists being swung. Where the
 * mass along the shaft has not been found out, line density is taken to be a straight line that has the raw shaft's
 * mass and balance point, {@code mu(z) = (2 m / R^2) (2 R - 3 b) + (6 m / R^3) (2 b - R) z}. That is believable for a
 * balance point in the middle third of the shaft; outside it the line would go below zero, and stations should be
 * weighed.
 *
 * <pre>{@code
 * Shaft shaft = Samples.shaft();
 * ShaftCut whole = new ShaftCut(shaft, Length.ZERO, shaft.length());
 * whole.mass();      // = 84.1 g
 * whole.balance();   // = 514.35 mm
 * }</pre>
 *
 * @param shaft the raw shaft
 * @param from where the piece starts, from the raw tip
 * @param to where it ends, not before its start, at most the raw length
 */
public record ShaftCut(Shaft shaft, Length from, Length to) {

    /**
     * Checks the values.
     *
     * @param shaft the raw shaft
     * @param from where the piece starts, from the raw tip
     * @param to where it ends, not before its start, at most the raw length
     */
    public ShaftCut {
        Require.given("shaft", shaft);
        Require.between("from", from, Length.ZERO, shaft.length());
        Require.between("to", to, from, shaft.length());
    }

    /**
     * The piece that a build keeps: from the tip trim to the butt trim.
     *
     * @param build parts and work
     * @return the shaft as cut
     */
    public static ShaftCut of(Build build) {
        Require.given("build", build);
        Length from = build.work().tipTrim();
        return new ShaftCut(build.parts().shaft(), from, from.plus(build.cutLength()));
    }

    /**
     * Whether the line density along the shaft is believable: found out by weighing, or a balance point in the middle third.
     *
     * @param shaft the raw shaft
     * @return false if the straight line goes below zero somewhere
     */
    public static boolean believable(Shaft shaft) {
        Require.given("shaft", shaft);
        long length = shaft.length().nanometres();
        long balance = Math.multiplyExact(3, shaft.mass().balance().nanometres());
        return shaft.mass().along().known().isPresent() || (balance >= length && balance <= 2 * length);
    }

    /**
     * Line density along a raw shaft: as found out by weighing, or the straight line that has its mass and balance point.
     *
     * @param shaft the raw shaft
     * @return mass for length from the raw tip to the butt; empty if it was not found out and the straight line goes to
     *     zero or below somewhere
     */
    public static Optional<LineDensityProfile> lineDensity(Shaft shaft) {
        Require.given("shaft", shaft);
        Optional<LineDensityProfile> known = shaft.mass().along().known();
        if (known.isPresent()) {
            return known;
        }
        double atTip = Rod.atTip(shaft);
        double atButt = 2 * shaft.mass().mass().grams() / shaft.length().millimetres() - atTip;
        if (!(atTip > 0 && atButt > 0)) {
            return Optional.empty();
        }
        return Optional.of(new LineDensityProfile(List.of(
                new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerMillimetre(atTip)),
                new LineDensityProfile.Knot(shaft.length(), LineDensity.ofGramsPerMillimetre(atButt)))));
    }

    /**
     * What the piece weighs, the integral of line density.
     *
     * @return its mass, rounded to the picogram
     */
    public Mass mass() {
        return rod().weight();
    }

    /**
     * First moment of the piece about its own tip end.
     *
     * @return mass times distance from {@code from}
     */
    public FirstMoment momentAboutTip() {
        return FirstMoment.ofGramMillimetres(rod().first());
    }

    /**
     * Inertia of the piece about its own tip end.
     *
     * @return mass times distance squared, summed along it
     */
    public Inertia inertiaAboutTip() {
        return Inertia.ofGramSquareMillimetres(rod().second());
    }

    /**
     * Where the piece balances.
     *
     * @return distance from its own tip end, rounded to the nanometre
     * @throws IllegalArgumentException if the piece has no mass, being no longer than nothing
     */
    public Length balance() {
        return momentAboutTip().over(mass());
    }

    private Rod rod() {
        return Rod.of(shaft, from, to);
    }

    /**
     * How the mass comes about, by a line density that runs straight from tip to butt; where the line density was read at
     * knots, a line says so.
     *
     * @return the working
     */
    public Working working() {
        Term mass = Term.of("mS", "mass of the cut shaft", mass());
        Term from = Term.fine("z1", "start of what is left, from the raw tip", this.from);
        Term to = Term.fine("z2", "its end", this.to);
        boolean knots = shaft.mass().along().known().isPresent();
        return new Working(
                "Mass of the cut shaft",
                List.of(
                        knots
                                ? new Working.Line(
                                        mass,
                                        "m1",
                                        List.of(
                                                Term.of("m1", "line density read at knots, straight between", mass()),
                                                from,
                                                to),
                                        Source.assumption("line density straight between its knots"))
                                : new Working.Line(
                                        mass,
                                        "2 * m * (2 * R - 3 * b) / R^2 * (z2 - z1)"
                                                + " + 3 * m * (2 * b - R) / R^3 * (z2^2 - z1^2)",
                                        List.of(
                                                Term.of(
                                                        "m",
                                                        "raw mass",
                                                        shaft.mass().mass()),
                                                Term.fine("R", "raw length", shaft.length()),
                                                Term.fine(
                                                        "b",
                                                        "balance from the raw tip",
                                                        shaft.mass().balance()),
                                                from,
                                                to),
                                        Source.assumption(
                                                "line density straight from tip to butt, by mass and balance point"))));
    }
}
