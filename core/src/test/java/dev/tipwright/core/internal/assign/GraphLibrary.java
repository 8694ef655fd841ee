package dev.tipwright.core.internal.assign;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/** The same questions put to a general graph library, JGraphT. Rows are 0, 1, 2; columns -1, -2, -3. */
final class GraphLibrary {

    private GraphLibrary() {}

    /** The least total of a table without forbidden pairs, filled up to a square with blank lines at cost 0. */
    static double leastTotal(double[][] costs) {
        int size = Math.max(costs.length, costs[0].length);
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> rows = new LinkedHashSet<>();
        Set<Integer> columns = new LinkedHashSet<>();
        for (int i = 0; i < size; i++) {
            graph.addVertex(i);
            graph.addVertex(-1 - i);
            rows.add(i);
            columns.add(-1 - i);
        }
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                boolean real = row < costs.length && column < costs[0].length;
                graph.setEdgeWeight(graph.addEdge(row, -1 - column), real ? costs[row][column] : 0);
            }
        }
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns)
                .getMatching()
                .getWeight();
    }

    /** How many pairs no dearer than a bound can be made at once. */
    static int mostPairs(double[][] costs, double bound) {
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> rows = new LinkedHashSet<>();
        Set<Integer> columns = new LinkedHashSet<>();
        for (int row = 0; row < costs.length; row++) {
            graph.addVertex(row);
            rows.add(row);
        }
        for (int column = 0; column < costs[0].length; column++) {
            graph.addVertex(-1 - column);
            columns.add(-1 - column);
        }
        for (int row = 0; row < costs.length; row++) {
            for (int column = 0; column < costs[0].length; column++) {
                if (costs[row][column] <= bound) {
                    graph.addEdge(row, -1 - column);
                }
            }
        }
        return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, rows, columns)
                .getMatching()
                .getEdges()
                .size();
    }

    /** The least bound under which the shorter side can be served in full; infinity if none is. */
    static double leastWorst(double[][] costs) {
        TreeSet<Double> bounds = new TreeSet<>();
        for (double[] row : costs) {
            for (double cost : row) {
                bounds.add(cost);
            }
        }
        int needed = Math.min(costs.length, costs[0].length);
        for (double bound : bounds) {
            if (bound < Double.POSITIVE_INFINITY && mostPairs(costs, bound) == needed) {
                return bound;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
