/**
 * Playing length, and the cut that gives it.
 *
 * <pre>
 *   L = g + S + (B - i) + G          S = L - g - (B - i) - G          U = R - T - S
 * </pre>
 */
package dev.tipwright.core.length;
