package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.quantity.Length;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A diameter through stations on a domain: what it reads, what it refuses, and that trimming invents no station. */
class DiameterProfileTest {

    private static Station at(String place, String diameter) {
        return Station.of(len(place), len(diameter));
    }

    /** 10 mm to 8 mm over the first 20 mm, a step to 6 mm, 6 mm to the end at 50 mm. */
    private static final DiameterProfile STEPPED =
            DiameterProfile.of(at("0 mm", "10 mm"), at("20 mm", "8 mm"), at("20 mm", "6 mm"), at("50 mm", "6 mm"));

    /** By hand: a quarter of the way from 10 to 8 is 9.5; at the step the value beyond it counts. */
    @Test
    void isStraightBetweenStationsAndLooksBeyondAStep() {
        assertThat(STEPPED.diameterAt(len("0 mm"))).isEqualTo(len("10 mm"));
        assertThat(STEPPED.diameterAt(len("5 mm"))).isEqualTo(len("9.5 mm"));
        assertThat(STEPPED.diameterAt(len("19.999999 mm"))).isEqualTo(len("8 mm"));
        assertThat(STEPPED.diameterAt(len("20 mm"))).isEqualTo(len("6 mm"));
        assertThat(STEPPED.diameterAt(len("50 mm"))).isEqualTo(len("6 mm"));
    }

    @Test
    void atTheEndOfItsDomainItLooksBackBeforeAStep() {
        assertThat(STEPPED.endedAt(len("20 mm")).diameterAt(len("20 mm"))).isEqualTo(len("8 mm"));
        DiameterProfile stepAtEnd = DiameterProfile.of(at("0 mm", "10 mm"), at("20 mm", "8 mm"), at("20 mm", "6 mm"));
        assertThat(stepAtEnd.diameterAt(len("20 mm"))).isEqualTo(len("8 mm"));
        assertThat(STEPPED.endedAt(len("5 mm")).diameterAt(len("5 mm"))).isEqualTo(len("9.5 mm"));
    }

    @Test
    void trimmingMovesTheDomainAndKeepsEveryStation() {
        DiameterProfile trimmed = STEPPED.trimmedFromStart(len("5 mm"));
        assertThat(trimmed.stations()).isEqualTo(STEPPED.stations());
        assertThat(trimmed.length()).isEqualTo(len("45 mm"));
        assertThat(trimmed.diameterAt(Length.ZERO)).isEqualTo(len("9.5 mm"));
        assertThat(trimmed.diameterAt(len("15 mm"))).isEqualTo(len("6 mm"));
        DiameterProfile both = trimmed.trimmedFromStart(len("10 mm")).endedAt(len("10 mm"));
        assertThat(both.stations()).isEqualTo(STEPPED.stations());
        assertThat(both.from()).isEqualTo(len("15 mm"));
        assertThat(both.to()).isEqualTo(len("25 mm"));
    }

    @Test
    void isNeverExtrapolated() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.diameterAt(len("50.000001 mm")))
                .withMessage("place must be from 0 mm to 50 mm, was 50.000001 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.diameterAt(len("-1 nm")))
                .withMessageStartingWith("place must be from 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.trimmedFromStart(len("5 mm")).diameterAt(len("46 mm")))
                .withMessage("place must be from 0 mm to 45 mm, was 46 mm");
    }

    @Test
    void anExtensionIsAnAssumptionWithItsSource() {
        Source why = Source.assumption("parallel as far as the maker says");
        Reading<DiameterProfile> longer = STEPPED.extendedTo(len("60 mm"), why);
        assertThat(longer).isInstanceOf(Reading.Assumed.class);
        assertThat(((Reading.Assumed<DiameterProfile>) longer).source()).isEqualTo(why);
        DiameterProfile profile = longer.known().orElseThrow();
        assertThat(profile.length()).isEqualTo(len("60 mm"));
        assertThat(profile.diameterAt(len("60 mm"))).isEqualTo(len("6 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.extendedTo(len("50 mm"), why))
                .withMessage("length must be more than 50 mm, was 50 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.endedAt(len("40 mm")).extendedTo(len("60 mm"), why))
                .withMessage(
                        "length can carry on only a profile that ends at its last station, 50 mm, and this one ends at"
                                + " 40 mm, was 60 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> STEPPED.extendedTo(len("60 mm"), null))
                .withMessage("why must not be null");
    }

    @Test
    void refusesStationsOutOfOrder() {
        List<Station> unordered =
                List.of(at("0 mm", "9 mm"), at("6 mm", "8 mm"), at("5 mm", "7 mm"), at("9 mm", "6 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DiameterProfile(unordered, Length.ZERO, len("9 mm")))
                .withMessage("stations must be in order of their place, was 5 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(at("20 mm", "8 mm"), at("0 mm", "10 mm")))
                .withMessage("stations must be in order of their place, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(
                        at("0 mm", "9 mm"), at("5 mm", "8 mm"), at("5 mm", "7 mm"), at("5 mm", "6 mm")))
                .withMessage("stations must be at most two at one place, was three at 5 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(
                        at("0 mm", "9 mm"), at("0 mm", "8 mm"), at("0 mm", "7 mm"), at("5 mm", "6 mm")))
                .withMessage("stations must be at most two at one place, was three at 0 mm");
    }

    @Test
    void refusesTooFewStationsAndNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(List.of()))
                .withMessage("stations must not be empty, was []");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(at("0 mm", "9 mm")))
                .withMessageStartingWith("stations must be two or more, was [Station[at=0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.of(at("5 mm", "9 mm"), at("5 mm", "8 mm")))
                .withMessageStartingWith("stations must span some length");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DiameterProfile(List.of(at("0 mm", "9 mm")), Length.ZERO, Length.ZERO))
                .withMessageStartingWith("stations must be two or more");
        assertThatNullPointerException()
                .isThrownBy(() -> DiameterProfile.of(Arrays.asList(at("0 mm", "9 mm"), null)))
                .withMessage("stations must not hold null, but element 1 is");
        assertThatNullPointerException()
                .isThrownBy(() -> DiameterProfile.of((Station[]) null))
                .withMessage("stations must not be null");
    }

    @Test
    void refusesADomainOutsideItsStations() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.withFrom(len("-1 mm")))
                .withMessage("from must be from 0 mm to 50 mm, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.withTo(len("51 mm")))
                .withMessage("to must be from 0 mm to 50 mm, was 51 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.withFrom(len("20 mm")).withTo(len("20 mm")))
                .withMessage("to must be beyond the start of the domain 20 mm, was 20 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.trimmedFromStart(len("50 mm")))
                .withMessage("by must be from 0 mm to 49.999999 mm, was 50 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.trimmedFromStart(len("-1 mm")))
                .withMessageContaining("was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STEPPED.endedAt(Length.ZERO))
                .withMessage("length must be from 0.000001 mm to 50 mm, was 0 mm");
    }

    @Test
    void widensEveryStationAndWithReplacesOne() {
        assertThat(STEPPED.widenedBy(len("0.1 mm")).diameterAt(len("5 mm"))).isEqualTo(len("9.6 mm"));
        assertThat(STEPPED.widenedBy(len("-0.1 mm")).length()).isEqualTo(STEPPED.length());
        List<Station> others = List.of(at("0 mm", "1 mm"), at("50 mm", "1 mm"));
        assertThat(STEPPED.withStations(others).stations()).isEqualTo(others);
        assertThat(DiameterProfile.cylinder(len("9 mm"), len("50 mm")).diameterAt(len("50 mm")))
                .isEqualTo(len("9 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiameterProfile.cylinder(len("9 mm"), Length.ZERO))
                .withMessageContaining("length")
                .withMessageEndingWith("was 0 mm");
    }

    @Test
    void keepsACopyOfItsStations() {
        Station[] given = {at("0 mm", "9 mm"), at("5 mm", "8 mm")};
        DiameterProfile profile = DiameterProfile.of(given);
        given[0] = at("0 mm", "1 mm");
        assertThat(profile.diameterAt(Length.ZERO)).isEqualTo(len("9 mm"));
        assertThat(profile).isEqualTo(DiameterProfile.of(at("0 mm", "9 mm"), at("5 mm", "8 mm")));
    }

    @Test
    void aStationIsALeastAndAGreatestDiameter() {
        Station oval = new Station(len("3 mm"), len("9 mm"), len("9.001 mm"));
        assertThat(oval.mean()).isEqualTo(len("9.0005 mm"));
        assertThat(oval.outOfRound()).isEqualTo(len("0.001 mm"));
        assertThat(oval.widenedBy(len("1 mm"))).isEqualTo(new Station(len("3 mm"), len("10 mm"), len("10.001 mm")));
        assertThat(oval.withAt(len("4 mm")).at()).isEqualTo(len("4 mm"));
        assertThat(oval.withLeast(len("8 mm")).least()).isEqualTo(len("8 mm"));
        assertThat(oval.withGreatest(len("9.5 mm")).greatest()).isEqualTo(len("9.5 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Station(len("3 mm"), len("9.1 mm"), len("9 mm")))
                .withMessage("least must be at most greatest, 9 mm, was 9.1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Station.of(len("3 mm"), Length.ZERO))
                .withMessage("diameter must be from 0.000001 mm to 100 mm, was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Station.of(len("3 mm"), len("101 mm")))
                .withMessageEndingWith("was 101 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Station.of(len("3001 mm"), len("9 mm")))
                .withMessage("at must be from -3000 mm to 3000 mm, was 3001 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> oval.widenedBy(len("-9 mm")))
                .withMessage("by must leave a diameter above zero and at most 100 mm, was -9 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> oval.widenedBy(len("91 mm")))
                .withMessageEndingWith("was 91 mm");
    }
}
