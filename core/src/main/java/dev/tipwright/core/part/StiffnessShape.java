package dev.tipwright.core.part;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;
import java.util.List;

/** How the bending stiffness of a raw shaft runs from tip to butt. */
public sealed interface StiffnessShape {

    /**
     * Stiffness read at stations, straight between them. Two knots at one place are a step: the first holds below it, the second above.
     *
     * @param knots two or more, from the raw tip (0) to the butt, in order, at most two at one place
     */
    record AtStations(List<Knot> knots) implements StiffnessShape {

        /**
         * Checks the value.
         *
         * @param knots two or more, from the raw tip (0) to the butt, in order, at most two at one place
         */
        public AtStations {
            knots = Require.list("knots", knots);
            Require.that(knots.size() >= 2, "knots", "must be two or more", knots);
            Require.that(
                    knots.get(0).at().equals(Length.ZERO),
                    "knots",
                    "must start at the raw tip, 0",
                    knots.get(0).at());
            for (int i = 1; i < knots.size(); i++) {
                Length here = knots.get(i).at();
                Require.that(!here.lessThan(knots.get(i - 1).at()), "knots", "must be in order of their place", here);
                Require.that(
                        i < 2 || here.moreThan(knots.get(i - 2).at()),
                        "knots",
                        "must be at most two at one place",
                        "three at " + here);
            }
            Require.that(knots.get(knots.size() - 1).at().nanometres() > 0, "knots", "must span some length", knots);
        }
    }

    /**
     * A stiffness at a place.
     *
     * @param at from the raw tip; 0 to 3 m
     * @param stiffness {@code EI} there; above zero
     */
    record Knot(Length at, BendingStiffness stiffness) {

        /**
         * Checks the values.
         *
         * @param at from the raw tip; 0 to 3 m
         * @param stiffness {@code EI} there; above zero
         */
        public Knot {
            Require.within("at", at, 0, 3000);
            Require.given("stiffness", stiffness);
            Require.that(stiffness.newtonSquareMetres() > 0, "stiffness", "must be above zero", stiffness);
        }
    }

    /**
     * A tube of one material: stiffness follows from the shaft's own section.
     *
     * @param modulus along the shaft; above zero
     */
    record Tube(Stress modulus) implements StiffnessShape {

        /**
         * Checks the value.
         *
         * @param modulus along the shaft; above zero
         */
        public Tube {
            Require.given("modulus", modulus);
            Require.that(modulus.megapascals() > 0, "modulus", "must be above zero", modulus);
        }
    }
}
