package dev.tipwright.fitcheck.insert;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The search for all places where the clearance at an insertion is no more than a tolerance: at every knot of either side with the
 * worse side of a step, and between knots by the straight line.
 */
final class Touching {

    private final Polyline tip;
    private final Polyline bore;
    private final FirstContact contact;
    private final TreeSet<Length> places = new TreeSet<>();

    private record Stretch(double from, double to) {}

    Touching(DiameterProfile tip, Bore bore, FirstContact contact) {
        this.tip = Polyline.of(tip, Polyline.Diameter.GREATEST);
        this.bore = Polyline.of(bore.profile(), Polyline.Diameter.LEAST);
        this.contact = contact;
        Length insertion = contact.insertion();
        Length end = insertion.min(tip.length());
        places.add(Length.ZERO);
        places.add(end);
        for (Station station : tip.stations()) {
            keep(station.at().minus(tip.from()), end);
        }
        for (Station station : bore.profile().stations()) {
            keep(insertion.minus(station.at()), end);
        }
    }

    private void keep(Length place, Length end) {
        if (place.moreThan(Length.ZERO) && place.lessThan(end)) {
            places.add(place);
        }
    }

    List<WitnessMark> within(Length tolerance) {
        double near = tolerance.millimetres();
        List<Stretch> found = new ArrayList<>();
        Length last = null;
        for (Length place : places) {
            if (last != null) {
                between(last, place, near, found);
            }
            boolean first = contact.kind() == FirstContact.Kind.TOUCHES && place.equals(contact.tipStation());
            if (first || worst(place) <= near) {
                found.add(new Stretch(place.millimetres(), place.millimetres()));
            }
            last = place;
        }
        return joined(found);
    }

    /** The clearance at a place with the worse side of every step. */
    private double worst(Length place) {
        double z = place.millimetres();
        double y = facing(place);
        return Math.min(bore.after(y), bore.before(y)) - Math.max(tip.after(z), tip.before(z));
    }

    private double facing(Length place) {
        return contact.insertion().minus(place).millimetres();
    }

    private void between(Length low, Length high, double near, List<Stretch> found) {
        double from = low.millimetres();
        double to = high.millimetres();
        double start = bore.before(facing(low)) - tip.after(from) - near;
        double end = bore.after(facing(high)) - tip.before(to) - near;
        double crossing = from + (to - from) * start / (start - end);
        if (Math.min(start, end) <= 0) {
            found.add(new Stretch(start <= 0 ? from : crossing, end <= 0 ? to : crossing));
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
