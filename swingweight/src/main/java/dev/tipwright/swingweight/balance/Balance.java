package dev.tipwright.swingweight.balance;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * The balance of a whole club: every part with its mass and place. Total mass, balance point, moment about a fulcrum
 * and inertia are sums over the parts.
 *
 * <pre>{@code
 * Balance balance = new Balance(List.of(
 *         BalancePart.at("head", Mass.parse("10 oz"), Length.parse("34 in")),
 *         BalancePart.at("grip", Mass.parse("5 oz"), Length.parse("17 1/2 in"))));
 * balance.total().ounces();                                         // = 15.0
 * balance.balancePoint().inches();                                  // = 28.5
 * balance.momentAbout(Length.parse("12 in")).ounceInches();         // = 247.5
 * }</pre>
 *
 * @param parts one or more
 */
public record Balance(List<BalancePart> parts) {

    /**
     * Checks the values.
     *
     * @param parts one or more
     */
    public Balance {
        parts = Require.someOf("parts", parts);
    }

    /**
     * The balance of a seated build: grip, shaft as cut, head, what was taken off the tip, and everything attached. A head whose
     * centre of mass is not known is taken to have it near the ground, see {@link dev.tipwright.core.part.HeadCentreRule}.
     *
     * @param build parts and work
     * @return the balance
     * @throws IllegalArgumentException if the tip is not seated, or the work on it reaches further up than its outside
     *     was read
     */
    public static Balance of(Build build) {
        Require.given("build", build);
        PartList parts = new PartList(build.work().attached().size());
        ClubParts.of(build, parts);
        return new Balance(parts.list());
    }

    /**
     * The moment of a seated build about a fulcrum: what {@code of(build).momentAbout(fulcrum)} gives, to the bit, without a list of
     * the parts. For searches and trials that need nothing else, it takes less than half the time.
     *
     * @param build parts and work
     * @param fulcrum distance of the fulcrum from the top of the grip ({@code F})
     * @return positive where the head goes down
     * @throws IllegalArgumentException if the tip is not seated, or the work on it reaches further up than its outside
     *     was read
     */
    public static FirstMoment momentAbout(Build build, Length fulcrum) {
        Require.given("fulcrum", fulcrum);
        MomentSum sum = new MomentSum();
        ClubParts.of(build, sum);
        return sum.about(fulcrum);
    }

    /**
     * The mass of the club.
     *
     * @return the sum over the parts
     * @throws ArithmeticException if it is out of range
     */
    public Mass total() {
        long picograms = 0;
        for (BalancePart part : parts) {
            picograms = Math.addExact(picograms, part.mass().picograms());
        }
        return Mass.ofPicograms(picograms);
    }

    /**
     * First moment about the top of the grip.
     *
     * @return the sum over the parts
     * @throws ArithmeticException if it is out of range
     */
    public FirstMoment moment() {
        double gramMillimetres = 0;
        for (BalancePart part : parts) {
            gramMillimetres += part.moment().gramMillimetres();
        }
        if (!Double.isFinite(gramMillimetres)) {
            throw new ArithmeticException("parts have a moment that is out of range together, " + gramMillimetres);
        }
        return FirstMoment.ofGramMillimetres(gramMillimetres);
    }

    /**
     * First moment about a fulcrum, {@code M = sum of m (x - F)}: what a swing weight scale weighs.
     *
     * @param fulcrum distance of the fulcrum from the top of the grip ({@code F})
     * @return positive where the head goes down
     */
    public FirstMoment momentAbout(Length fulcrum) {
        Require.given("fulcrum", fulcrum);
        return moment().minus(total().at(fulcrum));
    }

    /**
     * What a swing weight scale reads: {@code P = (M - M0) / K}, with the moment about its fulcrum.
     *
     * @param scale the scale
     * @return the reading
     */
    public SwingWeight on(SwingWeightScale scale) {
        Require.given("scale", scale);
        return scale.read(momentAbout(scale.fulcrum()));
    }

    /**
     * Where the club balances.
     *
     * @return distance from the top of the grip, rounded to the nanometre
     * @throws IllegalArgumentException if the parts weigh nothing together
     */
    public Length balancePoint() {
        return moment().over(total());
    }

    /**
     * Inertia about the butt, that is about the top of the grip ({@code J}).
     *
     * @return the sum over the parts
     * @throws ArithmeticException if it is out of range
     */
    public Inertia inertiaAboutButt() {
        Inertia sum = Inertia.ZERO;
        for (BalancePart part : parts) {
            sum = sum.plus(part.inertia());
        }
        return sum;
    }

    /**
     * The part of a label.
     *
     * @param label what it is
     * @return the first part of that label
     * @throws IllegalArgumentException if there is none
     */
    public BalancePart part(String label) {
        Require.given("label", label);
        for (BalancePart part : parts) {
            if (part.label().equals(label)) {
                return part;
            }
        }
        throw new IllegalArgumentException("label must be one of the parts "
                + parts.stream().map(BalancePart::label).toList() + ", was \"" + label + "\"");
    }

    /**
     * This balance with a part more.
     *
     * @param part what is added
     * @return a copy with it at the end
     */
    public Balance plus(BalancePart part) {
        Require.given("part", part);
        BalancePart[] more = parts.toArray(new BalancePart[parts.size() + 1]);
        more[parts.size()] = part;
        return new Balance(List.of(more));
    }
}
