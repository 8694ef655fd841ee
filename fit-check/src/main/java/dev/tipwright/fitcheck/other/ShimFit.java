package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.limits.Lean;
import java.util.List;
import java.util.Optional;

/**
 * A loose tip filled with a shim or sleeve. A wall of {@code t} takes {@code 2 t} off the clearance, the same everywhere; the thickest in stock
 * that leaves the wanted clearance at the tightest place is taken. A shim is no cure where a taper is left open beside it: the
 * clearance then left at the loosest place says so.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".371 in"), Length.parse(".370 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".355 in"), Length.parse("8 in"));
 * List<Length> walls = List.of(Length.parse(".003 in"), Length.parse(".005 in"), Length.parse(".010 in"));
 * ShimFit fit = ShimFit.of(tip, bore, bore.depth(), Length.parse(".004 in"), Length.parse(".006 in"), walls);
 * fit.wall().get().thousandths();        // = 5.0
 * fit.least().thousandths();             // = 5.0
 * fit.greatest().thousandths();          // = 6.0
 * fit.verdict();                         // = CURES
 * fit.mass(tip, Density.ofGramsPerCubicCentimetre(8.5)).grams() < 1;   // = true
 * }</pre>
 *
 * @param wall wall of the shim; empty if none fits or none is needed
 * @param length how long: the insertion
 * @param least least clearance left on the diameter
 * @param greatest greatest clearance left on the diameter
 * @param lean how far the shaft can lean in what is left
 * @param verdict whether that is a cure
 */
public record ShimFit(Optional<Length> wall, Length length, Length least, Length greatest, Lean lean, Verdict verdict) {

    /** Whether a shim helps. */
    public enum Verdict {
        /** What is left is within the limit. */
        CURES,
        /** The fit is no looser than the limit as it is. */
        NOT_NEEDED,
        /** Every shim in stock is thicker than the tightest place allows. */
        NONE_THIN_ENOUGH,
        /** With the best shim it is still looser than the limit: a taper beside it, or a gap in the stock. */
        STILL_LOOSE
    }

    /**
     * Checks the values.
     *
     * @param wall wall of the shim
     * @param length how long
     * @param least least clearance left
     * @param greatest greatest clearance left
     * @param lean how far the shaft can lean in what is left
     * @param verdict whether that is a cure
     */
    public ShimFit {
        Require.given("wall", wall);
        Require.positive("length", length);
        Require.given("least", least);
        Require.given("greatest", greatest);
        Require.atMost("least", least, "greatest", greatest);
        Require.given("lean", lean);
        Require.given("verdict", verdict);
    }

    /**
     * The best shim from a stock.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @param clearance wanted clearance at the tightest place, on the diameter ({@code w}); zero or more
     * @param loosest the greatest clearance the caller allows anywhere; at least the wanted one
     * @param walls walls in stock; each above zero, at most 10 mm
     * @return the shim, and what it leaves
     */
    public static ShimFit of(
            DiameterProfile tip, Bore bore, Length insertion, Length clearance, Length loosest, List<Length> walls) {
        Lean bare = Lean.of(tip, bore, insertion);
        Require.notNegative("clearance", clearance);
        Require.given("loosest", loosest);
        Require.atMost("clearance", clearance, "loosest", loosest);
        for (Length wall : Require.list("walls", walls)) {
            Require.someUpTo("walls", wall, 10);
        }
        Clearance open = Clearance.of(tip, bore, insertion);
        if (!open.greatest().moreThan(loosest)) {
            return new ShimFit(Optional.empty(), insertion, open.least(), open.greatest(), bare, Verdict.NOT_NEEDED);
        }
        Length room = open.least().minus(clearance);
        Optional<Length> wall =
                walls.stream().filter(thick -> !thick.times(2).moreThan(room)).max(Length::compareTo);
        if (wall.isEmpty()) {
            return new ShimFit(wall, insertion, open.least(), open.greatest(), bare, Verdict.NONE_THIN_ENOUGH);
        }
        Length filled = wall.get().times(2);
        Length greatest = open.greatest().minus(filled);
        return new ShimFit(
                wall,
                insertion,
                open.least().minus(filled),
                greatest,
                Lean.of(tip.widenedBy(filled), bore, insertion),
                greatest.moreThan(loosest) ? Verdict.STILL_LOOSE : Verdict.CURES);
    }

    /**
     * The material of the shim: a wall {@code t} around the tip, {@code pi (d + t) t} per length.
     *
     * @param tip diameter of the tip it goes around, up from its end; read at least as far as the shim is long
     * @return the volume; zero without a shim
     */
    public Volume volume(DiameterProfile tip) {
        Require.given("tip", tip);
        Require.that(!length.moreThan(tip.length()), "tip", "must be read as far as the shim is long, " + length, tip);
        Polyline inside = Polyline.of(tip, Polyline.Diameter.MEAN).between(0, length.millimetres());
        double thick = wall.orElse(Length.ZERO).millimetres();
        return Volume.ofCubicMillimetres(inside.plus(2 * thick).around(inside).volume());
    }

    /**
     * What the shim adds to the club.
     *
     * @param tip diameter of the tip it goes around, up from its end; read at least as far as the shim is long
     * @param density of its material
     * @return the mass; zero without a shim
     */
    public Mass mass(DiameterProfile tip, Density density) {
        Require.given("density", density);
        return volume(tip).of(density);
    }

    /**
     * How far the axis of the shaft can sit off that of the bore.
     *
     * @return half the least clearance left, zero if it binds
     */
    public Length offCentre() {
        return least.max(Length.ZERO).half();
    }

    /**
     * How the clearances beside the shim come about; without one, beside the bare tip.
     *
     * @param tip diameter up from the end of the tip, read at least as far as the shim is long
     * @param bore the bore, at least as deep
     * @return least and greatest clearance
     */
    public Working working(DiameterProfile tip, Bore bore) {
        Clearance open = Clearance.of(tip, bore, length);
        Term thick = Term.fine("t", "wall of the shim", wall.orElse(Length.ZERO));
        Source why = Source.assumption("a shim takes its wall twice off the diameter, the same everywhere");
        return new Working(
                "Shim",
                List.of(
                        new Working.Line(
                                Term.fine("c", "least clearance left", least),
                                "c0 - 2 * t",
                                List.of(Term.fine("c0", "least clearance of the bare tip", open.least()), thick),
                                why),
                        new Working.Line(
                                Term.fine("cmax", "greatest clearance left", greatest),
                                "c0 - 2 * t",
                                List.of(Term.fine("c0", "greatest clearance of the bare tip", open.greatest()), thick),
                                why)));
    }
}
