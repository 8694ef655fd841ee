/**
 * The balance of a club: every part with its mass and its place from the top of the grip.
 *
 * <p><img src="{@docRoot}/resources/arms.svg" width="900"
 *     alt="A club with grip, shaft and head each at its distance x from the top of the grip, and the balance point
 *     where sum m x over the total puts it.">
 *
 * <pre>
 *   total = sum m      moment about F = sum m (x - F)      J = sum m x^2      balance point = sum m x / total
 * </pre>
 */
package dev.tipwright.swingweight.balance;
