/**
 * The quantities everything else is made of: exact lengths and masses, and small types for what is derived from them.
 *
 * <p><img src="{@docRoot}/resources/grid.svg" width="860"
 *     alt="A scale of 5 in above a scale of 127 mm that meet at both ends; below, an inch, 1/64 in, 0.0001 in, 1 mm
 *     and 0.01 mm as whole numbers of nanometres.">
 *
 * <p>{@link dev.tipwright.core.quantity.Length} counts nanometres and {@link dev.tipwright.core.quantity.Mass} picograms, so what
 * was read on the bench is held exactly and equal readings are equal. Angles, areas, volumes, moments and the rest are
 * {@code double}s with the unit in the name of factory and accessor. No bare number crosses the API unless it is a pure ratio.
 */
package dev.tipwright.core.quantity;
