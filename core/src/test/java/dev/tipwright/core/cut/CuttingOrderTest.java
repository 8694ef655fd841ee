package dev.tipwright.core.cut;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.trimmed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who is cut when, and what a slip still leaves. All shafts are 39 in raw. */
class CuttingOrderTest {

    private static Build planned(String head, String shaft, String blank, String tip, String butt) {
        return trimmed(club(head, shaft, blank), tip, butt);
    }

    /** Cut lengths: 8: 35 1/2; 6: 36 3/8; 9: 34 1/2; 7: 36. */
    private static final CuttingOrder ORDER = new CuttingOrder(ClubSet.of(
            planned("8", "M3", "mid", "1 1/2", "2"),
            planned("6", "M1", "mid", "1/2", "2 1/8"),
            planned("9", "S1", "short", "1/2", "4"),
            planned("7", "M2", "mid", "1", "2")));

    @Test
    void blankByBlankAndTheLeastTrimFirst() {
        assertThat(ORDER.turns()).extracting(CutTurn::club).containsExactly("6", "7", "8", "9");
        assertThat(ORDER.turns()).extracting(CutTurn::shaft).containsExactly("M1", "M2", "M3", "S1");
        assertThat(ORDER.turns().get(0).tipTrim()).isEqualTo(in("1/2"));
        assertThat(ORDER.turns().get(3).blank()).isEqualTo("short");
    }

    @Test
    void aSlipLeavesTheClubsThatAreTrimmedMore() {
        assertThat(ORDER.turns())
                .extracting(CutTurn::couldBecome)
                .containsExactly(List.of("7", "8"), List.of("8"), List.of(), List.of());
    }

    @Test
    void theSawSaysHowFarItWent() {
        assertThat(ORDER.stillPossible("6", in("1/2"))).containsExactly("6", "7", "8");
        assertThat(ORDER.stillPossible("6", in("33/64"))).containsExactly("7", "8");
        assertThat(ORDER.stillPossible("6", in("1"))).containsExactly("7", "8");
        assertThat(ORDER.stillPossible("6", in("1 1/64"))).containsExactly("8");
        assertThat(ORDER.stillPossible("6", in("1 33/64"))).isEmpty();
    }

    /** Shaft M1 is 37 in raw: 7 wants 1 + 36 in, just enough; 8 wants 1 1/2 + 35 1/2, enough too; 7 from 36 63/64 in is not. */
    @Test
    void aShaftThatIsTooShortForTheOtherClubIsLostToIt() {
        assertThat(withRaw("37").stillPossible("6", in("1"))).containsExactly("7", "8");
        assertThat(withRaw("36 63/64").stillPossible("6", in("1"))).isEmpty();
    }

    private static CuttingOrder withRaw(String raw) {
        Build six = club("6", "M1", "mid");
        Build shorter = six.withParts(six.parts().withShaft(six.parts().shaft().withLength(in(raw))));
        return new CuttingOrder(ClubSet.of(
                trimmed(shorter, "1/2", "1/8"),
                planned("7", "M2", "mid", "1", "2"),
                planned("8", "M3", "mid", "1 1/2", "2")));
    }

    @Test
    void whatIsNotCutHasNoTurnAndClubsOfOneTrimKeepTheirOrder() {
        CuttingOrder order = new CuttingOrder(ClubSet.of(
                planned("b", "M1", "mid", "1", "2"),
                planned("uncut", "M2", "mid", "0", "2"),
                planned("a", "M3", "mid", "1", "2")));
        assertThat(order.turns()).extracting(CutTurn::club).containsExactly("b", "a");
        assertThat(order.turns()).allMatch(turn -> turn.couldBecome().isEmpty());
    }

    @Test
    void aClubThatIsNotThereIsAnError() {
        assertThatThrownBy(() -> ORDER.stillPossible("5", in("1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("club must be one of the set");
    }
}
