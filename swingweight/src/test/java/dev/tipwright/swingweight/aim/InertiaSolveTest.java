package dev.tipwright.swingweight.aim;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.PrintedWorking;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.balance.Balance;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Pins down what brings a club to an inertia: by hand, and fed back on ten thousand clubs, to 1e-8 of it: a nanometre of a metre of length counts
 * twice, 2e-9, and a picogram of head less.
 */
class InertiaSolveTest {

    /**
     * Plain club, about the top: grip 2 x 4^2 = 32, shaft 3 x 36^2 / 3 = 1296, head 10 x 37^2 = 13690: 15018 oz in2. An ounce more of head adds
     * 37^2 = 1369.
     */
    @Test
    void byHeadMassByHand() {
        Build plain = Clubs.plain();
        assertThat(Balance.of(plain).inertiaAboutButt().ounceSquareInches()).isCloseTo(15_018, within(1e-6));
        InertiaSolve solve = new InertiaSolve(plain, Inertia.ofOunceSquareInches(15_018 + 1_369), 0);
        assertThat(solve.heavier().ounces()).isCloseTo(1, within(1e-9));
        assertThat(solve.longer()).isEqualTo(Length.ZERO);
        assertThat(solve.reached()).isTrue();
        PrintedWorking.isTrue(solve.working());
        assertThat(solve.headline()).hasSize(3);
    }

    /** An inch off: shaft 35 in of 3 x 35/36 oz: m L^2 / 3 = 3 x 35^3 / (36 x 3); head at 36 in: 12960. */
    @Test
    void byLengthByHand() {
        double then = 32 + 35 * 35 * 35 / 36.0 + 12_960;
        InertiaSolve solve = new InertiaSolve(Clubs.plain(), Inertia.ofOunceSquareInches(then), 1);
        assertThat(solve.longer().inches()).isCloseTo(-1, within(1e-6));
        assertThat(solve.heavier()).isEqualTo(Mass.ZERO);
        assertThat(solve.reached()).isTrue();
    }

    @Test
    void tenThousandClubsFedBack() {
        RandomClubs clubs = new RandomClubs(20_261_105);
        SplittableRandom random = new SplittableRandom(15);
        int reached = 0;
        for (int i = 0; i < 10_000; i++) {
            Build build = clubs.next();
            Inertia wanted = Balance.of(build).inertiaAboutButt().scaledBy(random.nextDouble(0.97, 1.03));
            double share = random.nextInt(3) / 2.0;
            InertiaSolve solve = new InertiaSolve(build, wanted, share);
            if (solve.reached()) {
                reached++;
                assertThat(Balance.of(solve.after()).inertiaAboutButt().ratioTo(wanted))
                        .as("club %d, %s by length", i, share)
                        .isCloseTo(1, within(1e-8));
            } else {
                assertThat(share)
                        .as("club %d: the head alone can always mend it", i)
                        .isEqualTo(1);
            }
        }
        assertThat(reached).isBetween(8_000, 9_999);
    }

    @Test
    void whatCannotBeHadIsNotReached() {
        assertThat(new InertiaSolve(Clubs.plain(), Inertia.ofOunceSquareInches(16_000), 1).reached())
                .isFalse();
        InertiaSolve tooLight = new InertiaSolve(Clubs.plain(), Inertia.ofOunceSquareInches(1_000), 0);
        assertThat(tooLight.reached()).isFalse();
        assertThat(tooLight.after().parts().head().mass().mass()).isEqualTo(Mass.ofPicograms(1));
    }

    @Test
    void hostileInputIsNamed() {
        Build plain = Clubs.plain();
        Inertia one = Inertia.ofOunceSquareInches(15_000);
        missing("build", () -> new InertiaSolve(null, one, 0));
        missing("wanted", () -> new InertiaSolve(plain, null, 0));
        refused("byLength must be from 0 to 1, was 1.1", () -> new InertiaSolve(plain, one, 1.1));
        refused("byLength must be from 0 to 1, was -0.1", () -> new InertiaSolve(plain, one, -0.1));
        refused("byLength must be from 0 to 1, was NaN", () -> new InertiaSolve(plain, one, Double.NaN));
        assertThatThrownBy(() -> new InertiaSolve(plain, Inertia.ZERO, 0))
                .hasMessageStartingWith("wanted must be from ");
        assertThatThrownBy(() -> new InertiaSolve(plain.withWork(Work.NONE), one, 0))
                .hasMessageStartingWith("build must be seated");
    }
}
