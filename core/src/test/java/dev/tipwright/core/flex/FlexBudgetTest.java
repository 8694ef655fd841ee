package dev.tipwright.core.flex;

import static dev.tipwright.core.flex.SampleClub.flex;
import static dev.tipwright.core.flex.SampleClub.mm;
import static dev.tipwright.core.flex.SampleClub.stations;
import static dev.tipwright.core.flex.SampleClub.timed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How sure a frequency is, by hand: a shaft of one stiffness that weighs next to nothing (0.01 g), a head {@code M = 260 g} whose centre
 * is {@code o = 50 mm} beyond the mouth of a beam of {@code l = 1000 - 20 - 60 - 30 - 130 = 760 mm}, so
 * {@code f = sqrt(3 EI / (M ((l + o)^3 - o^3))) / 2 pi}; timed raw with 200 g on the tip of {@code a = 870 mm}, {@code f_t = sqrt(3 EI /
 * (0.2 a^3)) / 2 pi}. So {@code f = f_t sqrt(0.2 a^3 / (M ((l + o)^3 - o^3)))}, and every derivative is on paper.
 */
class FlexBudgetTest {

    private static final double TIMED = 290;
    private static final double A = 0.870;
    private static final double L = 0.810;
    private static final double O = 0.050;
    private static final double CUBES = L * L * L - O * O * O;
    private static final double F = TIMED * Math.sqrt(0.2 * A * A * A / (0.26 * CUBES));

    /** The shaft weighs: 33/140 of 0.01 g are a hundred thousandth of the head. Steps and rounding are smaller still. */
    private static final double ROUGH = 1e-4;

    private static final BenchUncertainty BENCH = BenchUncertainty.of(
            Tool.of(Instrument.ofStandard("timer", "/min", 1, 0), BenchInput.TIMED_FREQUENCY),
            Tool.of(Instrument.ofStandard("scale", "g", 0.01, 0), BenchInput.MASS),
            Tool.of(Instrument.ofStandard("dowel", "mm", 1, 0), BenchInput.HEAD_CENTRE),
            Tool.of(
                    Instrument.ofStandard("rule", "mm", 0.4, 0),
                    BenchInput.CUTS,
                    BenchInput.TIMED_CLAMP,
                    BenchInput.RAW_LENGTH));

    private static Build build(Reading<ShaftFlex> flex) {
        Build sample = SampleClub.build();
        Build light = SampleClub.with(
                sample,
                sample.parts()
                        .shaft()
                        .withMass(ShaftMass.of(Mass.ofGrams(0.01), mm(500)))
                        .withFlex(flex));
        return SampleClub.with(
                light,
                light.parts()
                        .head()
                        .withMass(light.parts()
                                .head()
                                .mass()
                                .withCentre(Reading.measured(new HeadCentre(mm(50), mm(0))))));
    }

    private static final Build CLUB = build(flex(stations(0, 40, 1000, 40), timed(TIMED, 130, 200)));
    private static final ClubFrequency FREQUENCY =
            ClubFrequency.of(CLUB, mm(130)).orElseThrow();

    private static Budget budget(Measure measure) {
        return measure.budget(CLUB, BENCH).orElseThrow();
    }

    private static double contribution(Budget budget, String name) {
        Contribution line = budget.contributions().stream()
                .filter(one -> one.input().name().equals(name))
                .findFirst()
                .orElseThrow();
        return line.uncertainty();
    }

    @Test
    void everyContributionIsTheOneOnPaper() {
        Budget budget = budget(FREQUENCY.measures().get(0));
        assertThat(budget.value()).isCloseTo(F, within(ROUGH * F));
        double timing = F / TIMED;
        double mass = -F / 2 / 260 * 0.01;
        double centre = -1.5 * F * (L * L - O * O) / CUBES * 1e-3;
        double cut = -1.5 * F * L * L / CUBES * 0.4e-3;
        double clamp = -1.5 * F / A * 0.4e-3;
        // A longer raw shaft, the clamp and the butt mark where they were: it was timed longer, so is stiffer.
        double raw = -clamp;
        assertThat(contribution(budget, "timed frequency")).isCloseTo(timing, within(ROUGH));
        assertThat(contribution(budget, "head mass")).isCloseTo(mass, within(ROUGH));
        assertThat(contribution(budget, "centre of mass")).isCloseTo(centre, within(ROUGH));
        assertThat(contribution(budget, "cut length")).isCloseTo(cut, within(ROUGH));
        assertThat(contribution(budget, "timed clamp")).isCloseTo(clamp, within(ROUGH));
        assertThat(contribution(budget, "raw length")).isCloseTo(raw, within(ROUGH));
        // On a shaft of one stiffness it does not matter which end the trim comes off.
        assertThat(contribution(budget, "tip trim cut")).isCloseTo(0, within(ROUGH));
        double all = Math.sqrt(timing * timing + mass * mass + centre * centre + cut * cut + clamp * clamp + raw * raw);
        assertThat(budget.standardUncertainty()).isCloseTo(all, within(ROUGH));
        assertThat(FREQUENCY.measures().get(0).uncertainty(budget, Units.INCH)).endsWith(" /min");
    }

    /** Both clubs go with the timing, so their difference does: a hundredth off in the timing is a hundredth off in the rise. */
    @Test
    void ofARiseMostOfTheTimingFallsOutAgain() {
        TrimEffect effect = FREQUENCY.effectOf(mm(10));
        double shorter = L - 0.010;
        double rise = F * (Math.sqrt(CUBES / (shorter * shorter * shorter - O * O * O)) - 1);
        List<Measure> measures = effect.measures();
        assertThat(measures).extracting(Measure::symbol).containsExactly("f_T", "d_T", "f_U", "d_U");
        Budget tip = budget(measures.get(1));
        Budget butt = budget(measures.get(3));
        assertThat(tip.value()).isCloseTo(rise, within(ROUGH * F));
        assertThat(butt.value()).isCloseTo(rise, within(ROUGH * F));
        assertThat(contribution(tip, "timed frequency")).isCloseTo(rise / TIMED, within(ROUGH));
        assertThat(contribution(budget(measures.get(2)), "timed frequency"))
                .isCloseTo((F + rise) / TIMED, within(ROUGH));
        assertThat(budget(measures.get(0)).value()).isCloseTo(F + rise, within(ROUGH * F));
        assertThat(butt.standardUncertainty())
                .isLessThan(0.1 * budget(measures.get(2)).standardUncertainty());
    }

    /** The trim for a frequency moves against it: {@code dT = -df / (df/dT)}. */
    @Test
    void theTrimForAFrequencyIsAsSureAsTheFrequencyOverItsSlope() {
        Build build = build(flex(stations(0, 15, 1000, 65), timed(TIMED, 130, 200)));
        ClubFrequency club = ClubFrequency.of(build, mm(130)).orElseThrow();
        BenchUncertainty timer = BenchUncertainty.of(
                Tool.of(Instrument.ofStandard("timer", "/min", 0.5, 0), BenchInput.TIMED_FREQUENCY));
        double frequency = club.frequency().perMinute();
        double slope = (club.withTipTrim(mm(20.5)).frequency().perMinute()
                - club.withTipTrim(mm(19.5)).frequency().perMinute());
        Budget budget =
                club.tipTrimMeasure(club.frequency()).budget(build, timer).orElseThrow();
        assertThat(budget.value()).isCloseTo(20, within(1e-3));
        // The search ends within 0.1 um; a step is a sixteenth of a cycle, some 0.4 mm.
        assertThat(budget.standardUncertainty())
                .isCloseTo(0.5 * frequency / TIMED / slope, within(2e-3 * budget.standardUncertainty()));
        assertThat(club.tipTrimMeasure(Frequency.ofPerMinute(1)).budget(build, timer))
                .isEmpty();
    }

    @Test
    void withoutATimingNobodyKnows() {
        Build untimed = build(flex(stations(0, 40, 1000, 40)));
        ClubFrequency club = ClubFrequency.of(untimed, mm(130)).orElseThrow();
        assertThat(club.measures()).isEmpty();
        assertThat(club.effectOf(mm(10)).measures()).isEmpty();
        Build unknown = build(Reading.unknown("the shaft's maker"));
        assertThat(new ClubFrequency(unknown, FREQUENCY.bend(), mm(130)).measures())
                .isEmpty();
        assertThat(BENCH.inputs(unknown))
                .noneMatch(input -> input.input().name().startsWith("timed"));
    }

    /** A stiffness that was handed over is no reading of the bench: a timing moves it no more. */
    @Test
    void aStiffnessThatWasGivenStays() {
        ShaftBend given = new ShaftBend(stations(0, 40, 1000, 40).knots(), 1);
        ClubFrequency club = new ClubFrequency(CLUB, given, mm(130));
        Budget budget = budget(club.measures().get(0));
        assertThat(contribution(budget, "timed frequency")).isZero();
        assertThat(contribution(budget, "head mass"))
                .isCloseTo(-club.frequency().perMinute() / 2 / 260 * 0.01, within(ROUGH));
    }

    @Test
    void aTubeReadToItsButtHasABudgetToo() {
        Build steel = SampleClub.build();
        Build tube = SampleClub.with(
                steel,
                steel.parts()
                        .shaft()
                        .withSection(steel.parts()
                                .shaft()
                                .section()
                                .withWall(Reading.measured(
                                        new Wall(ThicknessProfile.uniform(mm(0.5)), Reading.unknown("its maker")))))
                        .withFlex(
                                flex(new StiffnessShape.Tube(Stress.ofMegapascals(200_000)), timed(TIMED, 130, 200))));
        ClubFrequency club = ClubFrequency.of(tube, mm(130)).orElseThrow();
        Budget budget = club.measures().get(0).budget(tube, BENCH).orElseThrow();
        assertThat(contribution(budget, "raw length")).isPositive();
    }

    @Test
    void badArgumentsAreNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> FREQUENCY.tipTrimMeasure(null))
                .withMessage("wanted must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FREQUENCY
                        .tipTrimMeasure(Frequency.ofPerMinute(1))
                        .value()
                        .applyAsDouble(CLUB))
                .withMessageStartingWith("wanted must be within reach of a tip trim, was 1");
    }
}
