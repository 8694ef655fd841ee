package dev.tipwright.core.match;

/** What makes one way of sharing out the shafts better than another. */
public enum MatchAim {
    /** The sum of the costs is least. */
    LEAST_TOTAL,
    /** The worst club is as good as it can be; among the ways that share its cost, the sum is least. */
    LEAST_WORST
}
