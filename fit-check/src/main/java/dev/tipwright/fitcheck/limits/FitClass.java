package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * The class of a fit whose diameters carry tolerances, in the terms of ISO 286-1: the worst pairs decide. A negative clearance is an
 * interference.
 *
 * <pre>
 *   least clearance = least hole - greatest shaft        greatest clearance = greatest hole - least shaft
 * </pre>
 *
 * <pre>{@code
 * FitClass fit = FitClass.of(
 *         SizeLimits.of(Length.parse(".355 in"), Length.parse(".0002 in")),
 *         SizeLimits.of(Length.parse(".351 in"), Length.parse(".001 in")));
 * fit.kind();                               // = CLEARANCE
 * fit.leastClearance().thousandths();       // = 2.8
 * }</pre>
 *
 * @param leastClearance clearance of the tightest pair, on the diameter
 * @param greatestClearance clearance of the loosest pair, on the diameter
 */
public record FitClass(Length leastClearance, Length greatestClearance) {

    /** The class. */
    public enum Kind {
        /** Every pair clears or just touches. */
        CLEARANCE,
        /** Some pairs clear and some bind. */
        TRANSITION,
        /** Every pair binds or just touches. */
        INTERFERENCE
    }

    /**
     * Checks the values.
     *
     * @param leastClearance clearance of the tightest pair
     * @param greatestClearance clearance of the loosest pair
     */
    public FitClass {
        Require.given("leastClearance", leastClearance);
        Require.given("greatestClearance", greatestClearance);
        Require.atMost("leastClearance", leastClearance, "greatestClearance", greatestClearance);
    }

    /**
     * The class of a hole and a shaft.
     *
     * @param hole limits of the hole
     * @param shaft limits of the shaft
     * @return least and greatest clearance
     */
    public static FitClass of(SizeLimits hole, SizeLimits shaft) {
        Require.given("hole", hole);
        Require.given("shaft", shaft);
        return new FitClass(
                hole.least().minus(shaft.greatest()), hole.greatest().minus(shaft.least()));
    }

    /**
     * The class by its name.
     *
     * @return clearance if the tightest pair does not bind, else interference if the loosest does not clear, else transition
     */
    public Kind kind() {
        if (leastClearance.nanometres() >= 0) {
            return Kind.CLEARANCE;
        }
        return greatestClearance.nanometres() <= 0 ? Kind.INTERFERENCE : Kind.TRANSITION;
    }

    /**
     * How likely a pair taken at random binds, when the errors of hole and shaft are normal and independent:
     * {@code Phi(-c / sqrt(uh^2 + us^2))}.
     *
     * @param clearance mean clearance on the diameter ({@code c}); negative is interference
     * @param hole standard deviation of the hole ({@code uh}); zero or more
     * @param shaft standard deviation of the shaft ({@code us}); zero or more
     * @return probability, 0 to 1; without errors 1 for interference and 0 otherwise
     */
    public static double chanceOfInterference(Length clearance, Length hole, Length shaft) {
        Require.given("clearance", clearance);
        Require.notNegative("hole", hole);
        Require.notNegative("shaft", shaft);
        double spread = Math.sqrt(hole.millimetres() * hole.millimetres() + shaft.millimetres() * shaft.millimetres());
        if (spread <= 0) {
            return clearance.nanometres() < 0 ? 1 : 0;
        }
        return Normal.below(-clearance.millimetres() / spread);
    }

    /**
     * How the two clearances come about.
     *
     * @param hole limits of the hole
     * @param shaft limits of the shaft
     * @return a line for each of the two
     */
    public static Working working(SizeLimits hole, SizeLimits shaft) {
        FitClass fit = of(hole, shaft);
        Source iso = Source.published("ISO 286-1", "minimum and maximum clearance");
        return new Working(
                "Class of fit",
                List.of(
                        new Working.Line(
                                Term.fine("cmin", "least clearance", fit.leastClearance),
                                "Dmin - dmax",
                                List.of(
                                        Term.fine("Dmin", "least hole", hole.least()),
                                        Term.fine("dmax", "greatest shaft", shaft.greatest())),
                                iso),
                        new Working.Line(
                                Term.fine("cmax", "greatest clearance", fit.greatestClearance),
                                "Dmax - dmin",
                                List.of(
                                        Term.fine("Dmax", "greatest hole", hole.greatest()),
                                        Term.fine("dmin", "least shaft", shaft.least())),
                                iso)));
    }
}
