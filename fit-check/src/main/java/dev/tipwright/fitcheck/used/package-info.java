/**
 * Used parts: a pulled shaft whose tip is already tapered, shortened or crusted, and a bore that is read again when it is clean. What was
 * found becomes a {@link dev.tipwright.fitcheck.taper.TipSection} or a {@link dev.tipwright.core.profile.Bore} that everything else
 * takes like any other.
 *
 * <p><img src="{@docRoot}/resources/pulled.svg" width="860"
 *     alt="The upper half of a pulled tip: the raw outline dashed, the cleaned tip solid, the crust on it hatched,
 *     and the length that was cut off.">
 */
package dev.tipwright.fitcheck.used;
