package dev.tipwright.core.part;

/** What the place of a part is counted from. */
public enum Anchor {
    /** The top of the grip, counted towards the head. */
    GRIP_TOP,
    /** The end of the tip, counted up the shaft. */
    TIP_END,
    /** The mouth of the hosel, counted up the shaft. */
    HOSEL_MOUTH,
    /** The middle of the inserted tip, counted up the shaft. */
    MID_INSERTION
}
