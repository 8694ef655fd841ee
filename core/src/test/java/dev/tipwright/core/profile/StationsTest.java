package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stations in one piece are the list they were made of, and nobody can change them. */
class StationsTest {

    private static final Station ROUND = Station.of(len("0 mm"), len("9.6 mm"));
    private static final Station OVAL = new Station(len("2 mm"), len("9.3 mm"), len("9.4 mm"));
    private static final Stations BOTH = Stations.of(List.of(ROUND, OVAL));

    @Test
    void areTheListTheyWereMadeOf() {
        assertThat(BOTH).isEqualTo(List.of(ROUND, OVAL)).hasSameHashCodeAs(List.of(ROUND, OVAL));
        assertThat(BOTH).hasToString(List.of(ROUND, OVAL).toString());
        assertThat(BOTH.at(1)).isEqualTo(len("2 mm"));
        assertThat(BOTH.atNanometres(1)).isEqualTo(2_000_000);
        assertThat(BOTH.leastNanometres(1)).isEqualTo(9_300_000);
        assertThat(BOTH.greatestNanometres(1)).isEqualTo(9_400_000);
        assertThat(Stations.of(List.of())).isEmpty();
        assertThat(BOTH.areRound()).isFalse();
        assertThat(Stations.of(List.of(ROUND, ROUND.withAt(len("1 mm")))).areRound()).isTrue();
        assertThat(BOTH.with(1, ROUND).areRound()).isTrue();
        assertThat(BOTH.with(1, ROUND).with(0, OVAL)).containsExactly(OVAL, ROUND);
    }

    @Test
    void aProfileHoldsThemSoAndTheyAreNotCopiedAgain() {
        DiameterProfile profile = DiameterProfile.of(List.of(ROUND, OVAL));
        assertThat(Stations.of(profile.stations())).isSameAs(profile.stations());
        assertThat(profile.withTo(len("1 mm")).stations()).isSameAs(profile.stations());
    }

    @Test
    void nobodyChangesThem() {
        List<Station> list = new ArrayList<>(List.of(ROUND, OVAL));
        Stations stations = Stations.of(list);
        list.set(0, OVAL);
        long[] numbers = {0, 9_600_000, 9_600_000};
        Stations one = Stations.ofNanometres(numbers);
        numbers[1] = 1;
        assertThat(stations).isEqualTo(BOTH);
        assertThat(one).containsExactly(ROUND);
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.set(0, OVAL));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.remove(0));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.add(OVAL));
    }

    @Test
    void comeFromNanometresToo() {
        assertThat(Stations.ofNanometres(0, 9_600_000, 9_600_000, 2_000_000, 9_300_000, 9_400_000))
                .isEqualTo(BOTH);
        assertThat(Stations.ofNanometres(-3_000_000_000L, 1, 1, 3_000_000_000L, 100_000_000, 100_000_000))
                .hasSize(2);
        assertThat(Stations.ofNanometres()).isEmpty();
    }

    @Test
    void refuseWhatIsNoStation() {
        String rule =
                "nanometres must be a place within 3 m, a diameter above zero and one not under it, at most 100 mm, was ";
        refused(rule + "[3000000001, 1, 1]", 0, 1, 1, 3_000_000_001L, 1, 1);
        refused(rule + "[-3000000001, 1, 1]", -3_000_000_001L, 1, 1);
        refused(rule + "[-9223372036854775808, 1, 1]", Long.MIN_VALUE, 1, 1);
        refused(rule + "[0, 0, 1]", 0, 0, 1);
        refused(rule + "[0, 2, 1]", 0, 2, 1);
        refused(rule + "[0, 1, 100000001]", 0, 1, 100_000_001);
        refused("nanometres must be three for each station, was 4", 0, 1, 1, 0);
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.ofNanometres((long[]) null))
                .withMessage("nanometres must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.of(Arrays.asList(ROUND, null)))
                .withMessage("stations must not hold null, but element 1 is");
    }

    private static void refused(String message, long... nanometres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofNanometres(nanometres))
                .withMessage(message);
    }

    @Test
    void widenAsEachStationDoes() {
        assertThat(BOTH.widenedBy(len("-0.2 mm")))
                .containsExactly(ROUND.widenedBy(len("-0.2 mm")), OVAL.widenedBy(len("-0.2 mm")));
        assertThat(Stations.ofNanometres(0, 9_600_000, 9_600_000).widenedBy(len("90.4 mm")).get(0).least())
                .isEqualTo(len("100 mm"));
        assertThat(BOTH.widenedBy(len("-9.299999 mm")).leastNanometres(1)).isEqualTo(1);
        for (String tooMuch : List.of("-9.3 mm", "90.400001 mm")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BOTH.widenedBy(len(tooMuch)))
                    .withMessage("by must leave a diameter above zero and at most 100 mm, was " + tooMuch);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BOTH.widenedBy(len("101 mm")))
                .withMessage("by must be from -100 mm to 100 mm, was 101 mm");
    }

    /** A micrometer reading put down at two places moves at both, an out-of-round one beside it does not. */
    @Test
    void oneReadingWidensWhereverItWasPutDown() {
        Station again = ROUND.withAt(len("5 mm"));
        Station halfTheSame = new Station(len("6 mm"), len("9.5 mm"), len("9.6 mm"));
        Station otherHalf = new Station(len("7 mm"), len("9.6 mm"), len("9.7 mm"));
        Stations stations = Stations.of(List.of(ROUND, OVAL, again, halfTheSame, otherHalf));
        assertThat(stations.widenedBy(ROUND, len("0.1 mm")))
                .containsExactly(
                        ROUND.widenedBy(len("0.1 mm")), OVAL, again.widenedBy(len("0.1 mm")), halfTheSame, otherHalf);
        assertThat(stations.widenedBy(halfTheSame, len("0.1 mm")).get(3)).isEqualTo(halfTheSame.widenedBy(len("0.1 mm")));
    }

    @Test
    void oneIsPutInThePlaceOfAnother() {
        assertThat(BOTH.with(0, OVAL)).containsExactly(OVAL, OVAL);
        assertThat(BOTH).containsExactly(ROUND, OVAL);
        assertThatNullPointerException()
                .isThrownBy(() -> BOTH.with(0, null))
                .withMessage("station must not be null");
    }

    @Test
    void areAskedWithinTheirNumber() {
        for (int k : new int[] {-1, 2}) {
            assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> BOTH.get(k));
            assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> BOTH.at(k));
            assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> BOTH.leastNanometres(k));
            assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> BOTH.greatestNanometres(k));
            assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> BOTH.with(k, OVAL));
        }
    }
}
