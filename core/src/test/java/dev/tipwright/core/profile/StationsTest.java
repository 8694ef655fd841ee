package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Length;
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
        assertThat(BOTH.narrowestNanometres()).isEqualTo(9_300_000);
        assertThat(BOTH.widestNanometres()).isEqualTo(9_600_000);
        assertThat(BOTH.with(0, OVAL).widestNanometres()).isEqualTo(9_400_000);
        assertThat(Stations.of(List.of()).widestNanometres()).isEqualTo(Long.MIN_VALUE);
        assertThat(BOTH.areRound()).isFalse();
        assertThat(Stations.of(List.of(ROUND, ROUND.withAt(len("1 mm")))).areRound())
                .isTrue();
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
        long[] diameters = {9_600_000};
        Stations one = Stations.ofNanometres(new long[] {0}, diameters, diameters);
        diameters[0] = 1;
        assertThat(stations).isEqualTo(BOTH);
        assertThat(one).containsExactly(ROUND);
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.set(0, OVAL));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.remove(0));
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> stations.add(OVAL));
    }

    @Test
    void comeFromNanometresToo() {
        long[] at = {0, 2_000_000};
        assertThat(Stations.ofNanometres(at, new long[] {9_600_000, 9_300_000}, new long[] {9_600_000, 9_400_000}))
                .isEqualTo(BOTH);
        long[] same = {1, 100_000_000};
        Stations widest = Stations.ofNanometres(new long[] {-3_000_000_000L, 3_000_000_000L}, same, same);
        assertThat(widest.areRound()).isTrue();
        assertThat(widest.get(1)).isEqualTo(Station.of(len("3 m"), len("100 mm")));
        assertThat(Stations.ofNanometres(new long[0], new long[0], new long[0])).isEmpty();
    }

    /** Half a nanometre and less than that off what they are. */
    @Test
    void comeFromMillimetresRounded() {
        double[] at = {0.0000004, 1.9999996};
        double[] least = {9.6, 9.3};
        assertThat(Stations.ofMillimetres(at, least, new double[] {9.6, 9.4})).isEqualTo(BOTH);
        assertThat(Stations.ofMillimetres(at, least, least).areRound()).isTrue();
        assertThat(Stations.ofMillimetres(at, least, least).leastNanometres(1)).isEqualTo(9_300_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofMillimetres(at, least, new double[] {9.6, Double.NaN}))
                .withMessage("greatest must be within 1e12 of zero, was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofMillimetres(at, new double[1], least))
                .withMessage("least must be as many as at, was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofMillimetres(at, least, new double[3]))
                .withMessage("greatest must be as many as at, was 3");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.ofMillimetres(null, least, least))
                .withMessage("at must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.ofMillimetres(at, null, null))
                .withMessage("least must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.ofMillimetres(at, least, null))
                .withMessage("greatest must not be null");
    }

    @Test
    void refuseWhatIsNoStation() {
        refused("at must be from -3000 mm to 3000 mm, was 3000.000001 mm", 3_000_000_001L, 1, 1);
        refused("at must be from -3000 mm to 3000 mm, was -3000.000001 mm", -3_000_000_001L, 1, 1);
        refused("at must be from -3000 mm to 3000 mm, was -9223372036854.775808 mm", Long.MIN_VALUE, 1, 1);
        refused("least must be from 0.000001 mm to 100 mm, was 0 mm", 0, 0, 1);
        refused("least must be at most greatest, 0.000001 mm, was 0.000002 mm", 0, 2, 1);
        refused("greatest must be from 0.000001 mm to 100 mm, was 100.000001 mm", 0, 1, 100_000_001);
        long[] one = {1};
        long[] two = {1, 2};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofNanometres(two, one, two))
                .withMessage("least must be as many as at, was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofNanometres(one, one, two))
                .withMessage("greatest must be as many as at, was 2");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.ofNanometres(one, one, null))
                .withMessage("greatest must not be null");
        assertThatNullPointerException()
                .isThrownBy(() -> Stations.of(Arrays.asList(ROUND, null)))
                .withMessage("stations must not hold null, but element 1 is");
    }

    private static void refused(String message, long at, long least, long greatest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Stations.ofNanometres(new long[] {at}, new long[] {least}, new long[] {greatest}))
                .withMessage(message);
    }

    @Test
    void widenAsEachStationDoes() {
        assertThat(BOTH.widenedBy(len("-0.2 mm")))
                .containsExactly(ROUND.widenedBy(len("-0.2 mm")), OVAL.widenedBy(len("-0.2 mm")));
        assertThat(Stations.of(List.of(ROUND)).widenedBy(len("90.4 mm")))
                .containsExactly(Station.of(Length.ZERO, len("100 mm")));
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
        assertThat(stations.widenedBy(halfTheSame, len("0.1 mm")).get(3))
                .isEqualTo(halfTheSame.widenedBy(len("0.1 mm")));
    }

    @Test
    void oneIsPutInThePlaceOfAnother() {
        assertThat(BOTH.with(0, OVAL)).containsExactly(OVAL, OVAL);
        assertThat(BOTH).containsExactly(ROUND, OVAL);
        assertThatNullPointerException().isThrownBy(() -> BOTH.with(0, null)).withMessage("station must not be null");
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
