package dev.tipwright.examples.read;

import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;

/** An instrument of the bench: what it measures, and the standard uncertainty of one reading. */
public sealed interface Instrument {
    /**
     * What the bench calls it.
     *
     * @return a label
     */
    String label();

    /**
     * What it is used for.
     *
     * @return in words
     */
    String measures();

    /**
     * One that reads lengths.
     *
     * @param label what the bench calls it
     * @param measures what it is used for
     * @param uncertainty standard uncertainty of one reading
     */
    record OfLength(String label, String measures, Length uncertainty) implements Instrument {}

    /**
     * One that reads masses.
     *
     * @param label what the bench calls it
     * @param measures what it is used for
     * @param uncertainty standard uncertainty of one reading
     */
    record OfMass(String label, String measures, Mass uncertainty) implements Instrument {}
}
