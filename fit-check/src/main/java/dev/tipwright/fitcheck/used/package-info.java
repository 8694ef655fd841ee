/**
 * Used parts: a pulled shaft whose tip is already tapered, shortened or crusted, and a bore that is read again when it is clean. What was
 * found becomes a {@link dev.tipwright.fitcheck.taper.TipSection} or a {@link dev.tipwright.core.profile.Bore} that everything else
 * takes like any other.
 *
 * <pre>
 *   found over the crust     d + 2 k      ______            k  crust, radial: off before anything is measured for good
 *   cleaned                  d           |      \____
 *   as it was raw            d0          |............      (d0 - d) / 2  off the wall already, finish first
 *                                        z = 0
 * </pre>
 */
package dev.tipwright.fitcheck.used;
