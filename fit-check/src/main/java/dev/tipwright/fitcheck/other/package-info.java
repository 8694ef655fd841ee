/**
 * The other ways to a fit: fill a loose one with a shim, open a tight bore, take another blank; and the choice between them by the
 * caller's limits.
 *
 * <pre>
 *   shim    c - 2 t left on the diameter
 *   open    the bore becomes max(D(y), cutter + oversize); wall (outside - bore) / 2 left
 * </pre>
 *
 * <p><img src="{@docRoot}/resources/shim.svg" width="800"
 *     alt="Left a tip with a shim on both sides in a loose bore, right a tight bore opened by a cutter.">
 */
package dev.tipwright.fitcheck.other;
