package dev.tipwright.core.internal.assign;

/** What makes one pairing of the whole set better than another. */
public enum Aim {

    /** The sum of the costs is least. */
    LEAST_TOTAL,

    /** The dearest pair is as cheap as it can be; among pairings that share that worst cost, the sum is least. */
    LEAST_WORST
}
