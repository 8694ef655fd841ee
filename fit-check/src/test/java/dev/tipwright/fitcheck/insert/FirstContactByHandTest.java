package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins what counts as contact, case by case, with answers a reader can work in the head: touching is not interference, the first
 * obstruction ends the way in, steps count with both values, and the worst diameter counts. Inches; a whole ten-thousandth and
 * a binary fraction of an inch are exact, so nothing is rounded unless the test says so.
 */
class FirstContactByHandTest {

    private static final Bore TAPER = bore(at("0", ".363"), at("1.25", ".355"));

    /** The taper loses .008 in 1.25: at half the depth it is half the way down. */
    @Test
    void aCylinderGoesToWhereTheTaperIsAsWide() {
        assertContact(FirstContact.of(cylinder(".359"), TAPER), ".625", "0", ".625");
    }

    @Test
    void touchingIsNotInterference() {
        assertClears(FirstContact.of(cylinder(".36"), bore(at("0", ".36"), at("1", ".36"))), "1");
        assertClears(FirstContact.of(cylinder(".355"), TAPER), "1.25");
    }

    @Test
    void oneNanometreWiderThanTheMouthDoesNotEnter() {
        DiameterProfile tip = cylinder(".36").widenedBy(Length.ofNanometres(1));
        assertContact(FirstContact.of(tip, bore(at("0", ".36"), at("1", ".36"))), "0", "0", "0");
    }

    @Test
    void aShoulderInTheBoreStopsAtItsPlace() {
        Bore counterbored = bore(at("0", ".37"), at(".5", ".37"), at(".5", ".355"), at("1.25", ".355"));
        assertContact(FirstContact.of(cylinder(".36"), counterbored), ".5", "0", ".5");
        assertClears(FirstContact.of(cylinder(".355"), counterbored), "1.25");
    }

    @Test
    void aShoulderOnTheTipStopsAtTheMouth() {
        DiameterProfile shouldered = tip(at("0", ".35"), at("1", ".35"), at("1", ".38"), at("8", ".38"));
        assertContact(FirstContact.of(shouldered, bore(at("0", ".36"), at("1.25", ".36"))), "1", "1", "0");
        assertClears(FirstContact.of(shouldered, bore(at("0", ".36"), at("1", ".36"))), "1");
    }

    /** Shoulder at .6 on the tip, step at .5 in the bore: they meet when the tip is .6 + .5 in. */
    @Test
    void twoShouldersMeetAtTheSumOfTheirPlaces() {
        DiameterProfile shouldered = tip(at("0", ".35"), at(".6", ".35"), at(".6", ".36"), at("8", ".36"));
        Bore counterbored = bore(at("0", ".37"), at(".5", ".37"), at(".5", ".355"), at("1.25", ".355"));
        assertContact(FirstContact.of(shouldered, counterbored), "1.1", ".6", ".5");
    }

    /** {@code .350 + .02 z > .365 - .01 y}: the steeper side gives way first, so the mouth binds at z = .75. */
    @Test
    void aConeThatIsSteeperThanTheBoreBindsAtTheMouth() {
        DiameterProfile cone = tip(at("0", ".35"), at("1", ".37"));
        assertContact(FirstContact.of(cone, bore(at("0", ".365"), at("1", ".355"))), ".75", ".75", "0");
    }

    /** A quarter inch of bell mouth loses .020: .365 is three quarters of the way down it. */
    @Test
    void aBellMouthLetsInAndHoldsBack() {
        Bore bell = bore(at("0", ".38"), at(".25", ".36"), at("1.25", ".36"));
        assertContact(FirstContact.of(cylinder(".365"), bell), ".1875", "0", ".1875");
    }

    @Test
    void whatLiesPastAnObstructionIsOutOfReach() {
        Bore barrel = bore(at("0", ".36"), at(".5", ".37"), at("1", ".36"));
        assertContact(FirstContact.of(cylinder(".365"), barrel), "0", "0", "0");
        Bore waist = bore(at("0", ".37"), at(".5", ".36"), at("1", ".37"));
        assertContact(FirstContact.of(cylinder(".365"), waist), ".25", "0", ".25");
    }

    @Test
    void theWorstDiameterOfAnOutOfRoundReadingBinds() {
        DiameterProfile oval =
                tip(new Station(in("0"), in(".350"), in(".359")), new Station(in("8"), in(".350"), in(".359")));
        Bore ovalBore =
                bore(new Station(in("0"), in(".363"), in(".37")), new Station(in("1.25"), in(".355"), in(".37")));
        assertContact(FirstContact.of(oval, ovalBore), ".625", "0", ".625");
    }

    /** One inch cut off a tip that gains .01 an inch: it now ends at .360, and reads .365 half an inch up. */
    @Test
    void aTrimmedTaperedTipIsAWiderTip() {
        DiameterProfile raw = tip(at("0", ".35"), at("2", ".37"));
        Bore bore = bore(at("0", ".365"), at("1.25", ".355"));
        assertClears(FirstContact.of(raw, bore), "1.25");
        assertContact(FirstContact.of(raw.trimmedFromStart(in("1")), bore), ".5", ".5", "0");
    }

    @Test
    void aShallowerBoreEndsSooner() {
        assertClears(FirstContact.of(cylinder(".359"), TAPER.shallowedTo(in(".5"))), ".5");
        assertContact(FirstContact.of(cylinder(".359"), TAPER.shallowedTo(in(".75"))), ".625", "0", ".625");
    }

    @Test
    void aTipShorterThanTheBoreThatFitsClears() {
        assertClears(FirstContact.of(tip(at("0", ".35"), at(".5", ".35")), TAPER), "1.25");
    }

    /** From 10 to 7 nm in 10 nm: 8 nm at 6 2/3. */
    @Test
    void theInsertionIsRoundedDown() {
        Bore bore = Bore.ofTwoDiameters(nm(10), nm(7), nm(10), BoreEnd.FLAT);
        assertThat(FirstContact.of(DiameterProfile.cylinder(nm(8), nm(100)), bore))
                .isEqualTo(new FirstContact(nm(6), nm(0), Kind.TOUCHES));
    }

    /** 2/3 nm short of the bottom is not the bottom. */
    @Test
    void aTipThatBindsWithinTheLastNanometreStillTouches() {
        Bore bore = Bore.ofTwoDiameters(nm(10), nm(7), nm(4), BoreEnd.FLAT);
        // 10 - 3/4 y = 7.5 at y = 3 1/3; the tip is 7.5 nm wide half way between 7 and 8.
        DiameterProfile half = new DiameterProfile(
                List.of(Station.of(nm(0), nm(8)), Station.of(nm(2), nm(7)), Station.of(nm(9), nm(7))), nm(1), nm(9));
        assertThat(FirstContact.of(half, bore)).isEqualTo(new FirstContact(nm(3), nm(0), Kind.TOUCHES));
    }

    /** Three metres and 100 mm are the ends of what can be given. */
    @Test
    void theLongestAndWidestDoNotOverflow() {
        Bore bore = Bore.ofTwoDiameters(
                Length.ofMillimetres(100), Length.ofNanometres(1), Length.ofMillimetres(3000), BoreEnd.FLAT);
        DiameterProfile tip = DiameterProfile.cylinder(Length.ofMillimetres(50), Length.ofMillimetres(3000));
        // 50 mm is 50 000 000 nm below the mouth of 100 000 000 nm, which falls by 99 999 999 nm in 3e9 nm.
        assertThat(FirstContact.of(tip, bore).insertion().nanometres())
                .isEqualTo(50_000_000L * 3_000_000_000L / 99_999_999L);
    }

    private static void assertContact(FirstContact contact, String i, String z, String y) {
        assertThat(contact).isEqualTo(new FirstContact(in(i), in(z), Kind.TOUCHES));
        assertThat(contact.boreStation()).isEqualTo(in(y));
    }

    private static void assertClears(FirstContact contact, String depth) {
        assertThat(contact).isEqualTo(new FirstContact(in(depth), Length.ZERO, Kind.CLEARS));
        assertThat(contact.boreStation()).isEqualTo(in(depth));
    }

    private static DiameterProfile cylinder(String diameter) {
        return DiameterProfile.cylinder(in(diameter), in("8"));
    }

    private static DiameterProfile tip(Station... stations) {
        return DiameterProfile.of(stations);
    }

    private static Bore bore(Station... stations) {
        return Bore.ofReadings(List.of(stations), BoreEnd.FLAT);
    }

    private static Station at(String place, String diameter) {
        return Station.of(in(place), in(diameter));
    }

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static Length nm(long nanometres) {
        return Length.ofNanometres(nanometres);
    }
}
