/**
 * Working backwards from a wanted swing weight: what mass, where, and which weight of the stock.
 *
 * <pre>
 *   m = (M_wanted - M) / (x - F)
 * </pre>
 */
package dev.tipwright.swingweight.aim;
