package dev.tipwright.evidence;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.StockLeft;
import dev.tipwright.fitcheck.taper.StockRange;
import dev.tipwright.fitcheck.taper.StopReading;
import dev.tipwright.fitcheck.taper.StopReport;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.List;

/** A tip worked down to a bore: what comes off, where to stop, what a stop says. */
final class TaperChecks {

    private static final Bound OUTWARDS =
            Bound.printedAnd(1e-6, "half the last digit, and a nanometre, to which the ends are rounded outwards");

    private TaperChecks() {}

    static void materialRemoval(Tally tally) {
        tally.cases("material-removal").forEach(row -> {
            MaterialRemoval removal = MaterialRemoval.of(
                    section(row), FitChecks.bore(row), row.length("insertion_mm"), row.length("clearance_mm"));
            row.check("stock_at_end_mm", removal.stockAtEnd(), Bound.grid("1e-6"));
            row.check("structure_at_end_mm", removal.structureAtEnd(), Bound.grid("1e-6"));
            row.check("finish_volume_mm3", removal.finishVolume().cubicMillimetres(), VOLUME);
            row.check("structure_volume_mm3", removal.structureVolume().cubicMillimetres(), VOLUME);
            row.check(
                    "mass_g", removal.mass().orElseThrow().grams(), Bound.of(1e-12, "a picogram, the grid of masses"));
            row.check("least_wall_mm", removal.leastWall().orElseThrow(), Bound.grid("1e-6"));
            row.check("least_stiffness", removal.leastStiffness().orElseThrow(), Bound.DOUBLES);
            row.check("stiffness_at_mouth", removal.stiffnessAtMouth().orElseThrow(), Bound.DOUBLES);
        });
    }

    private static final Bound VOLUME = Bound.of(1e-9, "a ring is the difference of two solids, in doubles");

    private static TipSection section(Case row) {
        Finish finish = new Finish(ThicknessProfile.uniform(row.length("finish_mm")), density(row, "finish_g_per_cm3"));
        Wall wall = new Wall(ThicknessProfile.uniform(row.length("wall_mm")), density(row, "structure_g_per_cm3"));
        return TipSection.of(tip(row), finish).withWall(Reading.measured(wall));
    }

    private static Reading<Density> density(Case row, String column) {
        return Reading.measured(Density.ofGramsPerCubicCentimetre(row.number(column)));
    }

    private static DiameterProfile tip(Case row) {
        return DiameterProfile.cylinder(row.length("outside_mm"), Club.mm(200));
    }

    static void stageTable(Tally tally) {
        tally.cases("stage-table").forEach(row -> {
            Stage stage = staged(row, row.length("insertion_mm")).stage(row.length("stock_mm"));
            row.check("goes_in_mm", stage.insertion(), FitChecks.NANOMETRE);
            row.check("next_thousandth_mm", stage.perThousandth(), FitChecks.NANOMETRE);
        });
    }

    /** The tip on its way to the bore less the clearance. */
    private static StagedTip staged(Case row, Length insertion) {
        return new StagedTip(tip(row), finished(row, insertion), FitChecks.bore(row), insertion);
    }

    private static DiameterProfile finished(Case row, Length insertion) {
        Bore bore = FitChecks.bore(row);
        TipSection bare = TipSection.of(DiameterProfile.cylinder(Club.mm(20), Club.mm(200)), Finish.NONE);
        return MaterialRemoval.of(bare, bore, insertion, row.length("clearance_mm"))
                .profile();
    }

    static void stopReading(Tally tally) {
        tally.cases("stop-reading").forEach(row -> {
            StagedTip tip = staged(row, FitChecks.bore(row).depth());
            StockLeft left = tip.stock(row.length("measured_mm"), row.length("tolerance_mm"));
            row.says("kind", left.kind());
            row.check("least_mm", left.least(), OUTWARDS);
            row.check("most_mm", left.most(), OUTWARDS);
        });
        tally.cases("stop-caliper").forEach(TaperChecks::caliper);
    }

    private static void caliper(Case row) {
        Bore bore = FitChecks.bore(row);
        DiameterProfile raw = DiameterProfile.cylinder(Club.mm(9.5), Club.mm(200));
        StagedTip tip = new StagedTip(raw, finished(row, bore.depth()), bore, bore.depth());
        Station read = Station.of(row.length("place_mm"), row.length("reading_mm"));
        StopReport report = StopReport.of(
                tip,
                StopReading.ofCalipers(List.of(read)),
                row.length("clearance_mm"),
                Length.ZERO,
                row.length("tolerance_mm"));
        StockRange stock = report.stock().orElseThrow();
        row.check("least_mm", "least by caliper", "mm", stock.least().millimetres(), OUTWARDS);
        row.check("most_mm", "most by caliper", "mm", stock.most().millimetres(), OUTWARDS);
        row.check("shim_wall_mm", report.shimWall().orElse(Length.ZERO), OUTWARDS);
    }
}
