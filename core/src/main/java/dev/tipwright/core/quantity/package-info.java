/**
 * The quantities everything else is made of: exact lengths and masses, and small types for what is derived from them.
 *
 * <p>{@link dev.tipwright.core.quantity.Length} counts nanometres and {@link dev.tipwright.core.quantity.Mass} picograms, so what
 * was read on the bench is held exactly and equal readings are equal. Angles, areas, volumes, moments and the rest are
 * {@code double}s with the unit in the name of factory and accessor. No bare number crosses the API unless it is a pure ratio.
 */
package dev.tipwright.core.quantity;
