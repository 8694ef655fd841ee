package dev.tipwright.benchmarks;

import dev.tipwright.core.internal.assign.Aim;
import dev.tipwright.core.internal.assign.Assignment;
import dev.tipwright.core.internal.assign.CostTable;
import dev.tipwright.core.internal.assign.Pairing;
import java.util.LinkedHashSet;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
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
 * Fourteen shafts shared out among fourteen heads at the least total cost, by the library and by a graph library. Both are given the same
 * table; the graph library is given its graph ready made.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class MatchingBenchmark {

    private static final int CLUBS = 14;

    private final double[][] costs = new double[CLUBS][CLUBS];
    private final Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    private final Set<Integer> heads = new LinkedHashSet<>();
    private final Set<Integer> shafts = new LinkedHashSet<>();

    /** Makes the table and sees that both find the same total. */
    public MatchingBenchmark() {
        Random random = new Random(14);
        for (int i = 0; i < CLUBS; i++) {
            graph.addVertex(i);
            graph.addVertex(-1 - i);
            heads.add(i);
            shafts.add(-1 - i);
        }
        for (int head = 0; head < CLUBS; head++) {
            for (int shaft = 0; shaft < CLUBS; shaft++) {
                costs[head][shaft] = 100 * random.nextDouble();
                graph.setEdgeWeight(graph.addEdge(head, -1 - shaft), costs[head][shaft]);
            }
        }
        double apart = Math.abs(library() - graphLibrary());
        if (!(apart < 1e-6)) {
            throw new IllegalStateException("the two totals are " + apart + " apart");
        }
    }

    /**
     * By the library, with its answer made the first in order among equals.
     *
     * @return the total
     */
    @Benchmark
    public double library() {
        return ((Pairing) Assignment.best(CostTable.of(costs, 1e-9), Aim.LEAST_TOTAL)).total();
    }

    /**
     * By a graph library.
     *
     * @return the total
     */
    @Benchmark
    public double graphLibrary() {
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, heads, shafts)
                .getMatching()
                .getWeight();
    }
}
