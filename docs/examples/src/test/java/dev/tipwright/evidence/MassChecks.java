package dev.tipwright.evidence;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.LineDensity;
import java.util.List;

/** Volumes and masses along a shaft. */
final class MassChecks {

    private MassChecks() {}

    static void profileVolume(Tally tally) {
        tally.cases("profile-volume").forEach(row -> {
            DiameterProfile profile =
                    row.profile("profile_mm").withFrom(row.length("from_mm")).withTo(row.length("to_mm"));
            double volume = new ProfileVolume(profile).volume().cubicMillimetres();
            row.check("volume_mm3", volume, Bound.DOUBLES);
        });
        // Of the frustum that the handbooks work the radii are 2 and 1.
        DiameterProfile frustum = DiameterProfile.of(Case.station(0, 4), Case.station(3, 2));
        tally.only("rigid-bodies", "quantity", "volume")
                .check(
                        "value",
                        "frustum",
                        "mm3",
                        new ProfileVolume(frustum).volume().cubicMillimetres(),
                        Bound.PRINTED);
    }

    static void shaftMass(Tally tally) {
        tally.cases("shaft-after-cutting").forEach(row -> {
            ShaftCut cut = new ShaftCut(shaft(row), row.length("from_mm"), row.length("to_mm"));
            row.check("mass_g", cut.mass().grams(), Bound.grid("1e-12"));
            row.check("balance_mm", cut.balance(), Bound.grid("1e-6"));
            row.check("moment_g_mm", cut.momentAboutTip().gramMillimetres(), Bound.DOUBLES);
            row.check("inertia_g_mm2", cut.inertiaAboutTip().gramSquareMillimetres(), Bound.DOUBLES);
        });
    }

    private static Shaft shaft(Case row) {
        Shaft shaft = Club.shaft(row.length("raw_mm"), row.grams("raw_mass_g"));
        ShaftMass mass = shaft.mass().withBalance(row.length("raw_balance_mm"));
        return shaft.withMass(row.has("density_g_per_mm") ? mass.withAlong(Reading.measured(along(row))) : mass);
    }

    private static LineDensityProfile along(Case row) {
        List<LineDensityProfile.Knot> knots = row.pairs("density_g_per_mm").stream()
                .map(pair -> new LineDensityProfile.Knot(Club.mm(pair[0]), LineDensity.ofGramsPerMillimetre(pair[1])))
                .toList();
        return new LineDensityProfile(knots);
    }
}
