package dev.tipwright.core.plan;

/** Told how far long work has come. It is called from the thread that does the work, and what it throws ends that work. */
@FunctionalInterface
public interface Progress {

    /** Tells nobody. */
    Progress UNHEARD = (done, of) -> {};

    /**
     * A part of the work is done.
     *
     * @param done parts done so far, from 1 on
     * @param of parts there are
     */
    void at(int done, int of);
}
