package dev.tipwright.core.internal.shape;

/**
 * Walks a tip up from its end, from knot to knot of its outside, its finish and its finished shape, and adds up what comes off. Over
 * a span between two knots all three are straight; where the finished shape crosses the outside or the bare tip, the span is parted.
 */
final class TipWalk {

    private final Polyline outside;
    private final Polyline finish;
    private final double stripped;
    private final Polyline finished;
    private final Rings finishOff = new Rings();
    private final Rings structureOff = new Rings();

    /** The span: where it starts and ends, and there the diameters of the outside, the bare tip and the finished shape. */
    private double from;

    private double to;
    private double outside0;
    private double outside1;
    private double bare0;
    private double bare1;
    private double finished0;
    private double finished1;

    TipWalk(Polyline outside, Polyline finish, double stripped, Polyline finished) {
        this.outside = outside;
        this.finish = finish;
        this.stripped = stripped;
        this.finished = finished;
    }

    TipStock upTo(double reach) {
        int o = 1;
        int t = 1;
        int f = 1;
        for (from = 0; from < reach; from = to) {
            boolean works = from < finished.to();
            o = outside.knotBeyond(from, o);
            t = finish.knotBeyond(from, t);
            f = works ? finished.knotBeyond(from, f) : f;
            to = Math.min(Math.min(outside.at(o), finish.at(t)), Math.min(reach, from < stripped ? stripped : reach));
            to = works ? Math.min(to, finished.at(f)) : to;
            outside0 = outside.inSegment(o, from);
            outside1 = outside.inSegment(o, to);
            bare0 = outside0 - 2 * finish.inSegment(t, from);
            bare1 = outside1 - 2 * finish.inSegment(t, to);
            finished0 = works ? finished.inSegment(f, from) : outside0;
            finished1 = works ? finished.inSegment(f, to) : outside1;
            span();
        }
        return new TipStock(finishOff.solid(), structureOff.solid());
    }

    /** Takes the span as a whole, or in up to three pieces, parted where the finished shape crosses a surface. */
    private void span() {
        double one = crossing(finished0 - bare0, finished1 - bare1);
        double other = crossing(finished0 - outside0, finished1 - outside1);
        if (one == 1 && other == 1) {
            piece(from, to - from, outside0, outside1, bare0, bare1, finished0, finished1);
            return;
        }
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        piece(0, low);
        piece(low, high);
        piece(high, 1);
    }

    /** The part of the span after which a straight gap changes its sign; all of it if it does not. */
    private static double crossing(double gap0, double gap1) {
        return gap0 * gap1 < 0 ? gap0 / (gap0 - gap1) : 1;
    }

    /** The piece from one part of the span to another. */
    private void piece(double start, double end) {
        if (start < end) {
            piece(
                    from + start * (to - from),
                    (end - start) * (to - from),
                    part(outside0, outside1, start),
                    part(outside0, outside1, end),
                    part(bare0, bare1, start),
                    part(bare0, bare1, end),
                    part(finished0, finished1, start),
                    part(finished0, finished1, end));
        }
    }

    private static double part(double start, double end, double part) {
        return part == 1 ? end : start + part * (end - start);
    }

    /** A piece of height {@code h} from {@code z} on, in which the finished shape {@code f} crosses nothing. */
    private void piece(double z, double h, double o0, double o1, double b0, double b1, double f0, double f1) {
        if (f0 + f1 < b0 + b1) {
            finishOff.add(z, h, o0, o1, b0, b1);
            structureOff.add(z, h, b0, b1, f0, f1);
        } else if (from < stripped) {
            finishOff.add(z, h, o0, o1, b0, b1);
        } else if (f0 + f1 < o0 + o1) {
            finishOff.add(z, h, o0, o1, f0, f1);
        }
    }
}
