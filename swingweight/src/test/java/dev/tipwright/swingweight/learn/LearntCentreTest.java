package dev.tipwright.swingweight.learn;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.PrintedWorking;
import dev.tipwright.swingweight.RandomClubs;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Pins down what one reading says of a head, by hand on the plain club: its head weighs 10 oz, a point is 1.75 oz in, so a point of
 * reading is 0.175 in of centre.
 */
class LearntCentreTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static final double READS = 61 / 1.75;

    /** The dowel knows the centre to 0.0175 in, a tenth of a point. Nothing else is uncertain. */
    private static final BenchUncertainty DOWEL = BenchUncertainty.of(
            BenchUncertainty.Tool.of(Instrument.ofStandard("dowel", "mm", 0.0175 * 25.4, 0), BenchInput.HEAD_CENTRE));

    private static ScaleReading finished(double over, double uncertainty) {
        return ScaleReading.finished(Clubs.plain(), SCALE, new SwingWeight(READS + over), uncertainty);
    }

    /** Two tenths of a point over: 0.035 in by the reading. Known to a tenth each, half is believed, and sqrt(1/2) is left. */
    @Test
    void theCentreOfThePlainClub() {
        LearntCentre learnt = LearntCentre.of(finished(0.2, 0.1), DOWEL);
        assertThat(learnt.byReading().inches()).isCloseTo(2.035, within(1e-6));
        // the budget takes a step of the input on the nanometre grid: a part in 1e5 of 0.4 mm
        assertThat(learnt.uncertaintyBefore().inches()).isCloseTo(0.0175, within(1e-6));
        assertThat(learnt.uncertaintyOfReading().inches()).isCloseTo(0.0175, within(1e-6));
        assertThat(learnt.weight()).isCloseTo(0.5, within(1e-4));
        assertThat(learnt.centre().along().inches()).isCloseTo(2.0175, within(1e-5));
        assertThat(learnt.uncertainty().inches()).isCloseTo(0.0175 / Math.sqrt(2), within(1e-6));
        assertThat(learnt.plausible()).isTrue();
        assertThat(learnt.parts().head().mass().centre())
                .isEqualTo(Reading.measured(new HeadCentre(learnt.centre().along(), Length.ZERO)));
        assertThat(learnt.finding().severity()).isEqualTo(Severity.NOTE);
        assertThat(learnt.finding().message(Units.INCH))
                .startsWith(
                        "the scale reads 0.200 points over what was predicted: the head's centre of mass is 2.018 in");
        PrintedWorking.isTrue(learnt.working());
        assertThat(learnt.headline()).hasSize(2);
    }

    /**
     * Whether the dowel is wrong by itself each time or always alike makes no difference to one head: own and shared part together are
     * 0.0175 in, by Pythagoras 0.0105 and 0.014. What else the same tool measures does not touch the centre either: the butt of the plain
     * club is not cut.
     */
    @Test
    void whatADowelHasWrongEachTimeIsUnsureOfTheCentreToo() {
        for (BenchUncertainty bench : List.of(
                dowel(0, 0.0175, BenchInput.HEAD_CENTRE),
                dowel(0.0105, 0.014, BenchInput.HEAD_CENTRE),
                dowel(0.0105, 0.014, BenchInput.HEAD_CENTRE, BenchInput.CUTS))) {
            LearntCentre learnt = LearntCentre.of(finished(0.2, 0.1), bench);
            assertThat(learnt.uncertaintyBefore().inches()).isCloseTo(0.0175, within(1e-6));
            assertThat(learnt.uncertaintyOfReading().inches()).isCloseTo(0.0175, within(1e-6));
            assertThat(learnt.centre().along().inches()).isCloseTo(2.0175, within(1e-5));
            Forecast forecast = Forecast.of(Clubs.plain(), SCALE, bench);
            assertThat(forecast.centre().inches()).isCloseTo(0.0175, within(1e-6));
            assertThat(forecast.rest()).isCloseTo(0, within(1e-4));
            assertThat(Forecast.of(Clubs.plain(), SCALE, Length.ZERO, bench).rest())
                    .isCloseTo(0, within(1e-4));
        }
    }

    private static BenchUncertainty dowel(double ownInches, double sharedInches, BenchInput... uses) {
        return BenchUncertainty.of(BenchUncertainty.Tool.of(
                Instrument.ofStandard("dowel", "mm", ownInches * 25.4, sharedInches * 25.4), uses));
    }

    /** A reading as good as exact is believed, and the club then reads what it read. */
    @Test
    void anExactReadingIsBelieved() {
        LearntCentre learnt = LearntCentre.of(finished(0.3, 0), DOWEL);
        assertThat(learnt.weight()).isEqualTo(1);
        assertThat(learnt.uncertainty()).isEqualTo(Length.ZERO);
        Build again = Clubs.plain().withParts(learnt.parts());
        // the centre is rounded to the nanometre: 2e-7 of a point
        assertThat(Balance.of(again).on(SCALE).points()).isCloseTo(READS + 0.3, within(1e-6));
    }

    @Test
    void aCentreKnownExactlyIsNotCorrected() {
        BenchUncertainty exact = BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.MASS));
        LearntCentre learnt = LearntCentre.of(finished(0.01, 0.1), exact);
        assertThat(learnt.weight()).isZero();
        assertThat(learnt.centre()).isEqualTo(learnt.before());
        assertThat(learnt.working().lines()).hasSize(1);
    }

    /** Both known to a tenth: together 0.1414, so 0.42 of a point is just within three of them and 0.43 is not. */
    @Test
    void farFromAssumedIsSaid() {
        assertThat(LearntCentre.of(finished(0.42, 0.1), DOWEL).plausible()).isTrue();
        LearntCentre far = LearntCentre.of(finished(0.43, 0.1), DOWEL);
        assertThat(far.plausible()).isFalse();
        assertThat(far.finding().code()).isEqualTo(LearnCode.FAR_FROM_ASSUMED);
        assertThat(far.finding().severity()).isEqualTo(Severity.CAUTION);
        assertThat(new LearntCentre(finished(0, 0.1), Length.ZERO, Length.ZERO).plausible())
                .isTrue();
        assertThat(new LearntCentre(finished(0.1, 0.1), Length.ZERO, Length.ZERO).plausible())
                .isFalse();
    }

    /** The ground is 2.25 in below the mouth; an inch below it is 1.25 in down, 7.14 points; an inch above the mouth 3 in up, 17.1. */
    @Test
    void outsideTheHeadNothingIsLearnt() {
        for (double over : new double[] {7.15, -17.2}) {
            LearntCentre learnt = LearntCentre.of(finished(over, 0.1), DOWEL);
            assertThat(learnt.plausible()).isFalse();
            assertThat(learnt.centre()).isEqualTo(learnt.before());
            assertThat(learnt.uncertainty()).isEqualTo(learnt.uncertaintyBefore());
            assertThat(learnt.finding().severity()).isEqualTo(Severity.STOP);
            assertThat(learnt.working().lines()).hasSize(1);
        }
        assertThat(LearntCentre.of(finished(7.14, 0.1), DOWEL).finding().severity())
                .isEqualTo(Severity.CAUTION);
    }

    /**
     * The plain club dry, its grip of no cap left off: shaft 12, head 230 oz in; 1/4 oz of clamp at 1/2 in, 13.5 in before the fulcrum: -3.375.
     * With a cap of 1/8 in the same club lies 1/8 in further in: what is left weighs 13.25 oz, 1.65625 oz in less.
     */
    @Test
    void aDryBuildLiesOnItsButt() {
        OtherMass clamp =
                new OtherMass("clamp", Clubs.grams(28.349523125 / 4), new Place(Anchor.GRIP_TOP, Clubs.inches(.5)));
        ScaleReading dry = ScaleReading.dry(Clubs.plain(), List.of(clamp), SCALE, SCALE.parse("E0"), 0.1);
        assertThat(dry.predicted().points()).isCloseTo((242 - 3.375 - 161) / 1.75, within(1e-9));
        assertThat(dry.over()).isCloseTo(40 - (242 - 3.375 - 161) / 1.75, within(1e-9));
        Build capped = Clubs.plain()
                .withParts(Clubs.plain()
                        .parts()
                        .withGrip(Clubs.plain().parts().grip().withCap(Clubs.inches(.125))));
        OtherMass same = clamp.withPlace(new Place(Anchor.GRIP_TOP, Clubs.inches(.625)));
        ScaleReading stopped = ScaleReading.dry(capped, List.of(same), SCALE, SCALE.parse("E0"), 0.1);
        assertThat(stopped.predicted().points()).isCloseTo(dry.predicted().points(), within(1e-9));
        assertThat(ScaleReading.dry(Clubs.practiceSix(), List.of(), SCALE, SCALE.parse("E0"), 0.1)
                        .build()
                        .work()
                        .attached())
                .isEmpty();
    }

    /** Whatever else is on a dry build, its grip off, the scale reads what the club does with a grip of no mass and no cap. */
    @Test
    void theGripLeftOffIsAGripOfNothing() {
        RandomClubs clubs = new RandomClubs(20_261_106);
        for (int i = 0; i < 1_000; i++) {
            Build build = clubs.next();
            ScaleReading dry = new ScaleReading(build, false, SCALE, SCALE.parse("D0"), 0);
            Build bare =
                    build.withParts(build.parts().withGrip(build.parts().grip().withMass(Mass.ofPicograms(1))));
            // the cap of these clubs is zero; a picogram of grip is 1e-12 of a point
            assertThat(dry.predicted().points())
                    .as("club %d", i)
                    .isCloseTo(Balance.of(bare).on(SCALE).points(), within(1e-9));
        }
    }

    @Test
    void theRestOfTheSetIsForecastAnew() {
        Build plain = Clubs.plain();
        Head six = plain.parts().head();
        Head unread = six.withMass(six.mass().withCentre(Reading.unknown("a dowel")));
        Build read = Clubs.withHead(plain, unread);
        Build seven = Clubs.withHead(
                plain, unread.withLabel("7").withGeometry(six.geometry().withMouthToGround(Clubs.inches(4.5))));
        Build known = Clubs.withHead(plain, six.withLabel("known"));
        // assumed at 0.95 x 2.25 in; a point over puts it 0.175 in further down
        SwingWeight reads = Balance.of(read).on(SCALE).plus(1);
        LearntCentre learnt = LearntCentre.of(ScaleReading.finished(read, SCALE, reads, 0), DOWEL);
        assertThat(learnt.uncertaintyBefore().inches()).isCloseTo(0.1, within(1e-6));
        assertThat(learnt.centre().along().inches()).isCloseTo(0.95 * 2.25 + 0.175, within(1e-6));
        List<Forecast> forecasts = learnt.forecast(ClubSet.of(read, seven, known), Length.ofMillimetres(0.5), DOWEL);
        assertThat(forecasts.get(0).reads().over(reads)).isCloseTo(0, within(1e-6));
        assertThat(forecasts.get(0).centre()).isEqualTo(Length.ZERO);
        // twice as far from mouth to ground, twice as far down: 2 x 2.3125 in, and 4.625 in of 10 oz from the mouth at
        // 35 in
        double seventh = (-20 + 12 + 10 * (35 + 2 * (0.95 * 2.25 + 0.175) - 14) - 161) / 1.75;
        assertThat(forecasts.get(1).reads().points()).isCloseTo(seventh, within(1e-5));
        assertThat(forecasts.get(1).centre()).isEqualTo(Length.ofMillimetres(0.5));
        assertThat(forecasts.get(2).reads().points()).isCloseTo(READS, within(1e-9));
        assertThat(forecasts.get(2).centre().inches()).isCloseTo(0.0175, within(1e-6));
    }

    /** The centre to a tenth of a point and the rest to 0.2: sqrt(0.05); 1.96 of them at 95 %, and 2.64 for six at once (1 - 0.05/6). */
    @Test
    void theIntervalOfAForecast() {
        Forecast forecast = new Forecast(Clubs.plain(), SCALE, Clubs.inches(.0175), 0.2);
        assertThat(forecast.budget().standardUncertainty()).isCloseTo(Math.sqrt(0.05), within(1e-6));
        assertThat(forecast.interval(0.95, 1).width() / 2).isCloseTo(1.95996 * Math.sqrt(0.05), within(1e-4));
        assertThat(forecast.interval(0.95, 6).width() / 2).isCloseTo(2.63826 * Math.sqrt(0.05), within(1e-4));
    }

    @Test
    void foundAgainstPredicted() {
        SwingWeight d2 = SCALE.parse("D2");
        FoundCheck near = new FoundCheck(SCALE, d2, 0.4, d2.plus(0.5), 0.3);
        assertThat(near.en()).isCloseTo(1, within(1e-12));
        assertThat(new FoundCheck(SCALE, d2, 0.4, d2.plus(0.51), 0.3).agrees()).isFalse();
        assertThat(new FoundCheck(SCALE, d2, 0.4, d2.plus(-0.49), 0.3).agrees()).isTrue();
        FoundCheck far = new FoundCheck(SCALE, d2, 0.4, d2.plus(-1), 0.3);
        assertThat(far.finding().message(Units.INCH))
                .isEqualTo(
                        "found D1.0, predicted D2.0: 1.000 points apart, more than the 0.500 that the two are known to, so"
                                + " something is not as it was taken to be");
        assertThat(new FoundCheck(SCALE, d2, 0.4, d2.plus(0.1), 0.3).finding().code())
                .isEqualTo(LearnCode.AS_PREDICTED);
        PrintedWorking.isTrue(far.working());
        Forecast forecast = new Forecast(Clubs.plain(), SCALE, Length.ZERO, 0.2);
        FoundCheck of = FoundCheck.of(forecast, finished(0.1, 0.15));
        assertThat(of.predictedExpanded()).isCloseTo(0.4, within(1e-9));
        assertThat(of.foundExpanded()).isEqualTo(0.3);
        SwingWeightScale other = new SwingWeightScale(Clubs.inches(12), SCALE.zero(), SCALE.perPoint(), "", 1);
        assertThatThrownBy(() -> FoundCheck.of(new Forecast(Clubs.plain(), other, Length.ZERO, 0), finished(0, 0)))
                .hasMessageStartingWith("reading must be of the scale of the forecast");
    }

    @Test
    void hostileInputIsNamed() {
        Build plain = Clubs.plain();
        Build apart = plain.withWork(Work.NONE);
        SwingWeight d0 = SCALE.parse("D0");
        ScaleReading reading = finished(0, 0.1);
        missing("build", () -> ScaleReading.finished(null, SCALE, d0, 0));
        missing("scale", () -> ScaleReading.finished(plain, null, d0, 0));
        missing("read", () -> ScaleReading.finished(plain, SCALE, null, 0));
        missing("planned", () -> ScaleReading.dry(null, List.of(), SCALE, d0, 0));
        missing("on", () -> ScaleReading.dry(plain, null, SCALE, d0, 0));
        refused(
                "uncertainty must be from 0 to 100 points, was -1.0",
                () -> ScaleReading.finished(plain, SCALE, d0, -1));
        refused(
                "uncertainty must be from 0 to 100 points, was NaN",
                () -> ScaleReading.finished(plain, SCALE, d0, Double.NaN));
        refused(
                "uncertainty must be from 0 to 100 points, was 101.0",
                () -> ScaleReading.finished(plain, SCALE, d0, 101));
        assertThatThrownBy(() -> ScaleReading.dry(apart, List.of(), SCALE, d0, 0))
                .hasMessageStartingWith("planned must be seated");
        assertThatThrownBy(() -> reading.withBuild(apart)).hasMessageStartingWith("build must be seated");
        missing("reading", () -> LearntCentre.of(null, DOWEL));
        missing("bench", () -> LearntCentre.of(reading, null));
        LearntCentre learnt = LearntCentre.of(reading, DOWEL);
        missing("set", () -> learnt.forecast(null, Length.ZERO, DOWEL));
        missing("scatter", () -> learnt.forecast(ClubSet.of(plain), null, DOWEL));
        missing("bench", () -> learnt.forecast(ClubSet.of(plain), Length.ZERO, null));
        assertThatThrownBy(() -> new Forecast(apart, SCALE, Length.ZERO, 0)).hasMessageStartingWith("build must be");
        refused("rest must be from 0 to 1000 points, was -1.0", () -> new Forecast(plain, SCALE, Length.ZERO, -1));
        refused("rest must be from 0 to 1000 points, was 1001.0", () -> new Forecast(plain, SCALE, Length.ZERO, 1001));
        Forecast forecast = new Forecast(plain, SCALE, Length.ZERO, 0.1);
        refused("probability must be at least 0.5 and below 1, was 1.0", () -> forecast.interval(1, 1));
        refused("probability must be at least 0.5 and below 1, was 0.4", () -> forecast.interval(0.4, 1));
        refused("clubs must be from 1 to 1000, was 0", () -> forecast.interval(0.9, 0));
        refused("clubs must be from 1 to 1000, was 1001", () -> forecast.interval(0.9, 1001));
        missing("centre", () -> Forecast.of(plain, SCALE, null, DOWEL));
        missing("build", () -> Forecast.of(null, SCALE, DOWEL));
        missing("scale", () -> Forecast.of(plain, null, DOWEL));
        assertThatThrownBy(() -> Forecast.of(apart, SCALE, DOWEL))
                .hasMessageStartingWith("build must be a seated club");
        for (double bad : new double[] {0, 1001, Double.NaN}) {
            assertThatThrownBy(() -> new FoundCheck(SCALE, d0, bad, d0, 0))
                    .hasMessageStartingWith("predictedExpanded must be from 1e-9 to 1000 points");
        }
        for (double bad : new double[] {-1, 1001}) {
            assertThatThrownBy(() -> new FoundCheck(SCALE, d0, 1, d0, bad))
                    .hasMessageStartingWith("foundExpanded must be from 0 to 1000 points");
        }
    }

    /** A grip of a picogram, weighed to a gram, may weigh less than nothing: no such club can be built. */
    @Test
    void aClubThatCannotBeBuiltALittleDifferentlyTeachesNothing() {
        Build plain = Clubs.plain();
        Build bare = plain.withParts(plain.parts().withGrip(plain.parts().grip().withMass(Mass.ofPicograms(1))));
        BenchUncertainty coarse = BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 1, 0), BenchInput.MASS));
        assertThatThrownBy(() -> LearntCentre.of(ScaleReading.finished(bare, SCALE, SCALE.parse("D0"), 0.1), coarse))
                .hasMessageStartingWith("reading must be of a club that can be built a little differently");
    }
}
