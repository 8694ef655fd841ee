/**
 * Swing weight scales as values, and what they read.
 *
 * <pre>
 *        top of grip            F                                   head
 *   x:   0 ---------------------^------------------------------------M
 *                             fulcrum          P = (M - M0) / K
 * </pre>
 */
package dev.tipwright.swingweight.scale;
