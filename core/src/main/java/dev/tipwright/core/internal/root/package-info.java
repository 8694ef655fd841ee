/**
 * Where a function crosses zero, and where a yes turns into a no.
 *
 * <p>Both searches start from a bracket, two places between which the answer must lie, and never leave it: {@link
 * dev.tipwright.core.internal.root.Root} for a continuous function of a {@code double}, {@link
 * dev.tipwright.core.internal.root.GridSearch} for a test on whole numbers (a length in nanometres, a mass in
 * picograms). Both can say beforehand how often they will call the function at most, and give the same bits everywhere if
 * the function does.
 *
 * <pre>
 *     f(low) &lt; 0 ----------------- x ---- f(high) &gt; 0
 *                     [ low .. high ] holds a root and shrinks until it is no wider than the tolerance
 * </pre>
 */
package dev.tipwright.core.internal.root;
