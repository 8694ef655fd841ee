package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A number of a plan that can be worked out again from a club whose inputs were nudged, so that it can have a budget.
 * What the plan decided (targets, cuts, the finished tip) stays as it is.
 *
 * @param symbol its symbol in the plan
 * @param meaning what it is, as in the plan
 * @param kind what it is a number of
 * @param value the number in the unit of its kind, from a club
 */
public record Measure(String symbol, String meaning, Kind kind, ToDoubleFunction<Build> value) {

    /** What the input is called by which the head's centre of mass comes into a budget. */
    public static final String HEAD_CENTRE = "centre of mass";

    /** The probability that goes with a factor of 2 where the degrees of freedom are infinite: 95.45 %. */
    public static final double TWO_SIGMA = 0.954499736103642;

    /** What a measure is a number of. */
    public enum Kind {
        /** A length that a rule reads, mm. */
        LENGTH("mm"),
        /** A diameter, or a difference of two, mm. */
        FINE("mm"),
        /** A mass, g. */
        MASS("g"),
        /** Points of swing weight. */
        POINTS("point"),
        /** A moment of inertia, kg cm2. */
        INERTIA("kg cm2"),
        /** A frequency, cycles a minute. */
        FREQUENCY("/min");

        private final String unit;

        Kind(String unit) {
            this.unit = unit;
        }

        /**
         * The unit of the number.
         *
         * @return its name
         */
        public String unit() {
            return unit;
        }

        private Term term(String symbol, String meaning, double value) {
            return switch (this) {
                case LENGTH -> Term.of(symbol, meaning, Length.ofMillimetres(value));
                case FINE -> Term.fine(symbol, meaning, Length.ofMillimetres(value));
                case MASS -> Term.of(symbol, meaning, Mass.ofGrams(value));
                case POINTS -> Term.number(symbol, meaning, value);
                case INERTIA -> Term.of(symbol, meaning, Inertia.ofKilogramSquareCentimetres(value));
                case FREQUENCY -> Term.of(symbol, meaning, Frequency.ofPerMinute(value));
            };
        }
    }

    /**
     * Checks the values.
     *
     * @param symbol its symbol in the plan
     * @param meaning what it is, as in the plan
     * @param kind what it is a number of
     * @param value the number in the unit of its kind, from a club
     */
    public Measure {
        Require.label("symbol", symbol);
        Require.label("meaning", meaning);
        Require.given("kind", kind);
        Require.given("value", value);
    }

    /**
     * A length.
     *
     * @param symbol its symbol
     * @param meaning what it is
     * @param value from a club
     * @return the measure, in mm
     */
    public static Measure length(String symbol, String meaning, Function<Build, Length> value) {
        Require.given("value", value);
        return new Measure(
                symbol, meaning, Kind.LENGTH, build -> value.apply(build).millimetres());
    }

    /**
     * A diameter, or a difference of two.
     *
     * @param symbol its symbol
     * @param meaning what it is
     * @param value from a club
     * @return the measure, in mm
     */
    public static Measure fine(String symbol, String meaning, Function<Build, Length> value) {
        Require.given("value", value);
        return new Measure(
                symbol, meaning, Kind.FINE, build -> value.apply(build).millimetres());
    }

    /**
     * A frequency.
     *
     * @param symbol its symbol
     * @param meaning what it is
     * @param value from a club
     * @return the measure, in cycles a minute
     */
    public static Measure frequency(String symbol, String meaning, Function<Build, Frequency> value) {
        Require.given("value", value);
        return new Measure(
                symbol, meaning, Kind.FREQUENCY, build -> value.apply(build).perMinute());
    }

    /**
     * The measure of a club, ready for a {@link Budget}, a {@link LinearityCheck} or a {@link MonteCarlo} run.
     *
     * @param build the club with all its work
     * @param bench what it was measured and is made with
     * @return the measurand
     */
    public Measurand measurand(Build build, BenchUncertainty bench) {
        return UncertainClub.of(build, bench).measurand(this);
    }

    /**
     * The first-order budget of this measure of a club. For several measures of one club use {@link UncertainClub}.
     *
     * @param build the club with all its work
     * @param bench what it was measured and is made with
     * @return the budget; empty where the club, or one a step of an input away from it, cannot be built, so that there
     *     is no number to be sure of
     */
    public Optional<Budget> budget(Build build, BenchUncertainty bench) {
        return UncertainClub.of(build, bench).budget(this);
    }

    /**
     * The expanded uncertainty of a budget as a term: {@code U = k u} for a coverage of 95.45 %, so {@code k} is 2
     * where all degrees of freedom are infinite and Student's factor for the effective ones otherwise (JCGM 100:2008,
     * G.6.4).
     *
     * @param budget a budget of this measure
     * @return a term with the symbol {@code U}
     */
    public Term expanded(Budget budget) {
        Require.given("budget", budget);
        return term(
                "U",
                "expanded uncertainty of " + meaning,
                budget.expanded(TWO_SIGMA).uncertainty());
    }

    /**
     * The expanded uncertainty of a budget in words.
     *
     * @param budget a budget of this measure
     * @param units inch or metric
     * @return number and unit
     */
    public String uncertainty(Budget budget, Units units) {
        Term term = expanded(budget);
        String unit = term.unit(units);
        return term.number(units, 0) + " " + (unit.isEmpty() ? kind.unit() : unit);
    }

    /**
     * A number of this kind as a term.
     *
     * @param symbol its symbol
     * @param meaning its meaning
     * @param number the number, in the unit of the kind
     * @return the term
     */
    public Term term(String symbol, String meaning, double number) {
        Require.that(Double.isFinite(number), "number", "must be finite", number);
        return kind.term(symbol, meaning, number);
    }
}
