package dev.tipwright.examples;

import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.Objects;
import java.util.Optional;

/**
 * What a finished club was found to be, beside what its plan predicted: the record that goes with the plan.
 *
 * @param club label of the club
 * @param predicted what the plan says
 * @param found what the bench says
 */
public record AsBuilt(String club, Measures predicted, Measures found) {

    /** Checks the values. */
    public AsBuilt {
        Objects.requireNonNull(club, "club");
        Objects.requireNonNull(predicted, "predicted");
        Objects.requireNonNull(found, "found");
    }

    /**
     * What is measured on a club: its frequency before tape and grip go on, all else when it is finished.
     *
     * @param frequency without tape and grip, if the club is timed
     * @param length playing length along the shaft
     * @param swingWeight on the scale of the job
     * @param mass of the whole club
     * @param balance balance point from the top of the grip
     */
    public record Measures(
            Optional<Frequency> frequency, Length length, SwingWeight swingWeight, Mass mass, Length balance) {

        /** Checks the values. */
        public Measures {
            Objects.requireNonNull(frequency, "frequency");
            Objects.requireNonNull(length, "length");
            Objects.requireNonNull(swingWeight, "swingWeight");
            Objects.requireNonNull(mass, "mass");
            Objects.requireNonNull(balance, "balance");
        }

        /** What the plan of a club says that it will be. */
        static Measures predictedBy(ClubPlan plan) {
            Balance balance = Balance.of(plan.after());
            SwingWeight reads = plan.report(ClubBalance.class).reads();
            Optional<Frequency> frequency = plan.find(ClubFrequency.class).map(ClubFrequency::frequency);
            return new Measures(
                    frequency, PlayingLength.alongAxis(plan.after()), reads, balance.total(), balance.balancePoint());
        }
    }

    /**
     * The record of a club that was planned to its end.
     *
     * @param plan of the club, with its balance
     * @param found what the bench says
     * @return both side by side
     * @throws IllegalArgumentException if the plan never came to a balance or a seat
     */
    public static AsBuilt of(ClubPlan plan, Measures found) {
        return new AsBuilt(plan.label(), Measures.predictedBy(plan), found);
    }

    /** Found frequency less predicted; empty unless both are there. */
    public Optional<Frequency> faster() {
        return found.frequency().flatMap(now -> predicted.frequency().map(now::minus));
    }

    /** Found length less predicted. */
    public Length longer() {
        return found.length().minus(predicted.length());
    }

    /** Found swing weight less predicted, in points. */
    public double pointsMore() {
        return found.swingWeight().over(predicted.swingWeight());
    }

    /** Found mass less predicted. */
    public Mass heavier() {
        return found.mass().minus(predicted.mass());
    }

    /** How much further from the top of the grip the club balances than predicted. */
    public Length balancesFurtherDown() {
        return found.balance().minus(predicted.balance());
    }
}
