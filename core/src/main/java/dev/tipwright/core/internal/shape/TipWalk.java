package dev.tipwright.core.internal.shape;

import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;

/**
 * Walks a tip up from its end and adds up what comes off. Each step ends at the next knot of the outside, the finish or the finished
 * shape, or before it where the finished shape crosses the outside or the bare tip: over a step all three are straight and in one order.
 */
final class TipWalk {

    /** In nanometres. */
    private static final double MILLIMETRES = 1e-6;

    private TipWalk() {}

    /**
     * Walks up a tip.
     *
     * @param tip outside over the finish
     * @param from where its end is on that profile
     * @param coat thickness of the finish
     * @param trimmed where its end is on the raw shaft
     * @param stripped how far up the finish comes off, nm
     * @param finished the finished shape
     * @param worked how far up that reaches, nm
     * @return what comes off
     */
    static TipStock up(
            Stations tip,
            Length from,
            ThicknessProfile coat,
            Length trimmed,
            double stripped,
            Course finished,
            double worked) {
        Course outside = Course.of(tip, from);
        Course finish = Course.of(coat, trimmed);
        double reach = Math.max(stripped, worked);
        Rings finishOff = new Rings(MILLIMETRES);
        Rings structureOff = new Rings(MILLIMETRES);
        double z1;
        for (double z = 0; z < reach; z = z1) {
            boolean works = z < worked;
            boolean strips = z < stripped;
            outside.goBeyond(z);
            finish.goBeyond(z);
            z1 = Math.min(Math.min(outside.to(), finish.to()), strips ? stripped : reach);
            if (works) {
                finished.goBeyond(z);
                z1 = Math.min(z1, finished.to());
            }
            double o0 = outside.at(z);
            double o1 = outside.at(z1);
            double b0 = o0 - 2 * finish.at(z);
            double b1 = o1 - 2 * finish.at(z1);
            double f0 = works ? finished.at(z) : o0;
            double f1 = works ? finished.at(z1) : o1;
            double part = Math.min(crossing(f0 - b0, f1 - b1), crossing(f0 - o0, f1 - o1));
            if (part < 1) {
                z1 = z + part * (z1 - z);
                o1 = o0 + part * (o1 - o0);
                b1 = b0 + part * (b1 - b0);
                f1 = f0 + part * (f1 - f0);
            }
            boolean pastFinish = f0 + f1 < b0 + b1;
            if (pastFinish) {
                structureOff.add(z, z1 - z, b0, b1, f0, f1);
            }
            if (pastFinish || strips) {
                finishOff.add(z, z1 - z, o0, o1, b0, b1);
            } else if (f0 + f1 < o0 + o1) {
                finishOff.add(z, z1 - z, o0, o1, f0, f1);
            }
        }
        return new TipStock(finishOff.solid(), structureOff.solid());
    }

    /** The part of a step after which a straight gap changes its sign; all of it if it does not, or starts or ends with next to none. */
    private static double crossing(double gap0, double gap1) {
        return gap0 * gap1 < 0 && Math.abs(gap0) > Course.NOISE && Math.abs(gap1) > Course.NOISE
                ? gap0 / (gap0 - gap1)
                : 1;
    }
}
