package dev.tipwright.examples;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.flex.FlexDoubt;
import dev.tipwright.core.flex.FlexReview;
import dev.tipwright.core.flex.FlexStep;
import dev.tipwright.core.grip.GripStep;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthDoubt;
import dev.tipwright.core.match.ForbiddenPair;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.rules.ClubLimits;
import dev.tipwright.core.rules.RulesDoubt;
import dev.tipwright.core.rules.RulesStep;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.examples.read.Job;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.fitcheck.FitDoubt;
import dev.tipwright.fitcheck.StockReview;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.swingweight.ShaftReview;
import dev.tipwright.swingweight.SwingWeightCost;
import dev.tipwright.swingweight.SwingWeightDoubt;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.TipWeightStep;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The main job: reads what was measured on the bench from a folder, plans every club through all steps, and prints the plan.
 *
 * <pre>
 *   MainJob FOLDER [inch | metric] [--out OUTPUT]
 *
 *   0   the plan is on standard output, warnings of unusual values on standard error
 *   2   the input has problems: all of them are on standard error, and there is no plan
 * </pre>
 *
 * <p>With {@code --out} the plan is also written to {@code plan.txt}, {@code plan.md} and {@code plan.json} in the folder OUTPUT, which is
 * made if it is not there; beside them the set as a chart, a drawing of each finished tip in its bore, and a sheet for what the clubs were
 * found to be, which is kept once it is there. Other files in it are left alone, and nothing is written if the input has problems.
 */
public final class MainJob {
    /** The plan is printed. What the plan itself advises against is said in its findings. */
    static final int PLANNED = 0;
    /** Nothing is planned; standard error says why. */
    static final int PROBLEMS = 2;

    private static final String USAGE =
            "expected: the folder with the measurements, and perhaps inch or metric, and perhaps --out and a folder to write to";

    private MainJob() {}

    /**
     * Plans a job.
     *
     * @param args the folder, and perhaps the units to print in
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, out, err);
        if (code != PLANNED) {
            System.exit(code);
        }
    }

    /** Plans a job and gives the exit code. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        Optional<Arguments> arguments = Arguments.of(args);
        if (arguments.isEmpty()) {
            err.println(USAGE);
            return PROBLEMS;
        }
        try {
            return run(arguments.get(), out, err);
        } catch (InvalidPathException e) {
            err.println(USAGE + "; found " + e.getMessage());
        } catch (IOException e) {
            err.println("problem: --out: the plan could not be written, " + e);
        }
        return PROBLEMS;
    }

    private static int run(Arguments arguments, PrintStream out, PrintStream err) throws IOException {
        JobFolder input = JobFolder.read(Path.of(arguments.folder()));
        input.warnings().forEach(warning -> err.println("warning: " + warning));
        input.problems().forEach(problem -> err.println("problem: " + problem));
        if (input.job().isEmpty()) {
            err.println(input.problems().size() + " to put right; nothing was planned.");
            return PROBLEMS;
        }
        Job job = input.job().get();
        PlanFiles files = new PlanFiles(plan(job), arguments.units(), job.bench());
        if (arguments.output().isPresent()) {
            files.writeTo(Path.of(arguments.output().get()));
        }
        out.print(files.page());
        return PLANNED;
    }

    /** What was asked for on the command line. */
    private record Arguments(String folder, Units units, Optional<String> output) {

        /** Empty if it cannot be understood. */
        static Optional<Arguments> of(String[] args) {
            List<String> left = new ArrayList<>(Arrays.asList(args));
            Optional<String> output = Optional.empty();
            int out = left.indexOf("--out");
            if (out >= 0 && out + 1 < left.size()) {
                output = Optional.of(left.remove(out + 1));
                left.remove(out);
            }
            boolean known = left.size() == 1 || (left.size() == 2 && left.get(1).matches("inch|metric"));
            return known && !left.contains("--out")
                    ? Optional.of(new Arguments(
                            left.get(0), left.lastIndexOf("metric") == 1 ? Units.METRIC : Units.INCH, output))
                    : Optional.empty();
        }
    }

    /** The whole job, with the shafts shared out first if that is wanted. */
    static JobPlan plan(Job job) {
        JobPlanner planner = JobPlanner.of(steps(job).toArray(WorkStep[]::new));
        List<SetReview> reviews = reviews(job);
        ClubSet clubs = job.clubs();
        if (job.extras().shareShafts()) {
            List<Shaft> shafts =
                    clubs.builds().stream().map(build -> build.parts().shaft()).toList();
            ShaftMatch match = ShaftMatcher.by(planner, SwingWeightCost.WITHOUT_TIP_WEIGHT)
                    .withForbidden(ForbiddenPair.acrossBlanks(clubs, shafts))
                    .match(clubs);
            reviews.add(match);
            clubs = match.set();
        }
        return planner.reviewedBy(reviews.toArray(SetReview[]::new)).plan(clubs);
    }

    /** Each step after those it needs. */
    private static List<WorkStep> steps(Job job) {
        List<WorkStep> steps = new ArrayList<>(weighed(job));
        job.extras().timing().ifPresent(timing -> steps.add(FlexStep.clamping(timing.clamp(), timing.within())));
        steps.add(RulesStep.within(ClubLimits.EQUIPMENT_RULES, Length.ZERO));
        return steps;
    }

    /** From the trim to the swing weight: all one step where a flange of the stock may send a club through it again. */
    private static List<WorkStep> weighed(Job job) {
        List<WorkStep> steps = new ArrayList<>(List.of(
                build -> trim(job, build).take(build),
                TipFitStep.with(job.fit()),
                CutToLengthStep.to(job.lengths(), job.kerf())));
        job.extras().orientation().ifPresent(steps::add);
        if (job.sizesGrips()) {
            steps.add(GripStep.over(job.extras().tape().orElse(TapeLayers.NONE)));
        }
        int most = job.extras().weightsInOneTip();
        if (job.tipWeights().stream().anyMatch(weight -> weight.flange().moreThan(Length.ZERO))) {
            return List.of(TipWeightStep.of(steps, job.swingWeights(), job.tipWeights(), most));
        }
        steps.add(SwingWeightStep.towards(job.swingWeights(), job.tipWeights(), most));
        return steps;
    }

    private static TipTrimStep trim(Job job, Build build) {
        TipTrimStep step = TipTrimStep.by(job.chartOf(build), job.kerf());
        return job.bench().map(step::measuredWith).orElse(step);
    }

    /** What looks at the whole set; where instruments are named, at how sure its numbers are too. */
    private static List<SetReview> reviews(Job job) {
        List<SetReview> reviews = new ArrayList<>(List.of(new StockReview(), new ShaftReview()));
        job.extras().timing().ifPresent(timing -> reviews.add(new FlexReview(timing.within())));
        job.bench().ifPresent(bench -> {
            reviews.addAll(List.of(
                    new LengthDoubt(bench),
                    new FitDoubt(bench, job.fit()),
                    new SwingWeightDoubt(bench),
                    new RulesDoubt(bench)));
            job.extras().timing().ifPresent(timing -> reviews.add(new FlexDoubt(bench, timing.within())));
        });
        return reviews;
    }
}
