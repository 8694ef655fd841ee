package dev.tipwright.core.part;

import dev.tipwright.core.quantity.Mass;

/** Something with a mass that is put on or into the club besides head, shaft and grip. */
public sealed interface Attachment
        permits Adhesive, Counterweight, Extension, Ferrule, GripTape, OtherMass, Shim, TipWeight {

    /**
     * How the bench calls it.
     *
     * @return a label
     */
    String label();

    /**
     * What it weighs.
     *
     * @return its mass
     */
    Mass mass();

    /**
     * Where its mass is centred.
     *
     * @return its place
     */
    Place place();
}
