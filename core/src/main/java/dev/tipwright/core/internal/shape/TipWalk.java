package dev.tipwright.core.internal.shape;

import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.profile.ThicknessProfile;

/**
 * Walks a tip up from its end and adds up what comes off. Each step ends at the next knot of the outside, the finish or the finished
 * shape, or before it where the finished shape crosses the outside or the bare tip: over a step all three are straight and in one order.
 *
 * <p>In nanometres, so that the whole ones of a reading are taken where they are and as they are.
 */
final class TipWalk {

    /** A nanometre in mm. */
    private static final double MILLIMETRES = 1e-6;

    /** As little is nothing: readings are whole nanometres, and doubles keep a sixteenth digit of what they are added to. */
    private static final double NOISE = 1e-5;

    private TipWalk() {}

    /**
     * Walks up a tip.
     *
     * @param tip the tip as it was, over the finish
     * @param from where its end is on that, nm
     * @param coat thickness of the finish
     * @param trimmed where its end is on the raw shaft, from which the finish counts, nm
     * @param stripped how far up the finish comes off, nm
     * @param shape the tip as it becomes, from its end on; none if it is not worked down
     * @param finishWeight what a unit of volume of the finish counts
     * @param structureWeight what one of the structure counts
     * @return the weighted sum of what comes off
     */
    static Solid up(
            Stations tip,
            long from,
            ThicknessProfile coat,
            long trimmed,
            double stripped,
            Stations shape,
            double finishWeight,
            double structureWeight) {
        Course outside = Course.of(tip, from);
        Course finish = Course.of(coat, trimmed);
        Course finished = Course.of(shape, 0);
        double worked = shape.isEmpty() ? 0 : (double) shape.atNanometres(shape.size() - 1);
        double reach = Math.max(stripped, worked);
        double o0 = outside.start();
        double c0 = finish.start();
        double f0 = o0;
        Rings off = new Rings(MILLIMETRES);
        double z1;
        for (double z = 0; z < reach; z = z1) {
            boolean strips = z < stripped;
            boolean works = z < worked;
            o0 = outside.goUp(z, o0);
            c0 = finish.goUp(z, c0);
            f0 = works ? finished.goUp(z, f0) : o0;
            z1 = nearest(nearest(outside.to(), finish.to()), strips ? stripped : reach);
            z1 = works ? nearest(z1, finished.to()) : z1;
            double o1 = outside.further(z, o0, z1);
            double c1 = finish.further(z, c0, z1);
            double f1 = works ? finished.further(z, f0, z1) : o1;
            double b0 = o0 - 2 * c0;
            double b1 = o1 - 2 * c1;
            double part = nearest(crossing(f0 - b0, f1 - b1), crossing(f0 - o0, f1 - o1));
            if (part < 1) {
                z1 = z + part * (z1 - z);
                o1 = o0 + part * (o1 - o0);
                c1 = c0 + part * (c1 - c0);
                f1 = f0 + part * (f1 - f0);
                b1 = o1 - 2 * c1;
            }
            boolean pastFinish = f0 + f1 < b0 + b1;
            if (pastFinish) {
                off.add(structureWeight, z, z1 - z, b0, b1, f0, f1);
            }
            if (pastFinish || strips) {
                off.add(finishWeight, z, z1 - z, o0, o1, b0, b1);
            } else if (f0 + f1 < o0 + o1) {
                off.add(finishWeight, z, z1 - z, o0, o1, f0, f1);
            }
            o0 = o1;
            c0 = c1;
            f0 = f1;
        }
        return off.solid();
    }

    /** What {@link Math#min} gives for numbers, without its care for signed zeros. */
    private static double nearest(double one, double other) {
        return one < other ? one : other;
    }

    /** The part of a step after which a straight gap changes its sign; all of it if it does not, or starts or ends with next to none. */
    private static double crossing(double gap0, double gap1) {
        return gap0 * gap1 < 0 && Math.abs(gap0) > NOISE && Math.abs(gap1) > NOISE ? gap0 / (gap0 - gap1) : 1;
    }
}
