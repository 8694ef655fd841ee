/**
 * The whole job, step by step. A {@link dev.tipwright.core.plan.WorkStep} takes a build and gives it back with more work; each
 * module supplies steps, the caller lists them, and {@link dev.tipwright.core.plan.JobPlanner} takes every club through them.
 *
 * <pre>
 *   build --step--> build + work, findings, report --step--> ...   ClubPlan
 *   set   --planner--> ClubPlan, ClubPlan, ...  --reviews--&gt;        JobPlan
 * </pre>
 *
 * <p>Steps run in the order in which one needs another. What is to be done at the bench is an
 * {@link dev.tipwright.core.plan.Operation}, and operations are listed in bench order: the butt is cut last, after the cure.
 *
 * <p><img src="{@docRoot}/resources/job.svg" width="960"
 *     alt="The job in eight steps from left to right, each with the packages it is in.">
 */
package dev.tipwright.core.plan;
