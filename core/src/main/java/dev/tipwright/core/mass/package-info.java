/**
 * Mass along a shaft: what a piece of it weighs and where it balances, and what the work on a tip takes off; and the volume
 * inside a profile.
 *
 * <p><img src="{@docRoot}/resources/density.svg" width="860"
 *     alt="Line density along a shaft as a straight line from tip to butt; the area between the two cuts is the mass
 *     that stays, the hatched ends come off.">
 *
 * <pre>
 *   V = sum of pi h (D^2 + D d + d^2) / 12            a frustum between each two stations
 *   m = integral of mu(z) dz over what remains        mu straight, from raw mass and balance point, or as weighed
 * </pre>
 */
package dev.tipwright.core.mass;
