/**
 * The other ways to a fit: fill a loose one with a shim, open a tight bore, take another blank; and the choice between them by the
 * caller's limits.
 *
 * <pre>
 *   shim    |##bore##|==shim==|--tip--|==shim==|##bore##|      c - 2 t left on the diameter
 *   open    the bore becomes max(D(y), cutter + oversize)      wall (outside - bore) / 2 left
 * </pre>
 */
package dev.tipwright.fitcheck.other;
