package dev.tipwright.core.club;

/** What keeps the tip from going further into the bore. */
public enum Stop {
    /** Nothing yet: the tip is not in the bore. */
    NOTHING,
    /** The bottom of a blind bore. */
    BORE_BOTTOM,
    /** The flange of a tip weight on the bottom of the bore. */
    FLANGE,
    /** A mark on the shaft, or a stop collar, set by the builder. */
    MARK,
    /** The tip itself, where it first touches the bore. */
    CONTACT
}
