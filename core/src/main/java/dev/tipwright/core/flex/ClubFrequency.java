package dev.tipwright.core.flex;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.beam.EndBody;
import dev.tipwright.core.internal.root.Root;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import java.util.Optional;

/**
 * The frequency of a club whose shaft is clamped at the butt, before the grip goes on: the slowest swing of the shaft between clamp and
 * hosel mouth, carrying the head and the inserted tip as one rigid body beyond it.
 *
 * <p>A slender beam of piecewise linear stiffness and line density (Euler and Bernoulli), solved to about 1e-8 of its own value. What
 * the number is worth depends on the stiffness it is given: a shape alone is a guess, one timed frequency calibrates it, and a
 * second one shows whether the shape is right.
 *
 * @param build a seated club
 * @param bend the stiffness of its raw shaft
 * @param clamp length held in the clamp, from the cut butt
 */
public record ClubFrequency(Build build, ShaftBend bend, Length clamp) {

    /**
     * Checks the values.
     *
     * @param build a seated club
     * @param bend the stiffness of its raw shaft
     * @param clamp length held in the clamp, from the cut butt
     */
    public ClubFrequency {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().nanometres() > 0,
                "build",
                "must be seated",
                build.work().seat());
        Require.given("bend", bend);
        Require.notNegative("clamp", clamp);
        Require.that(
                clamp.lessThan(build.cutLength().minus(build.work().seat().insertion())),
                "clamp",
                "must leave some shaft above the hosel mouth",
                clamp);
    }

    /**
     * The frequency of a club, if the stiffness of its shaft and the centre of its head are known.
     *
     * @param build a seated club
     * @param clamp length held in the clamp, from the cut butt; shorter than the shaft above the hosel mouth
     * @return the frequency's inputs; empty if too little is known
     * @throws IllegalArgumentException if the tip is not seated or the clamp leaves no shaft
     */
    public static Optional<ClubFrequency> of(Build build, Length clamp) {
        Require.given("build", build);
        Require.given("clamp", clamp);
        boolean centre = build.parts().head().mass().centre().known().isPresent();
        return centre
                ? ShaftBend.of(build.parts().shaft()).map(bend -> new ClubFrequency(build, bend, clamp))
                : Optional.empty();
    }

    /**
     * How fast the club swings.
     *
     * @return cycles a minute
     */
    public Frequency frequency() {
        Length tip = build.work().tipTrim();
        Length mouth = tip.plus(build.work().seat().insertion());
        Length clamped = tip.plus(build.cutLength()).minus(clamp);
        return bend.frequency(build.parts().shaft(), mouth, clamped, body(tip, mouth));
    }

    /** Head and inserted tip about the hosel mouth: mass, centre and inertia of the two together. */
    private EndBody body(Length tip, Length mouth) {
        Head head = build.parts().head();
        HeadCentre centre = head.mass().centre().orElse(new HeadCentre(Length.ZERO, Length.ZERO));
        ShaftCut inserted = new ShaftCut(build.parts().shaft(), tip, mouth);
        double headMass = head.mass().mass().grams() / 1000;
        double along = centre.along().metres();
        double off = centre.off().metres();
        double own = head.mass().inertia().orElse(Inertia.ZERO).gramSquareMillimetres() * 1e-9;
        double tipMass = inserted.mass().grams() / 1000;
        double insertion = build.work().seat().insertion().metres();
        double tipMoment = tipMass * insertion - inserted.momentAboutTip().gramMillimetres() * 1e-6;
        double tipInertia = inserted.inertiaAboutTip().gramSquareMillimetres() * 1e-9
                + 2 * insertion * tipMoment
                - tipMass * insertion * insertion;
        double mass = headMass + tipMass;
        double offset = (headMass * along + tipMoment) / mass;
        double aboutMouth = own + headMass * (along * along + off * off) + tipInertia;
        return new EndBody(mass, Math.max(0, aboutMouth - mass * offset * offset), offset);
    }

    /**
     * The same club with more or less cut off its tip, its cut length kept: what is not cut off the tip comes off the butt.
     *
     * @param tipTrim the other tip trim; zero or more, leaving a butt trim of zero or more
     * @return the frequency's inputs of that club
     */
    public ClubFrequency withTipTrim(Length tipTrim) {
        Require.given("tipTrim", tipTrim);
        Length more = tipTrim.minus(build.work().tipTrim());
        Length buttTrim = build.work().buttTrim().minus(more);
        Require.that(
                tipTrim.nanometres() >= 0 && buttTrim.nanometres() >= 0,
                "tipTrim",
                "must be zero or more and leave the cut length",
                tipTrim);
        return new ClubFrequency(
                build.withWork(build.work().withTipTrim(tipTrim).withButtTrim(buttTrim)), bend, clamp);
    }

    /**
     * The tip trim that gives a wanted frequency at the same cut length.
     *
     * @param wanted cycles a minute; above zero
     * @return the trim, to about a micrometre; empty if no trim the shaft allows gives it
     */
    public Optional<Length> tipTrimFor(Frequency wanted) {
        Require.given("wanted", wanted);
        Length most = build.work().tipTrim().plus(build.work().buttTrim());
        double none = over(Length.ZERO, wanted);
        double all = over(most, wanted);
        if (none * all > 0 || most.equals(Length.ZERO)) {
            return Optional.empty();
        }
        Root root = Root.between(mm -> over(Length.ofMillimetres(mm), wanted), 0, most.millimetres(), 1e-4);
        return Optional.of(Length.ofMillimetres(root.x()));
    }

    private double over(Length tipTrim, Frequency wanted) {
        return withTipTrim(tipTrim).frequency().perMinute() - wanted.perMinute();
    }
}
