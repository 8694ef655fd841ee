package dev.tipwright.swingweight;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.Extension;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Shim;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Seated clubs with every kind of part, drawn from a seed. Sizes are those of a bench, from a wedge to a long wood. */
public final class RandomClubs {

    private final SplittableRandom random;

    public RandomClubs(long seed) {
        random = new SplittableRandom(seed);
    }

    public Build next() {
        Bore bore = Bore.ofTwoDiameters(mm(9, 10), mm(8.5, 9), mm(20, 45), BoreEnd.THROUGH);
        Length insertion = mm(10, bore.depth().millimetres());
        Head head = Clubs.head()
                .withMass(new HeadMass(
                        g(150, 400),
                        Reading.measured(new HeadCentre(mm(-10, 80), mm(0, 40))),
                        Reading.measured(Inertia.ofGramSquareMillimetres(random.nextDouble(1e5, 6e5)))))
                .withBore(bore);
        Length tipTrim = mm(0, 60);
        Work work = new Work(
                tipTrim,
                mm(0, 80),
                random.nextInt(4) == 0 ? TipWork.NONE : tip(),
                new Seat(insertion, Stop.MARK),
                attached());
        return new Build(
                new Parts(head, shaft(), Clubs.grip().withMass(g(25, 130)).withCentre(mm(80, 140))), work);
    }

    private Shaft shaft() {
        Length length = mm(850, 1200);
        Reading<LineDensityProfile> along =
                random.nextBoolean() ? Reading.unknown("weigh it") : Reading.measured(along(length));
        List<Station> stations = new ArrayList<>();
        for (double at : new double[] {0, 40, 150}) {
            stations.add(Station.of(Length.ofMillimetres(at), mm(9, 10)));
        }
        return Clubs.shaft()
                .withLength(length)
                .withMass(new ShaftMass(g(40, 130), length.scaledBy(random.nextDouble(0.4, 0.6)), along))
                .withSection(new ShaftSection(
                        DiameterProfile.of(stations),
                        mm(14, 16),
                        Reading.measured(new Wall(ThicknessProfile.uniform(mm(2, 2.5)), density(1.4, 1.8))),
                        Reading.measured(new Finish(ThicknessProfile.uniform(mm(0, 0.3)), density(1.1, 1.4)))));
    }

    private LineDensityProfile along(Length length) {
        List<LineDensityProfile.Knot> knots = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            knots.add(new LineDensityProfile.Knot(
                    length.scaledBy(i / 4.0), LineDensity.ofGramsPerMillimetre(random.nextDouble(0.04, 0.12))));
        }
        return new LineDensityProfile(knots);
    }

    /** Stripped and worked down over different lengths; the shape crosses finish and structure where it will. */
    private TipWork tip() {
        List<Station> finished = List.of(
                Station.of(Length.ZERO, mm(8, 9.5)),
                Station.of(mm(5, 15), mm(8, 10)),
                Station.of(mm(20, 40), mm(8.5, 10.5)));
        return new TipWork(mm(0, 60), random.nextInt(4) == 0 ? List.of() : finished);
    }

    private List<Attachment> attached() {
        List<Attachment> all = List.of(
                new GripTape("tape", g(1, 5), mm(50, 200)),
                new Ferrule("ferrule", g(0.5, 2), mm(9, 10), Length.ofMillimetres(20), mm(5, 15)),
                new Adhesive("adhesive", g(0.2, 2)),
                Clubs.weight(random.nextDouble(1, 9)),
                new Counterweight("counterweight", g(2, 40), mm(0, 120)),
                new Extension("extension", g(2, 8), mm(5, 40), mm(10, 60)),
                new Shim("shim", g(0.1, 0.5), mm(0.05, 0.2), mm(10, 30)),
                new OtherMass("lead tape", g(0.5, 10), new Place(Anchor.HOSEL_MOUTH, mm(-60, 20))),
                new OtherMass("plug", g(0.5, 3), new Place(Anchor.MID_INSERTION, mm(-5, 5))));
        return all.stream().filter(attachment -> random.nextBoolean()).toList();
    }

    private Reading<Density> density(double least, double most) {
        return Reading.measured(Density.ofGramsPerCubicCentimetre(random.nextDouble(least, most)));
    }

    /** An even number of nanometres, so that half of it is a place on the grid too. */
    private Length mm(double least, double most) {
        return Length.ofNanometres(2 * Math.round(random.nextDouble(least, most) * 5e5));
    }

    private Mass g(double least, double most) {
        return Mass.ofGrams(random.nextDouble(least, most));
    }
}
