/**
 * Swing weight scales as values, and what they read: the moment {@code M} of every part about a fulcrum, less the moment at which the
 * scale reads zero, in points of {@code K} each.
 *
 * <pre>
 *   M = sum of m (x - F)          P = (M - M0) / K
 * </pre>
 *
 * <p><img src="{@docRoot}/resources/fulcrum.svg" width="800"
 *     alt="A club on a fulcrum F from the top of the grip; each part has its mass at its own distance.">
 */
package dev.tipwright.swingweight.scale;
