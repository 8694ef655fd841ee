/**
 * Playing length, and the cut that gives it.
 *
 * <pre>
 *   L = g + S + (B - i) + G          S = L - g - (B - i) - G          U = R - T - S
 * </pre>
 *
 * <p><img src="{@docRoot}/resources/lengths.svg" width="900"
 *     alt="A club along its axis: grip cap, cut shaft, the gap below the tip, bore bottom to ground; insertion and hosel height beside them.">
 */
package dev.tipwright.core.length;
