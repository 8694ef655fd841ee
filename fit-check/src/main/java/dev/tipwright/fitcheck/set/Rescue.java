package dev.tipwright.fitcheck.set;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a shaft that was cut too short or sanded too far can still become: every head of a set is tried with it, as it is and with the
 * worked part of its tip cut off, and the planner judges each. What is done stays done: no less is off the tip or the butt, and the
 * tip is as thin as it was worked. Where the planner asks for a smaller trim, the plan goes on with what is off, and a finding says so.
 *
 * <pre>{@code
 * Rescue rescue = new Rescue(Samples.shaft(), Work.NONE.withTipTrim(Length.parse("2 in")));
 * JobPlanner planner = JobPlanner.of(TipTrimStep.by(Samples.chart(), Length.parse("1/16 in")));
 * List<RescueChoice> choices = rescue.over(Samples.set(), planner);
 * choices.get(0).head();                                      // = 6
 * choices.get(0).plan().after().work().tipTrim().inches();    // = 2.0
 * choices.get(0).possible();                                  // = true
 * }</pre>
 *
 * @param shaft as it was raw
 * @param done what has been done to it: its trims, and its tip as it now measures; seat and attached masses do not count
 */
public record Rescue(Shaft shaft, Work done) {

    /**
     * Checks the values.
     *
     * @param shaft as it was raw
     * @param done what has been done to it; it leaves some of the shaft and of what was read of its tip
     */
    public Rescue {
        Require.given("shaft", shaft);
        Require.given("done", done);
        Length tip = done.tipTrim().plus(done.tip().reach());
        Length read = shaft.section().outside().length();
        Require.that(tip.lessThan(read), "done", "must leave some of the tip that was read, " + read, tip);
        Length cut = done.tipTrim().plus(done.buttTrim());
        Require.that(cut.lessThan(shaft.length()), "done", "must leave some of the shaft, " + shaft.length(), cut);
    }

    /**
     * The shaft as it stands, with places still counted from the raw tip: where its tip was stripped or worked, outside, finish and wall
     * are what is left, and what came off by their densities is no longer in its mass.
     *
     * @return the shaft with the section and the mass it has now
     */
    public Shaft asItStands() {
        return shaft.withSection(WorkedSection.of(shaft.section(), done.tipTrim(), done.tip()))
                .withMass(WorkedMass.of(shaft, done));
    }

    /**
     * The work that is still possible: nothing but the trims that are done, and the same with the worked part of the tip cut off as well.
     *
     * @return one of them if the tip was not worked, else two; their tip is unworked, because {@link #asItStands} has the shape
     */
    public List<Work> works() {
        Work trims = Work.NONE.withTipTrim(done.tipTrim()).withButtTrim(done.buttTrim());
        Length reach = done.tip().reach();
        boolean leaves = done.tipTrim().plus(done.buttTrim()).plus(reach).lessThan(shaft.length());
        return reach.moreThan(Length.ZERO) && leaves
                ? List.of(trims, trims.withTipTrim(done.tipTrim().plus(reach)))
                : List.of(trims);
    }

    /**
     * Tries the shaft on every head of a set.
     *
     * @param set the clubs; of each its head and grip count, its attached masses too
     * @param planner plans a club; its reviews are not asked
     * @return every head with every work, best first: no stop before a stop, then fewer cautions, then less of the tip off, then in the
     *     order of the set
     */
    public List<RescueChoice> over(ClubSet set, JobPlanner planner) {
        Require.given("set", set);
        Require.given("planner", planner);
        Shaft now = asItStands();
        List<RescueChoice> choices = new ArrayList<>();
        for (Build build : set.builds()) {
            for (Work work : works()) {
                Build start = new Build(
                        build.parts().withShaft(now),
                        work.withAttached(build.work().attached()));
                choices.add(new RescueChoice(build.label(), work, plan(planner, start)));
            }
        }
        choices.sort(Comparator.comparing((RescueChoice choice) -> !choice.possible())
                .thenComparing(RescueChoice::cautions)
                .thenComparing(choice -> choice.plan().after().work().tipTrim()));
        return choices;
    }

    private static ClubPlan plan(JobPlanner planner, Build start) {
        List<WorkStep> held = new ArrayList<>();
        for (WorkStep step : planner.steps()) {
            held.add(new HeldStep(step, start.work()));
        }
        return new JobPlanner(held, List.of()).plan(start);
    }

    /**
     * The same work on another shaft.
     *
     * @param shaft as it was raw
     * @return a copy that differs in that alone
     */
    public Rescue withShaft(Shaft shaft) {
        return new Rescue(shaft, done);
    }

    /**
     * The same shaft with other work.
     *
     * @param done what has been done to it
     * @return a copy that differs in that alone
     */
    public Rescue withDone(Work done) {
        return new Rescue(shaft, done);
    }
}
