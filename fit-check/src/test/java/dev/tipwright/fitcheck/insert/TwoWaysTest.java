package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact.Kind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The short way to first contact and the long one: which shapes the short one takes, and what both answer, by hand. Places and diameters
 * in thousandths of an inch.
 */
class TwoWaysTest {

    @Test
    void theShortWayTakesEightStationsAndNoMore() {
        assertThat(Plain.serves(cylinder(8))).isTrue();
        assertThat(Plain.serves(cylinder(9))).isFalse();
    }

    @Test
    void itTakesWhatEndsAtItsOutermostStations() {
        assertThat(Plain.serves(profile(0, 350, 1000, 370))).isTrue();
        assertThat(Plain.serves(profile(0, 350, 500, 360, 500, 340, 1000, 370))).isTrue();
    }

    /** What is between two stations there is a fraction of a nanometre. */
    @Test
    void itRefusesAnEndInsideATaper() {
        DiameterProfile taper = profile(0, 350, 1000, 370);
        assertThat(Plain.serves(taper.trimmedFromStart(mil(1)))).isFalse();
        assertThat(Plain.serves(taper.endedAt(mil(999)))).isFalse();
    }

    @Test
    void itTakesAnEndInsideACylinder() {
        DiameterProfile level = profile(0, 350, 1000, 350, 2000, 370, 3000, 370);
        assertThat(Plain.serves(level.trimmedFromStart(mil(999)))).isTrue();
        assertThat(Plain.serves(level.endedAt(mil(2001)))).isTrue();
    }

    /** A tip binds by its greatest diameter and a bore by its least. */
    @Test
    void aCylinderIsLevelByBothDiameters() {
        for (boolean least : new boolean[] {true, false}) {
            Station narrow = new Station(mil(0), mil(least ? 340 : 350), mil(least ? 360 : 350));
            Station wide = new Station(mil(1000), mil(350), mil(360));
            Station narrowAgain = narrow.withAt(mil(2000));
            DiameterProfile oneLevel = DiameterProfile.of(narrow, wide, narrowAgain);
            assertThat(Plain.serves(oneLevel.trimmedFromStart(mil(1)))).isFalse();
            assertThat(Plain.serves(oneLevel.endedAt(mil(1999)))).isFalse();
        }
    }

    @Test
    void itRefusesAnEndPastOneMoreStation() {
        DiameterProfile level = profile(0, 350, 1000, 350, 2000, 350, 3000, 350);
        assertThat(Plain.serves(level.trimmedFromStart(mil(1001)))).isFalse();
        assertThat(Plain.serves(level.endedAt(mil(1999)))).isFalse();
        assertThat(Plain.serves(level.trimmedFromStart(mil(1000)))).isFalse();
        assertThat(Plain.serves(level.endedAt(mil(2000)))).isFalse();
    }

    /** Of a step at an end only the inner side is part of the profile. */
    @Test
    void itRefusesAStepAtAnEnd() {
        assertThat(Plain.serves(profile(0, 350, 0, 360, 1000, 360, 2000, 360))).isFalse();
        assertThat(Plain.serves(profile(0, 350, 1000, 360, 2000, 360, 2000, 370)))
                .isFalse();
    }

    /** Tip and bore of the same taper meet along a thousandth of it and more, all of it at .7 in: the end of the tip is named. */
    @Test
    void ofPlacesWithOneInsertionTheLowestOnTheTipIsNamed() {
        Bore bore = bore(0, 360, 1000, 350);
        assertContact(profile(0, 353, 1000, 363), bore, 700, 0);
        assertContact(profile(0, 353, 300, 356, 500, 358, 1000, 363), bore, 700, 0);
    }

    /** They meet from 1 in up the tip, at the mouth, to half an inch up, where the bore stops to narrow. */
    @Test
    void aPlaceFoundLaterButLowerIsNamed() {
        assertContact(profile(0, 340, 1000, 360), bore(0, 360, 500, 350, 2000, 350), 1000, 500);
    }

    /** They meet from 1 in up the tip, at the mouth, to its very end, as wide as the bore where that stops to narrow. */
    @Test
    void theEndIsNamedWhereItIsJustAsWide() {
        assertContact(profile(0, 350, 2000, 370), bore(0, 360, 1000, 350, 2000, 350), 1000, 0);
    }

    /** A cylinder and, 2 in up, a cone that gains .02 an inch, with 1 in cut off: it is as wide as the bore another inch up. */
    @Test
    void placesAreCountedFromTheCut() {
        DiameterProfile tip = profile(0, 350, 2000, 350, 4000, 390).trimmedFromStart(mil(1000));
        assertContact(tip, bore(0, 370, 3000, 370), 2000, 2000);
        // The shoulder is 1 in up from the cut.
        DiameterProfile shouldered =
                profile(0, 350, 2000, 350, 2000, 380, 4000, 380).trimmedFromStart(mil(1000));
        assertContact(shouldered, bore(0, 370, 3000, 370), 1000, 1000);
    }

    @Test
    void ofAStepAtAnEndOnlyTheInnerSideCounts() {
        Bore bore = bore(0, 360, 1250, 360);
        DiameterProfile cutOnTheStep =
                profile(0, 380, 1000, 380, 1000, 350, 3000, 350).trimmedFromStart(mil(1000));
        assertThat(FirstContact.of(cutOnTheStep, bore)).isEqualTo(clears(1250));
        DiameterProfile readUpToTheStep =
                profile(0, 350, 1000, 350, 1000, 380, 3000, 380).endedAt(mil(1000));
        assertThat(FirstContact.of(readUpToTheStep, bore)).isEqualTo(clears(1250));
    }

    @Test
    void aTipAsWideAsTheBottomClears() {
        Bore bore = bore(0, 360, 1000, 350);
        DiameterProfile tip = profile(0, 350, 8000, 350);
        assertThat(FirstContact.of(tip, bore)).isEqualTo(clears(1000));
        assertThat(FirstContact.merged(tip, bore)).isEqualTo(clears(1000));
    }

    @Test
    void aRecordIsPastEveryKnotBefore() {
        assertThat(Side.tip(profile(0, 350, 100, 350, 200, 340, 300, 360, 400, 355, 500, 370))
                        .records())
                .containsExactly(0, 3, 5);
        assertThat(Side.bore(profile(0, 370, 100, 370, 200, 380, 300, 360, 400, 365, 500, 350))
                        .records())
                .containsExactly(0, 3, 5);
    }

    private static void assertContact(DiameterProfile tip, Bore bore, int insertion, int tipStation) {
        FirstContact expected = new FirstContact(mil(insertion), mil(tipStation), Kind.TOUCHES);
        assertThat(Plain.serves(tip)).isTrue();
        assertThat(FirstContact.of(tip, bore)).isEqualTo(expected);
        assertThat(FirstContact.merged(tip, bore)).isEqualTo(expected);
    }

    private static FirstContact clears(int depth) {
        return new FirstContact(mil(depth), Length.ZERO, Kind.CLEARS);
    }

    private static DiameterProfile cylinder(int stations) {
        List<Station> all = new ArrayList<>();
        for (int k = 0; k < stations; k++) {
            all.add(Station.of(mil(100 * k), mil(350)));
        }
        return DiameterProfile.of(all);
    }

    private static Bore bore(int... placesAndDiameters) {
        return Bore.ofReadings(profile(placesAndDiameters).stations(), BoreEnd.FLAT);
    }

    private static DiameterProfile profile(int... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < placesAndDiameters.length; k += 2) {
            stations.add(Station.of(mil(placesAndDiameters[k]), mil(placesAndDiameters[k + 1])));
        }
        return DiameterProfile.of(stations);
    }

    private static Length mil(int thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
