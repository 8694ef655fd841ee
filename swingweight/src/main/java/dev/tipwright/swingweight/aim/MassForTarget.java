package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What mass brings a club to a swing weight, and which weight of a stock comes nearest; for two stacked in one tip see
 * {@link StockChoice}.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * Balance club = new Balance(List.of(
 *         BalancePart.at("grip", Mass.parse("2 oz"), Length.parse("4 in")),
 *         BalancePart.at("shaft", Mass.parse("3 oz"), Length.parse("18 in")),
 *         BalancePart.at("head", Mass.parse("10 oz"), Length.parse("37 in"))));
 * Mass more = MassForTarget.at(club, scale, scale.parse("E0"), Length.parse("37 in")).orElseThrow();
 * Math.round(1000 * more.ounces());   // = 391
 * }</pre>
 */
public final class MassForTarget {

    /** Nearer to the fulcrum than this no mass a club can carry changes a reading. */
    private static final Length SHORTEST_ARM = Length.ofMillimetres(1);

    private static final Length FARTHEST = Length.ofMillimetres(3000);

    /** The lighter first, then the first by label. */
    private static final Comparator<TipWeight> BY_MASS =
            Comparator.comparing(TipWeight::mass).thenComparing(TipWeight::label);

    private MassForTarget() {}

    /**
     * The mass that, added at a place, gives a wanted reading: {@code m = (M_wanted - M) / (x - F)}.
     *
     * @param balance of the club without it
     * @param scale the scale
     * @param wanted what it is to read
     * @param fromTop the place, from the top of the grip
     * @return the mass, below zero if it has to be taken off; empty within a millimetre of the fulcrum, where no mass
     *     worth the name changes the reading
     */
    public static Optional<Mass> at(Balance balance, SwingWeightScale scale, SwingWeight wanted, Length fromTop) {
        Require.given("balance", balance);
        Require.given("scale", scale);
        Require.given("wanted", wanted);
        Require.between("fromTop", fromTop, FARTHEST.negated(), FARTHEST);
        Length arm = fromTop.minus(scale.fulcrum());
        if (arm.abs().lessThan(SHORTEST_ARM)) {
            return Optional.empty();
        }
        FirstMoment missing = scale.moment(wanted).minus(balance.momentAbout(scale.fulcrum()));
        return Optional.of(missing.over(arm));
    }

    /**
     * The head mass that gives a wanted reading, its centre of mass where the present one's is.
     *
     * @param balance of the club
     * @param scale the scale
     * @param wanted what it is to read
     * @return the mass the head would have; empty if the centre of the head is within a millimetre of
     *     the fulcrum
     * @throws IllegalArgumentException if the balance has no part called {@code head}
     */
    public static Optional<Mass> ofHead(Balance balance, SwingWeightScale scale, SwingWeight wanted) {
        Require.given("balance", balance);
        BalancePart head = balance.part("head");
        return at(balance, scale, wanted, head.moment().over(head.mass())).map(head.mass()::plus);
    }

    /**
     * The tip weight of a stock that brings a club nearest to a wanted reading.
     *
     * @param build the club, seated, without a tip weight
     * @param scale the scale
     * @param wanted what it is to read
     * @param stock the weights there are
     * @return the nearest; empty if none is nearer than no weight at all. Of equals, to a billionth of a
     *     point, the lighter, then the first by label
     */
    public static Optional<TipWeight> fromStock(
            Build build, SwingWeightScale scale, SwingWeight wanted, List<TipWeight> stock) {
        Require.given("build", build);
        Require.given("scale", scale);
        return fromStock(build, Balance.momentAbout(build, scale.fulcrum()), scale, wanted, stock);
    }

    /**
     * The same where the moment of the club is known already.
     *
     * @param build the club, without a tip weight
     * @param moment its moment about the fulcrum of the scale
     * @param scale the scale
     * @param wanted what it is to read
     * @param stock the weights there are
     * @return the nearest; empty if none is nearer than no weight at all
     */
    public static Optional<TipWeight> fromStock(
            Build build, FirstMoment moment, SwingWeightScale scale, SwingWeight wanted, List<TipWeight> stock) {
        Require.given("build", build);
        Require.given("moment", moment);
        Require.given("scale", scale);
        Require.given("wanted", wanted);
        List<TipWeight> weights = Require.list("stock", stock);
        Length tip = build.tipFromTop();
        TipWeight nearest = null;
        double least = off(scale, wanted, moment);
        for (TipWeight weight : weights) {
            double off = offWith(weight, tip, moment, scale, wanted);
            int farther = Double.compare(off, least);
            if (farther < 0 || (farther == 0 && nearest != null && BY_MASS.compare(weight, nearest) < 0)) {
                nearest = weight;
                least = off;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private static double offWith(
            TipWeight weight, Length tip, FirstMoment without, SwingWeightScale scale, SwingWeight wanted) {
        Length arm = fromTop(tip, weight).minus(scale.fulcrum());
        return off(scale, wanted, without.plus(weight.mass().at(arm)));
    }

    /** Billionths of a point, whole, so that rounding does not decide between equals. */
    private static double off(SwingWeightScale scale, SwingWeight wanted, FirstMoment moment) {
        return Math.rint(Math.abs(scale.read(moment).over(wanted)) * 1e9);
    }

    /**
     * Where a tip weight would lie in a build.
     *
     * @param build the club
     * @param weight the weight
     * @return its centre of mass from the top of the grip
     */
    public static Length fromTop(Build build, TipWeight weight) {
        Require.given("build", build);
        return fromTop(build.tipFromTop(), Require.given("weight", weight));
    }

    private static Length fromTop(Length tip, TipWeight weight) {
        return tip.minus(weight.place().offset());
    }
}
