package dev.tipwright.core.mass;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.parser.ParseException;
import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.PrintedFormula;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

/** Volume inside a profile: the frustum of any mechanics text (table rigid-bodies), by hand, and its working. */
class ProfileVolumeTest {

    private static final DiameterProfile FRUSTUM =
            DiameterProfile.of(Station.of(Length.ZERO, len("4 mm")), Station.of(len("3 mm"), len("2 mm")));

    /** Radii 2 and 1, height 3, printed to six decimals. */
    @Test
    void aFrustumHasThePublishedVolume() {
        double published =
                CheckTable.named("rigid-bodies").row("quantity", "volume").number("value");
        assertThat(new ProfileVolume(FRUSTUM).volume().cubicMillimetres()).isCloseTo(published, within(0.5e-6));
    }

    /** 750 pi for a cylinder 10 mm wide and 30 mm deep; a counterbore to 20 mm over the first 10 mm adds 750 pi. */
    @Test
    void aCylinderAndACounterboreByHand() {
        DiameterProfile plain = DiameterProfile.cylinder(len("10 mm"), len("30 mm"));
        DiameterProfile counterbored = DiameterProfile.of(
                Station.of(Length.ZERO, len("20 mm")),
                Station.of(len("10 mm"), len("20 mm")),
                Station.of(len("10 mm"), len("10 mm")),
                Station.of(len("30 mm"), len("10 mm")));
        // A few roundings of a number near 5000.
        assertThat(new ProfileVolume(plain).volume().cubicMillimetres()).isCloseTo(750 * Math.PI, within(1e-11));
        assertThat(new ProfileVolume(counterbored).volume().cubicMillimetres())
                .isCloseTo(1500 * Math.PI, within(1e-11));
    }

    /** Read 9 to 11 mm across, it counts as 10 mm. */
    @Test
    void anOutOfRoundBoreCountsByItsMean() {
        DiameterProfile oval = DiameterProfile.of(
                new Station(Length.ZERO, len("9 mm"), len("11 mm")),
                new Station(len("30 mm"), len("9 mm"), len("11 mm")));
        assertThat(new ProfileVolume(oval).volume().cubicMillimetres()).isCloseTo(750 * Math.PI, within(1e-11));
    }

    @Test
    void theWorkingGivesTheVolumeFromThePrintedNumbers() throws EvaluationException, ParseException {
        DiameterProfile stepped = DiameterProfile.of(
                Station.of(len("1 mm"), len("9.2 mm")),
                Station.of(len("11 mm"), len("9 mm")),
                Station.of(len("11 mm"), len("8.5 mm")),
                Station.of(len("31.5 mm"), len("8.1 mm")));
        ProfileVolume volume = new ProfileVolume(stepped.trimmedFromStart(len("1.5 mm")));
        Working working = volume.working();
        assertThat(working.lines()).hasSize(3);
        PrintedFormula.check(working);
        assertThat(working.lines().get(2).formula()).isEqualTo("V1 + V2");
        assertThat(working.lines().get(0).result().meaning()).isEqualTo("volume from 0 mm to 8.5 mm");
    }

    @Test
    void nullIsNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> new ProfileVolume(null))
                .withMessage("profile must not be null");
    }
}
