package dev.tipwright.fitcheck.set;

/** What makes one way of pairing tips and bores better than another. */
public enum AssemblyAim {
    /** The least structure comes off the tips in total. */
    LEAST_MATERIAL,
    /** The mean clearance that is furthest from the wanted one is as near to it as it can be; then so is their sum. */
    MOST_EVEN
}
