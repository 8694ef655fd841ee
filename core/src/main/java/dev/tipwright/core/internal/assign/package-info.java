/**
 * Who gets what: rows (heads, say) are paired with columns (shafts, say) so that the whole set costs least.
 *
 * <p>Every pair has a cost or is forbidden. The shorter side of the table is served in full, each row taking one column
 * and each column at most one row; the longer side keeps what is left over.
 *
 * <pre>
 *            A    B    C    D                 A    B    C    D
 *     7    [ 4    1    3    - ]          7         1
 *     8    [ 2    0    5    3 ]    ->    8    2
 *     9    [ 3    2    2    - ]          9              2          total 5, worst 2
 * </pre>
 *
 * <p>The answer is exact and there is only one. Costs are put on a grid that the caller names, the smallest difference
 * that matters (a tenth of a gram, a thousandth of an inch), and from there on everything is whole numbers: two totals
 * are equal when they are equal on the grid, never because a tolerance says so, and the order of addition cannot
 * matter. A tolerance would not do: "nearly equal" is not transitive, so with one the choice could depend on the order in
 * which pairs were looked at. Among all pairings that are equally good the one with the smallest sequence of columns,
 * read row by row, is taken. Rows and columns in the order of their labels therefore give an answer that depends on the
 * labels alone.
 *
 * <p>Not every table can be served. That is a fact about the bench, not a misuse, so the answer is then a {@link
 * dev.tipwright.core.internal.assign.Shortage}: who goes without, and which few columns are being fought over.
 */
package dev.tipwright.core.internal.assign;
