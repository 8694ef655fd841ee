package dev.tipwright.fitcheck.set;

import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.internal.shape.Rod;
import dev.tipwright.core.internal.shape.TipStock;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.LineDensityProfile.Knot;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The mass of a shaft whose tip was worked, with places still counted from the raw tip. What came off is spread straight over the worked
 * part, so that its mass and its first moment are kept.
 */
final class WorkedMass {

    private static final Length STEP = Length.ofNanometres(1);

    private final List<Knot> raw;
    private final Polyline line;
    private final Length from;
    private final Length to;
    private final double atTip;
    private final double slope;

    private WorkedMass(List<Knot> raw, Length from, Length to, Rod off) {
        double h = to.minus(from).millimetres();
        double centre = off.first() / off.mass();
        this.raw = raw;
        this.line = Polyline.of(
                raw.stream().mapToDouble(knot -> knot.at().millimetres()).toArray(),
                raw.stream()
                        .mapToDouble(knot -> knot.density().gramsPerMillimetre())
                        .toArray());
        this.from = from;
        this.to = to;
        this.atTip = 2 * off.mass() / (h * h) * (2 * h - 3 * centre);
        this.slope = 6 * off.mass() / (h * h * h) * (2 * centre - h);
    }

    /** As raw where nothing that weighs came off, or where the line density is not to be believed. */
    static ShaftMass of(Shaft shaft, Work done) {
        ShaftMass was = shaft.mass();
        Rod off = TipStock.weighed(shaft.section(), done);
        Optional<LineDensityProfile> raw = ShaftCut.lineDensity(shaft);
        if (off.weight().picograms() == 0 || raw.isEmpty()) {
            return was;
        }
        Length from = done.tipTrim();
        WorkedMass worked =
                new WorkedMass(raw.get().knots(), from, from.plus(done.tip().reach()), off);
        return worked.profile()
                .map(along -> new ShaftMass(
                        was.mass().minus(off.weight()),
                        was.mass()
                                .at(was.balance())
                                .minus(off.weight().at(from))
                                .minus(FirstMoment.ofGramMillimetres(off.first()))
                                .over(was.mass().minus(off.weight())),
                        Reading.assumed(along, Source.assumption("line density as it was, less what was worked off"))))
                .orElse(was);
    }

    /** Empty if more came off than there was. */
    private Optional<LineDensityProfile> profile() {
        List<Knot> knots = new ArrayList<>();
        raw.stream().filter(knot -> knot.at().lessThan(from.minus(STEP))).forEach(knots::add);
        if (from.moreThan(STEP)) {
            knots.add(knot(from.minus(STEP), density(from)));
        }
        List<Length> within = new ArrayList<>();
        within.add(from);
        raw.stream()
                .map(Knot::at)
                .filter(at -> at.moreThan(from) && at.lessThan(to))
                .forEach(within::add);
        within.add(to);
        for (Length at : within) {
            double left = density(at) - atTip - slope * at.minus(from).millimetres();
            if (!(left > 0)) {
                return Optional.empty();
            }
            knots.add(knot(at, left));
        }
        knots.add(knot(to.plus(STEP), density(to)));
        raw.stream().filter(knot -> knot.at().moreThan(to.plus(STEP))).forEach(knots::add);
        return Optional.of(new LineDensityProfile(knots));
    }

    private static Knot knot(Length at, double gramsPerMillimetre) {
        return new Knot(at, LineDensity.ofGramsPerMillimetre(gramsPerMillimetre));
    }

    /** Of the raw shaft, g/mm. */
    private double density(Length at) {
        return line.after(at.millimetres());
    }
}
