package dev.tipwright.core.part;

/** For which hand a head is made. */
public enum Hand {
    /** For a right-handed player. */
    RIGHT,
    /** For a left-handed player. */
    LEFT
}
