/**
 * Working backwards from a wanted swing weight: what mass, where, and which weight of the stock.
 *
 * <p><img src="{@docRoot}/resources/moment.svg" width="860"
 *     alt="A club on its fulcrum; the moment it lacks to read D2.0, hatched, over the arm from the fulcrum to the
 *     place is the mass to add there.">
 *
 * <pre>
 *   m = (M_wanted - M) / (x - F)
 * </pre>
 */
package dev.tipwright.swingweight.aim;
