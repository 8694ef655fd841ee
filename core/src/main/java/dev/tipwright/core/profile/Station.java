package dev.tipwright.core.profile;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * A diameter read at one place. Nothing is perfectly round, so a reading may be a least and a greatest diameter; a
 * contact uses the worse of the two, a volume their mean.
 *
 * @param at where, along the axis; -3 m to 3 m
 * @param least least diameter there; above zero, at most 100 mm
 * @param greatest greatest diameter there; not under the least, at most 100 mm
 */
public record Station(Length at, Length least, Length greatest) {

    /**
     * Checks the values.
     *
     * @param at where, along the axis; -3 m to 3 m
     * @param least least diameter there; above zero, at most 100 mm
     * @param greatest greatest diameter there; not under the least, at most 100 mm
     */
    public Station {
        Require.within("at", at, -3000, 3000);
        Require.someUpTo("least", least, 100);
        Require.someUpTo("greatest", greatest, 100);
        Require.atMost("least", least, "greatest", greatest);
    }

    /**
     * A reading that is the same all round.
     *
     * @param at where, along the axis
     * @param diameter the diameter there
     * @return the station
     */
    public static Station of(Length at, Length diameter) {
        return new Station(at, Require.someUpTo("diameter", diameter, 100), diameter);
    }

    /**
     * The mean of least and greatest.
     *
     * @return the diameter that counts for volume, rounded to the nanometre
     */
    public Length mean() {
        return least.plus(greatest).half();
    }

    /**
     * How far the reading is out of round.
     *
     * @return greatest less least
     */
    public Length outOfRound() {
        return greatest.minus(least);
    }

    /**
     * This reading with both diameters changed by as much.
     *
     * @param by what to add to the diameters; negative makes them smaller
     * @return the changed station
     */
    public Station widenedBy(Length by) {
        Require.within("by", by, -100, 100);
        Length narrower = least.plus(by);
        Length wider = least.equals(greatest) ? narrower : greatest.plus(by);
        if (narrower.nanometres() <= 0 || wider.moreThan(Bounds.WIDEST)) {
            throw Require.broken("by", "must leave a diameter above zero and at most " + Bounds.WIDEST, by);
        }
        return new Station(at, narrower, wider);
    }

    /**
     * This one with another value in one place.
     *
     * @param at where, along the axis; -3 m to 3 m
     * @return a copy that differs in that alone
     */
    public Station withAt(Length at) {
        return new Station(at, least, greatest);
    }

    /**
     * This one with another value in one place.
     *
     * @param least least diameter there; above zero, at most 100 mm
     * @return a copy that differs in that alone
     */
    public Station withLeast(Length least) {
        return new Station(at, least, greatest);
    }

    /**
     * This one with another value in one place.
     *
     * @param greatest greatest diameter there; not under the least, at most 100 mm
     * @return a copy that differs in that alone
     */
    public Station withGreatest(Length greatest) {
        return new Station(at, least, greatest);
    }
}
