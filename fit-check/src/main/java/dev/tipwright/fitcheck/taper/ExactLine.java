package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Straight from knot to knot, in exact nanometres; two knots at one place make a step. Places run from 0 to the end.
 */
record ExactLine(List<Knot> knots) {

    record Knot(Fraction at, Fraction value) {}

    /** The profile from the start of its domain to a length. */
    static ExactLine of(DiameterProfile profile, Function<Station, Length> diameter, Length length) {
        List<Knot> all = new ArrayList<>();
        for (Station station : profile.stations()) {
            all.add(new Knot(
                    Fraction.of(station.at().minus(profile.from()).nanometres()),
                    Fraction.of(diameter.apply(station).nanometres())));
        }
        return new ExactLine(all)
                .between(Fraction.ZERO, Fraction.of(length.min(profile.length()).nanometres()));
    }

    Fraction end() {
        return knots.get(knots.size() - 1).at();
    }

    /** The part between two places, counted as before; a step at an end keeps only its inner side. */
    ExactLine between(Fraction from, Fraction to) {
        List<Knot> part = new ArrayList<>();
        part.add(new Knot(from, after(from)));
        for (Knot knot : knots) {
            if (knot.at().compareTo(from) > 0 && knot.at().compareTo(to) < 0) {
                part.add(knot);
            }
        }
        part.add(new Knot(to, before(to)));
        return new ExactLine(part);
    }

    /** The value just beyond a place before the end. */
    Fraction after(Fraction place) {
        return on(search(knot -> knot.at().compareTo(place) > 0), place);
    }

    /** The value just short of a place beyond the start. */
    Fraction before(Fraction place) {
        return on(search(knot -> knot.at().compareTo(place) >= 0), place);
    }

    /** The first knot that passes a test which all knots after it pass too; the second and the last at the outside. */
    private int search(Predicate<Knot> test) {
        int low = 1;
        int high = knots.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (test.test(knots.get(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private Fraction on(int k, Fraction place) {
        Knot low = knots.get(k - 1);
        Knot high = knots.get(k);
        if (place.same(low.at()) || low.value().same(high.value())) {
            return low.value();
        }
        if (place.same(high.at())) {
            return high.value();
        }
        Fraction part = place.minus(low.at()).by(high.at().minus(low.at()));
        return low.value().plus(part.times(high.value().minus(low.value())));
    }

    ExactLine plus(Fraction offset) {
        return new ExactLine(knots.stream()
                .map(knot -> new Knot(knot.at(), knot.value().plus(offset)))
                .toList());
    }

    /** Seen from a place on the axis, backwards: what was at {@code y} is at {@code about - y}. */
    ExactLine mirrored(Fraction about) {
        List<Knot> turned = new ArrayList<>();
        for (int k = knots.size() - 1; k >= 0; k--) {
            turned.add(new Knot(about.minus(knots.get(k).at()), knots.get(k).value()));
        }
        return new ExactLine(turned);
    }

    /** The least value so far. */
    ExactLine runningLeast() {
        List<Knot> least = new ArrayList<>();
        least.add(knots.get(0));
        Fraction best = knots.get(0).value();
        for (int k = 1; k < knots.size(); k++) {
            Knot low = knots.get(k - 1);
            Knot high = knots.get(k);
            if (high.value().compareTo(best) < 0) {
                if (low.value().compareTo(best) > 0) {
                    least.add(new Knot(crossing(low, high, best), best));
                }
                best = high.value();
            }
            least.add(new Knot(high.at(), best));
        }
        return new ExactLine(least);
    }

    ExactLine negated() {
        return new ExactLine(knots.stream()
                .map(knot -> new Knot(knot.at(), Fraction.ZERO.minus(knot.value())))
                .toList());
    }

    /** The lesser of this and another, as far as both go. */
    ExactLine least(ExactLine other) {
        List<Knot> least = new ArrayList<>();
        List<Fraction> places = places(this, other);
        for (int k = 1; k < places.size(); k++) {
            Fraction from = places.get(k - 1);
            Fraction to = places.get(k);
            Fraction start = after(from);
            Fraction end = before(to);
            Fraction over = start.minus(other.after(from));
            Fraction under = other.before(to).minus(end);
            least.add(new Knot(from, start.min(other.after(from))));
            if (over.sign() * under.sign() > 0) {
                Fraction part = over.by(over.plus(under));
                least.add(new Knot(from.plus(part.times(to.minus(from))), start.plus(part.times(end.minus(start)))));
            }
            least.add(new Knot(to, end.min(other.before(to))));
        }
        return new ExactLine(least);
    }

    /** Where any of the lines has a knot, from 0 as far as all go. */
    static List<Fraction> places(ExactLine... lines) {
        Fraction end = lines[0].end();
        TreeSet<Fraction> places = new TreeSet<>();
        for (ExactLine line : lines) {
            end = end.min(line.end());
            line.knots().stream().map(Knot::at).filter(at -> at.sign() >= 0).forEach(places::add);
        }
        return List.copyOf(places.headSet(end, true));
    }

    /** The first place from which a running least is below a value. */
    Optional<Fraction> firstBelow(Fraction value) {
        Knot last = knots.get(knots.size() - 1);
        if (last.value().compareTo(value) >= 0) {
            return Optional.empty();
        }
        if (knots.get(0).value().compareTo(value) < 0) {
            return Optional.of(knots.get(0).at());
        }
        int below = search(knot -> knot.value().compareTo(value) < 0);
        return Optional.of(crossing(knots.get(below - 1), knots.get(below), value));
    }

    /** Where, between two knots on either side of a value, the line has it. */
    private static Fraction crossing(Knot low, Knot high, Fraction value) {
        Fraction span = high.at().minus(low.at());
        return low.at()
                .plus(span.times(value.minus(low.value())).by(high.value().minus(low.value())));
    }
}
