package dev.tipwright.swingweight.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of bringing a club to a wanted number: tenths of a point and of a gram, so that a counterexample can be read. */
class AimLawProperties {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;
    private static final Mass LEAST = Mass.ofGrams(0.1);
    private static final Mass MOST = Mass.ofGrams(10_000);

    private static SwingWeight now(Build build) {
        return Balance.of(build).on(SCALE);
    }

    /** A mass is rounded to the picogram, a billionth of which is no part of a point. */
    @Property(tries = 300)
    void aMassThatReachesItReadsIt(
            @ForAll long seed, @ForAll @IntRange(min = -100, max = 100) int tenths, @ForAll MassSolve.Where where) {
        Build build = new RandomClubs(seed).next();
        SwingWeight wanted = now(build).plus(tenths / 10.0);
        MassSolve solve = new MassSolve(build, SCALE, wanted, where, Length.ZERO, LEAST, MOST);
        if (solve.reached()) {
            assertThat(now(solve.after()).over(wanted)).isCloseTo(0, within(1e-9));
        } else {
            assertThat(solve.mass()).isIn(LEAST, MOST);
        }
    }

    @Property(tries = 300)
    void moreAtTheHeadIsWantedForMorePoints(
            @ForAll long seed,
            @ForAll @IntRange(min = -50, max = 50) int tenths,
            @ForAll @IntRange(min = 0, max = 50) int more) {
        Build build = new RandomClubs(seed).next();
        Mass less = head(build, tenths);
        assertThat(head(build, tenths + more)).isGreaterThanOrEqualTo(less);
    }

    private static Mass head(Build build, int tenths) {
        return MassSolve.ofHead(build, SCALE, now(build).plus(tenths / 10.0), LEAST, MOST)
                .mass();
    }

    /** A nanometre of a club of a kilogram is a hundred-thousandth of a point at most; the promise is a millionth. */
    @Property(tries = 100)
    void aCutThatReachesItReadsIt(@ForAll long seed, @ForAll @IntRange(min = -50, max = 0) int tenths) {
        Build build = new RandomClubs(seed).next();
        SwingWeight wanted = now(build).plus(tenths / 10.0);
        LengthSolve solve = LengthSolve.of(build, SCALE, wanted, Length.ofMillimetres(600));
        assertThat(solve.reached()).isTrue();
        assertThat(now(solve.after()).over(wanted)).isCloseTo(0, within(1e-6));
        assertThat(solve.cutLength()).isLessThanOrEqualTo(build.cutLength());
    }

    @Property(tries = 100)
    void anInertiaByHeadMassIsReached(@ForAll long seed, @ForAll @IntRange(min = -10, max = 10) int percent) {
        Build build = new RandomClubs(seed).next();
        Inertia wanted = Balance.of(build).inertiaAboutButt().scaledBy(1 + percent / 100.0);
        Inertia found = Balance.of(new InertiaSolve(build, wanted, 0).after()).inertiaAboutButt();
        assertThat(found.ratioTo(wanted)).isCloseTo(1, within(1e-12));
    }

    @Property(tries = 200)
    void oneMoreWeightInTheBoxNeverMissesByMore(
            @ForAll @Size(max = 4) List<@IntRange(min = 5, max = 120) Integer> stock,
            @ForAll @IntRange(min = 5, max = 120) int another,
            @ForAll @IntRange(min = 0, max = 80) int tenths,
            @ForAll @IntRange(min = 1, max = 2) int most) {
        List<Integer> more = new ArrayList<>(stock);
        more.add(another);
        // The library compares in billionths of a point.
        assertThat(missed(more, tenths, most)).isLessThanOrEqualTo(missed(stock, tenths, most) + 1e-9);
        assertThat(missed(stock, tenths, most)).isLessThanOrEqualTo(tenths / 10.0 + 1e-9);
    }

    private static double missed(List<Integer> stock, int tenths, int most) {
        Build build = Clubs.plain();
        SwingWeight wanted = now(build).plus(tenths / 10.0);
        List<TipWeight> weights = new ArrayList<>();
        for (int tenthsOfGram : stock) {
            weights.add(Clubs.weight(tenthsOfGram / 10.0).withLabel("weight " + weights.size()));
        }
        return Math.abs(
                StockChoice.of(build, SCALE, wanted, weights, most).reads().over(wanted));
    }

    @Property
    void aLongerClubWantsAFlatterLie(
            @ForAll @IntRange(min = 50, max = 70) int lie,
            @ForAll @IntRange(min = 800, max = 1200) int before,
            @ForAll @IntRange(min = 0, max = 100) int longer) {
        LieForLength change = LieForLength.of(
                Angle.ofDegrees(lie), Length.ofMillimetres(before), Length.ofMillimetres(before + longer));
        double bend = change.bend().orElseThrow().degrees();
        // The sine and its inverse, of angles under 90.
        assertThat(bend).isLessThanOrEqualTo(1e-12);
        double hands = (before + longer) * Math.sin(Math.toRadians(lie + bend));
        assertThat(hands).isCloseTo(before * Math.sin(Math.toRadians(lie)), within(1e-9));
    }
}
