package dev.tipwright.core.part;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.List;

/**
 * How a raw shaft bends: the shape of its stiffness, and frequencies measured on it.
 *
 * @param shape how the stiffness runs along it
 * @param measured frequencies timed on the raw shaft; may be empty
 */
public record ShaftFlex(Reading<StiffnessShape> shape, List<Timed> measured) {

    /**
     * Checks the values.
     *
     * @param shape how the stiffness runs along it
     * @param measured frequencies timed on the raw shaft; may be empty
     */
    public ShaftFlex {
        Require.given("shape", shape);
        measured = Require.list("measured", measured);
    }

    /**
     * A frequency timed on the raw shaft, clamped at its butt with a mass on its tip.
     *
     * @param frequency as timed; above zero
     * @param clamp length held in the clamp, from the butt; zero or more
     * @param tipMass mass fixed to the tip; zero or more
     */
    public record Timed(Frequency frequency, Length clamp, Mass tipMass) {

        /**
         * Checks the values.
         *
         * @param frequency as timed; above zero
         * @param clamp length held in the clamp, from the butt; zero or more
         * @param tipMass mass fixed to the tip; zero or more
         */
        public Timed {
            Require.given("frequency", frequency);
            Require.that(frequency.perMinute() > 0, "frequency", "must be above zero", frequency);
            Require.notNegative("clamp", clamp);
            Require.notNegative("tipMass", tipMass);
        }

        /**
         * This one with another value in one place.
         *
         * @param frequency as timed; above zero
         * @return a copy that differs in that alone
         */
        public Timed withFrequency(Frequency frequency) {
            return new Timed(frequency, clamp, tipMass);
        }

        /**
         * This one with another value in one place.
         *
         * @param clamp length held in the clamp, from the butt; zero or more
         * @return a copy that differs in that alone
         */
        public Timed withClamp(Length clamp) {
            return new Timed(frequency, clamp, tipMass);
        }

        /**
         * This one with another value in one place.
         *
         * @param tipMass mass fixed to the tip; zero or more
         * @return a copy that differs in that alone
         */
        public Timed withTipMass(Mass tipMass) {
            return new Timed(frequency, clamp, tipMass);
        }
    }

    /**
     * This one with another value in one place.
     *
     * @param shape how the stiffness runs along it
     * @return a copy that differs in that alone
     */
    public ShaftFlex withShape(Reading<StiffnessShape> shape) {
        return new ShaftFlex(shape, measured);
    }

    /**
     * This one with another value in one place.
     *
     * @param measured frequencies timed on the raw shaft; may be empty
     * @return a copy that differs in that alone
     */
    public ShaftFlex withMeasured(List<Timed> measured) {
        return new ShaftFlex(shape, measured);
    }
}
