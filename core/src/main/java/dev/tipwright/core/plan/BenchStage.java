package dev.tipwright.core.plan;

/** The stages of the work at the bench, in the order they are done. The butt is cut last, after the cure. */
public enum BenchStage {
    /** Measuring the raw shaft and marking it from both ends. */
    MARK,
    /** Cutting the tip. */
    TIP_CUT,
    /** Taking the finish off where adhesive is to hold. */
    STRIP,
    /** Working the tip down, or shimming it, until it enters. */
    FIT,
    /** Putting the club together without adhesive, and weighing it. */
    DRY_BUILD,
    /** Ferrule, adhesive, head, and the cure. */
    BOND,
    /** Marking and cutting the butt. */
    BUTT_CUT,
    /** Calipering the cut butt and winding the tape. */
    TAPE,
    /** Putting on the grip. */
    GRIP,
    /** Measuring the finished club. */
    CHECK
}
