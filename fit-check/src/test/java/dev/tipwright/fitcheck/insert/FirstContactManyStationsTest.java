package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pins that first contact stands thousands of stations. Saw teeth a micrometre apart: tooth {@code j} of the bore leaves
 * {@code 9.5 mm - j nm}, tooth {@code k} of the tip reaches {@code 9.5 mm - (n/2 - k) nm}, both for odd numbers only. They
 * overlap when {@code j + k > n/2}, by two nanometres at the earliest, on flanks that rise 500 nm in each nanometre, so
 * contact is a fraction of a nanometre before {@code n/2 + 2} micrometres.
 */
class FirstContactManyStationsTest {

    private static final int WIDE = 10_000_000;
    private static final int MIDDLE = 9_500_000;
    private static final int THIN = 9_000_000;

    @ParameterizedTest
    @ValueSource(ints = {8, 40, 120})
    void theClosedFormIsThatOfAllPairsOfSegments(int stations) {
        assertThat(EverySegmentPair.floor(EverySegmentPair.insertion(tip(stations), bore(stations))))
                .isEqualTo(expected(stations));
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 40, 120, 10_000, 100_000})
    void manyStationsASideGiveTheClosedForm(int stations) {
        assertThat(FirstContact.of(tip(stations), bore(stations)).insertion().nanometres())
                .isEqualTo(expected(stations));
    }

    private static long expected(int stations) {
        return (stations / 2 + 2) * 1000L - 1;
    }

    private static Bore bore(int stations) {
        List<Station> teeth = new ArrayList<>();
        for (int j = 0; j < stations; j++) {
            teeth.add(tooth(j, j % 2 == 0 ? WIDE : MIDDLE - j));
        }
        return Bore.ofReadings(teeth, BoreEnd.FLAT);
    }

    private static DiameterProfile tip(int stations) {
        List<Station> teeth = new ArrayList<>();
        for (int k = 0; k < stations; k++) {
            teeth.add(tooth(k, k % 2 == 0 ? THIN : MIDDLE - stations / 2 + k));
        }
        return DiameterProfile.of(teeth);
    }

    private static Station tooth(int index, int diameter) {
        return Station.of(Length.ofNanometres(index * 1000L), Length.ofNanometres(diameter));
    }
}
