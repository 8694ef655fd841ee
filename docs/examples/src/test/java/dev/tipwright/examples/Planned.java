package dev.tipwright.examples;

import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.examples.read.Job;

/** Plans a job as the main job does. */
public final class Planned {
    private Planned() {}

    /** The plan of a job. */
    public static JobPlan of(Job job) {
        return MainJob.plan(job);
    }
}
