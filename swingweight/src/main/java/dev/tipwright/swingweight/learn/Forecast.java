package dev.tipwright.swingweight.learn;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Interval;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;

/**
 * What a club will read, and how sure that is: the uncertainty of its head's centre of mass, and everything else about it together.
 *
 * <pre>{@code
 * Forecast forecast = Forecast.of(Samples.build(), SwingWeightScale.LETTERS_AT_14_INCHES, Samples.bench());
 * Interval club = forecast.interval(0.95, 1);
 * Interval amongSix = forecast.interval(0.95, 6);
 * amongSix.width() > club.width();   // = true
 * }</pre>
 *
 * @param build the club as planned, seated
 * @param scale the scale
 * @param centre standard uncertainty of the head's centre of mass along the axis; 0 to 500 mm
 * @param rest standard uncertainty of everything else, points; 0 to 1000
 */
public record Forecast(Build build, SwingWeightScale scale, Length centre, double rest) {

    /**
     * Checks the values.
     *
     * @param build the club as planned, seated
     * @param scale the scale
     * @param centre standard uncertainty of the head's centre of mass along the axis; 0 to 500 mm
     * @param rest standard uncertainty of everything else, points; 0 to 1000
     */
    public Forecast {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("scale", scale);
        Require.within("centre", centre, 0, 500);
        Require.that(rest >= 0 && rest <= 1000, "rest", "must be from 0 to 1000 points", rest);
    }

    /**
     * A club on a bench, the centre of mass of its head as uncertain as the bench says.
     *
     * @param build the club as planned, seated
     * @param scale the scale
     * @param bench what it was measured and is made with
     * @return the forecast
     * @throws IllegalArgumentException if the club, or one a step of an input away from it, cannot be built
     */
    public static Forecast of(Build build, SwingWeightScale scale, BenchUncertainty bench) {
        Unsure unsure = unsure(build, scale, bench);
        return new Forecast(build, scale, unsure.centre(), unsure.rest());
    }

    /**
     * A club on a bench, the centre of mass of its head known better than the bench says.
     *
     * @param build the club as planned, seated
     * @param scale the scale
     * @param centre standard uncertainty of the head's centre of mass along the axis; 0 to 500 mm
     * @param bench what everything else was measured and is made with
     * @return the forecast
     * @throws IllegalArgumentException if the club, or one a step of an input away from it, cannot be built
     */
    public static Forecast of(Build build, SwingWeightScale scale, Length centre, BenchUncertainty bench) {
        return new Forecast(
                build,
                scale,
                Require.given("centre", centre),
                unsure(build, scale, bench).rest());
    }

    private static Unsure unsure(Build build, SwingWeightScale scale, BenchUncertainty bench) {
        Require.given("build", build);
        Require.given("scale", scale);
        return Unsure.of(build, scale, club -> Balance.of(club).on(scale).points(), Require.given("bench", bench))
                .orElseThrow(() -> Require.broken(
                        "build", "must be a seated club that can be built a little differently", build.label()));
    }

    /**
     * What the club will read.
     *
     * @return the reading
     */
    public SwingWeight reads() {
        return Balance.of(build).on(scale);
    }

    /**
     * How sure that is, and what makes it unsure.
     *
     * @return the budget, in points
     */
    public Budget budget() {
        double points = reads().points();
        double perMm = Unsure.perMillimetre(build, scale);
        return Budget.of(Measurand.of(
                "swing weight",
                "point",
                Inputs.of(
                        Input.ofStandard(Measure.HEAD_CENTRE, "mm", 0, centre.millimetres()),
                        Input.ofStandard("everything else", "point", 0, rest)),
                x -> points + x[0] * perMm + x[1]));
    }

    /**
     * Where the reading will lie.
     *
     * @param probability that this club, and all the others it is one of, lie in their intervals; 0.5 to below 1
     * @param clubs how many clubs that is to hold for at once, 1 to 1000: each interval leaves out its share of what is
     *     left of certainty (Bonferroni), so that all hold together at least so often
     * @return points
     */
    public Interval interval(double probability, int clubs) {
        Require.that(
                probability >= 0.5 && probability < 1, "probability", "must be at least 0.5 and below 1", probability);
        Require.that(clubs >= 1 && clubs <= 1000, "clubs", "must be from 1 to 1000", clubs);
        double half = budget().expanded(1 - (1 - probability) / clubs).uncertainty();
        double points = reads().points();
        return new Interval(probability, points - half, points + half);
    }
}
