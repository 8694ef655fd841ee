package dev.tipwright.fitcheck.set;

import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.fitcheck.used.UsedTip;

/** A section whose tip was worked, with places still counted from the raw tip. */
final class WorkedSection {

    private final ShaftSection raw;
    private final Length from;
    private final TipWork work;

    private WorkedSection(ShaftSection raw, Length from, TipWork work) {
        this.raw = raw;
        this.from = from;
        this.work = work;
    }

    static ShaftSection of(ShaftSection raw, Length from, TipWork work) {
        if (work.reach().equals(Length.ZERO)) {
            return raw;
        }
        WorkedSection worked = new WorkedSection(raw, from, work);
        DiameterProfile now = DiameterProfile.of(
                worked.outside(Polyline.Diameter.LEAST).rounded(worked.outside(Polyline.Diameter.GREATEST)));
        TipSection left = new UsedTip(raw, Length.ZERO, now, ThicknessProfile.uniform(Length.ZERO)).section();
        return new ShaftSection(now, raw.butt(), left.wall(), finish(raw.finish(), left.finish()));
    }

    private static Reading<Finish> finish(Reading<Finish> was, Finish left) {
        if (was instanceof Reading.Assumed<Finish> assumed) {
            return Reading.assumed(left, assumed.source());
        }
        return was.known().isPresent() ? Reading.measured(left) : was;
    }

    /** Raw up to the trimmed end, stripped as far as it was, and in its worked shape as far as that goes. */
    private Polyline outside(Polyline.Diameter which) {
        Polyline outside = Polyline.of(raw.outside(), which);
        if (work.stripped().moreThan(Length.ZERO)) {
            double length = outside.to();
            Polyline finish = Polyline.of(raw.finish().orElse(Finish.NONE).thickness(), Length.ZERO, length);
            Polyline bare = outside.plus(finish, -2);
            outside = outside.plus(finish, 0);
            outside = with(outside, bare, from, from.plus(work.stripped()));
        }
        if (!work.finished().isEmpty()) {
            DiameterProfile shape =
                    DiameterProfile.of(work.finished().stream().map(this::moved).toList());
            outside = with(outside, placed(shape, which), shape.from(), shape.to());
        }
        return outside;
    }

    private Station moved(Station station) {
        return station.withAt(station.at().plus(from));
    }

    /** A profile at its own places instead of from 0. */
    private static Polyline placed(DiameterProfile shape, Polyline.Diameter which) {
        Polyline line = Polyline.of(shape, which);
        double[] at = new double[line.size()];
        double[] value = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            at[k] = shape.from().plus(Length.ofMillimetres(line.at(k))).millimetres();
            value[k] = line.value(k);
        }
        return Polyline.of(at, value);
    }

    /** The one line with a part of the other in its place. */
    private static Polyline with(Polyline line, Polyline part, Length low, Length high) {
        double from = low.millimetres();
        double to = high.millimetres();
        Polyline below = from > 0 ? line.joined(part, from) : part;
        return below.joined(line, to);
    }
}
