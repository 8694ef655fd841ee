package dev.tipwright.core.uncertainty;

import dev.tipwright.core.internal.arg.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * The inputs of a measurement in a fixed order, the order in which the {@link Model} gets their values, and the
 * correlations between them.
 */
public final class Inputs {

    private final List<Input> list;
    private final List<Correlation> correlations;
    private final List<CorrelatedGroup> groups;

    private Inputs(List<Input> list, List<Correlation> correlations) {
        this.list = List.copyOf(list);
        this.correlations = List.copyOf(correlations);
        this.groups = group(matrix());
    }

    /**
     * Uncorrelated inputs.
     *
     * @param inputs one or more inputs, each with a name of its own
     * @return the inputs in the same order
     * @throws NullPointerException if the list or an input is null
     * @throws IllegalArgumentException if there is none or two share a name
     */
    public static Inputs of(List<Input> inputs) {
        List<Input> copy = Require.list("inputs", inputs);
        if (copy.isEmpty()) {
            throw new IllegalArgumentException("inputs must be one or more, was none");
        }
        for (int i = 0; i < copy.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (copy.get(i).name().equals(copy.get(j).name())) {
                    throw new IllegalArgumentException("inputs must have different names, was twice: "
                            + copy.get(i).name());
                }
            }
        }
        return new Inputs(copy, List.of());
    }

    /**
     * Uncorrelated inputs.
     *
     * @param inputs one or more inputs, each with a name of its own
     * @return the inputs in the same order
     * @throws NullPointerException if the array or an input is null
     * @throws IllegalArgumentException if there is none or two share a name
     */
    public static Inputs of(Input... inputs) {
        return of(Require.all("inputs", inputs));
    }

    /**
     * The same inputs with these correlations in place of any before. Pairs not named are uncorrelated. All
     * coefficients are given at once because each alone may be possible and together not.
     *
     * @param correlations the correlations, each pair once
     * @return the changed copy
     * @throws NullPointerException if the list or a correlation is null
     * @throws IllegalArgumentException if a name is not among the inputs, a pair is given twice, or the matrix of
     *     coefficients is not positive semidefinite (no quantities can go together like that)
     */
    public Inputs withCorrelations(List<Correlation> correlations) {
        return new Inputs(list, Require.list("correlations", correlations));
    }

    /**
     * The inputs in order.
     *
     * @return an unmodifiable list
     */
    public List<Input> list() {
        return list;
    }

    /**
     * The correlations as given.
     *
     * @return an unmodifiable list
     */
    public List<Correlation> correlations() {
        return correlations;
    }

    /** Every input in exactly one group; groups in order of their first member. */
    List<CorrelatedGroup> groups() {
        return groups;
    }

    int size() {
        return list.size();
    }

    Input at(int index) {
        return list.get(index);
    }

    double[] estimates() {
        return list.stream().mapToDouble(Input::estimate).toArray();
    }

    CorrelatedGroup groupOf(int index) {
        return groups.stream().filter(g -> g.holds(index)).findFirst().orElseThrow();
    }

    private double[][] matrix() {
        int n = list.size();
        double[][] r = new double[n][n];
        boolean[][] given = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            r[i][i] = 1;
        }
        for (Correlation c : correlations) {
            int i = index(c.first());
            int j = index(c.second());
            if (given[i][j]) {
                throw new IllegalArgumentException(
                        "correlation of " + c.first() + " and " + c.second() + " must be given once, was given twice");
            }
            given[i][j] = true;
            given[j][i] = true;
            r[i][j] = c.coefficient();
            r[j][i] = c.coefficient();
        }
        return r;
    }

    private int index(String name) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("correlation must name an input, was " + name);
    }

    private static List<CorrelatedGroup> group(double[][] r) {
        boolean[] taken = new boolean[r.length];
        List<CorrelatedGroup> groups = new ArrayList<>();
        for (int i = 0; i < r.length; i++) {
            if (!taken[i]) {
                boolean[] tied = new boolean[r.length];
                collect(i, r, tied);
                List<Integer> members = new ArrayList<>();
                for (int j = 0; j < r.length; j++) {
                    if (tied[j]) {
                        taken[j] = true;
                        members.add(j);
                    }
                }
                int[] indices = members.stream().mapToInt(Integer::intValue).toArray();
                groups.add(CorrelatedGroup.of(indices, r));
            }
        }
        return List.copyOf(groups);
    }

    private static void collect(int i, double[][] r, boolean[] tied) {
        tied[i] = true;
        for (int j = 0; j < r.length; j++) {
            if (!tied[j] && r[i][j] != 0) {
                collect(j, r, tied);
            }
        }
    }

    /**
     * The inputs as text.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return list.toString();
    }
}
