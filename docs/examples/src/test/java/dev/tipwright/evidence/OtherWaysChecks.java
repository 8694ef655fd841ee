package dev.tipwright.evidence;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.bond.ShearLag;
import dev.tipwright.fitcheck.bond.Tube;
import dev.tipwright.fitcheck.other.BoreOpening;
import dev.tipwright.fitcheck.other.Drill;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.set.AssemblyAim;
import dev.tipwright.fitcheck.set.LabelledBore;
import dev.tipwright.fitcheck.set.LabelledTip;
import dev.tipwright.fitcheck.set.SelectiveAssembly;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.List;
import java.util.stream.Collectors;

/** Shims, opened bores, bonds, and which tip for which bore. */
final class OtherWaysChecks {

    private static final Bound RING = Bound.of(1e-9, "a ring is the difference of two solids, in doubles");

    private OtherWaysChecks() {}

    static void shim(Tally tally) {
        tally.cases("shim").forEach(row -> {
            DiameterProfile tip = DiameterProfile.cylinder(row.length("tip_mm"), Club.mm(200));
            Bore bore = FitChecks.bore(row);
            ShimFit fit = ShimFit.of(
                    tip,
                    bore,
                    bore.depth(),
                    row.length("clearance_mm"),
                    row.length("loosest_mm"),
                    row.lengths("walls_mm"));
            row.says("verdict", fit.verdict());
            row.check("wall_mm", fit.wall(), Bound.EXACT);
            row.check("least_mm", fit.least(), Bound.EXACT);
            row.check("greatest_mm", fit.greatest(), Bound.EXACT);
            row.check("volume_mm3", fit.volume(tip).cubicMillimetres(), RING);
        });
    }

    static void boreOpening(Tally tally) {
        tally.cases("bore-opening").forEach(row -> {
            BoreOpening opening = BoreOpening.of(
                    FitChecks.bore(row),
                    row.length("outside_mm"),
                    row.length("cutter_mm"),
                    Reading.measured(row.length("oversize_mm")));
            Density metal = Density.ofGramsPerCubicCentimetre(row.number("metal_g_per_cm3"));
            row.check("wall_left_mm", opening.wallLeft(), Bound.EXACT);
            row.check("removed_mm3", opening.removed().cubicMillimetres(), RING);
            row.check("removed_g", opening.mass(metal).grams(), Bound.of(1e-12, "a picogram, the grid of masses"));
        });
        tally.cases("drills").forEach(OtherWaysChecks::drill);
    }

    /** Of the two columns one is the standard's, the other is rounded from it. */
    private static void drill(Case row) {
        String column = row.text("series").equals("metric") ? "diameter_mm" : "diameter_in";
        Drill drill = Drill.standard().stream()
                .filter(candidate -> candidate.designation().equals(row.text("designation")))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no drill " + row.text("designation")));
        row.check(column, drill.diameter(), Bound.EXACT);
    }

    static void bond(Tally tally) {
        tally.cases("bond").forEach(OtherWaysChecks::meanShear);
        tally.cases("adhesive-joints-single-lap").forEach(row -> {
            ShearLag lap = ShearLag.ofEqualStrips(
                    Stress.ofGigapascals(70),
                    Club.mm(2),
                    Stress.ofGigapascals(1),
                    Club.mm(.2),
                    row.length("overlap_mm"));
            row.check("peak_over_mean", lap.peak(), Bound.PRINTED);
        });
        Tube tip = new Tube(Club.mm(9.2), Club.mm(5), Stress.ofGigapascals(100), Stress.ofGigapascals(10));
        Tube hosel = new Tube(Club.mm(13.4), Club.mm(9.4), Stress.ofGigapascals(207), Stress.ofGigapascals(80));
        ShearLag pull = ShearLag.ofPull(tip, hosel, Stress.ofGigapascals(1), Club.mm(30));
        ShearLag torque = ShearLag.ofTorque(tip, hosel, Stress.ofGigapascals(1), Club.mm(30));
        tally.cases("adhesive-joints-tubular").forEach(row -> {
            ShearLag joint = row.text("load").equals("pull") ? pull : torque;
            double found = switch (row.text("quantity")) {
                case "w" -> joint.perMillimetre();
                case "shear over mean at the mouth" -> joint.atMouth();
                default -> joint.atBottom();
            };
            row.check("value", row.text("quantity"), "", found, Bound.PRINTED);
        });
    }

    private static void meanShear(Case row) {
        Bond bond = Bond.of(row.profile("tip_mm"), FitChecks.bore(row), row.length("insertion_mm"));
        Force pull = Bond.pull(
                Mass.ofGrams(1000 * row.number("head_kg")),
                Speed.ofMetresPerSecond(row.number("speed_m_per_s")),
                Club.mm(1000 * row.number("radius_m")));
        row.check("area_mm2", bond.area().squareMillimetres(), Bound.DOUBLES);
        row.check("least_line_mm", bond.leastLine(), Bound.grid("1e-6"));
        row.check("mean_line_mm", bond.meanLine(), Bound.grid("1e-6"));
        row.check("gap_mm3", bond.gap().cubicMillimetres(), RING);
        row.check(
                "shear_by_torque_MPa",
                bond.shear(Torque.ofNewtonMetres(row.number("torque_N_m"))).megapascals(),
                Bound.DOUBLES);
        row.check("pull_N", pull.newtons(), Bound.DOUBLES);
        row.check("shear_by_pull_MPa", bond.shear(pull).megapascals(), Bound.DOUBLES);
    }

    static void selectiveAssembly(Tally tally) {
        tally.cases("selective-assembly").forEach(row -> {
            SelectiveAssembly assembly = SelectiveAssembly.of(
                    tips(row),
                    bores(row),
                    row.length("clearance_mm"),
                    Reading.unknown("nobody, it is invented"),
                    AssemblyAim.LEAST_MATERIAL);
            String pairs = assembly.pairs().stream()
                    .map(pair -> pair.tip() + "-" + pair.bore())
                    .sorted()
                    .collect(Collectors.joining(" "));
            row.says("pairs", pairs);
            row.check("structure_mm3", assembly.structure().cubicMillimetres(), RING);
        });
    }

    private static List<LabelledTip> tips(Case row) {
        return row.words("tips_mm").stream()
                .map(word -> word.split(":", -1))
                .map(tip -> new LabelledTip(
                        tip[0],
                        TipSection.of(
                                DiameterProfile.cylinder(Club.mm(Double.parseDouble(tip[1])), Club.mm(200)),
                                Finish.NONE)))
                .toList();
    }

    private static List<LabelledBore> bores(Case row) {
        Length depth = row.length("depth_mm");
        return row.words("bores_mm").stream()
                .map(word -> word.split(":", -1))
                .map(bore -> new LabelledBore(
                        bore[0],
                        Bore.ofTwoDiameters(
                                Club.mm(Double.parseDouble(bore[1])),
                                Club.mm(Double.parseDouble(bore[2])),
                                depth,
                                BoreEnd.FLAT),
                        depth))
                .toList();
    }
}
