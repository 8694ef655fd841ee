package dev.tipwright.core.uncertainty;

import java.util.Objects;
import java.util.Optional;

/**
 * Whether a first-order budget is good enough, with the numbers it is judged by. Two questions are asked.
 *
 * <ul>
 *   <li>How much does the second order change the standard uncertainty ({@link SecondOrder#share()})? This sees
 *       curvature at the estimates and inputs that multiply each other.
 *   <li>How far does the model stray from its tangent when one input at a time moves through plus and minus two
 *       standard uncertainties, in steps of a quarter? This is the <em>bend</em>: the greatest stray over {@code 2 u},
 *       the half-width of the first-order interval, held to at most 1. It sees what differences about the estimates
 *       cannot: slopes that differ to either side, and jumps.
 * </ul>
 *
 * <p>Where an input bends too far, the largest second difference on its line is followed through eight halvings of the
 * step: it shrinks with the square of the step on a curve, with the step at a kink, and not at all at a jump. Inputs
 * are moved alone; correlations count in the second order only.
 *
 * @param verdict the worst that was found
 * @param tolerance the tolerance asked for
 * @param secondOrderShare the change of the standard uncertainty by the second order, from 0 to 1
 * @param bend the greatest stray from the tangent along the named input's line, over {@code 2 u}, from 0 to 1
 * @param worstInput the name of the input the verdict rests on or, failing that, of the one that bends most
 * @param slopeBelow the change of the output as that input rises from one standard uncertainty below its estimate to
 *     the estimate, in the unit of the output
 * @param slopeAbove the change as it rises from the estimate to one standard uncertainty above
 * @param jump the size of the jump on that line, in the unit of the output; 0 unless the verdict is {@link
 *     Linearity#JUMPS}
 */
public record LinearityCheck(
        Linearity verdict,
        double tolerance,
        double secondOrderShare,
        double bend,
        String worstInput,
        double slopeBelow,
        double slopeAbove,
        double jump) {

    /**
     * Checks each part.
     *
     * @param verdict the worst that was found
     * @param tolerance the tolerance, between 0 and 1
     * @param secondOrderShare the share of the second order, finite
     * @param bend the bend, finite
     * @param worstInput the name of an input
     * @param slopeBelow the change below the estimate, finite
     * @param slopeAbove the change above the estimate, finite
     * @param jump the jump, finite
     * @throws NullPointerException if the verdict or the name is null
     * @throws IllegalArgumentException if the tolerance is outside its range
     * @throws ArithmeticException if a number is not finite
     */
    public LinearityCheck {
        Objects.requireNonNull(verdict, "verdict");
        Check.share("tolerance", tolerance);
        Objects.requireNonNull(worstInput, "worstInput");
        secondOrderShare = Check.result("secondOrderShare", secondOrderShare);
        bend = Check.result("bend", bend);
        slopeBelow = Check.result("slopeBelow", slopeBelow);
        slopeAbove = Check.result("slopeAbove", slopeAbove);
        jump = Check.result("jump", jump);
    }

    /**
     * Checks a measurand.
     *
     * @param measurand the measurand
     * @param tolerance the share of the uncertainty that first order may be out by, between 0 and 1. Two figures of an
     *     uncertainty show changes of 0.005 to 0.05 of it (JCGM 101:2008, 7.9.2); 0.05 is a sensible choice
     * @return the verdict with its numbers
     * @throws NullPointerException if the measurand is null
     * @throws IllegalArgumentException if the tolerance is outside its range or the model gives a value that is not
     *     finite
     * @throws ArithmeticException if a result overflows
     */
    public static LinearityCheck of(Measurand measurand, double tolerance) {
        Objects.requireNonNull(measurand, "measurand");
        Check.share("tolerance", tolerance);
        FirstOrder first = FirstOrder.of(measurand);
        double share = SecondOrder.of(measurand).share();
        Line worst = worstLine(measurand, first, tolerance);
        boolean curved = worst.kind() == Linearity.STRAIGHT && share > tolerance;
        return new LinearityCheck(
                curved ? Linearity.CURVED : worst.kind(),
                tolerance,
                share,
                worst.bend(),
                worst.input().name(),
                worst.slopeBelow(),
                worst.slopeAbove(),
                worst.jump());
    }

    /**
     * A quick look for what {@link #of} finds out thoroughly: the model one and two standard uncertainties below and
     * above along each input, and as far along all of them together, each moved in proportion to what it contributes.
     * A model that is straight there but not between is taken for straight.
     *
     * @param measurand the measurand
     * @param tolerance how far it may stray from first order, as a share of what the model does within two standard
     *     uncertainties; from 0 to 1
     * @return the input along which the model strays most, the one that contributes most if it strays only when all
     *     move together; empty where it strays nowhere by more than the tolerance
     * @throws IllegalArgumentException if the tolerance is outside its range or the model gives a value that is not
     *     finite
     */
    public static Optional<String> straysWith(Measurand measurand, double tolerance) {
        Objects.requireNonNull(measurand, "measurand");
        Check.share("tolerance", tolerance);
        return new Screen(measurand).straysWith(tolerance);
    }

    private static Line worstLine(Measurand measurand, FirstOrder first, double tolerance) {
        Line worst = Line.along(measurand, first, 0, tolerance);
        for (int i = 1; i < measurand.inputs().size(); i++) {
            Line line = Line.along(measurand, first, i, tolerance);
            int severity = line.kind().compareTo(worst.kind());
            if (severity > 0 || (severity == 0 && line.bend() > worst.bend())) {
                worst = line;
            }
        }
        return worst;
    }
}
