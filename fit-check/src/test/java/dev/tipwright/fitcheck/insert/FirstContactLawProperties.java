package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/**
 * Laws of first contact, each with one example worked by hand: a wider tip or a narrower bore never goes further, an obstruction that
 * lies deeper never stops a tip sooner, and a job twice the size has twice the insertion.
 */
class FirstContactLawProperties {

    private static final Bore TAPER = Bore.ofTwoDiameters(mil(363), mil(355), mil(1250), BoreEnd.FLAT);
    private static final DiameterProfile PIN = DiameterProfile.cylinder(mil(359), mil(8000));

    @Provide
    Arbitrary<Shapes.Pair> pairs() {
        return Shapes.pairs();
    }

    @Provide
    Arbitrary<List<Integer>> widenings() {
        return Arbitraries.integers().between(0, 3).list().ofSize(7);
    }

    @Property
    void aTipThatGrowsAnywhereGoesNoFurther(@ForAll("pairs") Shapes.Pair pair, @ForAll("widenings") List<Integer> by) {
        DiameterProfile wider = widened(pair.tip(), by);
        assertThat(insertion(wider, pair.bore())).isLessThanOrEqualTo(insertion(pair.tip(), pair.bore()));
    }

    @Property
    void aBoreThatGrowsAnywhereLetsNoLessIn(@ForAll("pairs") Shapes.Pair pair, @ForAll("widenings") List<Integer> by) {
        Bore wider = pair.bore().withProfile(widened(pair.bore().profile(), by));
        assertThat(insertion(pair.tip(), wider)).isGreaterThanOrEqualTo(insertion(pair.tip(), pair.bore()));
    }

    /** .001 on the diameter is .001 / (.008 / 1.25) = .15625 of depth. */
    @Example
    void aThousandthMoreOnTheTipOrLessInTheBoreIsWorthTheSameDepth() {
        assertThat(FirstContact.of(PIN, TAPER).insertion()).isEqualTo(Length.parse("0.625 in"));
        assertThat(FirstContact.of(PIN.widenedBy(mil(1)), TAPER).insertion()).isEqualTo(Length.parse("0.46875 in"));
        Bore narrower = TAPER.withProfile(TAPER.profile().widenedBy(mil(-1)));
        assertThat(FirstContact.of(PIN, narrower).insertion()).isEqualTo(Length.parse("0.46875 in"));
    }

    /** The whole bore moved down, with room for anything above it. */
    @Property
    void aBoreThatStartsDeeperStopsTheTipDeeperByAsMuch(
            @ForAll("pairs") Shapes.Pair pair, @ForAll @IntRange(min = 1, max = 1_000_000) int down) {
        Bore bore = whole(pair.bore());
        // A step right at the mouth would be the third station there.
        Assume.that(bore.profile().stations().get(1).at().moreThan(Length.ZERO));
        Bore deeper = movedDown(bore, Length.ofNanometres(down));
        assertThat(insertion(pair.tip(), deeper)).isEqualTo(insertion(pair.tip(), bore) + down);
    }

    @Property
    void anObstructionFurtherDownNeverLessensTheInsertion(
            @ForAll("pairs") Shapes.Pair pair,
            @ForAll @IntRange(min = 2, max = 9) int narrow,
            @ForAll @Size(2) List<@IntRange(min = 1, max = 20) Integer> places) {
        int high = Math.min(places.get(0), places.get(1));
        int low = Math.max(places.get(0), places.get(1));
        assertThat(insertion(pair.tip(), obstructed(narrow, low)))
                .isGreaterThanOrEqualTo(insertion(pair.tip(), obstructed(narrow, high)));
    }

    /** .360 is reached half way down the half inch in which the bore falls from .370 to .350. */
    @Example
    void anObstructionHalfAnInchDeeperLetsInHalfAnInchMore() {
        DiameterProfile tip = DiameterProfile.cylinder(mil(360), mil(8000));
        assertThat(FirstContact.of(tip, waist(250)).insertion()).isEqualTo(mil(500));
        assertThat(FirstContact.of(tip, waist(750)).insertion()).isEqualTo(mil(1000));
    }

    /** The insertion is rounded down once, so that of the larger job is within the k nanometres above k times the smaller's. */
    @Property
    void allLengthsScaledByAFactorScaleTheInsertion(
            @ForAll("pairs") Shapes.Pair pair, @ForAll @IntRange(min = 2, max = 10) int k) {
        long small = insertion(pair.tip(), pair.bore());
        Bore larger = pair.bore().withProfile(scaled(pair.bore().profile(), k));
        long large = insertion(scaled(pair.tip(), k), larger);
        assertThat(large).isBetween(k * small, k * small + k - 1);
    }

    @Example
    void aJobFourTimesTheSizeGoesFourTimesAsDeep() {
        Bore larger = TAPER.withProfile(scaled(TAPER.profile(), 4));
        assertThat(FirstContact.of(scaled(PIN, 4), larger).insertion()).isEqualTo(Length.parse("2.5 in"));
    }

    private static long insertion(DiameterProfile tip, Bore bore) {
        return FirstContact.of(tip, bore).insertion().nanometres();
    }

    private static DiameterProfile widened(DiameterProfile profile, List<Integer> by) {
        List<Station> wider = new ArrayList<>();
        for (int i = 0; i < profile.stations().size(); i++) {
            wider.add(profile.stations().get(i).widenedBy(Length.ofNanometres(by.get(i))));
        }
        return profile.withStations(wider);
    }

    /** All readings of a bore, from the mouth on. */
    private static Bore whole(Bore bore) {
        Length first = bore.profile().stations().get(0).at();
        return bore.withProfile(DiameterProfile.of(bore.profile().stations().stream()
                .map(station -> station.withAt(station.at().minus(first)))
                .toList()));
    }

    private static Bore movedDown(Bore bore, Length by) {
        Length wide = Length.ofMillimetres(100);
        List<Station> moved = new ArrayList<>(List.of(Station.of(Length.ZERO, wide), Station.of(by, wide)));
        for (Station station : bore.profile().stations()) {
            moved.add(station.withAt(station.at().plus(by)));
        }
        return bore.withProfile(DiameterProfile.of(moved));
    }

    private static Bore obstructed(int narrow, int at) {
        Length wide = Length.ofMillimetres(20);
        return Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, wide),
                        Station.of(Length.ofNanometres(at), wide),
                        Station.of(Length.ofNanometres(at + 2), Length.ofNanometres(narrow)),
                        Station.of(Length.ofNanometres(at + 3), wide),
                        Station.of(Length.ofMillimetres(200), wide)),
                BoreEnd.FLAT);
    }

    private static Bore waist(int from) {
        return Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, mil(370)),
                        Station.of(mil(from), mil(370)),
                        Station.of(mil(from + 500), mil(350)),
                        Station.of(mil(from + 600), mil(370)),
                        Station.of(mil(2000), mil(370))),
                BoreEnd.FLAT);
    }

    private static DiameterProfile scaled(DiameterProfile profile, int k) {
        List<Station> larger = profile.stations().stream()
                .map(station -> new Station(
                        station.at().times(k),
                        station.least().times(k),
                        station.greatest().times(k)))
                .toList();
        return new DiameterProfile(larger, profile.from().times(k), profile.to().times(k));
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
