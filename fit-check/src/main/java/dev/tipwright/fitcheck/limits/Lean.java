package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.internal.Facing;
import java.util.List;

/**
 * How far a loose shaft can lean in its bore before it touches on both sides, and where it then touches.
 *
 * <pre>
 *   tan a = least over z1 &lt; z2 of (c(z1) + c(z2)) / (2 (z2 - z1))
 * </pre>
 *
 * <p>The least is reached at knots of the clearance. For a parallel tip in a parallel bore it agrees to first order with
 * {@code i sin a + d cos a = D}. The tip is taken as rigid. Lie or loft is off by as much, according to which way it leans when the
 * adhesive sets; {@link Sweep} is what can be felt and measured.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".370 in"), Length.parse(".370 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".365 in"), Length.parse("8 in"));
 * Lean lean = Lean.of(tip, bore, bore.depth());
 * Math.round(lean.angle().degrees() * 1000);    // = 229
 * lean.lowerAt().inches();                      // = 0.0
 * lean.upperAt().inches();                      // = 1.25
 * }</pre>
 *
 * @param angle greatest lean from the axis of the bore, either way; zero if it binds
 * @param lowerAt the lower of the two places where it then touches, up from the end of the tip
 * @param upperAt the upper of the two
 * @param free whether it clears everywhere; where it does not, it cannot lean
 */
public record Lean(Angle angle, Length lowerAt, Length upperAt, boolean free) {

    /**
     * Checks the values.
     *
     * @param angle greatest lean from the axis of the bore
     * @param lowerAt the lower of the two places where it then touches
     * @param upperAt the upper of the two
     * @param free whether it clears everywhere
     */
    public Lean {
        Require.given("angle", angle);
        Require.notNegative("lowerAt", lowerAt);
        Require.given("upperAt", upperAt);
        Require.atMost("lowerAt", lowerAt, "upperAt", upperAt);
    }

    /**
     * The lean of a tip at an insertion.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @return the lean
     */
    public static Lean of(DiameterProfile tip, Bore bore, Length insertion) {
        Polyline gap = Gap.of(tip, bore, insertion);
        if (gap.value(gap.least()) < 0) {
            Length binds = Length.ofMillimetres(gap.at(gap.least()));
            return new Lean(Angle.ZERO, binds, binds, false);
        }
        Pair pair = new Pair(0, gap.size() - 1);
        double slope = slope(gap, pair);
        for (Pair better = lower(gap, slope); slope(gap, better) < slope; better = lower(gap, slope)) {
            pair = better;
            slope = slope(gap, pair);
        }
        return new Lean(
                Angle.ofRadians(StrictMath.atan(slope)),
                Length.ofMillimetres(gap.at(pair.low())),
                Length.ofMillimetres(gap.at(pair.high())),
                true);
    }

    private record Pair(int low, int high) {}

    private static double slope(Polyline gap, Pair pair) {
        double span = gap.at(pair.high()) - gap.at(pair.low());
        return span > 0 ? (gap.value(pair.low()) + gap.value(pair.high())) / (2 * span) : Double.MAX_VALUE;
    }

    /**
     * The pair that undercuts a slope the most: least of {@code c1 + 2 s z1 + c2 - 2 s z2} (Dinkelbach's method for a ratio, from
     * memory). Each round lowers the slope, so there are few.
     */
    private static Pair lower(Polyline gap, double slope) {
        int low = 0;
        Pair best = new Pair(0, gap.size() - 1);
        double least = Double.MAX_VALUE;
        for (int high = 1; high < gap.size(); high++) {
            double sum = gap.value(low) + 2 * slope * gap.at(low) + gap.value(high) - 2 * slope * gap.at(high);
            if (sum < least) {
                least = sum;
                best = new Pair(low, high);
            }
            if (gap.value(high) + 2 * slope * gap.at(high) < gap.value(low) + 2 * slope * gap.at(low)) {
                low = high;
            }
        }
        return best;
    }

    /**
     * How far lie can be off.
     *
     * @return the lean, if it is in the plane of the lie
     */
    public Angle lieError() {
        return angle;
    }

    /**
     * How far loft can be off.
     *
     * @return the lean, if it is across the plane of the lie
     */
    public Angle loftError() {
        return angle;
    }

    /**
     * How the lean comes about: the two places are found by search, the lean follows from them.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; 1 mm or more, at most the depth of the bore and what was read of the tip
     * @return the slope and the angle; for a tip that binds the clearance at the place where it does
     */
    public static Working working(DiameterProfile tip, Bore bore, Length insertion) {
        Lean lean = of(tip, bore, insertion);
        Term low = Term.fine(
                "c1",
                "clearance at z1",
                Facing.tight(tip, bore, insertion, lean.lowerAt).clearance());
        if (!lean.free) {
            Facing facing = Facing.tight(tip, bore, insertion, lean.lowerAt);
            return new Working(
                    "Lean",
                    List.of(new Working.Line(
                            low,
                            "D - d",
                            List.of(
                                    Term.fine("D", "bore there", facing.bore()),
                                    Term.fine("d", "tip there", facing.tip())),
                            Source.assumption("a tip that binds cannot lean"))));
        }
        Term high = Term.fine(
                "c2",
                "clearance at z2",
                Facing.tight(tip, bore, insertion, lean.upperAt).clearance());
        double slope = StrictMath.tan(lean.angle.radians());
        Term s = Term.number("s", "slope", slope);
        return new Working(
                "Lean",
                List.of(
                        new Working.Line(
                                s,
                                "(c1 + c2) / (2 * (z2 - z1))",
                                List.of(
                                        low,
                                        high,
                                        Term.fine("z1", "lower place, up from the end of the tip", lean.lowerAt),
                                        Term.fine("z2", "upper place", lean.upperAt)),
                                Source.assumption("the least over all pairs of places, by search")),
                        new Working.Line(
                                Term.of("a", "lean", lean.angle),
                                "atan(s)",
                                List.of(s),
                                Source.assumption("a rigid tip; the angle in degrees"))));
    }
}
