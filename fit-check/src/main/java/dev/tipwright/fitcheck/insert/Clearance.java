package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreReading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.internal.Facing;
import java.util.List;

/**
 * The clearance a seated tip has in its bore, on the diameter: {@code c(z) = D(i - z) - d(z)} over the inserted part. Where a reading
 * is out of round the worst diameters count. Negative clearance is interference.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".350 in"), Length.parse("8 in"));
 * Clearance clearance = Clearance.of(tip, bore, Length.parse("1 1/4 in"));
 * clearance.least().thousandths();      // = 5.0
 * clearance.greatest().thousandths();   // = 13.0
 * clearance.mean().thousandths();       // = 9.0
 * }</pre>
 *
 * @param least least clearance
 * @param leastAt where, up from the end of the tip
 * @param greatest greatest clearance
 * @param greatestAt where, up from the end of the tip
 * @param mean mean over the inserted part
 * @param lowerBound whether pins read the bore, so that it may be wider, and the clearance greater, below a narrow place
 */
public record Clearance(
        Length least, Length leastAt, Length greatest, Length greatestAt, Length mean, boolean lowerBound) {

    /**
     * Checks the values.
     *
     * @param least least clearance
     * @param leastAt where, up from the end of the tip
     * @param greatest greatest clearance
     * @param greatestAt where, up from the end of the tip
     * @param mean mean over the inserted part
     * @param lowerBound whether pins read the bore
     */
    public Clearance {
        Require.given("least", least);
        Require.notNegative("leastAt", leastAt);
        Require.given("greatest", greatest);
        Require.notNegative("greatestAt", greatestAt);
        Require.given("mean", mean);
    }

    /**
     * The clearance of a tip at an insertion.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; above zero, at most the depth of the bore
     * @return least, greatest and mean clearance over the part of the tip that was read and is in the bore
     */
    public static Clearance of(DiameterProfile tip, Bore bore, Length insertion) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.between("insertion", insertion, Length.ofNanometres(1), bore.depth());
        double depth = insertion.millimetres();
        double inserted = insertion.min(tip.length()).millimetres();
        Polyline around = Polyline.of(bore.profile(), Polyline.Diameter.LEAST)
                .between(0, depth)
                .mirrored(depth)
                .between(0, inserted);
        Polyline inside = Polyline.of(tip, Polyline.Diameter.GREATEST).between(0, inserted);
        Polyline clearance = around.plus(inside, -1);
        int least = clearance.least();
        int greatest = clearance.greatest();
        return new Clearance(
                Length.ofMillimetres(clearance.value(least)),
                Length.ofMillimetres(clearance.at(least)),
                Length.ofMillimetres(clearance.value(greatest)),
                Length.ofMillimetres(clearance.at(greatest)),
                Length.ofMillimetres(clearance.integral() / inserted),
                bore.reading() == BoreReading.BY_PINS);
    }

    /**
     * How least and greatest clearance come about.
     *
     * @param tip diameter up from the end of the tip
     * @param bore the bore
     * @param insertion how far it is in; above zero, at most the depth of the bore
     * @return a line for each of the two, with the diameters that face each other there
     */
    public static Working working(DiameterProfile tip, Bore bore, Length insertion) {
        Clearance clearance = of(tip, bore, insertion);
        return new Working(
                "Clearance",
                List.of(
                        line(
                                "c",
                                "least clearance",
                                clearance.leastAt,
                                Facing.tight(tip, bore, insertion, clearance.leastAt)),
                        line(
                                "cmax",
                                "greatest clearance",
                                clearance.greatestAt,
                                Facing.loose(tip, bore, insertion, clearance.greatestAt))));
    }

    private static Working.Line line(String symbol, String meaning, Length at, Facing facing) {
        return new Working.Line(
                Term.fine(symbol, meaning + ", " + at + " up", facing.clearance()),
                "D - d",
                List.of(Term.fine("D", "bore there", facing.bore()), Term.fine("d", "tip there", facing.tip())),
                Source.assumption("what faces what follows from the insertion: y = i - z"));
    }
}
