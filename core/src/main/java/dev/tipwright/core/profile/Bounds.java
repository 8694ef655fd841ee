package dev.tipwright.core.profile;

import dev.tipwright.core.quantity.Length;

/** The ranges in which diameters and stations are taken to be meant. */
final class Bounds {

    static final Length THINNEST = Length.ofNanometres(1);
    static final Length WIDEST = Length.ofMillimetres(100);
    static final Length FARTHEST = Length.ofMillimetres(3000);

    private Bounds() {}
}
