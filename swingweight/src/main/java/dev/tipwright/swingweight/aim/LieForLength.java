package dev.tipwright.swingweight.aim;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * What a change of length does to lie when the hands stay as high over the ground as they were, and how far the head would have to be
 * bent so that its sole lies flat again. The hands are at the top of the grip, {@code h = L sin(lie)} over the ground where the axis
 * meets it, so the lie that is wanted is {@code asin(h / L')}: a longer club wants a flatter one. How far a head may be bent is its
 * maker's word, and depends on its material; the caller says.
 *
 * <pre>{@code
 * LieForLength lie = LieForLength.of(Angle.ofDegrees(62), Length.parse("37 in"), Length.parse("37 1/2 in"));
 * Math.round(100 * lie.bend().orElseThrow().degrees());   // = -140
 * }</pre>
 *
 * @param lie of the head as it is; above 0, below 90 degrees
 * @param before playing length at which that lie suits; above zero, at most 3 m
 * @param after playing length after the change; above zero, at most 3 m
 * @param limit how far the head may be bent either way; zero to 20 degrees where known
 */
public record LieForLength(Angle lie, Length before, Length after, Reading<Angle> limit) implements StepReport {

    private static final Length LONGEST = Length.ofMillimetres(3000);

    private static final Source HANDS = Source.assumption("the top of the grip stays as high over the ground");

    /**
     * Checks the values.
     *
     * @param lie of the head as it is; above 0, below 90 degrees
     * @param before playing length at which that lie suits; above zero, at most 3 m
     * @param after playing length after the change; above zero, at most 3 m
     * @param limit how far the head may be bent either way; zero to 20 degrees where known
     */
    public LieForLength {
        Require.given("lie", lie);
        Require.that(lie.degrees() > 0 && lie.degrees() < 90, "lie", "must be above 0 and below 90 deg", lie);
        Require.between("before", before, Length.ofNanometres(1), LONGEST);
        Require.between("after", after, Length.ofNanometres(1), LONGEST);
        Require.given("limit", limit);
        limit.known().ifPresent(most -> Require.between("limit", most, Angle.ZERO, Angle.ofDegrees(20)));
    }

    /**
     * A change of length of a head whose limit is not known.
     *
     * @param lie of the head as it is; above 0, below 90 degrees
     * @param before playing length at which that lie suits
     * @param after playing length after the change
     * @return the question and its answer
     */
    public static LieForLength of(Angle lie, Length before, Length after) {
        return new LieForLength(lie, before, after, Reading.unknown("the head's maker, and say what it is made of"));
    }

    /**
     * How high the hands are over the ground.
     *
     * @return {@code L sin(lie)}
     */
    public Length hands() {
        return before.scaledBy(StrictMath.sin(lie.radians()));
    }

    /**
     * The lie that suits the new length at the same hands.
     *
     * @return {@code asin(L sin(lie) / L')}; empty if the club is too short for any
     */
    public Optional<Angle> suits() {
        double sine = before.ratioTo(after) * StrictMath.sin(lie.radians());
        return sine > 1 ? Optional.empty() : Optional.of(Angle.ofRadians(StrictMath.asin(sine)));
    }

    /**
     * How far the head would have to be bent; not bent, its sole stands off by as much, toe up on a longer club.
     *
     * @return wanted lie less lie, below zero is flatter; empty if the club is too short for any
     */
    public Optional<Angle> bend() {
        return suits().map(suits -> suits.minus(lie));
    }

    /**
     * What came of it.
     *
     * @return a note within the limit; a caution without a limit; a stop over it, or if the club is too short
     */
    public Finding finding() {
        if (bend().isEmpty()) {
            return Finding.stop(
                    AimCode.HANDS_TOO_HIGH,
                    Term.of("L", "playing length", after),
                    Term.of("h", "hands over the ground", hands()));
        }
        Angle angle = bend().get();
        Term bend = Term.of("bend", "bend, below zero is flatter", angle);
        if (limit instanceof Reading.Unknown<Angle> unknown) {
            return Finding.caution(AimCode.BEND_LIMIT_UNKNOWN, bend, Term.of("ask", "whom to ask", unknown.ask()));
        }
        Angle most = limit.orElse(Angle.ZERO);
        Term limited = Term.of("limit", "limit", most);
        return Math.abs(angle.degrees()) <= most.degrees()
                ? Finding.note(AimCode.BEND_WITHIN, bend, limited)
                : Finding.stop(AimCode.BEND_TOO_FAR, bend, limited);
    }

    @Override
    public Working working() {
        Term height = Term.fine("h", "hands over the ground", hands());
        Working.Line hands = new Working.Line(
                height, "L * SIN(lie)", List.of(Term.fine("L", "playing length before", before), asItIs()), HANDS);
        return new Working(
                "Lie for a length",
                suits().map(suits -> List.of(
                                hands,
                                new Working.Line(
                                        Term.of("bend", "bend, below zero is flatter", suits.minus(lie)),
                                        "ASIN(h / L2) - lie",
                                        List.of(height, Term.fine("L2", "playing length after", after), asItIs()),
                                        HANDS)))
                        .orElse(List.of(hands)));
    }

    private Term asItIs() {
        return Term.of("lie", "lie of the head", lie);
    }

    /**
     * This one with another limit.
     *
     * @param limit how far the head may be bent either way
     * @return a copy that differs in that alone
     */
    public LieForLength withLimit(Reading<Angle> limit) {
        return new LieForLength(lie, before, after, limit);
    }
}
