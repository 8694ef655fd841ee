package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * What a fit is to be, and the limits it must keep. The limits are the caller's: no number here is a maker's, and where the caller
 * gives none, the plan says whom to ask.
 *
 * <pre>{@code
 * FitTarget target = FitTarget.of(Length.parse(".004 in"))
 *         .withLeastInsertion(Reading.measured(Length.parse("1 in")))
 *         .withLeastWall(Reading.unknown("the shaft's maker"));
 * target.leastWall().known().isPresent();   // = false
 * }</pre>
 *
 * @param clearance wanted clearance between finished tip and bore, on the diameter ({@code w}); zero or more
 * @param leastInsertion least insertion
 * @param leastWall least wall of structure left
 */
public record FitTarget(Length clearance, Reading<Length> leastInsertion, Reading<Length> leastWall) {

    /**
     * Checks the values.
     *
     * @param clearance wanted clearance between finished tip and bore, on the diameter
     * @param leastInsertion least insertion
     * @param leastWall least wall of structure left
     */
    public FitTarget {
        Require.notNegative("clearance", clearance);
        Require.given("leastInsertion", leastInsertion);
        Require.given("leastWall", leastWall);
    }

    /**
     * A clearance without limits.
     *
     * @param clearance wanted clearance on the diameter; zero or more
     * @return the target, limits unknown
     */
    public static FitTarget of(Length clearance) {
        return new FitTarget(
                clearance, Reading.unknown("the makers of head and adhesive"), Reading.unknown("the shaft's maker"));
    }

    /**
     * This target with another wanted clearance.
     *
     * @param clearance wanted clearance on the diameter
     * @return a copy that differs in that alone
     */
    public FitTarget withClearance(Length clearance) {
        return new FitTarget(clearance, leastInsertion, leastWall);
    }

    /**
     * This target with a limit on the bonded length.
     *
     * @param least least insertion
     * @return a copy that differs in that alone
     */
    public FitTarget withLeastInsertion(Reading<Length> least) {
        return new FitTarget(clearance, Require.given("least", least), leastWall);
    }

    /**
     * This target with a limit on the wall left.
     *
     * @param least least wall of structure left
     * @return a copy that differs in that alone
     */
    public FitTarget withLeastWall(Reading<Length> least) {
        return new FitTarget(clearance, leastInsertion, Require.given("least", least));
    }
}
