package dev.tipwright.fitcheck;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies at the bottom of a bore. */
class BoreDepthCheckTest {

    private static BoreDepthCheck check(BoreEnd end, String found) {
        Bore bore = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), end);
        return new BoreDepthCheck(bore, in(found), in(".02"));
    }

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static List<String> codes(BoreDepthCheck check) {
        return check.findings().stream()
                .map(Finding::code)
                .map(code -> code.name())
                .toList();
    }

    @Test
    void adhesiveAtTheBottomMakesTheBoreShallower() {
        BoreDepthCheck check = check(BoreEnd.FLAT, "1.15");
        assertThat(codes(check)).containsExactly("BORE_NOT_CLEAR");
        assertThat(check.missing()).isEqualTo(in(".1"));
        assertThat(check.usable().depth()).isEqualTo(in("1.15"));
        // .363 less 1.15 / 1.25 of .008
        assertThat(check.usable().profile().diameterAt(in("1.15"))).isEqualTo(in(".35564"));
    }

    @Test
    void aDifferenceWithinTheReadingIsNone() {
        assertThat(codes(check(BoreEnd.FLAT, "1.23"))).isEmpty();
        assertThat(codes(check(BoreEnd.FLAT, "1.27"))).isEmpty();
        assertThat(codes(check(BoreEnd.FLAT, "1.2299"))).containsExactly("BORE_NOT_CLEAR");
    }

    @Test
    void aRodThatGoesDeeperStandsInTheConeOrTheReadingsAreWrong() {
        assertThat(codes(check(BoreEnd.CONE, "1.35"))).containsExactly("ROD_IN_CONE");
        assertThat(codes(check(BoreEnd.FLAT, "1.35"))).containsExactly("BORE_DEEPER");
        assertThat(check(BoreEnd.FLAT, "1.35").usable().depth()).isEqualTo(in("1 1/4"));
    }
}
