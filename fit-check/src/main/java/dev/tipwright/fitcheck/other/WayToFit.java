package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One way to make a tip fit a bore, and how it stands to the caller's limits. Ways are ranked by nothing else: first those within every
 * limit, then those with a limit unknown, then those past one; within each by their least margin, ties in the order given.
 *
 * <pre>{@code
 * Margin tip = new Margin(
 *         Margin.What.TIP_WALL, Length.parse(".079 in"), Reading.measured(Length.parse(".075 in")));
 * Margin hosel = new Margin(
 *         Margin.What.HOSEL_WALL, Length.parse(".070 in"), Reading.measured(Length.parse(".080 in")));
 * WayToFit taper = new WayToFit(WayToFit.Way.TAPER_TIP, true, List.of(tip));
 * WayToFit open = new WayToFit(WayToFit.Way.OPEN_BORE, true, List.of(hosel));
 * WayToFit.ranked(List.of(open, taper)).get(0).way();      // = TAPER_TIP
 * open.standing();                                         // = PAST_A_LIMIT
 * }</pre>
 *
 * @param way which way
 * @param feasible whether it gives a fit at all
 * @param margins its numbers held against the limits
 */
public record WayToFit(Way way, boolean feasible, List<Margin> margins) {

    /** A way to a fit. */
    public enum Way {
        /** Work the tip down. */
        TAPER_TIP,
        /** Open the bore. */
        OPEN_BORE,
        /** Fill with a shim. */
        SHIM,
        /** Take another blank. */
        OTHER_BLANK
    }

    /** How a way stands to the limits. */
    public enum Standing {
        /** Within every limit. */
        WITHIN,
        /** Within every limit that is known. */
        LIMIT_UNKNOWN,
        /** Past a limit, or no fit at all. */
        PAST_A_LIMIT
    }

    /**
     * Checks the values.
     *
     * @param way which way
     * @param feasible whether it gives a fit at all
     * @param margins its numbers held against the limits
     */
    public WayToFit {
        Require.given("way", way);
        margins = Require.list("margins", margins);
    }

    /**
     * Working a tip down, this one or that of another blank.
     *
     * @param way which of the two
     * @param removal what comes off
     * @param leastWall the caller's limit for the wall of structure left
     * @return the way; without a known wall it stands at no limit and is not feasible to judge
     */
    public static WayToFit taper(Way way, MaterialRemoval removal, Reading<Length> leastWall) {
        Require.given("removal", removal);
        Require.given("leastWall", leastWall);
        List<Margin> margins = new ArrayList<>();
        removal.leastWall().ifPresent(wall -> margins.add(new Margin(Margin.What.TIP_WALL, wall, leastWall)));
        if (removal.leastWall().isEmpty()) {
            margins.add(new Margin(
                    Margin.What.TIP_WALL,
                    Length.ZERO,
                    Reading.unknown("the shaft's maker, or an offcut, for the wall")));
        }
        return new WayToFit(way, true, margins);
    }

    /**
     * Opening the bore.
     *
     * @param opening what it leaves
     * @param leastWall the caller's limit for the wall of the hosel left
     * @return the way
     */
    public static WayToFit open(BoreOpening opening, Reading<Length> leastWall) {
        Require.given("opening", opening);
        Require.given("leastWall", leastWall);
        return new WayToFit(
                Way.OPEN_BORE,
                opening.wallLeft().nanometres() > 0,
                List.of(new Margin(Margin.What.HOSEL_WALL, opening.wallLeft(), leastWall)));
    }

    /**
     * Filling with a shim.
     *
     * @param fit what it leaves
     * @param loosest the caller's limit for the greatest clearance left
     * @return the way
     */
    public static WayToFit shim(ShimFit fit, Reading<Length> loosest) {
        Require.given("fit", fit);
        Require.given("loosest", loosest);
        return new WayToFit(
                Way.SHIM, fit.lean().free(), List.of(new Margin(Margin.What.CLEARANCE, fit.greatest(), loosest)));
    }

    /**
     * How it stands to the limits.
     *
     * @return the worst standing of its margins
     */
    public Standing standing() {
        boolean past = margins.stream()
                .anyMatch(margin -> margin.ratio().map(ratio -> ratio < 1).orElse(false));
        if (past || !feasible) {
            return Standing.PAST_A_LIMIT;
        }
        return margins.stream().allMatch(margin -> margin.ratio().isPresent())
                ? Standing.WITHIN
                : Standing.LIMIT_UNKNOWN;
    }

    /**
     * The least of its margins.
     *
     * @return least ratio to a limit; empty if no limit is known
     */
    public Optional<Double> leastMargin() {
        return margins.stream().flatMap(margin -> margin.ratio().stream()).min(Comparator.naturalOrder());
    }

    /**
     * Ways in the order the limits put them.
     *
     * @param ways the ways
     * @return best first
     */
    public static List<WayToFit> ranked(List<WayToFit> ways) {
        return Require.<WayToFit>list("ways", ways).stream()
                .sorted(Comparator.comparing(WayToFit::standing)
                        .thenComparing(way -> way.leastMargin().orElse(0.0), Comparator.reverseOrder()))
                .toList();
    }
}
