package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * What one pass on the belt takes off the diameter, as far as the stops have shown. From {@code e1} before to {@code e2} after {@code n}
 * passes each took {@code (e1 - e2) / n}; where the stocks are ranges so is this.
 *
 * <pre>{@code
 * PassRate rate = PassRate.learnt(
 *         StockRange.exactly(Length.ofThousandths(17.5)), StockRange.exactly(Length.ofThousandths(8.5)), 6);
 * rate.most().thousandths();                                             // = 1.5
 * rate.safePasses(StockRange.exactly(Length.ofThousandths(8.5)));        // = 5
 * rate.nextPasses(StockRange.exactly(Length.ofThousandths(8.5)));        // = 2
 * }</pre>
 *
 * @param least the least a pass takes; zero or more
 * @param most the most it takes; above zero
 */
public record PassRate(Length least, Length most) {

    /**
     * Checks the values.
     *
     * @param least the least a pass takes; zero or more
     * @param most the most it takes; above zero
     */
    public PassRate {
        Require.notNegative("least", least);
        Require.positive("most", most);
        Require.atMost("least", least, "most", most);
    }

    /**
     * What two stops show.
     *
     * @param before stock left at the stop before
     * @param after stock left now
     * @param passes how many passes lie between; one or more
     * @return the rate; what cannot have come off counts as nothing, and the most is at least a nanometre
     */
    public static PassRate learnt(StockRange before, StockRange after, int passes) {
        Require.given("before", before);
        Require.given("after", after);
        Require.that(passes > 0, "passes", "must be one or more", passes);
        long least = Math.floorDiv(before.least().minus(after.most()).nanometres(), (long) passes);
        long most = -Math.floorDiv(after.least().minus(before.most()).nanometres(), (long) passes);
        long bound = Math.max(1, most);
        return new PassRate(Length.ofNanometres(Math.min(bound, Math.max(0, least))), Length.ofNanometres(bound));
    }

    /**
     * This rate and another that was also seen: passes differ, so the range that holds both.
     *
     * @param other the other
     * @return least of the least, most of the most
     */
    public PassRate or(PassRate other) {
        Require.given("other", other);
        return new PassRate(least.min(other.least), most.max(other.most));
    }

    /**
     * How many passes cannot take too much.
     *
     * @param left stock left
     * @return {@code floor(least stock / most a pass takes)}; zero if not even one is safe
     */
    public long safePasses(StockRange left) {
        Require.given("left", left);
        return Math.max(0, left.least().nanometres() / most.nanometres());
    }

    /**
     * How many passes to make before the next stop: half of what is left, so that the last steps are small, and at least one while one
     * is safe.
     *
     * @param left stock left
     * @return passes; zero if not even one is safe: measure better or leave it
     */
    public long nextPasses(StockRange left) {
        long safe = safePasses(left);
        return safe == 1 ? 1 : safe / 2;
    }
}
