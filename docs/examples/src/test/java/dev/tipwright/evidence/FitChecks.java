package dev.tipwright.evidence;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.limits.FitClass;
import dev.tipwright.fitcheck.limits.Iso286;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.limits.SizeLimits;
import java.util.Locale;

/** A tip in a bore: how far in, how loose, how far it leans, what class of fit. */
final class FitChecks {

    static final Bound NANOMETRE =
            Bound.printedAnd(1e-6, "half the last digit, and a nanometre, to which an insertion is rounded down");

    private FitChecks() {}

    static Bore bore(Case row) {
        return Bore.ofReadings(row.stations("bore_mm"), BoreEnd.FLAT);
    }

    static void firstContact(Tally tally) {
        tally.cases("first-contact").forEach(row -> {
            FirstContact contact = FirstContact.of(row.profile("tip_mm"), bore(row));
            row.check("insertion_mm", contact.insertion(), NANOMETRE);
            row.check("tip_station_mm", contact.tipStation(), NANOMETRE);
            row.says("kind", contact.kind());
        });
        tally.cases("tapers-morse").forEach(FitChecks::morse);
    }

    /** A plug seats in its own socket; one that is larger by a thousandth everywhere stands out by that over the taper. */
    private static void morse(Case row) {
        Length depth = row.length("plug_depth_in");
        Length end = row.length("small_end_of_plug_in");
        Length mouth = end.plus(Length.ofInches(row.number("taper_per_foot_in") / 12 * depth.inches()));
        Bore socket = Bore.ofTwoDiameters(mouth, end, depth, BoreEnd.FLAT);
        DiameterProfile plug = DiameterProfile.of(
                Case.station(0, end.millimetres()), Case.station(depth.millimetres(), mouth.millimetres()));
        row.check("plug_depth_in", FirstContact.of(plug, socket).insertion(), Bound.EXACT);
        Length large =
                FirstContact.of(plug.widenedBy(Length.ofThousandths(1)), socket).insertion();
        double taper = 0.001 / depth.minus(large).inches() * 12;
        row.check(
                "taper_per_foot_in",
                "taper per foot by a plug 0.001 in larger",
                "in",
                taper,
                // The mouth is rounded to the nanometre, which is worth 1e-6 in of depth in 0.02 in of standing out.
                Bound.relative(1e-4, "the mouth of the socket on a grid of nanometres"));
    }

    static void clearance(Tally tally) {
        tally.cases("clearance").forEach(row -> {
            Clearance clearance = Clearance.of(row.profile("tip_mm"), bore(row), row.length("insertion_mm"));
            row.check("least_mm", clearance.least(), Bound.grid("1e-6"));
            row.check("greatest_mm", clearance.greatest(), Bound.grid("1e-6"));
            row.check("mean_mm", clearance.mean(), Bound.grid("1e-6"));
        });
        tally.cases("iso-286-fits-10-h7").forEach(row -> {
            row.check("least_clearance_um", worst(row, "shaft_upper_mm", "hole_lower_mm"), Bound.EXACT);
            row.check("greatest_clearance_um", worst(row, "shaft_lower_mm", "hole_upper_mm"), Bound.EXACT);
        });
    }

    private static double worst(Case row, String shaft, String hole) {
        Length depth = Club.mm(30);
        Bore bore = Bore.ofTwoDiameters(row.length(hole), row.length(hole), depth, BoreEnd.FLAT);
        return Clearance.of(DiameterProfile.cylinder(row.length(shaft), depth), bore, depth)
                .least()
                .micrometres();
    }

    static void lean(Tally tally) {
        tally.cases("lean").forEach(row -> {
            Lean lean = Lean.of(row.profile("tip_mm"), bore(row), row.length("insertion_mm"));
            boolean slope = row.text("rule").equals("slope");
            row.check(
                    "lean_deg",
                    slope ? "lean by slope" : "lean of a rectangle",
                    "deg",
                    lean.angle().degrees(),
                    slope ? Bound.DOUBLES : secondOrder(row));
        });
    }

    /** The library's lean is of first order; the rectangle's exceeds it by {@code a^2 d / (2 i)}, and by terms like a^3. */
    private static Bound secondOrder(Case row) {
        double a = Math.toRadians(row.number("lean_deg"));
        double d = row.profile("tip_mm").stations().get(0).mean().millimetres();
        double more = a * a * d / (2 * row.number("insertion_mm")) + a * a * a;
        return Bound.of(Math.toDegrees(more), "the second order, a^2 d / (2 i) + a^3");
    }

    static void classOfFit(Tally tally) {
        tally.cases("iso-286-grades").forEach(FitChecks::grades);
        tally.cases("iso-286-deviations").forEach(FitChecks::deviation);
        tally.cases("iso-286-fits-10-h7").forEach(FitChecks::fit);
        tally.cases("chance-of-interference")
                .forEach(row -> row.check(
                        "chance",
                        FitClass.chanceOfInterference(
                                row.length("mean_clearance_mm"),
                                row.length("spread_of_hole_mm"),
                                row.length("spread_of_tip_mm")),
                        Bound.relative(1e-11, "the arithmetic of doubles, in the tail of the normal")));
    }

    private static void grades(Case row) {
        for (Iso286.Grade grade : Iso286.Grade.values()) {
            String column = grade.name().toLowerCase(Locale.ROOT) + "_um";
            Length justOver = row.length("over_mm").plus(Length.ofNanometres(1));
            row.check(column, Iso286.width(justOver, grade).micrometres(), Bound.EXACT);
            row.check(column, Iso286.width(row.length("up_to_mm"), grade).micrometres(), Bound.EXACT);
        }
    }

    private static void deviation(Case row) {
        Length nominal = row.length("up_to_mm");
        SizeLimits shaft = Iso286.shaft(nominal, letter(row.text("letter")), Iso286.Grade.IT6);
        Length limit = row.text("deviation").equals("es") ? shaft.greatest() : shaft.least();
        row.check("value_um", "deviation", "um", limit.minus(nominal).micrometres(), Bound.EXACT);
    }

    private static Iso286.Deviation letter(String letter) {
        return Iso286.Deviation.valueOf(letter.toUpperCase(Locale.ROOT));
    }

    private static void fit(Case row) {
        Length nominal = Club.mm(10);
        SizeLimits hole = Iso286.hole(nominal, Iso286.Grade.IT7);
        String shaft = row.text("shaft");
        SizeLimits tip =
                Iso286.shaft(nominal, letter(shaft.substring(0, 1)), Iso286.Grade.valueOf("IT" + shaft.charAt(1)));
        row.check("hole_lower_mm", hole.least(), Bound.EXACT);
        row.check("hole_upper_mm", hole.greatest(), Bound.EXACT);
        row.check("shaft_lower_mm", tip.least(), Bound.EXACT);
        row.check("shaft_upper_mm", tip.greatest(), Bound.EXACT);
        FitClass fit = FitClass.of(hole, tip);
        row.check("least_clearance_um", fit.leastClearance().micrometres(), Bound.EXACT);
        row.check("greatest_clearance_um", fit.greatestClearance().micrometres(), Bound.EXACT);
        row.says("kind", fit.kind().name().toLowerCase(Locale.ROOT));
    }
}
