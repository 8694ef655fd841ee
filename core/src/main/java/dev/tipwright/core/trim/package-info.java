/**
 * Tip trimming: the chart of the shaft's maker, corrected for a head whose bore sits higher or lower than the chart assumes.
 *
 * <p><img src="{@docRoot}/resources/trim.svg" width="900"
 *     alt="Two heads over one ground line: for the one whose bore bottom sits higher, more is cut off the tip, so
 *     that the same station of the shaft is at the same height in both.">
 *
 * <pre>
 *   T = chart + (G + B - i) - G_ref
 * </pre>
 */
package dev.tipwright.core.trim;
