package dev.tipwright.core.flex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.Expression;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What must hold of frequencies whatever the numbers, each law with an example worked by hand. */
class FrequencyLawsTest {

    private static final Length CLAMP = SampleClub.mm(127);

    private static ClubFrequency club(Build build) {
        return ClubFrequency.of(build, CLAMP).orElseThrow();
    }

    private static double perMinute(Build build) {
        return club(build).frequency().perMinute();
    }

    private static Shaft uniform(double stiffness) {
        return SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, stiffness, 1000, stiffness)));
    }

    private static Build heavier(double grams) {
        Head head = SampleClub.head();
        return SampleClub.with(SampleClub.build(), head.withMass(head.mass().withMass(Mass.ofGrams(grams))));
    }

    @Property(tries = 100)
    void massAtTheHeadLowers(
            @ForAll @DoubleRange(min = 150, max = 400) double grams,
            @ForAll @DoubleRange(min = 0.1, max = 50) double more) {
        assertThat(perMinute(heavier(grams + more))).isLessThan(perMinute(heavier(grams)));
    }

    @Test
    void massAtTheTipByHand() {
        // f = sqrt(3 EI / (L^3 (M + 33/140 m))) / 2 pi, L 0.9 m, EI 50, m 72 g:
        // M 200 g: sqrt(150 / (0.729 * 0.2169714)) / 2 pi = 4.901 Hz = 294.1; M 210 g: 287.5. Textbook rule, within 1.5
        // % and above.
        Shaft shaft = uniform(50);
        ShaftBend bend = ShaftBend.of(shaft).orElseThrow();
        double light = bend.raw(shaft, SampleClub.timed(1, 100, 200)).perMinute();
        double heavy = bend.raw(shaft, SampleClub.timed(1, 100, 210)).perMinute();
        assertThat(light).isLessThan(294.1).isCloseTo(294.1, within(0.015 * 294.1));
        // The difference by the rule is 294.1 (1 - sqrt(0.2169714 / 0.2269714)) = 6.55.
        assertThat(light - heavy).isCloseTo(6.55, within(0.1));
    }

    @Property(tries = 100)
    void stiffnessTimesKGivesTheRootOfK(@ForAll @DoubleRange(min = 0.1, max = 10) double k) {
        Build one = SampleClub.with(
                SampleClub.build(), SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, 15, 1000, 65))));
        Build other = SampleClub.with(
                one, SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, 15 * k, 1000, 65 * k))));
        // The solver settles to about 1e-12.
        assertThat(perMinute(other)).isCloseTo(perMinute(one) * Math.sqrt(k), within(1e-9 * perMinute(other)));
    }

    @Test
    void fourTimesAsStiffIsTwiceAsFast() {
        assertThat(perMinute(SampleClub.with(SampleClub.build(), uniform(80))))
                .isCloseTo(2 * perMinute(SampleClub.with(SampleClub.build(), uniform(20))), within(1e-7));
    }

    @Property(tries = 100)
    void calibrationGivesBackTheFrequencyTimed(
            @ForAll @DoubleRange(min = 50, max = 900) double timed,
            @ForAll @DoubleRange(min = 0, max = 300) double clamp,
            @ForAll @DoubleRange(min = 0, max = 300) double grams) {
        ShaftFlex.Timed timing = SampleClub.timed(timed, clamp, grams);
        Shaft shaft = SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, 15, 1000, 65), timing));
        ShaftBend bend = ShaftBend.of(shaft).orElseThrow();
        assertThat(bend.raw(shaft, timing).perMinute()).isCloseTo(timed, within(1e-9 * timed));
        assertThat(bend.checks(shaft).get(0).residual().perMinute()).isCloseTo(0, within(1e-9 * timed));
        assertThat(bend.knots().get(0).stiffness().newtonSquareMetres())
                .isCloseTo(15 * bend.scale(), within(1e-9 * bend.scale()));
    }

    @Property(tries = 100)
    void tipTrimRaisesItMoreThanTheSameButtTrim(
            @ForAll @DoubleRange(min = 5, max = 30) double tip,
            @ForAll @DoubleRange(min = 1.5, max = 6) double taper,
            @ForAll @DoubleRange(min = 1, max = 60) double cut) {
        Shaft shaft = SampleClub.shaft().withFlex(SampleClub.flex(SampleClub.stations(0, tip, 1000, tip * taper)));
        ClubFrequency club = club(SampleClub.with(SampleClub.build(), shaft));
        TrimEffect effect = club.effectOf(SampleClub.mm(cut));
        assertThat(effect.offButt()).isGreaterThan(club.frequency());
        assertThat(effect.offTip()).isGreaterThan(effect.offButt());
    }

    @Test
    void onAUniformShaftBothCutsAreWorthTheSame() {
        // Nothing tells the tip of a uniform shaft from its butt, and both leave the same length.
        ClubFrequency club = club(SampleClub.with(SampleClub.build(), uniform(40)));
        TrimEffect half = club.effectOf(Length.parse("1/2 in"));
        assertThat(half.offTip().perMinute()).isCloseTo(half.offButt().perMinute(), within(1e-7));
        // By the rule of 33/140 f goes nearly with L^-1.5, the head lying 48 mm beyond: 1.5 * 12.7 / 811 of 248 is
        // nearly 6.
        assertThat(half.offTip().minus(club.frequency()).perMinute()).isBetween(4.0, 7.0);
    }

    @Test
    void trimForAFrequencyGivesThatFrequency() {
        ClubFrequency club = club(SampleClub.build());
        Frequency wanted = Frequency.ofPerMinute(club.frequency().perMinute() + 1.5);
        Length trim = club.tipTrimFor(wanted).orElseThrow();
        assertThat(trim).isGreaterThan(club.build().work().tipTrim());
        ClubFrequency trimmed = club.withTipTrim(trim);
        // A micrometre of trim is worth 1e-4 a minute at most.
        assertThat(trimmed.frequency().perMinute()).isCloseTo(wanted.perMinute(), within(1e-4));
        assertThat(trimmed.build().cutLength()).isEqualTo(club.build().cutLength());
        assertThat(club.tipTrimFor(Frequency.ofPerMinute(1))).isEmpty();
        assertThat(club.tipTrimFor(Frequency.ofPerMinute(1000))).isEmpty();
        Build uncut = club.build()
                .withWork(club.build().work().withTipTrim(Length.ZERO).withButtTrim(Length.ZERO));
        assertThat(club(uncut).tipTrimFor(club(uncut).frequency())).isEmpty();
    }

    @Test
    void whatIsFixedAtTheHeadCountsAndWhatIsInTheGripDoesNot() {
        Build build = SampleClub.build();
        Ferrule ferrule = new Ferrule("f", Mass.ofGrams(1.3), SampleClub.mm(9.4), SampleClub.mm(18), SampleClub.mm(9));
        Build with = build.withWork(build.work().plus(ferrule));
        assertThat(perMinute(with)).isLessThan(perMinute(build));
        Build glued = build.withWork(build.work().plus(new Adhesive("a", Mass.ofGrams(1.1))));
        assertThat(perMinute(glued)).isLessThan(perMinute(build));
        Build counter = build.withWork(
                build.work().plus(new dev.tipwright.core.part.Counterweight("c", Mass.ofGrams(20), SampleClub.mm(50))));
        assertThat(perMinute(counter)).isEqualTo(perMinute(build));
    }

    /** Seated 30 mm deep, a place 20 mm beyond the mouth is 10 mm up from the tip end and 5 mm beyond half the insertion. */
    @Test
    void aMassCountsTheSameFromWhereverItsPlaceIsCounted() {
        double beyond = perMinute(weighted(Anchor.HOSEL_MOUTH, -20));
        // The places are whole millimetres, so the moments are the same but for the last bits of their sums.
        assertThat(perMinute(weighted(Anchor.TIP_END, 10))).isCloseTo(beyond, within(1e-9));
        assertThat(perMinute(weighted(Anchor.MID_INSERTION, -5))).isCloseTo(beyond, within(1e-9));
        assertThat(perMinute(weighted(Anchor.TIP_END, 20))).isGreaterThan(beyond);
    }

    private static Build weighted(Anchor anchor, double mm) {
        Build build = SampleClub.build();
        Place place = new Place(anchor, SampleClub.mm(mm));
        return build.withWork(build.work().plus(new OtherMass("lead", Mass.ofGrams(5), place)));
    }

    @Test
    void theWorkingGivesWhatItPrints() throws Exception {
        ClubFrequency club = club(SampleClub.build());
        List<Working.Line> lines = club.working().lines();
        // S - i - c = 920 - 30 - 127 mm; 260 g of head and 30 mm of 0.08 g/mm.
        assertThat(value(lines.get(0))).isEqualTo(763);
        assertThat(club.beam()).isEqualTo(SampleClub.mm(763));
        assertThat(value(lines.get(1))).isCloseTo(262.4, within(1e-9));
        assertThat(lines.get(2).result()).isEqualTo(Term.of("f", "frequency", club.frequency()));
        assertThat(lines.get(2).inputs()).extracting(Term::symbol).contains("residual", "o", "J");
        for (Working.Line line : club.effectOf(SampleClub.mm(10)).working().lines()) {
            assertThat(value(line))
                    .isCloseTo(((Term.OfFrequency) line.result()).value().perMinute(), within(1e-6));
        }
        assertThat(club.operations().get(0).text(Units.METRIC)).contains("127.0 mm");
        assertThat(club.headline().get(0).text(Units.INCH)).endsWith("/min");
    }

    private static double value(Working.Line line) throws Exception {
        Expression expression = new Expression(line.formula());
        line.inputs().forEach(term -> expression.with(term.symbol(), new BigDecimal(term.number(Units.METRIC, 9))));
        return expression.evaluate().getNumberValue().doubleValue();
    }

    @Test
    void whatIsAssumedIsListed() {
        Build build = SampleClub.build();
        assertThat(club(build).assumptions())
                .extracting(a -> a.value().symbol())
                .containsExactly("J_h");
        Source guess = Source.assumption("as its sister");
        Head head = SampleClub.head();
        Head guessed = head.withMass(head.mass()
                .withCentre(Reading.assumed(new HeadCentre(SampleClub.mm(50), Length.ZERO), guess))
                .withInertia(Reading.assumed(Inertia.ofKilogramSquareCentimetres(3), guess)));
        StiffnessShape shape = SampleClub.stations(0, 15, 1000, 65);
        Shaft shaft = SampleClub.shaft()
                .withFlex(Reading.assumed(new ShaftFlex(Reading.assumed(shape, guess), List.of()), guess));
        List<Assumption> all =
                club(SampleClub.with(SampleClub.with(build, guessed), shaft)).assumptions();
        assertThat(all).extracting(a -> a.value().symbol()).containsExactly("along", "J_h", "n", "EI_0");
    }

    @Test
    void tooLittleKnownIsNoFrequency() {
        Shaft shaft = SampleClub.shaft();
        assertThat(ShaftBend.of(shaft.withFlex(Reading.unknown("ask")))).isEmpty();
        assertThat(ShaftBend.of(shaft.withFlex(Reading.measured(
                        new ShaftFlex(Reading.unknown("ask"), List.of(SampleClub.timed(300, 127, 200)))))))
                .isEmpty();
        assertThat(ShaftBend.of(shaft.withFlex(SampleClub.flex(SampleClub.stations(0, 15, 999, 65)))))
                .isEmpty();
        // A balance point at the third exactly leaves no mass at the butt.
        Shaft thirds = shaft.withMass(ShaftMass.of(Mass.ofGrams(81), SampleClub.mm(1000.0 / 3)));
        assertThat(ShaftBend.of(thirds)).isEmpty();
        Head head = SampleClub.head();
        Head unknown = head.withMass(head.mass().withCentre(Reading.unknown("balance it")));
        assertThat(ClubFrequency.of(SampleClub.with(SampleClub.build(), unknown), CLAMP))
                .isEmpty();
    }

    @Test
    void massWeighedAlongTheShaftCounts() {
        Shaft shaft = uniform(40);
        LineDensityProfile.Knot low = new LineDensityProfile.Knot(Length.ZERO, LineDensity.ofGramsPerMillimetre(0.08));
        LineDensityProfile.Knot high =
                new LineDensityProfile.Knot(SampleClub.mm(1000), LineDensity.ofGramsPerMillimetre(0.08));
        Shaft weighed =
                shaft.withMass(shaft.mass().withAlong(Reading.measured(new LineDensityProfile(List.of(low, high)))));
        assertThat(perMinute(SampleClub.with(SampleClub.build(), weighed)))
                .isCloseTo(perMinute(SampleClub.with(SampleClub.build(), shaft)), within(1e-9));
    }

    @Test
    void hostileInputIsRefusedByName() {
        Build build = SampleClub.build();
        ShaftBend bend = ShaftBend.of(SampleClub.shaft()).orElseThrow();
        Build apart = build.withWork(build.work().withSeat(Seat.APART));
        assertThatThrownBy(() -> new ClubFrequency(apart, bend, CLAMP)).hasMessageContaining("build must be seated");
        Head head = SampleClub.head();
        Head unknown = head.withMass(head.mass().withCentre(Reading.unknown("balance it")));
        assertThatThrownBy(() -> new ClubFrequency(SampleClub.with(build, unknown), bend, CLAMP))
                .hasMessageContaining("build must have a head");
        assertThatThrownBy(() -> new ClubFrequency(build, bend, SampleClub.mm(890)))
                .hasMessageContaining("clamp");
        assertThatThrownBy(() -> new ClubFrequency(build, bend, SampleClub.mm(-1)))
                .hasMessageContaining("clamp");
        ShaftBend half = new ShaftBend(SampleClub.stations(0, 15, 500, 40).knots(), 1);
        assertThatThrownBy(() -> new ClubFrequency(build, half, CLAMP)).hasMessageContaining("build");
        assertThatThrownBy(() -> half.raw(SampleClub.shaft(), SampleClub.timed(1, 0, 0)))
                .hasMessageContaining("shaft");
        assertThatThrownBy(() -> bend.raw(SampleClub.shaft(), SampleClub.timed(1, 1000, 0)))
                .hasMessageContaining("timed");
        assertThatThrownBy(() -> SampleClub.shaft()
                        .withFlex(SampleClub.flex(SampleClub.stations(0, 15, 1000, 65), SampleClub.timed(1, 1000, 0))))
                .hasMessageContaining("flex");
        ClubFrequency club = club(build);
        assertThatThrownBy(() -> club.withTipTrim(SampleClub.mm(81))).hasMessageContaining("tipTrim");
        assertThatThrownBy(() -> club.effectOf(SampleClub.mm(763))).hasMessageContaining("cut");
        assertThatThrownBy(() -> club.effectOf(Length.ZERO)).hasMessageContaining("cut");
        assertThatThrownBy(
                        () -> new ShaftBend(SampleClub.stations(0, 15, 500, 40).knots(), Double.NaN))
                .hasMessageContaining("scale");
        assertThatThrownBy(() -> SampleClub.stations(0, 1, 500, 1, 500, 2, 500, 3))
                .hasMessageContaining("knots");
        assertThatThrownBy(() -> SampleClub.stations(0, 1, 500, 1, 400, 2)).hasMessageContaining("knots");
        assertThatThrownBy(() -> SampleClub.stations(0, 1, 0, 2)).hasMessageContaining("knots");
        assertThatThrownBy(() -> new ShapeCheck(SampleClub.timed(1, 0, 0), Frequency.ZERO))
                .hasMessageContaining("predicted");
    }

    /** What the club has with nothing or with all the trim at its tip is reached by just that. */
    @Test
    void theEndsOfTheTrimCanBeWanted() {
        ClubFrequency club = club(SampleClub.build());
        Length all = SampleClub.mm(80); // 20 at the tip and 60 at the butt
        // A trim is found to a micrometre.
        assertThat(club.tipTrimFor(club.withTipTrim(Length.ZERO).frequency())
                        .orElseThrow()
                        .millimetres())
                .isCloseTo(0, within(1e-3));
        assertThat(club.tipTrimFor(club.withTipTrim(all).frequency())
                        .orElseThrow()
                        .millimetres())
                .isCloseTo(80, within(1e-3));
    }

    /**
     * 260 g of head 50 mm beyond the mouth and 30 mm off the axis, and 30 mm of tip of 0.08 g/mm, 2.4 g about 15 mm beyond it: 262.4 g
     * at (13000 + 36) / 262.4 = 49.6799 mm. About the mouth 260 (50^2 + 30^2) + 2.4 30^2 / 3 = 884720 g mm2, about its own centre
     * 13036^2 / 262.4 = 647627 less: 2.3709 kg cm2.
     */
    @Test
    void whatHangsOnTheBeamByHand() {
        Working working = club(SampleClub.build()).working();
        Term mass = working.lines().get(1).result();
        assertThat(mass.number(Units.METRIC, 2)).isEqualTo("262.4000");
        List<Term> inputs = working.lines().get(2).inputs();
        assertThat(inputs.get(2).symbol()).isEqualTo("o");
        assertThat(inputs.get(2).number(Units.METRIC, 3)).isEqualTo("49.6799");
        assertThat(inputs.get(3).symbol()).isEqualTo("J");
        assertThat(inputs.get(3).number(Units.METRIC, 3)).isEqualTo("2.3709");
    }

    @Test
    void theWorkingCountsWhatIsFixedAtTheHeadAlone() {
        Build build = SampleClub.build();
        Build weighted = build.withWork(build.work()
                .plus(new TipWeight("tip", Mass.ofGrams(5), SampleClub.mm(9), Length.ZERO, Length.ZERO))
                .plus(new Counterweight("butt", Mass.ofGrams(10), SampleClub.mm(20))));
        List<Term> masses = club(weighted).working().lines().get(1).inputs();
        assertThat(masses.get(3).symbol()).isEqualTo("m_a");
        assertThat(masses.get(3).number(Units.METRIC, 0)).isEqualTo("5.00");
    }
}
