package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.StockRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much too much may come off a tip before no shim in stock saves it. With {@code x} too much off the diameter the clearance is
 * {@code w + x}; a shim of wall {@code t} leaves {@code w + x - 2 t}, which must not be under {@code w} nor over the loosest the
 * caller allows. The wall of the tip loses {@code x / 2}, and no shim gives it back. The same all along the tip is assumed: where a
 * taper is left open beside the shim, {@link ShimFit} says so.
 *
 * <pre>{@code
 * List<Length> walls = List.of(Length.parse(".003 in"), Length.parse(".010 in"));
 * ShimReach reach = ShimReach.of(
 *         Length.parse(".004 in"), Length.parse(".008 in"), walls, Optional.of(Length.parse(".012 in")));
 * reach.beyond().thousandths();                                    // = 24.0
 * reach.judge(Length.parse(".003 in")).code();                     // = NO_SHIM_NEEDED
 * reach.judge(Length.parse(".007 in")).code();                     // = SHIM_SAVES
 * reach.judge(Length.parse(".015 in")).code();                     // = BETWEEN_SHIMS
 * reach.judge(Length.parse(".025 in")).code();                     // = NO_SHIM_SAVES
 * }</pre>
 *
 * @param clearance wanted clearance on the diameter ({@code w}); zero or more
 * @param loosest greatest clearance the caller allows; at least the wanted one
 * @param walls walls in stock, from thin to thick; each above zero, at most 10 mm
 * @param saved stocks, below zero, at which the tip fits as it is or with one of them, from the most to the least
 * @param beyond too much off the diameter from which on none does
 */
public record ShimReach(Length clearance, Length loosest, List<Length> walls, List<StockRange> saved, Length beyond) {

    /**
     * Checks the values.
     *
     * @param clearance wanted clearance on the diameter; zero or more
     * @param loosest greatest clearance the caller allows; at least the wanted one
     * @param walls walls in stock; each above zero, at most 10 mm
     * @param saved stocks at which the tip fits as it is or with one of them; one or more
     * @param beyond too much off the diameter from which on none does; zero or more
     */
    public ShimReach {
        Require.notNegative("clearance", clearance);
        Require.given("loosest", loosest);
        Require.atMost("clearance", clearance, "loosest", loosest);
        walls = Require.list("walls", walls);
        for (Length wall : walls) {
            Require.someUpTo("walls", wall, 10);
        }
        saved = Require.someOf("saved", saved);
        Require.notNegative("beyond", beyond);
    }

    /**
     * The reach of a stock of shims.
     *
     * @param clearance wanted clearance on the diameter ({@code w}); zero or more
     * @param loosest the greatest clearance the caller allows; at least the wanted one, at most 100 mm
     * @param walls walls in stock; each above zero, at most 10 mm
     * @param spare what the wall of the finished tip has over the caller's limit, radial; zero or more, at most 100 mm; empty if either is
     *     unknown, and then the wall sets no limit
     * @return what they save
     */
    public static ShimReach of(Length clearance, Length loosest, List<Length> walls, Optional<Length> spare) {
        Require.notNegative("clearance", clearance);
        Require.given("loosest", loosest);
        Require.atMost("clearance", clearance, "loosest", loosest);
        Require.within("loosest", loosest, 0, 100);
        Require.given("spare", spare);
        Length most = spare.map(left -> Require.within("spare", left, 0, 100))
                .map(left -> left.times(2))
                .orElse(Length.ofMillimetres(200));
        List<Length> thicknesses = new ArrayList<>();
        thicknesses.add(Length.ZERO);
        for (Length wall : Require.list("walls", walls)) {
            thicknesses.add(Require.someUpTo("walls", wall, 10));
        }
        thicknesses.sort(null);
        Length room = loosest.minus(clearance);
        List<StockRange> saved = new ArrayList<>();
        for (Length thick : thicknesses) {
            Length from = thick.times(2);
            if (!from.moreThan(most)) {
                add(saved, from, from.plus(room).min(most));
            }
        }
        return new ShimReach(
                clearance,
                loosest,
                thicknesses.subList(1, thicknesses.size()),
                saved,
                saved.get(saved.size() - 1).least().negated());
    }

    /** Joins what overlaps or touches. */
    private static void add(List<StockRange> saved, Length from, Length to) {
        int last = saved.size() - 1;
        if (last >= 0 && !from.moreThan(saved.get(last).least().negated())) {
            saved.set(last, new StockRange(to.negated(), saved.get(last).most()));
        } else {
            saved.add(new StockRange(to.negated(), from.negated()));
        }
    }

    /**
     * The thickest shim that leaves the wanted clearance.
     *
     * @param over too much off the diameter ({@code x}); zero or more
     * @return its wall; empty if the thinnest in stock is too thick
     */
    public Optional<Length> wall(Length over) {
        Require.notNegative("over", over);
        return walls.stream().filter(wall -> !wall.times(2).moreThan(over)).max(Length::compareTo);
    }

    /**
     * Whether a tip fits as it is or with a shim in stock.
     *
     * @param over too much off the diameter ({@code x}); zero or more
     * @return true if it does
     */
    public boolean saves(Length over) {
        Length stock = Require.notNegative("over", over).negated();
        return saved.stream().anyMatch(range -> !stock.lessThan(range.least()) && !stock.moreThan(range.most()));
    }

    /**
     * What to do about too much off.
     *
     * @param over too much off the diameter ({@code x}); zero to 100 mm
     * @return a note if a shim saves it or none is needed, a caution between two shims, a stop if none saves it
     */
    public Finding judge(Length over) {
        Require.within("over", over, 0, 100);
        Term off = Term.fine("x", "too much off the diameter", over);
        Term limit = Term.fine("cmax", "loosest clearance", loosest);
        Length open = clearance.plus(over);
        if (over.moreThan(beyond)) {
            return Finding.stop(OtherCode.NO_SHIM_SAVES, off, Term.fine("xmax", "the most a shim saves", beyond));
        }
        if (!open.moreThan(loosest)) {
            return Finding.note(OtherCode.NO_SHIM_NEEDED, off, Term.fine("c", "clearance", open), limit);
        }
        if (!saves(over)) {
            return Finding.caution(
                    OtherCode.BETWEEN_SHIMS, off, limit, Term.fine("t", "wall of the shim", over.half()));
        }
        Length wall = wall(over).orElse(Length.ZERO);
        return Finding.note(
                OtherCode.SHIM_SAVES,
                off,
                Term.fine("t", "wall of the shim", wall),
                Term.fine("c", "clearance left", open.minus(wall.times(2))));
    }
}
