package dev.tipwright.fitcheck;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.GaugePin;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/**
 * Clubs for the tests of the step, in thousandths of an inch. The plain one: a tip of .3735 with .0025 of finish and a wall of
 * .0905, an inch and a quarter of bore from .363 to .355.
 */
final class Clubs {

    static final FitTarget TARGET = FitTarget.of(mil(4))
            .withLeastInsertion(Reading.measured(mil(1100)))
            .withLeastWall(Reading.measured(mil(75)));

    private Clubs() {}

    static Build plain() {
        return club("7", taper(), section(cylinder(373.5), 2.5, 90.5));
    }

    static Build club(String label, Bore bore, ShaftSection section) {
        Head head = new Head(
                label,
                ClubKind.IRON,
                Hand.RIGHT,
                HeadMass.of(Mass.ofGrams(270)),
                HeadGeometry.of(Angle.ofDegrees(62), Angle.ofDegrees(32), mil(2250)),
                bore,
                Hosel.of(mil(530)));
        Shaft shaft = new Shaft(
                "M2",
                new Blank("mid", mil(8000), ShaftMaterial.COMPOSITE),
                mil(39_000),
                ShaftMass.of(Mass.ofGrams(88), mil(20_300)),
                section,
                Reading.unknown("clamp it and count"));
        Grip grip =
                new Grip("round", Mass.ofGrams(50), mil(125), mil(10_500), mil(4400), Reading.unknown("measure it"));
        return Build.of(new Parts(head, shaft, grip));
    }

    static ShaftSection section(DiameterProfile outside, double finish, double wall) {
        return new ShaftSection(
                outside,
                mil(600),
                Reading.measured(new Wall(ThicknessProfile.uniform(mil(wall)), density(1.55))),
                Reading.measured(new Finish(ThicknessProfile.uniform(mil(finish)), density(1.25))));
    }

    static Build withTip(DiameterProfile outside) {
        return club("7", taper(), section(outside, 2.5, 90.5));
    }

    static Build withBore(Bore bore) {
        return club("7", bore, section(cylinder(373.5), 2.5, 90.5));
    }

    static Build withSection(ShaftSection section) {
        return club("7", taper(), section);
    }

    static DiameterProfile cylinder(double diameter) {
        return DiameterProfile.cylinder(mil(diameter), mil(8000));
    }

    static Bore taper() {
        return bore(0, 363, 1250, 355);
    }

    static Bore bore(double... placesAndDiameters) {
        return Bore.ofReadings(stations(placesAndDiameters), BoreEnd.FLAT);
    }

    /** Two readings of the chamfer, then pins. */
    static Bore pinned(double... placesAndDiameters) {
        List<Station> stations = stations(placesAndDiameters);
        return Bore.ofPins(
                stations.subList(0, 2),
                stations.subList(2, stations.size()).stream()
                        .map(station -> new GaugePin(station.mean(), station.at()))
                        .toList(),
                BoreEnd.FLAT);
    }

    static DiameterProfile tip(double... placesAndDiameters) {
        return DiameterProfile.of(stations(placesAndDiameters));
    }

    static Ferrule ferrule(double bore) {
        return new Ferrule("black", Mass.ofGrams(1.3), mil(bore), mil(700), mil(350));
    }

    private static List<Station> stations(double... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < placesAndDiameters.length; i += 2) {
            stations.add(Station.of(mil(placesAndDiameters[i]), mil(placesAndDiameters[i + 1])));
        }
        return stations;
    }

    static Reading<Density> density(double gramsPerCubicCentimetre) {
        return Reading.measured(Density.ofGramsPerCubicCentimetre(gramsPerCubicCentimetre));
    }

    static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
