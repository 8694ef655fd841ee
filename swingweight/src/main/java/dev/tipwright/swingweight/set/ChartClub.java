package dev.tipwright.swingweight.set;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.UncertainClub;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.List;
import java.util.Optional;

/**
 * One club of a {@link SetChart}: what it comes to, its expanded uncertainties, and what was wanted.
 *
 * @param label what the club is called
 * @param reads swing weight
 * @param readsUncertainty its expanded uncertainty, points; 0 to 1000, 0 draws no bar
 * @param total total mass
 * @param totalUncertainty its expanded uncertainty; zero or more
 * @param inertia inertia about the butt
 * @param inertiaUncertainty its expanded uncertainty; zero or more
 * @param wanted what was wanted
 */
public record ChartClub(
        String label,
        SwingWeight reads,
        double readsUncertainty,
        Mass total,
        Mass totalUncertainty,
        Inertia inertia,
        Inertia inertiaUncertainty,
        Wanted wanted) {

    /**
     * What was wanted of a club.
     *
     * @param reads swing weight
     * @param total total mass
     * @param inertia inertia about the butt
     */
    public record Wanted(Optional<SwingWeight> reads, Optional<Mass> total, Optional<Inertia> inertia) {

        /** Nothing was wanted. */
        public static final Wanted NOTHING = new Wanted(Optional.empty(), Optional.empty(), Optional.empty());

        /**
         * Checks the values.
         *
         * @param reads swing weight
         * @param total total mass
         * @param inertia inertia about the butt
         */
        public Wanted {
            Require.given("reads", reads);
            Require.given("total", total);
            Require.given("inertia", inertia);
        }
    }

    /**
     * Checks the values.
     *
     * @param label what the club is called
     * @param reads swing weight
     * @param readsUncertainty its expanded uncertainty, points; 0 to 1000, 0 draws no bar
     * @param total total mass
     * @param totalUncertainty its expanded uncertainty; zero or more
     * @param inertia inertia about the butt
     * @param inertiaUncertainty its expanded uncertainty; zero or more
     * @param wanted what was wanted
     */
    public ChartClub {
        Require.label("label", label);
        Require.given("reads", reads);
        Require.that(
                readsUncertainty >= 0 && readsUncertainty <= 1000,
                "readsUncertainty",
                "must be from 0 to 1000 points",
                readsUncertainty);
        Require.given("total", total);
        Require.notNegative("totalUncertainty", totalUncertainty);
        Require.given("inertia", inertia);
        Require.given("inertiaUncertainty", inertiaUncertainty);
        Require.that(
                inertiaUncertainty.compareTo(Inertia.ZERO) >= 0,
                "inertiaUncertainty",
                "must not be negative",
                inertiaUncertainty);
        Require.given("wanted", wanted);
    }

    /**
     * A planned club, with the uncertainties of a bench for a coverage of 95.45 %.
     *
     * @param plan of the club, balanced
     * @param bench what it was measured and is made with
     * @return the club; empty if it was not balanced
     */
    public static Optional<ChartClub> of(ClubPlan plan, BenchUncertainty bench) {
        Require.given("plan", plan);
        Require.given("bench", bench);
        return plan.find(ClubBalance.class).map(balance -> {
            UncertainClub club = UncertainClub.of(plan.after(), bench);
            List<Measure> measures = balance.measures();
            return new ChartClub(
                    plan.label(),
                    balance.reads(),
                    expanded(club, measures.get(0)),
                    balance.after().total(),
                    Mass.ofGrams(expanded(club, measures.get(1))),
                    balance.after().inertiaAboutButt(),
                    Inertia.ofKilogramSquareCentimetres(expanded(club, measures.get(3))),
                    new Wanted(balance.target().map(SwingWeightTarget::wanted), Optional.empty(), Optional.empty()));
        });
    }

    private static double expanded(UncertainClub club, Measure measure) {
        Optional<Budget> budget = club.budget(measure);
        return budget.map(known -> known.expanded(Measure.TWO_SIGMA).uncertainty())
                .orElse(0.0);
    }

    /**
     * This club with something else wanted.
     *
     * @param wanted what was wanted
     * @return a copy that differs in that alone
     */
    public ChartClub withWanted(Wanted wanted) {
        return new ChartClub(
                label, reads, readsUncertainty, total, totalUncertainty, inertia, inertiaUncertainty, wanted);
    }
}
