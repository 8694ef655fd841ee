package dev.tipwright.examples.read;

import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;

/**
 * How finished clubs are timed.
 *
 * @param clamp length of the butt held in the clamp, before the grip goes on
 * @param within how far off a timing, or the line through the set, a frequency may be
 */
public record Timing(Length clamp, Frequency within) {}
