package dev.tipwright.fitcheck.other;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
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
 * WayToFit taper = WayToFit.of(WayToFit.Way.TAPER_TIP, true, List.of(tip)).withStiffness(0.91);
 * WayToFit open = WayToFit.of(WayToFit.Way.OPEN_BORE, true, List.of(hosel)).withAdded(Mass.ofGrams(-0.6));
 * WayToFit.ranked(List.of(open, taper)).get(0).way();      // = TAPER_TIP
 * open.standing();                                         // = PAST_A_LIMIT
 * }</pre>
 *
 * @param way which way
 * @param feasible whether it gives a fit at all
 * @param margins its numbers held against the limits
 * @param stiffness least share of the tip's bending and torsional stiffness left, 0 to 1; empty if not known
 * @param added what it adds to the club, negative if it takes off; empty if not known
 */
public record WayToFit(
        Way way, boolean feasible, List<Margin> margins, Optional<Double> stiffness, Optional<Mass> added) {

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
     * @param stiffness least share of the tip's stiffness left, 0 to 1
     * @param added what it adds to the club, negative if it takes off
     */
    public WayToFit {
        Require.given("way", way);
        margins = Require.list("margins", margins);
        Require.given("stiffness", stiffness);
        stiffness.ifPresent(share -> Require.that(share >= 0 && share <= 1, "stiffness", "must be 0 to 1", share));
        Require.given("added", added);
    }

    /**
     * A way whose stiffness and weight are not known.
     *
     * @param way which way
     * @param feasible whether it gives a fit at all
     * @param margins its numbers held against the limits
     * @return the way
     */
    public static WayToFit of(Way way, boolean feasible, List<Margin> margins) {
        return new WayToFit(way, feasible, margins, Optional.empty(), Optional.empty());
    }

    /**
     * The same way with another stiffness left.
     *
     * @param stiffness least share of the tip's stiffness left, 0 to 1
     * @return a copy that differs in that alone
     */
    public WayToFit withStiffness(double stiffness) {
        return new WayToFit(way, feasible, margins, Optional.of(stiffness), added);
    }

    /**
     * The same way with another weight.
     *
     * @param added what it adds to the club, negative if it takes off
     * @return a copy that differs in that alone
     */
    public WayToFit withAdded(Mass added) {
        return new WayToFit(way, feasible, margins, stiffness, Optional.of(Require.given("added", added)));
    }

    /**
     * Working a tip down, this one or that of another blank.
     *
     * @param way which of the two
     * @param removal what comes off
     * @param leastWall the caller's limit for the wall of structure left
     * @return the way, with the stiffness left and the weight off as far as they are known; without a known wall it stands at no limit
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
        return new WayToFit(
                way, true, margins, removal.leastStiffness(), removal.mass().map(Mass::negated));
    }

    /**
     * Opening the bore, which leaves the tip as stiff as it is.
     *
     * @param opening what it leaves
     * @param leastWall the caller's limit for the wall of the hosel left
     * @return the way
     */
    public static WayToFit open(BoreOpening opening, Reading<Length> leastWall) {
        Require.given("opening", opening);
        Require.given("leastWall", leastWall);
        return of(
                        Way.OPEN_BORE,
                        opening.wallLeft().nanometres() > 0,
                        List.of(new Margin(Margin.What.HOSEL_WALL, opening.wallLeft(), leastWall)))
                .withStiffness(1);
    }

    /**
     * Filling with a shim, which leaves the tip as stiff as it is.
     *
     * @param fit what it leaves
     * @param loosest the caller's limit for the greatest clearance left
     * @return the way
     */
    public static WayToFit shim(ShimFit fit, Reading<Length> loosest) {
        Require.given("fit", fit);
        Require.given("loosest", loosest);
        return of(Way.SHIM, fit.lean().free(), List.of(new Margin(Margin.What.CLEARANCE, fit.greatest(), loosest)))
                .withStiffness(1);
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
