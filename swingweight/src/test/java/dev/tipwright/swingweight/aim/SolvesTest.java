package dev.tipwright.swingweight.aim;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Severity;
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
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;

/**
 * Pins down what is solved for a swing weight: by hand on the plain club; fed back on ten thousand others to 1e-6 of a point, which is what
 * a nanometre of the heaviest club comes to several times over; and against a general optimiser (Brent's, of
 * Commons Math) that knows only what the built club reads.
 */
class SolvesTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static final double FED_BACK = 1e-6;

    /** Plain club, 222 oz in, E0 is 231: 9 oz in are missing. Head 23 in, tip (less 1/4 in) 21.75 in, grip -10 in from the fulcrum. */
    @Test
    void theMassesOfThePlainClub() {
        Build plain = Clubs.plain();
        SwingWeight e0 = SCALE.parse("E0");
        MassSolve head = MassSolve.ofHead(plain, SCALE, e0, Clubs.grams(100), Clubs.grams(400));
        assertThat(head.exact().orElseThrow().ounces()).isCloseTo(10 + 9 / 23.0, within(1e-9));
        MassSolve tip = MassSolve.ofTipWeight(plain, SCALE, e0, Clubs.inches(.25), Clubs.grams(20));
        assertThat(tip.mass().ounces()).isCloseTo(9 / 21.75, within(1e-9));
        MassSolve grip = MassSolve.ofGrip(plain, SCALE, e0, Clubs.grams(20), Clubs.grams(100));
        assertThat(grip.mass().ounces()).isCloseTo(2 - 9 / 10.0, within(1e-9));
        // down to D0, 213.5: 8.5 oz in too many, at 1 in a counterweight works 13 in on the other side
        MassSolve butt = MassSolve.ofCounterweight(plain, SCALE, SCALE.parse("D0"), Clubs.inches(1), Clubs.grams(100));
        assertThat(butt.mass().ounces()).isCloseTo(8.5 / 13, within(1e-9));
        for (MassSolve solve : List.of(head, tip, grip, butt)) {
            assertThat(solve.reached()).isTrue();
            assertThat(solve.finding().severity()).isEqualTo(Severity.NOTE);
            assertThat(solve.reads().over(solve.wanted())).isCloseTo(0, within(FED_BACK));
            PrintedWorking.isTrue(solve.working());
            assertThat(solve.headline().get(1).text(Units.INCH)).isEqualTo(SCALE.designation(solve.wanted()));
        }
        assertThat(tip.finding().message(Units.METRIC)).isEqualTo("tip weight of 11.73 g gives E0.0");
        assertThat(tip.after().work().attached()).hasSize(1);
        assertThat(butt.after().work().attached()).hasSize(1);
    }

    @Test
    void outOfBoundsTheBoundIsTakenAndSaid() {
        Build plain = Clubs.plain();
        MassSolve tip = MassSolve.ofTipWeight(plain, SCALE, SCALE.parse("E0"), Clubs.inches(.25), Clubs.grams(10));
        assertThat(tip.reached()).isFalse();
        assertThat(tip.mass()).isEqualTo(Clubs.grams(10));
        assertThat(tip.finding().code()).isEqualTo(AimCode.OUT_OF_BOUNDS);
        // 10 g, 0.35274 oz, at 21.75 in: 7.672 oz in, 4.384 points over 34.857: 39.241
        assertThat(tip.finding().message(Units.METRIC))
                .isEqualTo(
                        "tip weight would have to be 11.73 g, which is not from 0.00 g to 10.00 g: at the bound it reads"
                                + " D9.2");
        MassSolve lighter = MassSolve.ofTipWeight(plain, SCALE, SCALE.parse("C0"), Length.ZERO, Clubs.grams(10));
        assertThat(lighter.mass()).isEqualTo(Mass.ZERO);
        assertThat(lighter.after()).isEqualTo(plain);
        MassSolve counter =
                MassSolve.ofCounterweight(plain, SCALE, SCALE.parse("E0"), Clubs.inches(1), Clubs.grams(10));
        assertThat(counter.exact().orElseThrow().picograms()).isNegative();
        assertThat(counter.after()).isEqualTo(plain);
        MassSolve heavy = MassSolve.ofHead(plain, SCALE, SCALE.parse("E0"), Clubs.grams(300), Clubs.grams(400));
        assertThat(heavy.mass()).isEqualTo(Clubs.grams(300));
    }

    @Test
    void atTheFulcrumNoMassHelps() {
        Build plain = Clubs.plain();
        MassSolve solve =
                MassSolve.ofCounterweight(plain, SCALE, SCALE.parse("E0"), Clubs.inches(14), Clubs.grams(100));
        assertThat(solve.exact()).isEmpty();
        assertThat(solve.reached()).isFalse();
        assertThat(solve.mass()).isEqualTo(Mass.ZERO);
        assertThat(solve.measures()).isEmpty();
        assertThat(solve.working().lines()).isEmpty();
        assertThat(solve.finding().code()).isEqualTo(AimCode.AT_FULCRUM);
        assertThat(solve.finding().message(Units.INCH))
                .isEqualTo(
                        "counterweight would lie 14.000 in (14) from the top of the grip, at the fulcrum: no mass there changes"
                                + " the reading");
    }

    /**
     * A head known to 1 g: a tip weight must make up for it in the ratio of the arms, 23 in to 21.75 in.
     */
    @Test
    void theSolvedMassHasABudget() {
        MassSolve tip =
                MassSolve.ofTipWeight(Clubs.plain(), SCALE, SCALE.parse("E0"), Clubs.inches(.25), Clubs.grams(20));
        BenchUncertainty bench = BenchUncertainty.of(
                BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 1, 0), BenchInput.MASS));
        // grip 10 in and shaft 4 in from the fulcrum, all three weighed on their own
        double u = Math.sqrt(23 * 23 + 10 * 10 + 4 * 4) / 21.75;
        assertThat(tip.measures()
                        .get(0)
                        .budget(tip.build(), bench)
                        .orElseThrow()
                        .standardUncertainty())
                .isCloseTo(u, within(1e-6));
    }

    @Test
    void tenThousandClubsFedBack() {
        RandomClubs clubs = new RandomClubs(20_261_102);
        SplittableRandom random = new SplittableRandom(12);
        int reached = 0;
        for (int i = 0; i < 10_000; i++) {
            Build build = clubs.next();
            SwingWeight wanted = Balance.of(build).on(SCALE).plus(random.nextDouble(-4, 4));
            for (MassSolve solve : List.of(
                    MassSolve.ofHead(build, SCALE, wanted, Clubs.grams(1), Clubs.grams(600)),
                    MassSolve.ofGrip(build, SCALE, wanted, Clubs.grams(1), Clubs.grams(600)),
                    MassSolve.ofTipWeight(build, SCALE, wanted, Length.ofMillimetres(5), Clubs.grams(600)),
                    MassSolve.ofCounterweight(
                            build, SCALE, wanted, Length.ofMillimetres(random.nextInt(100)), Clubs.grams(600)))) {
                if (solve.reached()) {
                    reached++;
                    assertThat(solve.reads().over(wanted))
                            .as("club %d, %s", i, solve.where())
                            .isCloseTo(0, within(FED_BACK));
                }
            }
            LengthSolve length = LengthSolve.of(build, SCALE, wanted, Length.ofInches(25));
            if (length.reached()) {
                reached++;
                assertThat(length.reads().over(wanted)).as("club %d, length", i).isCloseTo(0, within(FED_BACK));
            }
        }
        assertThat(reached).isGreaterThan(25_000);
    }

    @Test
    void aGeneralOptimiserFindsTheSame() {
        RandomClubs clubs = new RandomClubs(20_261_103);
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 10_000; i++) {
            Build build = clubs.next();
            SwingWeight wanted = Balance.of(build).on(SCALE).plus(random.nextDouble(0.5, 2));
            MassSolve tip = MassSolve.ofTipWeight(build, SCALE, wanted, Length.ofMillimetres(5), Clubs.grams(40));
            if (tip.reached()) {
                double grams = optimum(
                        wanted,
                        1e-6,
                        40,
                        (x, target) -> Balance.of(build.withWork(
                                        build.work().plus(Clubs.weight(x).withCentre(Length.ofMillimetres(5)))))
                                .on(SCALE)
                                .over(target));
                // a parabola is flat to the square root of sixteen digits: 1e-6 of its half-width of 40 g and some
                assertThat(tip.mass().grams()).as("club %d", i).isCloseTo(grams, within(1e-4));
            }
            LengthSolve length = LengthSolve.of(build, SCALE, wanted, Length.ofInches(25));
            if (length.reached()) {
                double trim = optimum(
                        wanted,
                        0,
                        100,
                        (x, target) -> Balance.of(build.withWork(build.work().withButtTrim(Length.ofMillimetres(x))))
                                .on(SCALE)
                                .over(target));
                assertThat(length.after().work().buttTrim().millimetres())
                        .as("club %d", i)
                        .isCloseTo(trim, within(1e-4));
            }
        }
    }

    private static double optimum(
            SwingWeight wanted, double low, double high, BiFunction<Double, SwingWeight, Double> off) {
        return new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(500),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(x -> Math.pow(off.apply(x, wanted), 2)),
                        new SearchInterval(low, high))
                .getPoint();
    }

    /**
     * Plain club with the butt cut an eighth: 220.521484 oz in, see the worth of an eighth. Asked for that, the eighth is found.
     */
    @Test
    void theLengthOfThePlainClub() {
        double moment = -20 + (3 - 1.0 / 96) * 3.9375 + 228.75;
        SwingWeight wanted = new SwingWeight((moment - 161) / 1.75);
        LengthSolve solve = LengthSolve.of(Clubs.plain(), SCALE, wanted, Clubs.inches(30));
        assertThat(solve.cutLength().inches()).isCloseTo(35.875, within(1e-7));
        assertThat(solve.reached()).isTrue();
        assertThat(solve.finding().message(Units.INCH)).isEqualTo("a cut length of 35.875 in (35 7/8) gives D4.0");
        assertThat(solve.headline().get(1).text(Units.INCH)).isEqualTo("37.125 in (37 1/8)");
        PrintedWorking.isTrue(solve.working());
    }

    @Test
    void noLengthIsSaid() {
        LengthSolve longer = LengthSolve.of(Clubs.plain(), SCALE, SCALE.parse("E5"), Clubs.inches(30));
        assertThat(longer.reached()).isFalse();
        assertThat(longer.cutLength()).isEqualTo(Clubs.inches(36));
        assertThat(longer.finding().code()).isEqualTo(AimCode.NO_LENGTH);
        assertThat(longer.finding().message(Units.INCH))
                .isEqualTo(
                        "no cut length from 30.000 in (30) to 36.000 in (36) gives what is wanted: the nearest, 36.000 in (36), gives"
                                + " D4.9");
        LengthSolve shorter = LengthSolve.of(Clubs.plain(), SCALE, SCALE.parse("A0"), Clubs.inches(35));
        assertThat(shorter.cutLength()).isEqualTo(Clubs.inches(35));
        assertThat(shorter.finding().severity()).isEqualTo(Severity.CAUTION);
    }

    @Test
    void hostileInputIsNamed() {
        Build plain = Clubs.plain();
        SwingWeight d0 = SCALE.parse("D0");
        Mass ten = Clubs.grams(10);
        missing("build", () -> MassSolve.ofHead(null, SCALE, d0, ten, ten));
        missing("scale", () -> MassSolve.ofHead(plain, null, d0, ten, ten));
        missing("wanted", () -> MassSolve.ofGrip(plain, SCALE, null, ten, ten));
        missing("least", () -> MassSolve.ofGrip(plain, SCALE, d0, null, ten));
        missing("most", () -> MassSolve.ofTipWeight(plain, SCALE, d0, Length.ZERO, null));
        missing("place", () -> MassSolve.ofCounterweight(plain, SCALE, d0, null, ten));
        refused(
                "place must not be above the grip, was -1 mm",
                () -> MassSolve.ofCounterweight(plain, SCALE, d0, Length.ofMillimetres(-1), ten));
        refused(
                "place must be zero for head mass, was 1 mm",
                () -> new MassSolve(plain, SCALE, d0, MassSolve.Where.HEAD, Length.ofMillimetres(1), ten, ten));
        refused(
                "most must be from 10 g to 100000 g, was 9 g",
                () -> MassSolve.ofHead(plain, SCALE, d0, ten, Clubs.grams(9)));
        assertThatThrownBy(() -> MassSolve.ofHead(plain.withWork(Work.NONE), SCALE, d0, ten, ten))
                .hasMessageStartingWith("build must be seated");
        missing("build", () -> LengthSolve.of(null, SCALE, d0, Clubs.inches(1)));
        missing("shortest", () -> LengthSolve.of(plain, SCALE, d0, null));
        missing("scale", () -> LengthSolve.of(plain, null, d0, Clubs.inches(1)));
        missing("wanted", () -> LengthSolve.of(plain, SCALE, null, Clubs.inches(1)));
        refused(
                "longest must be from 0.000001 mm to 914.4 mm, was 939.8 mm",
                () -> new LengthSolve(plain, SCALE, d0, Clubs.inches(1), Clubs.inches(37)));
        assertThatThrownBy(() -> LengthSolve.of(plain.withWork(Work.NONE), SCALE, d0, Clubs.inches(1)))
                .hasMessageStartingWith("build must be seated");
    }
}
