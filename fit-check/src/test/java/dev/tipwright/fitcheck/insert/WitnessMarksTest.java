package dev.tipwright.fitcheck.insert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.insert.FirstContact.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Where tip and bore touch: by hand, in thousandths of an inch, and against the clearance place by place. */
class WitnessMarksTest {

    private static final Bore TAPER = bore(0, 363, 1250, 355);
    private static final Length TENTH = mil(.1);

    @Test
    void aCylinderInATaperTouchesAtItsEnd() {
        // The bore narrows .0064 per inch: .0004 of clearance is left 1/16 in above the end.
        WitnessMarks marks = WitnessMarks.of(cylinder(359), TAPER, mil(.4));
        assertThat(marks.insertion()).isEqualTo(mil(625));
        assertThat(marks.marks()).containsExactly(new WitnessMark(mil(0), mil(62.5), mil(562.5), mil(625)));
        assertThat(marks.marks().get(0).length()).isEqualTo(mil(62.5));
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_AT_END);
        assertThat(marks.verdict().message(Units.INCH))
                .isEqualTo(
                        "in 0.625 in (5/8) deep, the tip touches at its end alone, up to 0.062 in (1/16): it is too wide"
                                + " there for the bore so deep, so what is to come off comes off from the end up");
    }

    @Test
    void theSameTaperTouchesAllAlong() {
        WitnessMarks marks = WitnessMarks.of(tip(0, 355, 1250, 363), TAPER, Length.ZERO);
        assertThat(marks.marks()).containsExactly(new WitnessMark(mil(0), mil(1250), mil(0), mil(1250)));
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_ALL_ALONG);
    }

    @Test
    void aSteeperTipTouchesAtTheMouth() {
        // The tip reaches .363 an inch up.
        WitnessMarks marks = WitnessMarks.of(tip(0, 343, 1500, 373), TAPER, TENTH);
        assertThat(marks.insertion()).isEqualTo(mil(1000));
        assertThat(marks.marks()).hasSize(1);
        assertThat(marks.marks().get(0).tipTo()).isEqualTo(mil(1000));
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_AT_MOUTH);
    }

    /** Trimmed by an inch: .399 from .500 up to 1.500, so within .001 of a bore of .400 from there to where it stops, at 1.600. */
    @Test
    void aTrimmedTipIsMarkedFromItsNewEnd() {
        DiameterProfile trimmed = tip(0, 380, 1000, 380, 1500, 399, 2500, 399, 2600, 400, 2700, 410)
                .trimmedFromStart(mil(1000));
        WitnessMarks marks = WitnessMarks.of(trimmed, bore(0, 400, 2000, 400), mil(1));
        assertThat(marks.insertion()).isEqualTo(mil(1600));
        assertThat(marks.marks()).containsExactly(new WitnessMark(mil(500), mil(1600), mil(0), mil(1100)));
    }

    /** A chamfer .030 deep: the mouth of the bore proper lies at its foot. */
    @Test
    void theFootOfAChamferIsTheMouth() {
        Bore chamfered = bore(0, 423, 30, 363, 1250, 355);
        assertThat(code(WitnessMarks.of(tip(0, 343, 1500, 373), chamfered, TENTH)))
                .isEqualTo(InsertCode.TOUCHES_AT_MOUTH);
    }

    /**
     * Two shoulders of the tip on two ledges of the bore: .335 stops on .327 at .400 up and .600 down, so .200 up faces the ledge at .800.
     * There the wider side of the one, .283, is .001 from the narrower of the other, .284; on either side of it there is .014 and .044.
     */
    @Test
    void whereTwoStepsMeetTheWorseSideOfEachCounts() {
        WitnessMarks marks = WitnessMarks.of(
                tip(0, 270, 200, 270, 200, 283, 400, 283, 400, 335, 900, 335),
                bore(0, 400, 600, 400, 600, 327, 800, 327, 800, 284, 1300, 284),
                mil(1));
        assertThat(marks.insertion()).isEqualTo(mil(1000));
        assertThat(marks.marks())
                .containsExactly(
                        new WitnessMark(mil(200), mil(200), mil(800), mil(800)),
                        new WitnessMark(mil(400), mil(400), mil(600), mil(600)));
    }

    /** Binary fractions of a millimetre, so that .25 is the very clearance: 9 less 8.75, with .5 below and .75 above. */
    @Test
    void justTheToleranceIsTouching() {
        DiameterProfile tip = DiameterProfile.of(station(0, 8.5), station(5, 8.5), station(5, 8.75), station(20, 8.75));
        Bore bore =
                Bore.ofReadings(List.of(station(0, 9.5), station(5, 9.5), station(5, 9), station(10, 9)), BoreEnd.FLAT);
        Length five = Length.ofMillimetres(5);
        assertThat(WitnessMarks.of(tip, bore, Length.ofMillimetres(.25)).marks())
                .containsExactly(new WitnessMark(five, five, five, five));
    }

    @Test
    void aCylinderThatFillsItsBoreTouchesAllAlong() {
        WitnessMarks marks = WitnessMarks.of(cylinder(355), bore(0, 355, 1250, 355), Length.ZERO);
        assertThat(marks.marks()).containsExactly(new WitnessMark(mil(0), mil(1250), mil(0), mil(1250)));
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_ALL_ALONG);
    }

    @Test
    void aBarrelledTipAndAWaistedBoreTouchBetween() {
        WitnessMarks lump = WitnessMarks.of(tip(0, 340, 400, 358, 800, 340), bore(0, 360, 1250, 350), TENTH);
        assertThat(code(lump)).isEqualTo(InsertCode.TOUCHES_BETWEEN);
        // .358 is met a quarter inch down, with the lump .4 up the tip.
        assertThat(lump.insertion()).isEqualTo(mil(650));
        assertThat(lump.marks().get(0).tipFrom()).isBetween(mil(397), mil(400));
        WitnessMarks waist =
                WitnessMarks.of(tip(0, 345, 600, 350, 1250, 351), bore(0, 360, 500, 350, 600, 350, 1100, 360), TENTH);
        assertThat(code(waist)).isEqualTo(InsertCode.TOUCHES_BETWEEN);
        assertThat(waist.insertion()).isEqualTo(mil(1100));
    }

    @Test
    void aBarrelledBoreIsTouchedAtBothEnds() {
        WitnessMarks marks = WitnessMarks.of(cylinder(355), bore(0, 355, 600, 362, 1250, 355), TENTH);
        assertThat(marks.insertion()).isEqualTo(mil(1250));
        assertThat(marks.marks()).hasSize(2);
        assertThat(marks.marks().get(0).boreTo()).isEqualTo(mil(1250));
        assertThat(marks.marks().get(1).boreFrom()).isEqualTo(mil(0));
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_AT_BOTH_ENDS);
    }

    @Test
    void twoLumpsTouchInPlaces() {
        WitnessMarks marks =
                WitnessMarks.of(tip(0, 340, 300, 355, 500, 340, 700, 355, 900, 340), bore(0, 355, 1250, 355), TENTH);
        assertThat(marks.marks()).hasSize(2);
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_IN_PLACES);
        assertThat(marks.verdict().message(Units.INCH)).contains("in 2 places");
    }

    @Test
    void aLooseTipTouchesNowhere() {
        WitnessMarks marks = WitnessMarks.of(cylinder(350), TAPER, mil(1));
        assertThat(marks.insertion()).isEqualTo(mil(1250));
        assertThat(marks.marks()).isEmpty();
        assertThat(code(marks)).isEqualTo(InsertCode.TOUCHES_NOWHERE);
        assertThat(marks.verdict().severity()).isEqualTo(Severity.NOTE);
        // Held just where it would touch, it touches.
        assertThat(WitnessMarks.of(cylinder(359), TAPER, mil(625), TENTH))
                .isEqualTo(WitnessMarks.of(cylinder(359), TAPER, TENTH));
        // Held half an inch deep by a flange it is .0068 loose at its end, and within .007 for 1/32 in.
        WitnessMarks held = WitnessMarks.of(cylinder(353), TAPER, mil(500), mil(7));
        assertThat(held.marks()).containsExactly(new WitnessMark(mil(0), mil(31.25), mil(468.75), mil(500)));
    }

    /** A shoulder of the tip on the face of the hosel, the end of a tip on a shoulder of the bore, a shoulder on a shoulder. */
    @Test
    void shouldersLeaveMarksOfNoLength() {
        DiameterProfile shouldered = tip(0, 340, 600, 340, 600, 380, 900, 380);
        WitnessMarks face = WitnessMarks.of(shouldered, TAPER, TENTH);
        assertThat(face.marks()).containsExactly(new WitnessMark(mil(600), mil(600), mil(0), mil(0)));
        assertThat(code(face)).isEqualTo(InsertCode.TOUCHES_AT_MOUTH);
        Bore counterbored = bore(0, 370, 500, 370, 500, 350, 1250, 350);
        WitnessMarks end = WitnessMarks.of(cylinder(360), counterbored, TENTH);
        assertThat(end.marks()).containsExactly(new WitnessMark(mil(0), mil(0), mil(500), mil(500)));
        assertThat(code(end)).isEqualTo(InsertCode.TOUCHES_AT_END);
        WitnessMarks both = WitnessMarks.of(tip(0, 340, 600, 340, 600, 365, 900, 365), counterbored, TENTH);
        assertThat(both.insertion()).isEqualTo(mil(1100));
        assertThat(both.marks()).containsExactly(new WitnessMark(mil(600), mil(600), mil(500), mil(500)));
        assertThat(code(both)).isEqualTo(InsertCode.TOUCHES_BETWEEN);
    }

    @Test
    void aTipThatDoesNotEnterAndOneThatIsShort() {
        WitnessMarks outside = WitnessMarks.of(cylinder(380), TAPER, TENTH);
        assertThat(outside.marks()).containsExactly(new WitnessMark(mil(0), mil(0), mil(0), mil(0)));
        // Read over half an inch only, and loose: what lies above was not read.
        DiameterProfile shortTip = DiameterProfile.cylinder(mil(355), mil(500));
        WitnessMarks marks = WitnessMarks.of(shortTip, TAPER, mil(1));
        assertThat(marks.marks().get(0).boreFrom()).isBetween(mil(1093), mil(1094));
    }

    /** Oval in oval touches by the worst diameters. */
    @Test
    void theWorstDiametersCount() {
        DiameterProfile oval =
                DiameterProfile.of(new Station(mil(0), mil(352), mil(354)), new Station(mil(8000), mil(352), mil(354)));
        Bore egg = Bore.ofReadings(
                List.of(new Station(mil(0), mil(354), mil(358)), new Station(mil(1250), mil(354), mil(358))),
                BoreEnd.FLAT);
        assertThat(code(WitnessMarks.of(oval, egg, Length.ZERO))).isEqualTo(InsertCode.TOUCHES_ALL_ALONG);
    }

    @Test
    void everyVerdictIsReached() {
        EnumSet<InsertCode> seen = EnumSet.noneOf(InsertCode.class);
        for (WitnessMarks marks : List.of(
                WitnessMarks.of(cylinder(359), TAPER, TENTH),
                WitnessMarks.of(cylinder(350), TAPER, TENTH),
                WitnessMarks.of(tip(0, 355, 1250, 363), TAPER, TENTH),
                WitnessMarks.of(tip(0, 343, 1500, 373), TAPER, TENTH),
                WitnessMarks.of(cylinder(355), bore(0, 355, 600, 362, 1250, 355), TENTH),
                WitnessMarks.of(tip(0, 340, 400, 358, 800, 340), TAPER, TENTH),
                WitnessMarks.of(tip(0, 340, 300, 355, 500, 340, 700, 355, 900, 340), bore(0, 355, 1250, 355), TENTH))) {
            seen.add((InsertCode) code(marks));
            assertThat(marks.verdict().message(Units.METRIC)).doesNotContain("{", "}");
        }
        assertThat(seen).containsExactlyInAnyOrder(InsertCode.values());
    }

    @Property
    void firstContactIsAlwaysAMark(@ForAll("pairs") Shapes.Pair pair) {
        FirstContact contact = FirstContact.of(pair.tip(), pair.bore());
        WitnessMarks marks = WitnessMarks.of(pair.tip(), pair.bore(), Length.ZERO);
        assertThat(marks.insertion()).isEqualTo(contact.insertion());
        if (contact.kind() == Kind.TOUCHES) {
            assertThat(marks.marks())
                    .anyMatch(mark -> !mark.tipFrom().moreThan(contact.tipStation())
                            && !mark.tipTo().lessThan(contact.tipStation()));
        }
        for (WitnessMark mark : marks.marks()) {
            assertThat(mark.tipFrom().plus(mark.boreTo())).isEqualTo(marks.insertion());
            assertThat(mark.tipTo().plus(mark.boreFrom())).isEqualTo(marks.insertion());
        }
    }

    /** Away from the ends of marks, a place lies in one exactly if the clearance there is within the tolerance. */
    @Property
    void aPlaceIsMarkedExactlyIfItIsThatNear(
            @ForAll("gentle") Shapes.Pair pair, @ForAll @IntRange(min = 1, max = 200) int micrometres) {
        Length near = Length.ofMicrometres(micrometres);
        WitnessMarks marks = WitnessMarks.of(pair.tip(), pair.bore(), near);
        Length inserted = marks.insertion().min(pair.tip().length());
        for (int part = 1; part < 40; part++) {
            Length z = inserted.scaledBy(part / 40.0);
            double clearance = clearance(pair, marks.insertion(), z);
            // A nanometre of place is worth 6 of diameter, on each side.
            if (Math.abs(clearance - near.nanometres()) > 20) {
                assertThat(marked(marks, z)).as("%s at %s", clearance, z).isEqualTo(clearance < near.nanometres());
            }
        }
    }

    @Property
    void aCoarserLookSeesNoLess(@ForAll("pairs") Shapes.Pair pair) {
        WitnessMarks fine = WitnessMarks.of(pair.tip(), pair.bore(), Length.ofNanometres(1));
        WitnessMarks coarse = WitnessMarks.of(pair.tip(), pair.bore(), Length.ofNanometres(5));
        for (WitnessMark mark : fine.marks()) {
            assertThat(marked(coarse, mark.tipFrom())).isTrue();
            assertThat(marked(coarse, mark.tipTo())).isTrue();
        }
    }

    private static boolean marked(WitnessMarks marks, Length z) {
        return marks.marks().stream().anyMatch(mark -> !z.lessThan(mark.tipFrom()) && !z.moreThan(mark.tipTo()));
    }

    /** In nanometres, by the worse side of a step, from the stations themselves. */
    private static double clearance(Shapes.Pair pair, Length insertion, Length z) {
        double least = Double.MAX_VALUE;
        for (double around : at(pair.bore().profile(), insertion.minus(z), false)) {
            for (double inside : at(pair.tip(), z, true)) {
                least = Math.min(least, around - inside);
            }
        }
        return least;
    }

    private static List<Double> at(DiameterProfile profile, Length place, boolean greatest) {
        long at = profile.from().plus(place).nanometres();
        List<Double> values = new ArrayList<>();
        List<Station> stations = profile.stations();
        for (int k = 1; k < stations.size(); k++) {
            long low = stations.get(k - 1).at().nanometres();
            long high = stations.get(k).at().nanometres();
            if (low < high && low <= at && at <= high) {
                double start = size(stations.get(k - 1), greatest);
                double end = size(stations.get(k), greatest);
                values.add(start + (end - start) * (at - low) / (high - low));
            }
        }
        return values;
    }

    private static double size(Station station, boolean greatest) {
        return (greatest ? station.greatest() : station.least()).nanometres();
    }

    @Provide
    Arbitrary<Shapes.Pair> pairs() {
        return Shapes.pairs();
    }

    @Provide
    Arbitrary<Shapes.Pair> gentle() {
        return Shapes.gentle();
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> WitnessMarks.of(cylinder(359), TAPER, mil(-1))).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> WitnessMarks.of(cylinder(359), TAPER, mil(40))).hasMessageContaining("tolerance");
        assertThatThrownBy(() -> WitnessMarks.of(cylinder(359), TAPER, mil(626), mil(1)))
                .hasMessageContaining("insertion");
        assertThatThrownBy(() -> new WitnessMark(mil(2), mil(1), mil(0), mil(1)))
                .hasMessageContaining("tipFrom");
        assertThatThrownBy(() -> new WitnessMark(mil(1), mil(2), mil(2), mil(1)))
                .hasMessageContaining("boreFrom");
    }

    private static FindingCode code(WitnessMarks marks) {
        return marks.verdict().code();
    }

    private static DiameterProfile cylinder(double diameter) {
        return DiameterProfile.cylinder(mil(diameter), mil(8000));
    }

    private static DiameterProfile tip(double... placesAndDiameters) {
        return DiameterProfile.of(stations(placesAndDiameters));
    }

    private static Bore bore(double... placesAndDiameters) {
        return Bore.ofReadings(stations(placesAndDiameters), BoreEnd.FLAT);
    }

    private static List<Station> stations(double... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < placesAndDiameters.length; k += 2) {
            stations.add(Station.of(mil(placesAndDiameters[k]), mil(placesAndDiameters[k + 1])));
        }
        return stations;
    }

    private static Station station(double placeMm, double diameterMm) {
        return Station.of(Length.ofMillimetres(placeMm), Length.ofMillimetres(diameterMm));
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
