package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A search through a catalogue for the club nearest to a swing weight: every head with every shaft and every grip, on one thread and on
 * two, and how it grows with the catalogue. A search is cut into ten tasks: with one for each head two threads took a tenth longer,
 * presumably because whoever waits for the tasks is woken so often, and one thread, beside which a core is free, no longer.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SearchBenchmark {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;
    private static final SwingWeight WANTED = SCALE.parse("D1");
    private static final int SHAFTS = 50;
    private static final int GRIPS = 20;
    private static final int TASKS = 10;

    /** Threads that search. */
    @Param({"1", "2"})
    public int threads;

    /** Heads in the catalogue, a thousand clubs each. */
    @Param({"20", "200"})
    public int heads;

    private final Build planned = Bench.planner().plan(Bench.build()).after();
    private ExecutorService pool = Executors.newSingleThreadExecutor();

    /** Makes the state. */
    public SearchBenchmark() {}

    /** Makes the threads. */
    @Setup
    public void start() {
        pool.shutdown();
        pool = Executors.newFixedThreadPool(threads);
    }

    /** Lets the threads go. */
    @TearDown
    public void stop() {
        pool.shutdown();
    }

    /**
     * The search.
     *
     * @return how far the nearest is off, points
     * @throws InterruptedException never here
     * @throws ExecutionException if a task fails
     */
    @Benchmark
    public double search() throws InterruptedException, ExecutionException {
        List<Callable<Double>> tasks = new ArrayList<>();
        for (int i = 0; i < TASKS; i++) {
            int from = heads * i / TASKS;
            int to = heads * (i + 1) / TASKS;
            tasks.add(() -> nearest(from, to));
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (Future<Double> one : pool.invokeAll(tasks)) {
            nearest = Math.min(nearest, one.get());
        }
        return nearest;
    }

    private double nearest(int from, int to) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            nearest = Math.min(nearest, nearest(Mass.ofGrams(230 + 0.3 * i)));
        }
        return nearest;
    }

    private double nearest(Mass headMass) {
        Parts parts = planned.parts();
        Head head = parts.head().withMass(parts.head().mass().withMass(headMass));
        double nearest = Double.POSITIVE_INFINITY;
        for (int s = 0; s < SHAFTS; s++) {
            Shaft shaft = parts.shaft().withMass(parts.shaft().mass().withMass(Mass.ofGrams(60 + s)));
            for (int g = 0; g < GRIPS; g++) {
                Grip grip = parts.grip().withMass(Mass.ofGrams(40 + g));
                Build club = planned.withParts(new Parts(head, shaft, grip));
                SwingWeight reads = SCALE.read(Balance.momentAbout(club, SCALE.fulcrum()));
                nearest = Math.min(nearest, Math.abs(reads.over(WANTED)));
            }
        }
        return nearest;
    }
}
