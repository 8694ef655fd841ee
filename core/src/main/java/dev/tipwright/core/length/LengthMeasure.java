package dev.tipwright.core.length;

/** What a playing length is measured by; part of every target. */
public enum LengthMeasure {
    /** From the top of the grip along the shaft axis to the ground: {@code L = g + S + (B - i) + G}. */
    ALONG_AXIS,
    /** By the 60 degree plane of the Equipment Rules, see {@link SixtyDegreePlane}. */
    SIXTY_DEGREE_PLANE
}
