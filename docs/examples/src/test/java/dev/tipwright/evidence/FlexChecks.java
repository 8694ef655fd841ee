package dev.tipwright.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.flex.ShaftBend;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import java.util.List;

/** Frequencies, and the trim for one. */
final class FlexChecks {

    /** What the solver promises, beside the digits printed. */
    private static final Bound SOLVED = Bound.relative(1e-9, "what the solver promises of its own value");

    private FlexChecks() {}

    static void frequency(Tally tally) {
        publishedBeams(tally);
        tally.cases("frequency-of-a-tube").forEach(row -> tube(tally, row));
        tally.cases("frequency-of-a-club")
                .forEach(row ->
                        row.check("frequency_per_min", club(row).frequency().perMinute(), SOLVED));
        tally.cases("frequency-linear-stiffness")
                .forEach(row -> row.check(
                        "frequency_per_min", linear(tally, row).frequency().perMinute(), SOLVED));
    }

    static void trimForFrequency(Tally tally) {
        tally.cases("trim-for-a-frequency").forEach(row -> {
            Length trim = trimmable(row)
                    .tipTrimFor(Frequency.ofPerMinute(row.number("wanted_per_min")))
                    .orElse(Length.ZERO);
            row.check("tip_trim_mm", trim, Bound.of(1e-3, "the trim is promised to a micrometre"));
        });
    }

    private static void publishedBeams(Tally tally) {
        tally.only("beams-clamped-free", "mode", "1").check("bL", Math.sqrt(squareOfBl(0)), Bound.PRINTED);
        tally.cases("beams-tip-mass")
                .filter(row -> row.text("mode").equals("1"))
                .forEach(row -> {
                    double found = squareOfBl(row.number("mass_ratio"));
                    row.check("bL_squared", found, row.text("status").equals("read") ? Bound.PRINTED : SOLVED);
                });
        // The rule over the exact frequency: sqrt(3 / (M + 33/140 m)) against the (bL)^2 of m = 1, EI = 1, L = 1.
        tally.cases("beams-tip-mass-rule").forEach(row -> {
            double ratio = row.number("mass_ratio");
            double rule = Math.sqrt(3 / (ratio + 33.0 / 140));
            row.check("too_high_percent", 100 * (rule / squareOfBl(ratio) - 1), Bound.PRINTED);
        });
        // 1 m, 50 mm square, 210 GPa, 7800 kg/m3: EI = 210e9 * 0.05^4 / 12 = 109375 N m2, 19.5 kg.
        double bar = raw(even(1000, 19_500, 109_375), 0, 0).hertz();
        tally.only("beams-square-bar", "mode", "1").check("frequency_Hz", bar, Bound.PRINTED);
    }

    /** (bL)^2 = 2 pi f L^2 sqrt(mu / EI) of an even shaft, 1 m, 80 g, 50 N m2, clamped by the last 100 mm. */
    private static double squareOfBl(double massRatio) {
        double hertz = raw(even(1000, 80, 50), 100, 72 * massRatio).hertz();
        return 2 * Math.PI * hertz * 0.9 * 0.9 * Math.sqrt(0.08 / 50);
    }

    private static Frequency raw(Shaft shaft, double clampMm, double tipGrams) {
        ShaftFlex.Timed timed = new ShaftFlex.Timed(Frequency.ofPerMinute(1), Club.mm(clampMm), Mass.ofGrams(tipGrams));
        return ShaftBend.of(shaft).orElseThrow().raw(shaft, timed);
    }

    private static void tube(Tally tally, Case row) {
        Case material = tally.only("materials", "material", row.text("material"));
        Density density = Density.ofGramsPerCubicCentimetre(material.number("density_low_g_per_cm3"));
        Length length = row.length("length_mm");
        DiameterProfile outside = DiameterProfile.cylinder(row.length("outside_mm"), length);
        DiameterProfile inside = outside.widenedBy(row.length("wall_mm").times(-2));
        Mass mass = new ProfileVolume(outside)
                .volume()
                .minus(new ProfileVolume(inside).volume())
                .of(density);
        Wall wall = new Wall(ThicknessProfile.uniform(row.length("wall_mm")), Reading.measured(density));
        Shaft shaft = Club.shaft(length, mass);
        ShaftSection section = shaft.section().withOutside(outside).withWall(Reading.measured(wall));
        Stress modulus = Stress.ofGigapascals(material.number("modulus_GPa"));
        Shaft tube = shaft.withSection(section).withFlex(flex(new StiffnessShape.Tube(modulus)));
        row.check("frequency_Hz", raw(tube, row.number("clamp_mm"), 0).hertz(), SOLVED);
    }

    private static ClubFrequency club(Case row) {
        StiffnessShape shape = stations(row.pairs("stiffness_N_m2"));
        Shaft shaft = Club.shaft(row.length("length_mm"), row.grams("mass_g")).withFlex(flex(shape));
        HeadCentre centre = new HeadCentre(row.length("along_mm"), row.length("off_mm"));
        return seated(row, shaft, row.grams("head_g"), centre, row.number("inertia_g_mm2"));
    }

    /** Stiffness as far as it is known to have the right size for a shaft; below the mouth it does not matter. */
    private static ClubFrequency linear(Tally tally, Case row) {
        double k = row.number("k_N_m2_per_mm");
        Case band = tally.only("beams-shaft-stiffness", "quantity", "k");
        assertThat(k).isIn(band.number("low"), band.number("high"));
        double mouth = row.number("insertion_mm");
        double end = row.number("length_mm");
        StiffnessShape shape = stations(
                List.of(new double[] {0, k * mouth}, new double[] {mouth, k * mouth}, new double[] {end, k * end}));
        Shaft shaft = Club.shaft(row.length("length_mm"), row.grams("mass_g")).withFlex(flex(shape));
        HeadCentre centre = new HeadCentre(Length.ZERO, Length.ZERO);
        return seated(row, shaft, row.grams("mass_at_mouth_g"), centre, 0);
    }

    private static ClubFrequency seated(Case row, Shaft shaft, Mass head, HeadCentre centre, double inertia) {
        Build build = Club.of(Club.head(head(head, centre, inertia)), shaft, Club.grip());
        Build seated = Club.seated(build, Length.ZERO, Length.ZERO, row.length("insertion_mm"));
        return ClubFrequency.of(seated, row.length("clamp_mm")).orElseThrow();
    }

    private static HeadMass head(Mass mass, HeadCentre centre, double inertia) {
        return new HeadMass(mass, Reading.measured(centre), Reading.measured(Inertia.ofGramSquareMillimetres(inertia)));
    }

    /** Both trims still at the butt; what is asked is how much of them to take off the tip. */
    private static ClubFrequency trimmable(Case row) {
        StiffnessShape shape = stations(List.of(
                new double[] {0, row.number("stiffness_at_tip_N_m2")},
                new double[] {row.number("raw_mm"), row.number("stiffness_at_butt_N_m2")}));
        Shaft shaft = Club.shaft(row.length("raw_mm"), row.grams("mass_g")).withFlex(flex(shape));
        HeadCentre centre = new HeadCentre(row.length("along_mm"), Length.ZERO);
        HeadMass mass = head(row.grams("head_g"), centre, row.number("inertia_g_mm2"));
        Build build = Club.of(Club.head(mass), shaft, Club.grip());
        Build seated = Club.seated(build, Length.ZERO, row.length("both_trims_mm"), row.length("insertion_mm"));
        return ClubFrequency.of(seated, row.length("clamp_mm")).orElseThrow();
    }

    private static Shaft even(double lengthMm, double grams, double stiffness) {
        Shaft shaft = Club.shaft(Club.mm(lengthMm), Mass.ofGrams(grams));
        return shaft.withFlex(flex(stations(List.of(new double[] {0, stiffness}, new double[] {lengthMm, stiffness}))));
    }

    private static StiffnessShape stations(List<double[]> pairs) {
        return new StiffnessShape.AtStations(pairs.stream()
                .map(pair -> new StiffnessShape.Knot(Club.mm(pair[0]), BendingStiffness.ofNewtonSquareMetres(pair[1])))
                .toList());
    }

    private static Reading<ShaftFlex> flex(StiffnessShape shape) {
        return Reading.measured(new ShaftFlex(Reading.measured(shape), List.of()));
    }
}
