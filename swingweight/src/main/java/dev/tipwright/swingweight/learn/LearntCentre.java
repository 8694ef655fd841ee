package dev.tipwright.swingweight.learn;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import java.util.List;

/**
 * Where the centre of mass of a head lies, as one reading of the scale corrects what was known of it before.
 *
 * <p>The reading alone puts it {@code (P - P_predicted) K / m_head} further down. Everything else that is uncertain about the club and
 * the reading makes that uncertain by {@code u1}, and what was known before is uncertain by {@code u0}; the two are weighted by the
 * inverse of their variances, which leaves {@code u = u0 u1 / sqrt(u0^2 + u1^2)}, less than either (JCGM 100:2008 by way of any
 * text on least squares).
 *
 * <p>A centre more than three standard uncertainties from where it was taken to be is not plausible: something else is wrong. Three is
 * an assumption of this library, and so is that no head has its centre above its hosel mouth by more than an inch, nor below the ground by as
 * much.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * Build build = Samples.build();
 * SwingWeight half = Balance.of(build).on(scale).plus(0.5);
 * LearntCentre learnt = LearntCentre.of(ScaleReading.finished(build, scale, half, 0.05), Samples.bench());
 * learnt.centre().along().moreThan(learnt.before().along());   // = true
 * learnt.uncertainty().lessThan(learnt.uncertaintyBefore());   // = true
 * }</pre>
 *
 * @param reading the reading
 * @param uncertaintyBefore standard uncertainty of the centre before, along the axis ({@code u0}); 0 to 500 mm
 * @param uncertaintyOfReading standard uncertainty of where the reading alone puts it ({@code u1}); 0 to 500 mm
 */
public record LearntCentre(ScaleReading reading, Length uncertaintyBefore, Length uncertaintyOfReading)
        implements StepReport {

    private static final double FAR = 3;

    private static final Length MOST = Length.ofMillimetres(500);

    private static final Length OUTSIDE = Length.ofInches(1);

    private static final Source LEVER = Source.published("any text on mechanics", "moment of a weight");

    private static final Source WEIGHTED =
            Source.published("any text on least squares", "mean weighted by inverse variances");

    /**
     * Checks the values.
     *
     * @param reading the reading
     * @param uncertaintyBefore standard uncertainty of the centre before, along the axis ({@code u0}); 0 to 500 mm
     * @param uncertaintyOfReading standard uncertainty of where the reading alone puts it ({@code u1}); 0 to 500 mm
     */
    public LearntCentre {
        Require.given("reading", reading);
        Require.between("uncertaintyBefore", uncertaintyBefore, Length.ZERO, MOST);
        Require.between("uncertaintyOfReading", uncertaintyOfReading, Length.ZERO, MOST);
    }

    /**
     * What a reading says, on a bench whose uncertainties are known.
     *
     * @param reading the reading
     * @param bench what the club was measured and is made with; a centre that was not measured is as uncertain as {@link
     *     HeadCentreRule} says
     * @return the centre
     * @throws IllegalArgumentException if the club, or one a step of an input away from it, cannot be built
     */
    public static LearntCentre of(ScaleReading reading, BenchUncertainty bench) {
        Require.given("reading", reading);
        Unsure unsure = Unsure.of(
                        reading.build(),
                        reading.scale(),
                        reading.predictedMeasure().value(),
                        Require.given("bench", bench))
                .orElseThrow(() -> Require.broken(
                        "reading",
                        "must be of a club that can be built a little differently",
                        reading.build().label()));
        double points = StrictMath.hypot(unsure.rest(), reading.uncertainty());
        return new LearntCentre(
                reading,
                unsure.centre().min(MOST),
                Length.ofMillimetres(points * perPointMm(reading)).min(MOST));
    }

    private static double perPointMm(ScaleReading reading) {
        Mass head = reading.build().parts().head().mass().mass();
        return reading.scale().perPoint().gramMillimetres() / head.grams();
    }

    /**
     * The centre of mass as it was known before.
     *
     * @return as read, or as {@link HeadCentreRule} assumes it
     */
    public HeadCentre before() {
        Head head = reading.build().parts().head();
        return head.mass().centre().orElse(HeadCentreRule.of(head));
    }

    /**
     * Where the reading alone puts the centre.
     *
     * @return below the hosel mouth, along the axis
     */
    public Length byReading() {
        return before().along().plus(shift());
    }

    private Length shift() {
        return Length.ofMillimetres(reading.over() * perPointMm(reading));
    }

    /**
     * How far the reading is believed.
     *
     * @return {@code u0^2 / (u0^2 + u1^2)}; zero where the centre was known exactly
     */
    public double weight() {
        double u0 = uncertaintyBefore.millimetres();
        double u1 = uncertaintyOfReading.millimetres();
        return u0 == 0 ? 0 : u0 * u0 / (u0 * u0 + u1 * u1);
    }

    /**
     * The centre of mass as it is known now.
     *
     * @return before and by the reading, weighted; as it was before if the reading puts it outside the head
     */
    public HeadCentre centre() {
        return inHead() ? before().withAlong(before().along().plus(shift().scaledBy(weight()))) : before();
    }

    private boolean inHead() {
        Length lowest =
                reading.build().parts().head().geometry().mouthToGround().plus(OUTSIDE);
        return !byReading().lessThan(OUTSIDE.negated()) && !byReading().moreThan(lowest);
    }

    /**
     * Standard uncertainty of the centre now.
     *
     * @return along the axis, no more than before; as before if the reading puts it outside the head
     */
    public Length uncertainty() {
        return inHead() ? uncertaintyBefore.scaledBy(Math.sqrt(1 - weight())) : uncertaintyBefore;
    }

    /**
     * Whether the reading agrees with what was known.
     *
     * @return true if it puts the centre in the head, and no more than three standard uncertainties from before
     */
    public boolean plausible() {
        return inHead() && off() <= FAR;
    }

    /** How many standard uncertainties the reading is off what was known. */
    private double off() {
        double apart = shift().abs().millimetres();
        double u = StrictMath.hypot(uncertaintyBefore.millimetres(), uncertaintyOfReading.millimetres());
        return apart == 0 ? 0 : Math.min(1e6, apart / u);
    }

    /**
     * What came of it.
     *
     * @return a note if plausible, a caution if far off, a stop if it would lie outside the head
     */
    public Finding finding() {
        Term over = Term.number("off", "points over what was predicted", reading.over());
        Term by = Term.of("c", "centre below the hosel mouth by the reading", byReading());
        if (!inHead()) {
            return Finding.stop(LearnCode.NOT_A_HEAD, over, by);
        }
        if (!plausible()) {
            return Finding.caution(
                    LearnCode.FAR_FROM_ASSUMED, over, by, Term.number("n", "standard uncertainties", off()));
        }
        return Finding.note(
                LearnCode.CENTRE_LEARNT,
                over,
                Term.of("c", "centre below the hosel mouth", centre().along()),
                Term.of("c0", "centre before", before().along()),
                Term.fine("u", "standard uncertainty", uncertainty()),
                Term.fine("u0", "standard uncertainty before", uncertaintyBefore));
    }

    /**
     * The parts that were on the scale, the head's centre of mass corrected; plan again with these.
     *
     * @return the same parts, the centre as read
     */
    public Parts parts() {
        return corrected(reading.build().parts(), centre().along());
    }

    private static Parts corrected(Parts parts, Length along) {
        Head head = parts.head();
        HeadCentre before = head.mass().centre().orElse(HeadCentreRule.of(head));
        return parts.withHead(head.withMass(head.mass().withCentre(Reading.measured(before.withAlong(along)))));
    }

    /**
     * What is now to be expected of the clubs of a set. The head that was on the scale, known by its label, has its learnt centre; a head
     * whose centre was measured keeps it; all others are taken to have theirs at the same part of their hosel mouth to ground as the learnt one, as
     * heads of one set have, but for a scatter.
     *
     * @param set the clubs as planned, seated
     * @param scatter standard uncertainty of how far one head's centre lies off the rule of its set; 0 to 500 mm
     * @param bench what the clubs were measured and are made with
     * @return a forecast for each, in the order of the set
     */
    public List<Forecast> forecast(ClubSet set, Length scatter, BenchUncertainty bench) {
        Require.given("set", set);
        Require.between("scatter", scatter, Length.ZERO, MOST);
        Require.given("bench", bench);
        return set.builds().stream()
                .map(build -> forecast(build, scatter, bench))
                .toList();
    }

    private Forecast forecast(Build build, Length scatter, BenchUncertainty bench) {
        Head head = build.parts().head();
        Head known = reading.build().parts().head();
        if (head.label().equals(known.label())) {
            Build same = build.withParts(corrected(build.parts(), centre().along()));
            return Forecast.of(same, reading.scale(), uncertainty(), bench);
        }
        if (head.mass().centre() instanceof Reading.Measured) {
            return Forecast.of(build, reading.scale(), bench);
        }
        double ratio = head.geometry().mouthToGround().ratioTo(known.geometry().mouthToGround());
        Build alike = build.withParts(corrected(build.parts(), centre().along().scaledBy(ratio)));
        double u = StrictMath.hypot(uncertainty().millimetres() * ratio, scatter.millimetres());
        return Forecast.of(alike, reading.scale(), Length.ofMillimetres(u).min(MOST), bench);
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("c", "centre below the hosel mouth", centre().along()),
                Term.fine("u", "its standard uncertainty", uncertainty()));
    }

    @Override
    public Working working() {
        Term by = Term.fine("c1", "centre by the reading alone", byReading());
        Term before = Term.fine("c0", "centre before", before().along());
        Term u0 = Term.fine("u0", "standard uncertainty before", uncertaintyBefore);
        Term u1 = Term.fine("u1", "standard uncertainty by the reading alone", uncertaintyOfReading);
        Working.Line shift = new Working.Line(
                by,
                "c0 + (P - Pp) * K * c / m",
                List.of(
                        before,
                        Term.number("P", "points read", reading.read().points()),
                        Term.number(
                                "Pp", "points predicted", reading.predicted().points()),
                        Term.of("K", "moment of a point", reading.scale().perPoint()),
                        Term.momentFactor(),
                        Term.of(
                                "m",
                                "mass of the head",
                                reading.build().parts().head().mass().mass())),
                LEVER);
        if (weight() == 0 || !inHead()) {
            return new Working("Centre of mass from a scale reading", List.of(shift));
        }
        return new Working(
                "Centre of mass from a scale reading",
                List.of(
                        shift,
                        new Working.Line(
                                Term.fine("c2", "centre as it is known now", centre().along()),
                                "c0 + (c1 - c0) * u0^2 / (u0^2 + u1^2)",
                                List.of(before, by, u0, u1),
                                WEIGHTED),
                        new Working.Line(
                                Term.fine("u", "standard uncertainty now", uncertainty()),
                                "u0 * u1 / SQRT(u0^2 + u1^2)",
                                List.of(u0, u1),
                                WEIGHTED)));
    }
}
