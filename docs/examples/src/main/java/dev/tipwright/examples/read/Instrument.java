package dev.tipwright.examples.read;

/**
 * An instrument of the bench.
 *
 * @param label how the bench calls it
 * @param measures what it is used for
 * @param uncertainty standard uncertainty of one reading, in the unit
 * @param unit mm, g, deg or /min
 */
public record Instrument(String label, String measures, double uncertainty, String unit) {}
