package dev.tipwright.benchmarks;

import dev.tipwright.core.internal.beam.Cantilever;
import dev.tipwright.core.internal.beam.EndBody;
import dev.tipwright.core.internal.beam.Polyline;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The frequency of a shaft of thirteen stations with a head on it, by the library and by a dense eigen-solution that is no more accurate.
 * What is accurate is told by a third, much finer one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FrequencyBenchmark {

    private static final int STATIONS = 13;
    private static final int FINEST = 8;

    private final double[] stations = IntStream.range(0, STATIONS)
            .mapToDouble(i -> 0.8 * i / (STATIONS - 1))
            .toArray();
    private final double[] stiffness =
            IntStream.range(0, STATIONS).mapToDouble(i -> 56 - i * 3.0).toArray();
    private final double[] density =
            IntStream.range(0, STATIONS).mapToDouble(i -> 0.095 - i * 0.003).toArray();
    private final EndBody head = new EndBody(0.264, 4e-5, 0.054);
    private final DenseBeam dense = dense();

    /** Makes the state. */
    public FrequencyBenchmark() {}

    /** The coarsest dense one that is as near the finest as the library is, or the one before the finest. */
    private DenseBeam dense() {
        double truth = new DenseBeam(stations, stiffness, density, head, FINEST).frequencyHz();
        double ours = Math.abs(library() / truth - 1);
        // The finest one is itself no truer than this: dense matrices of that size keep about ten digits.
        double allowed = Math.max(ours, 1e-10);
        for (int elements = 1; elements < FINEST; elements++) {
            DenseBeam beam = new DenseBeam(stations, stiffness, density, head, elements);
            if (Math.abs(beam.frequencyHz() / truth - 1) <= allowed) {
                return beam;
            }
        }
        return new DenseBeam(stations, stiffness, density, head, FINEST - 1);
    }

    /**
     * By the library.
     *
     * @return Hz
     */
    @Benchmark
    public double library() {
        return Cantilever.of(Polyline.of(stations, stiffness), Polyline.of(stations, density), head)
                .slowestSwing()
                .frequencyHz();
    }

    /**
     * By dense matrices.
     *
     * @return Hz
     */
    @Benchmark
    public double denseEigenSolution() {
        return dense.frequencyHz();
    }
}
