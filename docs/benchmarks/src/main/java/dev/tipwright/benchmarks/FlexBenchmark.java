package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The frequency of a club whose stiffness is read at a dozen stations, and the tip trim for a wanted one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FlexBenchmark {

    private final ClubFrequency club = club();
    private final Frequency wanted = club.frequency().plus(Frequency.ofPerMinute(2));

    /** Makes the state. */
    public FlexBenchmark() {}

    private static ClubFrequency club() {
        Build planned = Bench.planner().plan(Bench.build()).after();
        List<StiffnessShape.Knot> knots = java.util.stream.IntStream.rangeClosed(0, 12)
                .mapToObj(i -> new StiffnessShape.Knot(
                        planned.parts().shaft().length().scaledBy(i / 12.0),
                        BendingStiffness.ofNewtonSquareMetres(20 + i * i / 4.0)))
                .toList();
        Reading<ShaftFlex> flex =
                Reading.measured(new ShaftFlex(Reading.measured(new StiffnessShape.AtStations(knots)), List.of()));
        Build bending = planned.withParts(
                planned.parts().withShaft(planned.parts().shaft().withFlex(flex)));
        return ClubFrequency.of(bending, Length.parse("5 in")).orElseThrow();
    }

    /**
     * One frequency.
     *
     * @return cycles a minute
     */
    @Benchmark
    public Frequency frequency() {
        return club.frequency();
    }

    /**
     * The tip trim for two cycles a minute more.
     *
     * @return the trim
     */
    @Benchmark
    public Optional<Length> tipTrim() {
        return club.tipTrimFor(wanted);
    }
}
