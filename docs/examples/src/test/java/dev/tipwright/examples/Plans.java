package dev.tipwright.examples;

import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.examples.read.Job;

/** Lets tests of other packages plan as the program does. */
public final class Plans {
    private Plans() {}

    /** The plan of a job. */
    public static JobPlan of(Job job) {
        return MainJob.plan(job);
    }
}
