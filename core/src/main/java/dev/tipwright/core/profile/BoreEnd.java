package dev.tipwright.core.profile;

/** How a bore ends. */
public enum BoreEnd {
    /** Blind, with a flat bottom that stops the tip. */
    FLAT,
    /** Blind, with the cone a drill leaves below its full diameter; the tip stops where the cone begins. */
    CONE,
    /** Open at both ends: something else must stop the tip. */
    THROUGH
}
