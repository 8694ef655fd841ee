/**
 * Which way a shaft is turned in its head: by its graphics, its seam, or a plane in which it was found to bend straight.
 *
 * <p><img src="{@docRoot}/resources/turn.svg" width="860"
 *     alt="A shaft seen from the butt, for either hand: the turn counts from the target by way of away from the player,
 *     clockwise for the right hand, anticlockwise for the left; the seam is drawn at 50 degrees.">
 */
package dev.tipwright.core.orient;
