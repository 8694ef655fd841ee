package dev.tipwright.core.evidence;

/** How much a finding matters, least first. */
public enum Severity {
    /** Worth knowing; nothing to do. */
    NOTE,
    /** Look at it before going on. */
    CAUTION,
    /** Do not take the step this concerns as things stand. */
    STOP
}
