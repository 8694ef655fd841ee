/**
 * How a club swings when its butt is clamped: cycles a minute before and after a cut, and the cut for a wanted frequency.
 *
 * <pre>
 *   clamp |=============== shaft, EI(z), mu(z) ===============|mouth|--o  head, inserted tip and what is fixed to them: one rigid body
 *         s = 0                                            s = beam
 * </pre>
 *
 * <p>Plain numbers in cycles a minute; no bands, no letters.
 */
package dev.tipwright.core.flex;
