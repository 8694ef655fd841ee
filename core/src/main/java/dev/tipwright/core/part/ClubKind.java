package dev.tipwright.core.part;

/** What kind of club a head makes. */
public enum ClubKind {
    /** A wood. */
    WOOD,
    /** A hybrid. */
    HYBRID,
    /** An iron. */
    IRON,
    /** A wedge. */
    WEDGE,
    /** A putter; several limits of the Rules do not apply to it. */
    PUTTER
}
