/**
 * Mass along a shaft: what a piece of it weighs and where it balances, and what the work on a tip takes off.
 *
 * <pre>
 *   m = integral of mu(z) dz over what remains        mu straight, from raw mass and balance point, or as weighed
 * </pre>
 */
package dev.tipwright.core.mass;
