package dev.tipwright.swingweight;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.swingweight.aim.InertiaSolve;
import dev.tipwright.swingweight.aim.LengthSolve;
import dev.tipwright.swingweight.aim.LieForLength;
import dev.tipwright.swingweight.aim.MassSolve;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.aim.Worth;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.learn.Forecast;
import dev.tipwright.swingweight.learn.FoundCheck;
import dev.tipwright.swingweight.learn.LearntCentre;
import dev.tipwright.swingweight.learn.ScaleReading;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Every printed formula of what is solved for and learnt is true of its printed numbers, on clubs of every kind. */
class WorkingsTest {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private static final BenchUncertainty BENCH = BenchUncertainty.of(
            BenchUncertainty.Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.MASS),
            BenchUncertainty.Tool.of(Instrument.ofStandard("dowel", "mm", 1, 0), BenchInput.HEAD_CENTRE));

    @Test
    void workingsAreTrue() {
        RandomClubs clubs = new RandomClubs(20_261_107);
        SplittableRandom random = new SplittableRandom(17);
        int reports = 0;
        for (int i = 0; i < 100; i++) {
            Build build = clubs.next();
            SwingWeight now = Balance.of(build).on(SCALE);
            SwingWeight wanted = now.plus(random.nextDouble(-2, 2));
            ScaleReading reading = ScaleReading.finished(build, SCALE, now.plus(random.nextDouble(-0.5, 0.5)), 0.1);
            List<StepReport> all = List.of(
                    MassSolve.ofHead(build, SCALE, wanted, Clubs.grams(1), Clubs.grams(600)),
                    MassSolve.ofGrip(build, SCALE, wanted, Clubs.grams(1), Clubs.grams(600)),
                    MassSolve.ofTipWeight(build, SCALE, wanted, Length.ofMillimetres(5), Clubs.grams(30)),
                    MassSolve.ofCounterweight(build, SCALE, wanted, Length.ofMillimetres(25), Clubs.grams(60)),
                    LengthSolve.of(build, SCALE, wanted, Length.ofInches(25)),
                    new InertiaSolve(
                            build,
                            Balance.of(build).inertiaAboutButt().scaledBy(random.nextDouble(0.98, 1.02)),
                            random.nextDouble()),
                    StockChoice.of(build, SCALE, wanted, List.of(Clubs.weight(2), Clubs.weight(5)), 2),
                    LieForLength.of(
                            Angle.ofDegrees(random.nextDouble(55, 66)),
                            Length.ofInches(37),
                            Length.ofInches(random.nextDouble(36.5, 38))),
                    LearntCentre.of(reading, BENCH),
                    FoundCheck.of(Forecast.of(build, SCALE, BENCH), reading));
            for (StepReport report : all) {
                PrintedWorking.isTrue(report.working());
                reports++;
            }
            PrintedWorking.isTrue(Worth.of(build, SCALE).working());
        }
        assertThat(reports).isEqualTo(1_000);
    }
}
