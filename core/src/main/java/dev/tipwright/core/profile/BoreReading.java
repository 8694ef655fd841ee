package dev.tipwright.core.profile;

/** How the diameters of a bore were read. */
public enum BoreReading {
    /** Each diameter at its place, as with a bore gauge. */
    AT_STATIONS,
    /**
     * With pins dropped in. A pin sees only the narrowest place it has passed: that is exact for how far a tip goes in, and makes
     * the clearance too small where the bore widens again further down.
     */
    BY_PINS
}
