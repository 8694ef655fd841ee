package dev.tipwright.swingweight.learn;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * A swing weight as it was read, and the club as it lay on the scale. A dry build lies there without adhesive, its butt not cut yet, often
 * without its grip, but with whatever holds it together; then the scale's stop touches the butt of the shaft, and everything is
 * nearer to the fulcrum by the grip's cap. Adhesive that is not there yet must not be counted, nor a clamp that is there forgotten.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * ScaleReading dry = ScaleReading.dry(Samples.build(), List.of(), scale, scale.parse("E3.5"), 0.1);
 * dry.gripOn();                        // = false
 * dry.build().work().buttTrim();       // = 0 mm
 * }</pre>
 *
 * @param build the club as it lay on the scale, seated
 * @param gripOn whether it had its grip on
 * @param scale the scale
 * @param read what it read
 * @param uncertainty standard uncertainty of the reading, points; 0 to 100
 */
public record ScaleReading(Build build, boolean gripOn, SwingWeightScale scale, SwingWeight read, double uncertainty) {

    /**
     * Checks the values.
     *
     * @param build the club as it lay on the scale, seated
     * @param gripOn whether it had its grip on
     * @param scale the scale
     * @param read what it read
     * @param uncertainty standard uncertainty of the reading, points; 0 to 100
     */
    public ScaleReading {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("scale", scale);
        Require.given("read", read);
        Require.that(
                uncertainty >= 0 && uncertainty <= 100, "uncertainty", "must be from 0 to 100 points", uncertainty);
    }

    /**
     * A reading of the dry build of a planned club: seated as planned, butt not cut, no grip, and nothing on it but what is said.
     *
     * @param planned the club with all its work
     * @param on what is on it: tape, clamp, ferrule, tip weight; may be empty
     * @param scale the scale
     * @param read what it read
     * @param uncertainty standard uncertainty of the reading, points; 0 to 100
     * @return the reading
     */
    public static ScaleReading dry(
            Build planned, List<Attachment> on, SwingWeightScale scale, SwingWeight read, double uncertainty) {
        Require.given("planned", planned);
        Require.that(
                planned.work().seat().insertion().moreThan(Length.ZERO),
                "planned",
                "must be seated",
                planned.work().seat());
        Build dry = planned.withWork(planned.work().withButtTrim(Length.ZERO).withAttached(Require.list("on", on)));
        return new ScaleReading(dry, false, scale, read, uncertainty);
    }

    /**
     * A reading of the finished club.
     *
     * @param build the club with all its work
     * @param scale the scale
     * @param read what it read
     * @param uncertainty standard uncertainty of the reading, points; 0 to 100
     * @return the reading
     */
    public static ScaleReading finished(Build build, SwingWeightScale scale, SwingWeight read, double uncertainty) {
        return new ScaleReading(build, true, scale, read, uncertainty);
    }

    /**
     * What the scale should have read.
     *
     * @return the reading predicted from what is known of the club
     */
    public SwingWeight predicted() {
        return predicted(build);
    }

    private SwingWeight predicted(Build club) {
        Balance balance = Balance.of(club);
        if (gripOn) {
            return balance.on(scale);
        }
        Length fulcrum = scale.fulcrum().plus(club.parts().grip().cap());
        BalancePart grip = balance.part("grip");
        FirstMoment without = balance.momentAbout(fulcrum).minus(grip.about(fulcrum));
        return scale.read(without);
    }

    /**
     * How far the reading is over what was predicted.
     *
     * @return points, below zero if it is under
     */
    public double over() {
        return read.over(predicted());
    }

    /**
     * What was predicted, so that it can have a budget.
     *
     * @return the measure, in points
     */
    public Measure predictedMeasure() {
        return new Measure(
                "reads",
                "predicted reading",
                Measure.Kind.POINTS,
                club -> predicted(club).points());
    }

    /**
     * This reading with another club under it.
     *
     * @param build the club as it lay on the scale, seated
     * @return a copy that differs in that alone
     */
    public ScaleReading withBuild(Build build) {
        return new ScaleReading(build, gripOn, scale, read, uncertainty);
    }
}
