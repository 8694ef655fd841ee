package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * What things are worth on one club, in points of swing weight. Nothing here is a rule of thumb: each number follows from the balance
 * of this club, so a gram at the head of a long club is worth more than one at the head of a short one.
 *
 * <pre>
 *   a gram at x:                1 g (x - F) / K
 *   a millimetre of centre:     m_head 1 mm / K
 *   a length more or less:      (M with the other butt cut - M) / K
 * </pre>
 *
 * <pre>{@code
 * Worth worth = Worth.of(Samples.build(), SwingWeightScale.LETTERS_AT_14_INCHES);
 * Math.round(100 * worth.gramAt(Length.parse("14 in")));   // = 0
 * worth.gramAtHead() > 0;                                  // = true
 * worth.gramAtGrip() < 0;                                  // = true
 * }</pre>
 *
 * @param build the club, seated
 * @param scale the scale
 * @param balance of the club
 */
public record Worth(Build build, SwingWeightScale scale, Balance balance) {

    private static final Mass GRAM = Mass.ofGrams(1);

    private static final Length MILLIMETRE = Length.ofMillimetres(1);

    private static final Length EIGHTH = Length.ofInchFraction(0, 1, 8);

    private static final Length FARTHEST = Length.ofMillimetres(3000);

    private static final Source LEVER = Source.published("any text on mechanics", "moment of a weight");

    /**
     * Checks the values.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param balance of the club
     */
    public Worth {
        Require.given("build", build);
        Require.given("scale", scale);
        Require.given("balance", balance);
    }

    /**
     * What things are worth on a club.
     *
     * @param build the club, seated
     * @param scale the scale
     * @return what they are worth
     * @throws IllegalArgumentException if the club is not seated
     */
    public static Worth of(Build build, SwingWeightScale scale) {
        return new Worth(build, Require.given("scale", scale), Balance.of(build));
    }

    /**
     * A gram more at a place.
     *
     * @param fromTop the place, from the top of the grip; -3 m to 3 m
     * @return points, negative above the fulcrum
     */
    public double gramAt(Length fromTop) {
        Require.between("fromTop", fromTop, FARTHEST.negated(), FARTHEST);
        return GRAM.at(fromTop.minus(scale.fulcrum())).ratioTo(scale.perPoint());
    }

    /**
     * A gram more of head, its centre of mass where it is.
     *
     * @return points
     */
    public double gramAtHead() {
        return gramAt(centre("head"));
    }

    /**
     * A gram more of grip, its centre of mass where it is.
     *
     * @return points; below zero for every grip that ends above twice the fulcrum
     */
    public double gramAtGrip() {
        return gramAt(centre("grip"));
    }

    /**
     * A gram more of shaft as cut, spread as its mass is spread now.
     *
     * @return points
     */
    public double gramInShaft() {
        return gramAt(centre("shaft"));
    }

    /**
     * The centre of mass of the head a millimetre nearer to the ground.
     *
     * @return points
     */
    public double millimetreOfCentre() {
        return balance.part("head").mass().at(MILLIMETRE).ratioTo(scale.perPoint());
    }

    /**
     * An eighth of an inch cut off the butt, all else as it is. It is slightly less than a straight line through a longer cut says,
     * because the piece cut off is shaft above the fulcrum.
     *
     * @return points, below zero for any club whose head end outweighs that piece
     */
    public double eighthShorter() {
        return longer(EIGHTH.negated());
    }

    /**
     * Another cut at the butt, all else as it is.
     *
     * @param more how much longer the shaft is left, below zero if shorter; at most the butt trim, and more than the
     *     cut length taken away
     * @return points
     * @throws IllegalArgumentException if the shaft cannot be cut so
     */
    public double longer(Length more) {
        return with(more).minus(moment()).ratioTo(scale.perPoint());
    }

    /**
     * How the numbers come about.
     *
     * @return a line for each
     */
    public Working working() {
        return new Working(
                "What things are worth",
                List.of(
                        gram("pH", "points for a gram at the head", "head", gramAtHead()),
                        gram("pG", "points for a gram at the grip", "grip", gramAtGrip()),
                        gram("pS", "points for a gram in the shaft", "shaft", gramInShaft()),
                        new Working.Line(
                                Term.number("pC", "points for a millimetre of the head's centre", millimetreOfCentre()),
                                "m * d / (c * K)",
                                List.of(
                                        Term.of(
                                                "m",
                                                "mass of the head",
                                                balance.part("head").mass()),
                                        Term.fine("d", "a millimetre", MILLIMETRE),
                                        Term.momentFactor(),
                                        perPoint()),
                                LEVER),
                        new Working.Line(
                                Term.number("pL", "points for an eighth of an inch off the butt", eighthShorter()),
                                "(Ms - M) / K",
                                List.of(
                                        Term.of("Ms", "moment with the butt cut shorter", with(EIGHTH.negated())),
                                        Term.of("M", "moment about the fulcrum", moment()),
                                        perPoint()),
                                LEVER)));
    }

    private Working.Line gram(String symbol, String meaning, String part, double points) {
        return new Working.Line(
                Term.number(symbol, meaning, points),
                "m * (x - F) / (c * K)",
                List.of(
                        Term.of("m", "a gram", GRAM),
                        Term.fine("x", "centre of the " + part + " from the top", centre(part)),
                        Term.fine("F", "fulcrum from the top", scale.fulcrum()),
                        Term.momentFactor(),
                        perPoint()),
                LEVER);
    }

    private Term perPoint() {
        return Term.of("K", "moment of a point", scale.perPoint());
    }

    private Length centre(String label) {
        BalancePart part = balance.part(label);
        return part.moment().over(part.mass());
    }

    private FirstMoment moment() {
        return balance.momentAbout(scale.fulcrum());
    }

    private FirstMoment with(Length more) {
        Length trim = build.work().buttTrim();
        Require.that(
                Require.given("more", more).compareTo(trim) <= 0
                        && more.compareTo(build.cutLength().negated()) > 0,
                "more",
                "must be at most the butt trim " + trim + " and leave some of the " + build.cutLength(),
                more);
        Build other = build.withWork(build.work().withButtTrim(trim.minus(more)));
        return Balance.of(other).momentAbout(scale.fulcrum());
    }
}
