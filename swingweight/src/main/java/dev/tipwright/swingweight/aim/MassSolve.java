package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import java.util.Optional;

/**
 * The mass, in one place of a club and within bounds, that brings it to a wanted swing weight: {@code m = m0 + (M_wanted - M) / (x - F)},
 * where {@code m0} is what is there already. Rounded to the picogram, which is far below a millionth of a point.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * Build build = Samples.build();
 * MassSolve solve = MassSolve.ofCounterweight(build, scale, scale.parse("C0"), Length.parse("1 in"), Mass.ofGrams(100));
 * scale.designation(solve.reads());   // = C0.0
 * }</pre>
 *
 * @param build the club, seated
 * @param scale the scale
 * @param wanted what it is to read
 * @param where what the mass is the mass of
 * @param place of a counterweight from the top of the grip, of a tip weight above the end of the tip, within 3 m; of head
 *     and grip their own centre counts, and this is zero
 * @param least the least it may weigh; zero or more
 * @param most the most it may weigh; not below the least, at most 100 kg
 */
public record MassSolve(
        Build build, SwingWeightScale scale, SwingWeight wanted, Where where, Length place, Mass least, Mass most)
        implements StepReport {

    private static final Length FARTHEST = Length.ofMillimetres(3000);

    /** Heavier than this no part of a club is. */
    private static final Mass HEAVIEST = Mass.ofGrams(100_000);

    /** What the mass is the mass of. */
    public enum Where {
        /** The head, its centre of mass staying where it is. */
        HEAD("head mass"),
        /** Something added in the tip. */
        TIP("tip weight"),
        /** Something added in the butt. */
        BUTT("counterweight"),
        /** The grip, its centre of mass staying where it is. */
        GRIP("grip mass");

        private final String words;

        Where(String words) {
            this.words = words;
        }
    }

    /**
     * Checks the values.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param where what the mass is the mass of
     * @param place of a counterweight from the top of the grip, of a tip weight above the end of the tip, within 3 m; of
     *     head and grip their own centre counts, and this is zero
     * @param least the least it may weigh; zero or more
     * @param most the most it may weigh; not below the least, at most 100 kg
     */
    public MassSolve {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("scale", scale);
        Require.given("wanted", wanted);
        Require.given("where", where);
        Require.between("place", place, FARTHEST.negated(), FARTHEST);
        boolean added = where == Where.TIP || where == Where.BUTT;
        Require.that(added || place.equals(Length.ZERO), "place", "must be zero for " + where.words, place);
        Require.that(where != Where.BUTT || !place.lessThan(Length.ZERO), "place", "must not be above the grip", place);
        Require.between("least", least, added ? Mass.ZERO : Mass.ofPicograms(1), HEAVIEST);
        Require.between("most", most, least, HEAVIEST);
    }

    /**
     * For the mass of the head, its centre of mass staying where it is.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param least the lightest head there may be; above zero
     * @param most the heaviest
     * @return the question and its answer
     */
    public static MassSolve ofHead(Build build, SwingWeightScale scale, SwingWeight wanted, Mass least, Mass most) {
        return new MassSolve(build, scale, wanted, Where.HEAD, Length.ZERO, least, most);
    }

    /**
     * For the mass of the grip, its centre of mass staying where it is.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param least the lightest grip there may be; above zero
     * @param most the heaviest
     * @return the question and its answer
     */
    public static MassSolve ofGrip(Build build, SwingWeightScale scale, SwingWeight wanted, Mass least, Mass most) {
        return new MassSolve(build, scale, wanted, Where.GRIP, Length.ZERO, least, most);
    }

    /**
     * For a weight in the tip.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param place its centre of mass above the end of the tip
     * @param most the heaviest there may be
     * @return the question and its answer
     */
    public static MassSolve ofTipWeight(
            Build build, SwingWeightScale scale, SwingWeight wanted, Length place, Mass most) {
        return new MassSolve(build, scale, wanted, Where.TIP, place, Mass.ZERO, most);
    }

    /**
     * For a counterweight in the butt.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param place how deep its centre of mass lies from the top of the grip; zero or more
     * @param most the heaviest there may be
     * @return the question and its answer
     */
    public static MassSolve ofCounterweight(
            Build build, SwingWeightScale scale, SwingWeight wanted, Length place, Mass most) {
        return new MassSolve(build, scale, wanted, Where.BUTT, place, Mass.ZERO, most);
    }

    /**
     * The mass that gives the target exactly, whatever the bounds.
     *
     * @return the mass, below zero if it would have to be taken off; empty within a millimetre of the fulcrum
     * @throws ArithmeticException if no mass is that great
     */
    public Optional<Mass> exact() {
        return exact(build);
    }

    private Optional<Mass> exact(Build club) {
        Balance balance = Balance.of(club);
        return MassForTarget.at(balance, scale, wanted, fromTop(club, balance)).map(present(club)::plus);
    }

    /**
     * Whether the target can be had within the bounds.
     *
     * @return true if the exact mass is neither less than the least nor more than the most
     */
    public boolean reached() {
        return exact().filter(mass -> mass.equals(bounded(mass))).isPresent();
    }

    /**
     * The mass within the bounds that comes nearest to the target.
     *
     * @return the exact mass or the bound next to it; at the fulcrum, what is there already, brought within the bounds
     */
    public Mass mass() {
        return bounded(exact().orElse(present(build)));
    }

    private Mass bounded(Mass mass) {
        return mass.max(least).min(most);
    }

    /**
     * What the scale reads with that mass.
     *
     * @return the reading
     */
    public SwingWeight reads() {
        return scale.read(Balance.of(after()).momentAbout(scale.fulcrum()));
    }

    /**
     * The club with that mass.
     *
     * @return parts with another head or grip, or work with something added; as it was if nothing is to be added
     */
    public Build after() {
        Mass mass = mass();
        return switch (where) {
            case HEAD ->
                build.withParts(build.parts()
                        .withHead(build.parts()
                                .head()
                                .withMass(build.parts().head().mass().withMass(mass))));
            case GRIP ->
                build.withParts(build.parts().withGrip(build.parts().grip().withMass(mass)));
            case TIP ->
                mass.equals(Mass.ZERO)
                        ? build
                        : build.withWork(
                                build.work().plus(new OtherMass(where.words, mass, new Place(Anchor.TIP_END, place))));
            case BUTT ->
                mass.equals(Mass.ZERO)
                        ? build
                        : build.withWork(build.work().plus(new Counterweight(where.words, mass, place)));
        };
    }

    /**
     * What came of it.
     *
     * @return a note if the target is reached, a caution if it is not
     */
    public Finding finding() {
        Term what = Term.of("what", "what is changed", where.words);
        Optional<Mass> exact = exact();
        if (exact.isEmpty()) {
            return Finding.caution(
                    AimCode.AT_FULCRUM,
                    what,
                    Term.of("x", "its place from the top", fromTop(build, Balance.of(build))));
        }
        Term value = Term.of("value", "the mass", exact.get());
        Term reads = Term.of("reads", "swing weight", scale.designation(reads()));
        return reached()
                ? Finding.note(AimCode.REACHED, what, value, reads)
                : Finding.caution(
                        AimCode.OUT_OF_BOUNDS,
                        what,
                        value,
                        Term.of("least", "least", least),
                        Term.of("most", "most", most),
                        reads);
    }

    private Mass present(Build club) {
        return switch (where) {
            case HEAD -> club.parts().head().mass().mass();
            case GRIP -> club.parts().grip().mass();
            case TIP, BUTT -> Mass.ZERO;
        };
    }

    private Length fromTop(Build club, Balance balance) {
        return switch (where) {
            case HEAD -> centre(balance.part("head"));
            case GRIP -> centre(balance.part("grip"));
            case TIP -> club.tipFromTop().minus(place);
            case BUTT -> place;
        };
    }

    private static Length centre(BalancePart part) {
        return part.moment().over(part.mass());
    }

    @Override
    public List<Term> headline() {
        return List.of(Term.of("m", where.words, mass()), Term.of("reads", "swing weight", scale.designation(reads())));
    }

    /**
     * The exact mass, so that it can have a budget.
     *
     * @return one measure; none at the fulcrum
     */
    @Override
    public List<Measure> measures() {
        return exact().isEmpty()
                ? List.of()
                : List.of(new Measure(
                        "m",
                        where.words,
                        Measure.Kind.MASS,
                        club -> exact(club).orElse(Mass.ZERO).grams()));
    }

    @Override
    public Working working() {
        Balance balance = Balance.of(build);
        return new Working(
                "Mass for a target",
                exact().stream()
                        .map(mass -> new Working.Line(
                                Term.of("m", where.words, mass),
                                "m0 + (Mw - M) * c / (x - F)",
                                List.of(
                                        Term.of("m0", "what is there already", present(build)),
                                        Term.of("Mw", "moment that reads the target", scale.moment(wanted)),
                                        Term.of("M", "moment as it is", balance.momentAbout(scale.fulcrum())),
                                        Term.momentFactor(),
                                        Term.fine("x", "its place from the top", fromTop(build, balance)),
                                        Term.fine("F", "fulcrum from the top", scale.fulcrum())),
                                Source.published("any text on mechanics", "moment of a weight")))
                        .toList());
    }
}
