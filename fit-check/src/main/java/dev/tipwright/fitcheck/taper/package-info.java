/**
 * Working a tip down to a bore: the finished shape for a wanted clearance, and what that takes off.
 *
 * <pre>
 *   f(z) = min(d(z) - 2 p(z), D(i - z) - w)          stock e(z) = d(z) - f(z), on the diameter
 * </pre>
 *
 * {@code D} is the least diameter of the bore from its mouth down to there, for the tip has to pass it on its way in.
 *
 * <p><img src="{@docRoot}/resources/stages.svg" width="760"
 *     alt="Insertion against stock still to come off: nothing until the tip passes the mouth, then straight, then seated; drawn by StageDrawing.">
 */
package dev.tipwright.fitcheck.taper;
