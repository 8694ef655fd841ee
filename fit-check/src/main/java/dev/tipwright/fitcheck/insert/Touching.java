package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The search for all places where the clearance at an insertion is no more than a tolerance: at every knot of either side with the
 * worse side of a step, and between knots by the straight line.
 */
final class Touching {

    private static final double NANOMETRES = 1e6;

    private final FirstContact contact;

    /** Every knot of either side, nm up the tip, never falling. */
    private final long[] places;

    /** The same in mm, and what the tip measures just short of each and just beyond it. */
    private final double[] up;

    private final double[] tipBelow;
    private final double[] tipAbove;

    /** What of the bore faces the tip there. */
    private final double[] boreBelow;

    private final double[] boreAbove;

    private record Stretch(double from, double to) {}

    Touching(DiameterProfile tip, Bore bore, FirstContact contact) {
        this.contact = contact;
        this.places = places(tip, bore, contact.insertion().nanometres());
        this.up = LongStream.of(places).mapToDouble(place -> place / NANOMETRES).toArray();
        double[] down = IntStream.range(0, places.length)
                .mapToDouble(k -> (contact.insertion().nanometres() - places[places.length - 1 - k]) / NANOMETRES)
                .toArray();
        Polyline outside = Polyline.of(tip, Polyline.Diameter.GREATEST);
        Polyline inside = Polyline.of(bore.profile(), Polyline.Diameter.LEAST);
        this.tipBelow = outside.before(up);
        this.tipAbove = outside.after(up);
        // Up the tip is out of the bore: what lies just beyond a place of the one is just short of it on the other.
        this.boreBelow = reversed(inside.after(down));
        this.boreAbove = reversed(inside.before(down));
    }

    private static long[] places(DiameterProfile tip, Bore bore, long insertion) {
        long end = Math.min(insertion, tip.length().nanometres());
        Stations up = Stations.of(tip.stations());
        Stations down = Stations.of(bore.profile().stations());
        LongStream ofTip = IntStream.range(0, up.size())
                .mapToLong(k -> up.atNanometres(k) - tip.from().nanometres());
        LongStream ofBore = IntStream.range(0, down.size()).mapToLong(k -> insertion - down.atNanometres(k));
        return LongStream.concat(LongStream.of(0, end), LongStream.concat(ofTip, ofBore))
                .filter(place -> place >= 0 && place <= end)
                .sorted()
                .toArray();
    }

    private static double[] reversed(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(k -> values[values.length - 1 - k])
                .toArray();
    }

    List<WitnessMark> within(Length tolerance) {
        double near = tolerance.millimetres();
        List<Stretch> found = new ArrayList<>();
        for (int k = 0; k < places.length; k++) {
            if (k > 0) {
                between(k - 1, k, near, found);
            }
            boolean first = contact.kind() == FirstContact.Kind.TOUCHES
                    && places[k] == contact.tipStation().nanometres();
            if (first || worst(k) <= near) {
                found.add(new Stretch(up[k], up[k]));
            }
        }
        return joined(found);
    }

    /** The clearance at a place with the worse side of every step. */
    private double worst(int k) {
        return Math.min(boreBelow[k], boreAbove[k]) - Math.max(tipBelow[k], tipAbove[k]);
    }

    private void between(int low, int high, double near, List<Stretch> found) {
        double start = boreAbove[low] - tipAbove[low] - near;
        double end = boreBelow[high] - tipBelow[high] - near;
        double crossing = up[low] + (up[high] - up[low]) * start / (start - end);
        if (Math.min(start, end) <= 0) {
            found.add(new Stretch(start <= 0 ? up[low] : crossing, end <= 0 ? up[high] : crossing));
        }
    }

    private List<WitnessMark> joined(List<Stretch> found) {
        List<WitnessMark> marks = new ArrayList<>();
        double from = 0;
        for (int k = 0; k < found.size(); k++) {
            if (k == 0 || found.get(k).from() > found.get(k - 1).to()) {
                from = found.get(k).from();
            }
            if (k + 1 == found.size() || found.get(k + 1).from() > found.get(k).to()) {
                marks.add(mark(from, found.get(k).to()));
            }
        }
        return marks;
    }

    private WitnessMark mark(double from, double to) {
        Length low = Length.ofMillimetres(from);
        Length high = Length.ofMillimetres(to);
        return new WitnessMark(
                low, high, contact.insertion().minus(high), contact.insertion().minus(low));
    }
}
