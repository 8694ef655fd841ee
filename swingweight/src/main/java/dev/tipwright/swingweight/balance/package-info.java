/**
 * The balance of a club: every part with its mass and its place from the top of the grip.
 *
 * <pre>
 *   total = sum m      moment about F = sum m (x - F)      J = sum m x^2      balance point = sum m x / total
 * </pre>
 */
package dev.tipwright.swingweight.balance;
