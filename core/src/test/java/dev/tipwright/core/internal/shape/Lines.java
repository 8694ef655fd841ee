package dev.tipwright.core.internal.shape;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random polylines in whole numbers, with steps, and their value worked out straight from the definition. */
final class Lines {

    private Lines() {}

    /** From 0 to 60, knots on whole places, often two at one place, values 1 to 20. */
    static Arbitrary<Polyline> any() {
        Arbitrary<List<Integer>> places =
                Arbitraries.integers().between(1, 59).list().ofMinSize(0).ofMaxSize(6);
        Arbitrary<List<Integer>> twice =
                Arbitraries.integers().between(0, 60).list().ofMaxSize(3);
        Arbitrary<List<Integer>> values =
                Arbitraries.integers().between(1, 20).list().ofSize(11);
        return Combinators.combine(places, twice, values).as((single, doubled, value) -> {
            double[] at = IntStream.concat(
                            IntStream.of(0, 60),
                            IntStream.concat(
                                    single.stream().mapToInt(Integer::intValue),
                                    doubled.stream().mapToInt(Integer::intValue)))
                    .sorted()
                    .asDoubleStream()
                    .toArray();
            double[] kept = atMostTwice(at);
            return Polyline.of(
                    kept,
                    value.stream()
                            .mapToDouble(Integer::doubleValue)
                            .limit(kept.length)
                            .toArray());
        });
    }

    private static double[] atMostTwice(double[] at) {
        return IntStream.range(0, at.length)
                .filter(i -> i < 2 || at[i] != at[i - 2])
                .mapToDouble(i -> at[i])
                .toArray();
    }

    /** A place no knot is at, in the middle of one of the sixty unit spans. */
    static Arbitrary<Double> placesBetweenKnots() {
        return Arbitraries.integers().between(0, 59).map(unit -> unit + 0.5);
    }

    /** The value by looking at each segment in turn. */
    static double valueAt(Polyline line, double place) {
        for (int i = 1; i < line.size(); i++) {
            if (line.at(i - 1) < place && place < line.at(i)) {
                double part = (place - line.at(i - 1)) / (line.at(i) - line.at(i - 1));
                return line.value(i - 1) * (1 - part) + line.value(i) * part;
            }
        }
        throw new IllegalArgumentException("place must be inside a segment, was " + place);
    }
}
