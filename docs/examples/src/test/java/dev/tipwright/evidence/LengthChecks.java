package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrim;

/** Trims, marks and lengths. */
final class LengthChecks {

    private LengthChecks() {}

    static void tipTrim(Tally tally) {
        tally.cases("tip-trim").forEach(row -> {
            TipTrim trim = new TipTrim(
                    row.length("chart_in"),
                    row.length("bottom_to_ground_in"),
                    row.length("bore_depth_in"),
                    row.length("insertion_in"),
                    row.length("ground_reference_in"),
                    row.length("kerf_in"));
            row.same("correction_in", trim.correction());
            row.same("trim_in", trim.trim());
            row.same("offcut_in", trim.offcut());
        });
    }

    static void cutMarks(Tally tally) {
        tally.cases("cut-marks").forEach(row -> {
            CutSheet sheet = new CutSheet(
                    row.length("raw_in"), row.length("tip_trim_in"), row.length("butt_trim_in"), row.length("kerf_in"));
            row.same("cut_length_in", sheet.cutLength());
            row.same("tip_mark_from_tip_in", sheet.tip().fromTip());
            row.same("tip_mark_from_butt_in", sheet.tip().fromButt());
            row.same("butt_mark_from_tip_in", sheet.butt().fromTip());
            row.same("butt_mark_from_butt_in", sheet.butt().fromButt());
            row.same("tip_offcut_in", sheet.tip().offcut());
            row.same("butt_offcut_in", sheet.butt().offcut());
            row.same("tip_dust_in", sheet.tip().dust());
            row.same("butt_dust_in", sheet.butt().dust());
        });
    }

    static void playingLength(Tally tally) {
        tally.cases("playing-length").forEach(row -> row.same("length_in", PlayingLength.alongAxis(club(row))));
    }

    private static Build club(Case row) {
        Build parts = Club.of(Club.head(), Club.shaft(row.length("raw_in"), Mass.ofGrams(80)), Club.grip());
        Build capped = Club.withGrip(parts, grip -> grip.withCap(row.length("cap_in")));
        Bore deep = Bore.ofTwoDiameters(Club.mm(9.5), Club.mm(9.4), row.length("insertion_in"), BoreEnd.FLAT);
        Build bored = Club.withHead(capped, head -> head.withBore(deep));
        return Club.seated(
                Club.withHead(
                        bored,
                        head -> head.withGeometry(head.geometry().withMouthToGround(row.length("mouth_to_ground_in")))),
                row.length("tip_trim_in"),
                row.length("butt_trim_in"),
                row.length("insertion_in"));
    }

    static void sixtyDegreeLength(Tally tally) {
        tally.cases("length-by-60-degree-plane").forEach(row -> {
            SixtyDegreePlane plane = new SixtyDegreePlane(
                    row.degrees("lie_deg"),
                    row.length("axis_height_mm"),
                    row.length("lowest_mm"),
                    row.length("radius_mm"));
            row.check("length_mm", plane.length(row.length("along_axis_mm")), Bound.grid("1e-6"));
        });
    }
}
