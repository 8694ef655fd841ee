package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Reading;
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
import java.util.List;

/**
 * A tight bore opened with a cutter. A cutter of diameter {@code C} cuts a little wide, by {@code o}: the bore becomes
 * {@code max(D(y), C + o)} down to its depth; where it is out of round, its least diameter and its greatest each so. Whether a head bears
 * it is for the limit of the caller, and of its maker.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * Source why = Source.assumption("a drill in a fixed head");
 * BoreOpening opening = BoreOpening.of(
 *         bore, Length.parse(".530 in"), Length.parse(".368 in"), Reading.assumed(Length.parse(".002 in"), why));
 * opening.after().profile().diameterAt(Length.ZERO).inches();   // = 0.37
 * opening.wallLeft().inches();                                  // = 0.08
 * }</pre>
 *
 * @param cutter diameter of the cutter; above zero
 * @param oversize what it cuts beyond that, on the diameter, with its source
 * @param after the bore after it
 * @param wallLeft least wall of the hosel left
 * @param removed metal that comes out
 */
public record BoreOpening(Length cutter, Reading<Length> oversize, Bore after, Length wallLeft, Volume removed) {

    /**
     * Checks the values.
     *
     * @param cutter diameter of the cutter; above zero
     * @param oversize what it cuts beyond that
     * @param after the bore after it
     * @param wallLeft least wall of the hosel left
     * @param removed metal that comes out
     */
    public BoreOpening {
        Require.positive("cutter", cutter);
        Require.given("oversize", oversize);
        Require.given("after", after);
        Require.given("wallLeft", wallLeft);
        Require.given("removed", removed);
    }

    /**
     * A bore after a cutter.
     *
     * @param bore the bore as it is
     * @param outside outside diameter of the hosel at its thinnest over the bore; at most 100 mm
     * @param cutter diameter of the cutter; at most 50 mm
     * @param oversize what it cuts beyond that, on the diameter; zero to 1 mm, measured on a test piece or assumed with a source
     * @return the bore after it; the wall left is negative where the cutter would come through
     * @throws IllegalArgumentException if the oversize is unknown: it says whom to ask
     */
    public static BoreOpening of(Bore bore, Length outside, Length cutter, Reading<Length> oversize) {
        Require.given("bore", bore);
        Require.someUpTo("outside", outside, 100);
        Require.someUpTo("cutter", cutter, 50);
        Require.given("oversize", oversize);
        if (oversize instanceof Reading.Unknown<Length> unknown) {
            throw new IllegalArgumentException("oversize must be measured or assumed: ask " + unknown.ask());
        }
        Length wide = Require.between("oversize", oversize.orElse(Length.ZERO), Length.ZERO, Length.ofMillimetres(1));
        Length cut = cutter.plus(wide);
        Polyline narrow = opened(bore, Polyline.Diameter.LEAST, cut);
        Polyline widest = opened(bore, Polyline.Diameter.GREATEST, cut);
        // On the same places, those of both, which a factor of nothing gives.
        Polyline least = narrow.plus(widest, 0);
        Polyline greatest = widest.plus(narrow, 0);
        Polyline mean = least.plus(greatest.plus(least, -1), 0.5);
        Polyline before = Polyline.of(bore.profile(), Polyline.Diameter.MEAN);
        return new BoreOpening(
                cutter,
                oversize,
                new Bore(DiameterProfile.of(least.rounded(greatest)), bore.end(), bore.reading()),
                outside.minus(Length.ofMillimetres(greatest.value(greatest.greatest())))
                        .half(),
                Volume.ofCubicMillimetres(
                        Math.max(0, mean.solid().volume() - before.solid().volume())));
    }

    /** A diameter of the bore where the cutter has been: the greater of the two. */
    private static Polyline opened(Bore bore, Polyline.Diameter which, Length cut) {
        Polyline before = Polyline.of(bore.profile(), which);
        return before.max(Polyline.constant(cut.millimetres(), before.from(), before.to()));
    }

    /**
     * What the head loses.
     *
     * @param metal density of the hosel
     * @return mass of the metal that comes out
     */
    public Mass mass(Density metal) {
        Require.given("metal", metal);
        return removed.of(metal);
    }

    /**
     * How cut, wall and metal come about.
     *
     * @param bore the bore as it is
     * @param outside outside diameter of the hosel at its thinnest over the bore; at most 100 mm
     * @param cutter diameter of the cutter; at most 50 mm
     * @param oversize what it cuts beyond that, on the diameter; known
     * @return what it cuts, the wall left, the metal that comes out
     */
    public static Working working(Bore bore, Length outside, Length cutter, Reading<Length> oversize) {
        BoreOpening opening = of(bore, outside, cutter, oversize);
        Length wide = oversize.orElse(Length.ZERO);
        Polyline before = Polyline.of(bore.profile(), Polyline.Diameter.MEAN);
        Polyline after = Polyline.of(opening.after.profile(), Polyline.Diameter.MEAN);
        Polyline widest = Polyline.of(opening.after.profile(), Polyline.Diameter.GREATEST);
        Source why = oversize instanceof Reading.Assumed<Length> assumed
                ? assumed.source()
                : Source.assumption("the oversize as it was measured");
        return new Working(
                "Bore opening",
                List.of(
                        new Working.Line(
                                Term.fine("Dc", "what the cutter cuts", cutter.plus(wide)),
                                "C + o",
                                List.of(Term.fine("C", "cutter", cutter), Term.fine("o", "oversize", wide)),
                                why),
                        new Working.Line(
                                Term.fine("t", "wall of the hosel left", opening.wallLeft),
                                "(O - D) / 2",
                                List.of(
                                        Term.fine("O", "outside of the hosel", outside),
                                        Term.fine(
                                                "D",
                                                "widest bore after it",
                                                Length.ofMillimetres(widest.value(widest.greatest())))),
                                Source.assumption("bore and hosel are centred")),
                        new Working.Line(
                                Term.of("V", "metal that comes out", opening.removed),
                                "V2 - V1",
                                List.of(
                                        Term.of(
                                                "V2",
                                                "bore after",
                                                Volume.ofCubicMillimetres(
                                                        after.solid().volume())),
                                        Term.of(
                                                "V1",
                                                "bore before",
                                                Volume.ofCubicMillimetres(
                                                        before.solid().volume()))),
                                Source.assumption("what comes out is what was there less what is left"))));
    }
}
