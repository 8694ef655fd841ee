package dev.tipwright.core.flex;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.beam.EndBody;
import dev.tipwright.core.internal.beam.Mode;
import dev.tipwright.core.internal.root.Root;
import dev.tipwright.core.mass.RemovedMaterial;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The frequency of a club whose shaft is clamped at the butt, before the grip goes on: the slowest swing of the shaft between clamp and
 * hosel mouth, carrying the head, the inserted tip and what is fixed to either as one rigid body beyond it.
 *
 * <p>A slender beam of piecewise linear stiffness and line density (Euler and Bernoulli), swinging in the plane of the shaft and the
 * head's centre, solved to about 1e-9 of its own value. What the number is worth depends on the stiffness it is given: a shape alone is
 * a guess, one timed frequency calibrates it, and a second one shows whether the shape is right.
 *
 * <pre>{@code
 * ClubFrequency club = ClubFrequency.of(Samples.build(), Length.parse("5 in")).orElseThrow();
 * Math.round(club.frequency().perMinute());   // = 280
 * TrimEffect half = club.effectOf(Length.parse("1/2 in"));
 * half.offTip().compareTo(half.offButt()) > 0;   // = true
 * }</pre>
 *
 * @param build a seated club, the centre of mass of its head known
 * @param bend the stiffness of its raw shaft
 * @param clamp length held in the clamp, from the cut butt; zero or more, short of the hosel mouth
 */
public record ClubFrequency(Build build, ShaftBend bend, Length clamp) implements StepReport {

    /**
     * Checks the values.
     *
     * @param build a seated club, the centre of mass of its head known
     * @param bend the stiffness of its raw shaft
     * @param clamp length held in the clamp, from the cut butt; zero or more, short of the hosel mouth
     */
    public ClubFrequency {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().nanometres() > 0,
                "build",
                "must be seated",
                build.work().seat());
        Require.that(
                build.parts().head().mass().centre().known().isPresent(),
                "build",
                "must have a head whose centre of mass is known",
                build.parts().head().mass().centre());
        Require.given("bend", bend).requireFit("build", build.parts().shaft());
        Require.notNegative("clamp", clamp);
        Require.that(
                clamp.lessThan(aboveMouth(build)),
                "clamp",
                "must leave some of the shaft above the hosel mouth",
                clamp);
    }

    /** Shaft from the hosel mouth to the cut butt. */
    static Length aboveMouth(Build build) {
        return build.cutLength().minus(build.work().seat().insertion());
    }

    /**
     * The frequency of a club, if the stiffness of its shaft and the centre of its head are known.
     *
     * @param build a seated club
     * @param clamp length held in the clamp, from the cut butt; zero or more, short of the hosel mouth
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
        return Frequency.ofHertz(mode().frequencyHz());
    }

    /**
     * The part of the shaft that bends, {@code S - i - c}.
     *
     * @return from the clamp to the hosel mouth
     */
    public Length beam() {
        return aboveMouth(build).minus(clamp);
    }

    private Mode mode() {
        Length mouth = build.work().tipTrim().plus(build.work().seat().insertion());
        EndBody body = HeadEnd.of(build).body();
        return bend.slowest(build.parts().shaft(), mouth, mouth.plus(beam()), body);
    }

    /**
     * The same club with more or less cut off its tip, its cut length kept: what is not cut off the tip comes off the butt.
     *
     * @param tipTrim the other tip trim; from zero to tip trim and butt trim together
     * @return the frequency's inputs of that club
     */
    public ClubFrequency withTipTrim(Length tipTrim) {
        Length both = build.work().tipTrim().plus(build.work().buttTrim());
        Require.between("tipTrim", tipTrim, Length.ZERO, both);
        return new ClubFrequency(
                build.withWork(build.work().withTipTrim(tipTrim).withButtTrim(both.minus(tipTrim))), bend, clamp);
    }

    /**
     * The tip trim that gives a wanted frequency at the same cut length. On a shaft that grows stiffer from tip to butt the frequency
     * rises with the trim, and there is one such trim or none.
     *
     * @param wanted cycles a minute
     * @return the trim, to a micrometre; empty if the wanted frequency does not lie between that of no tip trim and that of all the
     *     trim at the tip
     */
    public Optional<Length> tipTrimFor(Frequency wanted) {
        Require.given("wanted", wanted);
        Length most = build.work().tipTrim().plus(build.work().buttTrim());
        double none = over(Length.ZERO, wanted);
        double all = over(most, wanted);
        if (Math.signum(none) * Math.signum(all) > 0 || most.equals(Length.ZERO)) {
            return Optional.empty();
        }
        Root root = Root.between(mm -> over(Length.ofMillimetres(mm), wanted), 0, most.millimetres(), 1e-4);
        return Optional.of(Length.ofMillimetres(root.x()));
    }

    private double over(Length tipTrim, Frequency wanted) {
        return withTipTrim(tipTrim).frequency().perMinute() - wanted.perMinute();
    }

    /**
     * What a cut does to the frequency, off the tip or off the butt.
     *
     * @param cut how much would come off; above zero, leaving some shaft to bend
     * @return the three cuts side by side
     */
    public TrimEffect effectOf(Length cut) {
        return new TrimEffect(this, cut);
    }

    @Override
    public List<Term> headline() {
        return List.of(Term.of("f", "frequency without grip", frequency()));
    }

    /**
     * The frequency as it comes out of parts and cuts, where a timing calibrates the stiffness. How far the shape of the stiffness is
     * off, and how much clamp and hosel give, is not in its budget. Without a timing there is none: nobody knows how far a shape alone
     * is off.
     *
     * @return the measure, or none
     */
    @Override
    public List<Measure> measures() {
        return timed()
                ? List.of(Measure.frequency(
                        "f", "frequency without grip", other -> again(other).frequency()))
                : List.of();
    }

    /**
     * The tip trim that gives a wanted frequency, so that it can have a budget: how far it may be off for what was measured.
     *
     * @param wanted cycles a minute
     * @return the measure; it has no value, and so no budget, for a club that cannot be trimmed to that frequency
     */
    public Measure tipTrimMeasure(Frequency wanted) {
        Require.given("wanted", wanted);
        return Measure.length(
                "T",
                "tip trim for " + wanted,
                other -> again(other)
                        .tipTrimFor(wanted)
                        .orElseThrow(() -> Require.broken("wanted", "must be within reach of a tip trim", wanted)));
    }

    private boolean timed() {
        return build.parts()
                .shaft()
                .flex()
                .known()
                .filter(flex -> !flex.measured().isEmpty())
                .isPresent();
    }

    /** This club with other parts or work. A stiffness that follows from the shaft does so again; one that was given stays. */
    ClubFrequency again(Build other) {
        boolean follows = ShaftBend.of(build.parts().shaft()).equals(Optional.of(bend));
        ShaftBend given = bend.reaching(other.parts().shaft().length());
        ShaftBend theirs = follows ? ShaftBend.of(other.parts().shaft()).orElse(given) : given;
        return new ClubFrequency(other, theirs, clamp);
    }

    @Override
    public Working working() {
        Mode mode = mode();
        EndBody body = HeadEnd.of(build).body();
        Term beam = Term.of("l", "shaft from clamp to hosel mouth", beam());
        Term end = Term.of("m_e", "mass beyond the mouth", Mass.ofGrams(body.massKg() * 1000));
        return new Working(
                "Frequency",
                List.of(
                        new Working.Line(
                                beam,
                                "S - i - c",
                                List.of(
                                        Term.of("S", "cut length", build.cutLength()),
                                        Term.of(
                                                "i",
                                                "insertion",
                                                build.work().seat().insertion()),
                                        Term.of("c", "length in the clamp", clamp)),
                                Source.assumption("the inserted part is rigid, the clamp does not give")),
                        new Working.Line(
                                end,
                                "m_h + m_t - m_r + m_a",
                                masses(),
                                Source.assumption("one rigid body at the mouth")),
                        new Working.Line(
                                Term.of("f", "frequency", Frequency.ofHertz(mode.frequencyHz())),
                                "slowest f for which a w exists: (EI w'')'' = (2 pi f)^2 mu w, clamped at 0, body at l",
                                List.of(
                                        beam,
                                        end,
                                        Term.of(
                                                "o",
                                                "its centre beyond the mouth",
                                                Length.ofMillimetres(body.offsetM() * 1000)),
                                        Term.of(
                                                "J",
                                                "its inertia about its centre",
                                                Inertia.ofKilogramSquareCentimetres(body.inertiaKgM2() * 1e4)),
                                        Term.number("scale", "stiffness scaled to the timing by", bend.scale()),
                                        Term.number("residual", "part of w not reproduced", mode.residual()),
                                        Term.count("bends", "times the beam was bent", mode.iterations())),
                                Source.published(
                                        "Blevins, Formulas for Natural Frequency and Mode Shape", "chapter 8"))));
    }

    private List<Term> masses() {
        return List.of(
                Term.of("m_h", "head", build.parts().head().mass().mass()),
                Term.of("m_t", "inserted tip", HeadEnd.inserted(build).mass()),
                Term.of("m_r", "taken off the tip", RemovedMaterial.of(build).mass()),
                Term.of("m_a", "fixed at the head end", HeadEnd.attached(build)));
    }

    @Override
    public List<Operation> operations() {
        return List.of(Operation.of(
                BenchStage.BUTT_CUT,
                FlexInstruction.TIME_CLUB,
                Term.of("c", "length in the clamp", clamp),
                Term.of("f", "frequency", frequency())));
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> assumptions = new ArrayList<>();
        HeadMass head = build.parts().head().mass();
        assumptions.addAll(Assumption.of(
                head.centre(), centre -> Term.of("along", "head centre beyond the hosel mouth", centre.along())));
        assumptions.addAll(Assumption.of(
                head.inertiaOrNone(), inertia -> Term.of("J_h", "inertia of the head about its own centre", inertia)));
        Shaft shaft = build.parts().shaft();
        assumptions.addAll(Assumption.of(
                shaft.flex(),
                flex -> Term.count(
                        "n", "frequencies timed on the shaft", flex.measured().size())));
        shaft.flex()
                .known()
                .ifPresent(flex -> assumptions.addAll(Assumption.of(
                        flex.shape(),
                        shape -> Term.of(
                                "EI_0",
                                "stiffness at the raw tip",
                                bend.knots().get(0).stiffness()))));
        return assumptions;
    }
}
