/**
 * Working a tip down to a bore: the finished shape for a wanted clearance, and what that takes off.
 *
 * <pre>
 *   f(z) = min(d(z) - 2 p(z), D(i - z) - w)          stock e(z) = d(z) - f(z), on the diameter
 * </pre>
 *
 * {@code D} is the least diameter of the bore from its mouth down to there, for the tip has to pass it on its way in.
 */
package dev.tipwright.fitcheck.taper;
