/**
 * Tip trimming: the chart of the shaft's maker, corrected for a head whose bore sits higher or lower than the chart assumes.
 *
 * <pre>
 *   T = chart + (G + B - i) - G_ref
 * </pre>
 */
package dev.tipwright.core.trim;
