package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;

/**
 * A tight bore opened with a cutter. A cutter of diameter {@code C} cuts a little wide, by {@code o}: the bore becomes
 * {@code max(D(y), C + o)} down to its depth. Whether a head bears it is for the limit of the caller, and of its maker.
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
        Polyline before = Polyline.of(bore.profile(), Polyline.Diameter.MEAN);
        Polyline zero = Polyline.constant(0, before.from(), before.to());
        Polyline after = zero.plus(
                zero.plus(before, -1).min(Polyline.constant(-cut.millimetres(), before.from(), before.to())), -1);
        Length widest = Length.ofMillimetres(after.value(after.greatest()));
        return new BoreOpening(
                cutter,
                oversize,
                new Bore(DiameterProfile.of(stations(after)), bore.end(), bore.reading()),
                outside.minus(widest).half(),
                Volume.ofCubicMillimetres(
                        Math.max(0, after.solid().volume() - before.solid().volume())));
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
                                                Length.ofMillimetres(after.value(after.greatest())))),
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

    private static List<Station> stations(Polyline line) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < line.size(); k++) {
            Station next = Station.of(Length.ofMillimetres(line.at(k)), Length.ofMillimetres(line.value(k)));
            int count = stations.size();
            if (count < 2 || !stations.get(count - 2).at().equals(next.at())) {
                stations.add(next);
            }
        }
        return stations;
    }
}
