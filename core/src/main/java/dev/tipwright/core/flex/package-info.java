/**
 * How a club swings when its butt is clamped: cycles a minute before and after a cut, and the cut for a wanted frequency.
 *
 * <p><img src="{@docRoot}/resources/flex.svg" width="800"
 *     alt="A shaft clamped at the butt; at the hosel mouth the head, the inserted tip and what is fixed to them are one rigid body.">
 *
 * <p>Plain numbers in cycles a minute; no bands, no letters.
 */
package dev.tipwright.core.flex;
