package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Instrument;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.swingweight.ClubBalance;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** How sure the swing weight of a whole club is: to first order, and by a million trials on two threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class UncertaintyBenchmark {

    private final ClubPlan club = Bench.planner().plan(Bench.build());
    private final Build planned = club.after();
    private final Measure points = club.report(ClubBalance.class).pointsMeasure();
    private final BenchUncertainty bench = BenchUncertainty.of(
            tool("pins", ".0001", BenchInput.BORE_DIAMETER),
            tool("pin depth", ".01", BenchInput.BORE_DEPTH),
            tool(
                    "micrometer",
                    ".0002",
                    BenchInput.TIP_DIAMETER,
                    BenchInput.FINISH,
                    BenchInput.WALL,
                    BenchInput.FINISHED_TIP),
            tool("rule", "1/64", BenchInput.RAW_LENGTH, BenchInput.MOUTH_TO_GROUND, BenchInput.CUTS),
            Tool.of(Instrument.ofStandard("scale", "g", 0.1, 0), BenchInput.MASS),
            tool("balance rest", ".05", BenchInput.BALANCE_POINT),
            tool("dowel", ".04", BenchInput.HEAD_CENTRE));

    /** Without the inputs that do not move a swing weight: they would be drawn a million times for nothing. */
    private final Measurand measurand = points.measurand(
            planned, bench.without(BenchInput.BORE_DIAMETER, BenchInput.MOUTH_TO_GROUND, BenchInput.WALL));

    private final ExecutorService two = Executors.newFixedThreadPool(2);

    /** Makes the state. */
    public UncertaintyBenchmark() {}

    private static Tool tool(String name, String inches, BenchInput... uses) {
        return Tool.of(
                Instrument.ofStandard(name, "mm", Length.parse(inches + " in").millimetres(), 0), uses);
    }

    /** Lets the two threads go. */
    @TearDown
    public void stop() {
        two.shutdown();
    }

    /**
     * The first-order budget of a swing weight, all inputs of the bench.
     *
     * @return the budget
     */
    @Benchmark
    public Budget firstOrder() {
        return points.budget(planned, bench).orElseThrow();
    }

    /**
     * A million trials. Four times over the compiler is done with them.
     *
     * @return their standard uncertainty
     */
    @Benchmark
    @Warmup(iterations = 4, time = 1)
    @Measurement(iterations = 5, time = 1)
    public double millionTrials() {
        return MonteCarlo.of(1_000_000, 1).run(measurand, two).standardUncertainty();
    }
}
