package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * The swing weight of a club as somebody would write it who wants nothing but the number: one flat class of primitive fields in mm and
 * g, no units, no checks, no reports. The same mathematics in the same order: what the library costs beyond it is the price of its
 * types. For a shaft of uniform finish, which is what the benchmarks have.
 */
final class RawClub {

    private final double gripMass;
    private final double gripCentre;
    private final double gripCap;
    private final double shaftMass;
    private final double shaftBalance;
    private final double shaftLength;
    private final double tipTrim;
    private final double buttTrim;
    private final double insertion;
    private final double headMass;
    private final double headAlong;
    private final double finish;
    private final double finishDensity;
    private final double wallDensity;
    private final double stripped;
    private final double fulcrum;
    private final double zero;
    private final double perPoint;
    private final double[] outsideAt;
    private final double[] outside;
    private final double[] finishedAt;
    private final double[] finished;
    private final double[] attachedMass;
    private final double[] attachedOffset;
    private final int[] attachedFrom;

    private double removedMass;
    private double removedFirst;

    /** The numbers of a build. */
    RawClub(Build build, SwingWeightScale scale) {
        Head head = build.parts().head();
        Shaft shaft = build.parts().shaft();
        gripMass = build.parts().grip().mass().grams();
        gripCentre = build.parts().grip().centre().millimetres();
        gripCap = build.parts().grip().cap().millimetres();
        shaftMass = shaft.mass().mass().grams();
        shaftBalance = shaft.mass().balance().millimetres();
        shaftLength = shaft.length().millimetres();
        tipTrim = build.work().tipTrim().millimetres();
        buttTrim = build.work().buttTrim().millimetres();
        insertion = build.work().seat().insertion().millimetres();
        headMass = head.mass().mass().grams();
        headAlong = head.mass().centre().known().orElseThrow().along().millimetres();
        Finish coat = shaft.section().finish().known().orElseThrow();
        Wall wall = shaft.section().wall().known().orElseThrow();
        finish = coat.thickness().knots().get(0).thickness().millimetres();
        finishDensity = coat.density().orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
        wallDensity = wall.density().orElse(Density.ZERO).gramsPerCubicCentimetre() / 1000;
        stripped = build.work().tip().stripped().millimetres();
        fulcrum = scale.fulcrum().millimetres();
        zero = scale.zero().gramMillimetres();
        perPoint = scale.perPoint().gramMillimetres();
        outsideAt = places(shaft.section().outside().stations());
        outside = diameters(shaft.section().outside().stations());
        finishedAt = places(build.work().tip().finished());
        finished = diameters(build.work().tip().finished());
        List<Attachment> attached = build.work().attached();
        attachedMass = attached.stream().mapToDouble(one -> one.mass().grams()).toArray();
        attachedOffset = attached.stream()
                .mapToDouble(one -> one.place().offset().millimetres())
                .toArray();
        attachedFrom =
                attached.stream().mapToInt(one -> number(one.place().anchor())).toArray();
    }

    private static double[] places(List<Station> stations) {
        return stations.stream().mapToDouble(one -> one.at().millimetres()).toArray();
    }

    private static double[] diameters(List<Station> stations) {
        return stations.stream()
                .mapToDouble(one -> (one.least().millimetres() + one.greatest().millimetres()) / 2)
                .toArray();
    }

    private static int number(Anchor anchor) {
        return switch (anchor) {
            case GRIP_TOP -> 0;
            case TIP_END -> 1;
            case HOSEL_MOUTH -> 2;
            case MID_INSERTION -> 3;
        };
    }

    /** Points above the zero of the scale. */
    double points() {
        double tip = gripCap + shaftLength - tipTrim - buttTrim;
        double mouth = tip - insertion;
        double mass = gripMass;
        double moment = gripMass * gripCentre;

        double slope = 6 * shaftMass / (shaftLength * shaftLength * shaftLength) * (2 * shaftBalance - shaftLength);
        double atTip = 2 * shaftMass / (shaftLength * shaftLength) * (2 * shaftLength - 3 * shaftBalance);
        double h = shaftLength - buttTrim - tipTrim;
        double mu = atTip + slope * tipTrim + slope * h / 2;
        double shaft = mu * h;
        mass += shaft;
        moment += shaft * tip - h * (mu * h / 2 + slope * h * h / 12);

        mass += headMass;
        moment += headMass * (mouth + headAlong);

        remove();
        mass -= removedMass;
        moment -= removedMass * tip - removedFirst;

        for (int i = 0; i < attachedMass.length; i++) {
            mass += attachedMass[i];
            moment += attachedMass[i] * (from(attachedFrom[i], tip, mouth) + signed(i));
        }
        return (moment - fulcrum * mass - zero) / perPoint;
    }

    private double from(int anchor, double tip, double mouth) {
        return switch (anchor) {
            case 0 -> 0;
            case 1 -> tip;
            case 2 -> mouth;
            default -> mouth + insertion / 2;
        };
    }

    private double signed(int i) {
        return attachedFrom[i] == 0 ? attachedOffset[i] : -attachedOffset[i];
    }

    /** Mass and first moment, about the end of the tip, of what the work takes off. */
    private void remove() {
        removedMass = 0;
        removedFirst = 0;
        double worked = finishedAt[finishedAt.length - 1];
        double reach = Math.max(stripped, worked);
        int o = 0;
        int f = 0;
        while (outsideAt[o] - tipTrim <= 0) {
            o++;
        }
        double o0 = between(outsideAt[o - 1] - tipTrim, outside[o - 1], outsideAt[o] - tipTrim, outside[o], 0);
        double f0 = o0;
        double oTo = outsideAt[o] - tipTrim;
        double oEnd = outside[o];
        double fTo = 0;
        double fEnd = 0;
        double to;
        for (double from = 0; from < reach; from = to) {
            boolean strips = from < stripped;
            boolean works = from < worked;
            while (oTo <= from) {
                o0 = oEnd;
                o++;
                oTo = outsideAt[o] - tipTrim;
                oEnd = outside[o];
            }
            while (works && fTo <= from) {
                f0 = finished[f];
                f++;
                fTo = finishedAt[f];
                fEnd = finished[f];
            }
            to = nearest(oTo, strips ? stripped : reach);
            to = works ? nearest(to, fTo) : to;
            double o1 = between(from, o0, oTo, oEnd, to);
            double f1 = works ? between(from, f0, fTo, fEnd, to) : o1;
            f0 = works ? f0 : o0;
            double b0 = o0 - 2 * finish;
            double b1 = o1 - 2 * finish;
            double part = nearest(crossing(f0 - b0, f1 - b1), crossing(f0 - o0, f1 - o1));
            if (part < 1) {
                to = from + part * (to - from);
                o1 = o0 + part * (o1 - o0);
                f1 = f0 + part * (f1 - f0);
                b1 = o1 - 2 * finish;
            }
            boolean pastFinish = f0 + f1 < b0 + b1;
            if (pastFinish) {
                ring(wallDensity, from, to - from, b0, b1, f0, f1);
            }
            if (pastFinish || strips) {
                ring(finishDensity, from, to - from, o0, o1, b0, b1);
            } else if (f0 + f1 < o0 + o1) {
                ring(finishDensity, from, to - from, o0, o1, f0, f1);
            }
            o0 = o1;
            f0 = f1;
        }
    }

    private static double between(double from, double value, double to, double valueTo, double place) {
        return place == to || value == valueTo ? valueTo : value + (place - from) / (to - from) * (valueTo - value);
    }

    private static double nearest(double one, double other) {
        return one < other ? one : other;
    }

    private static double crossing(double gap0, double gap1) {
        return gap0 * gap1 < 0 && Math.abs(gap0) > 1e-11 && Math.abs(gap1) > 1e-11 ? gap0 / (gap0 - gap1) : 1;
    }

    private void ring(double density, double z, double h, double outer0, double outer1, double inner0, double inner1) {
        double apart0 = apart(outer0 - inner0);
        double apart1 = apart(outer1 - inner1);
        double low = apart0 * (outer0 + inner0);
        double cross = apart0 * (outer1 + inner1) + apart1 * (outer0 + inner0);
        double high = apart1 * (outer1 + inner1);
        double squares = h * (2 * low + cross + 2 * high) / 6;
        double outward = h * h * (low + cross + 3 * high) / 12;
        removedMass += density * Math.PI / 4 * squares;
        removedFirst += density * Math.PI / 4 * (z * squares + outward);
    }

    private static double apart(double gap) {
        return Math.abs(gap) < 1e-9 ? 0 : gap;
    }
}
