package dev.tipwright.fitcheck;

import static dev.tipwright.fitcheck.Clubs.cylinder;
import static dev.tipwright.fitcheck.Clubs.mil;
import static dev.tipwright.fitcheck.Clubs.pinned;
import static dev.tipwright.fitcheck.Clubs.section;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * Pins the whole fit of two clubs of the practice set to numbers worked outside the library, by numerical quadrature and a
 * separate search for first contact. Each is good to half of its last digit.
 */
class PracticeClubsTest {

    private static final double CONTACT = 0.00005;
    private static final double CUBIC_MILLIMETRES = 0.005;

    @Test
    void theSix() {
        Bore bore = pinned(0, 396, 15, 366.4, 400, 363, 840, 359, 1180, 356, 1250, 355);
        TipFit fit = fit(Clubs.club("6", bore, section(cylinder(373.5), 2.5, 90.5)), 500);
        assertFit(fit, 0.0114, 0.0139, 22.5, 17.5);
        assertVolumes(fit, 193.61, 59.69, 0.282);
        assertLeft(fit, 0.0792, 0.809);
    }

    /** The one with the thick finish. */
    @Test
    void theEight() {
        Bore bore = pinned(0, 396, 15, 366.6, 420, 363, 860, 359, 1190, 356, 1250, 355);
        TipFit fit = fit(Clubs.club("8", bore, section(cylinder(378.5), 5, 93)), 1531.25);
        assertFit(fit, 0.0089, 0.0140, 27.5, 17.5);
        assertVolumes(fit, 252.21, 120.18, 0.355);
        assertLeft(fit, 0.0792, 0.809);
    }

    private static TipFit fit(Build build, double trim) {
        Build trimmed = build.withWork(build.work().withTipTrim(mil(trim)));
        return (TipFit) TipFitStep.with(Clubs.TARGET).take(trimmed).reports().get(0);
    }

    private static void assertFit(TipFit fit, double untouched, double bare, double stock, double structure) {
        assertThat(fit.untouched().insertion().inches()).isCloseTo(untouched, within(CONTACT));
        assertThat(fit.bare().insertion().inches()).isCloseTo(bare, within(CONTACT));
        // Exact: differences of what was read.
        assertThat(fit.removal().stockAtEnd()).isEqualTo(mil(stock));
        assertThat(fit.removal().structureAtEnd()).isEqualTo(mil(structure));
    }

    private static void assertVolumes(TipFit fit, double all, double finish, double grams) {
        assertThat(fit.removal().volume().cubicMillimetres()).isCloseTo(all, within(CUBIC_MILLIMETRES));
        assertThat(fit.removal().finishVolume().cubicMillimetres()).isCloseTo(finish, within(CUBIC_MILLIMETRES));
        assertThat(fit.removal().mass().orElseThrow().grams()).isCloseTo(grams, within(0.0005));
    }

    private static void assertLeft(TipFit fit, double wall, double stiffness) {
        // .07925 exactly, which the table prints as .0792.
        assertThat(fit.removal().leastWall().map(Length::inches).orElseThrow()).isBetween(wall, wall + 0.0001);
        assertThat(fit.removal().leastStiffness().orElseThrow()).isCloseTo(stiffness, within(0.0005));
        assertThat(fit.removal().stiffnessAtMouth()).contains(1.0);
    }
}
