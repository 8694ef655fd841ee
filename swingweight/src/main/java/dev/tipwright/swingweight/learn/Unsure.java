package dev.tipwright.swingweight.learn;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.UncertainClub;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What makes a reading unsure, in two parts: where the head's centre of mass lies along the axis, whether its tool is wrong anew each time or
 * always alike, and everything else. What a tool has wrong alike in the centre and in something else is in both, as if it were two errors.
 *
 * @param centre standard uncertainty of the centre
 * @param rest standard uncertainty of the reading of a club whose centre is known, points
 */
record Unsure(Length centre, double rest) {

    private static final Length MILLIMETRE = Length.ofMillimetres(1);

    /** What a millimetre of the centre is worth, points. */
    static double perMillimetre(Build build, SwingWeightScale scale) {
        return build.parts().head().mass().mass().at(MILLIMETRE).ratioTo(scale.perPoint());
    }

    /** Empty where the club, or one a step of an input away from it, cannot be built. */
    static Optional<Unsure> of(
            Build build, SwingWeightScale scale, ToDoubleFunction<Build> points, BenchUncertainty bench) {
        Head head = build.parts().head();
        Length planned = head.mass().centre().orElse(HeadCentreRule.of(head)).along();
        double perMm = perMillimetre(build, scale);
        Measure centre = new Measure("c", "centre of mass", Measure.Kind.LENGTH, club -> further(club, planned));
        Measure rest = new Measure(
                "rest",
                "everything else",
                Measure.Kind.POINTS,
                club -> points.applyAsDouble(club) - perMm * further(club, planned));
        UncertainClub club = UncertainClub.of(build, bench);
        return club.budget(centre)
                .flatMap(known -> club.budget(rest)
                        .map(others -> new Unsure(
                                Length.ofMillimetres(known.standardUncertainty()), others.standardUncertainty())));
    }

    /** How much further down than planned the centre of a head lies, mm; one that is not known lies as planned. */
    private static double further(Build club, Length planned) {
        return club.parts()
                .head()
                .mass()
                .centre()
                .known()
                .map(HeadCentre::along)
                .orElse(planned)
                .minus(planned)
                .millimetres();
    }
}
