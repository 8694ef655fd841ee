package dev.tipwright.core.cut;

/** An end of a raw shaft. What lies between a mark and the end it belongs to is waste. */
public enum ShaftEnd {
    /** The thin end, which goes into the head. */
    TIP,
    /** The thick end, which goes into the grip. */
    BUTT
}
