package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.MassForTarget;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins down two whole clubs of the practice set, tip work and small parts included. Source of the numbers: worked outside the
 * library, by numerical quadrature. Tolerance: half of the last digit given.
 */
class PracticeClubsTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    @Test
    void six() {
        check(Clubs.practiceSix(), .282, 78.06, 396.48, 29.139, -1.018, "C9.0");
    }

    @Test
    void eight() {
        check(Clubs.practiceEight(), .355, 76.34, 404.08, 28.635, -2.802, "C7.2");
    }

    private static void check(
            Build build, double removed, double shaft, double total, double balance, double fromD0, String reads) {
        Balance club = Balance.of(build);
        SwingWeight reading = SCALE.read(club.momentAbout(SCALE.fulcrum()));
        assertThat(club.part("taken off the tip").mass().grams()).isCloseTo(-removed, within(.0005));
        assertThat(club.part("shaft").mass().grams()).isCloseTo(shaft, within(.005));
        assertThat(club.total().grams()).isCloseTo(total, within(.005));
        assertThat(club.balancePoint().inches()).isCloseTo(balance, within(.0005));
        assertThat(reading.over(SCALE.parse("D0"))).isCloseTo(fromD0, within(.0005));
        assertThat(SCALE.designation(reading)).isEqualTo(reads);
    }

    /** Worked outside the library: exactly 4.21 g would mend the 8, and 4 g from stock gives C8.9. */
    @Test
    void eightIsMendedByFourGrams() {
        Build eight = Clubs.practiceEight();
        SwingWeightTargets targets =
                new SwingWeightTargets(SCALE, List.of(new SwingWeightTarget("8", SCALE.parse("C9"), 0.5)));
        ClubBalance report = (ClubBalance) SwingWeightStep.towards(
                        targets,
                        List.of(Clubs.weight(1), Clubs.weight(2), Clubs.weight(3), Clubs.weight(4), Clubs.weight(6)))
                .take(eight)
                .reports()
                .get(0);
        assertThat(report.exactWeight().map(Mass::grams).orElseThrow()).isCloseTo(4.21, within(.005));
        assertThat(report.chosen()).containsExactly(Clubs.weight(4));
        assertThat(SCALE.designation(report.reads())).isEqualTo("C8.9");
        assertThat(MassForTarget.fromStock(eight, SCALE, SCALE.parse("C9"), List.of(Clubs.weight(4))))
                .isPresent();
    }
}
