package dev.tipwright.core.internal.assign;

import java.util.Objects;

/** The outcome of sharing out columns among rows: a {@link Pairing}, or a {@link Shortage} that says why there is none. */
public sealed interface Assignment permits Pairing, Shortage {

    /**
     * The best pairing of a table, or why there is none.
     *
     * <p>Exact on the grid of the table, in {@code O(n n m)} steps for {@code n} lines on the shorter side and {@code m} on
     * the longer, plus {@code O(n m m)} in the worst case where many pairings are equally good. Among equally good
     * pairings the one with the smallest sequence of columns, read row by row, is given; a row left over counts as
     * having a column after the last.
     *
     * <p>Sources: H. W. Kuhn, The Hungarian method for the assignment problem, Naval Research Logistics Quarterly 2
     * (1955); R. Burkard, M. Dell'Amico, S. Martello, Assignment Problems, SIAM 2009, chapters 4 and 6 (from memory).
     *
     * @param table the costs
     * @param aim what to make least
     * @return the pairing, or the shortage if the shorter side cannot be served in full with the pairs allowed
     * @throws NullPointerException if {@code table} or {@code aim} is null
     * @throws ArithmeticException if the sum of the costs, in the unit of the table, overflows a {@code double}
     */
    static Assignment best(CostTable table, Aim aim) {
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(aim, "aim");
        long[][] counts = table.servedByOffered();
        if (aim == Aim.LEAST_WORST) {
            LeastWorst.keepOnlyNeeded(counts);
        }
        LeastTotal optimum = new LeastTotal(counts);
        if (!optimum.serveAll()) {
            return Shortage.of(table);
        }
        return Pairing.of(table, FirstInOrder.among(optimum, table.rows(), table.columns()));
    }
}
