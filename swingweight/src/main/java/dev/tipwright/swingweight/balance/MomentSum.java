package dev.tipwright.swingweight.balance;

import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/** Adds up mass and first moment of parts, in the order and so to the bit as {@link Balance} does. */
final class MomentSum implements ClubParts.Taker {

    private long picograms;
    private double moment;

    @Override
    public void take(String label, Mass mass, double first, double second) {
        picograms = Math.addExact(picograms, mass.picograms());
        moment += first;
    }

    FirstMoment about(Length fulcrum) {
        return FirstMoment.ofGramMillimetres(moment)
                .minus(Mass.ofPicograms(picograms).at(fulcrum));
    }
}
