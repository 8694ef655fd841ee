package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import java.util.List;

/**
 * Mass for length along a raw shaft, straight between stations: what weighed offcuts, or a shaft cut up, have told.
 *
 * @param knots two or more, from the raw tip (0) to the butt, in order
 */
public record LineDensityProfile(List<Knot> knots) {

    /**
     * Checks the values.
     *
     * @param knots two or more, from the raw tip (0) to the butt, in order
     */
    public LineDensityProfile {
        knots = Require.list("knots", knots);
        Require.that(knots.size() >= 2, "knots", "must be two or more", knots);
        Require.that(
                knots.get(0).at().equals(Length.ZERO),
                "knots",
                "must start at the raw tip, 0",
                knots.get(0).at());
        for (int i = 1; i < knots.size(); i++) {
            Require.that(
                    knots.get(i - 1).at().lessThan(knots.get(i).at()),
                    "knots",
                    "must be in order of their place",
                    knots);
        }
    }

    /**
     * A line density at a place.
     *
     * @param at from the raw tip; 0 to 3 m
     * @param density mass for length there; above zero
     */
    public record Knot(Length at, LineDensity density) {

        /**
         * Checks the values.
         *
         * @param at from the raw tip; 0 to 3 m
         * @param density mass for length there; above zero
         */
        public Knot {
            Require.within("at", at, 0, 3000);
            Require.given("density", density);
            Require.that(density.gramsPerMillimetre() > 0, "density", "must be above zero", density);
        }
    }

    /**
     * How far up it was read.
     *
     * @return place of the last station, from the raw tip
     */
    public Length end() {
        return knots.get(knots.size() - 1).at();
    }

    /**
     * This one with another value in one place.
     *
     * @param knots two or more, from the raw tip (0) to the butt, in order
     * @return a copy that differs in that alone
     */
    public LineDensityProfile withKnots(List<Knot> knots) {
        return new LineDensityProfile(knots);
    }
}
