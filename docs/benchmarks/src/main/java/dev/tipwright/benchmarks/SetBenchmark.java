package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the planning of clubs grows with their number. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SetBenchmark {

    /** Clubs to plan. */
    @Param({"1", "14", "140"})
    public int clubs;

    private final Build build = Bench.build();
    private final JobPlanner planner = Bench.planner();

    /** Makes the state. */
    public SetBenchmark() {}

    /**
     * The plans.
     *
     * @return one a club
     */
    @Benchmark
    public List<ClubPlan> plans() {
        List<ClubPlan> plans = new ArrayList<>();
        for (int i = 0; i < clubs; i++) {
            plans.add(planner.plan(build));
        }
        return plans;
    }
}
