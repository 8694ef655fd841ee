package dev.tipwright.examples;

import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthDoubt;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.examples.read.Job;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.fitcheck.FitDoubt;
import dev.tipwright.fitcheck.StockReview;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.swingweight.ShaftReview;
import dev.tipwright.swingweight.SwingWeightDoubt;
import dev.tipwright.swingweight.SwingWeightStep;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The main job: reads what was measured on the bench from a folder, plans every club through all steps, and prints the plan.
 *
 * <pre>
 *   MainJob FOLDER [inch | metric]
 *
 *   0   the plan is on standard output, warnings of unusual values on standard error
 *   2   the input has problems: all of them are on standard error, and there is no plan
 * </pre>
 */
public final class MainJob {
    /** The plan is printed. What the plan itself advises against is said in its findings. */
    static final int PLANNED = 0;
    /** Nothing is planned; standard error says why. */
    static final int PROBLEMS = 2;

    private static final String USAGE = "expected: the folder with the measurements, and perhaps inch or metric";

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
        if (args.length < 1 || args.length > 2 || (args.length == 2 && !args[1].matches("inch|metric"))) {
            err.println(USAGE);
            return PROBLEMS;
        }
        Units units = args.length == 2 && args[1].equals("metric") ? Units.METRIC : Units.INCH;
        JobFolder input;
        try {
            input = JobFolder.read(Path.of(args[0]));
        } catch (InvalidPathException e) {
            err.println(USAGE + "; found " + e.getMessage());
            return PROBLEMS;
        }
        input.warnings().forEach(warning -> err.println("warning: " + warning));
        input.problems().forEach(problem -> err.println("problem: " + problem));
        if (input.job().isEmpty()) {
            err.println(input.problems().size() + " to put right; nothing was planned.");
            return PROBLEMS;
        }
        Job job = input.job().get();
        out.print(job.bench()
                .map(bench -> PlanText.plain(plan(job), units, bench))
                .orElseGet(() -> PlanText.plain(plan(job), units)));
        return PLANNED;
    }

    /** The whole job, each step after those it needs. */
    static JobPlan plan(Job job) {
        return JobPlanner.of(
                        build -> TipTrimStep.by(job.chartOf(build), job.kerf()).take(build),
                        TipFitStep.with(job.fit()),
                        CutToLengthStep.to(job.lengths(), job.kerf()),
                        SwingWeightStep.towards(job.swingWeights(), job.tipWeights()))
                .reviewedBy(reviews(job).toArray(SetReview[]::new))
                .plan(job.clubs());
    }

    /** What looks at the whole set; where instruments are named, at how sure its numbers are too. */
    private static List<SetReview> reviews(Job job) {
        List<SetReview> reviews = new ArrayList<>(List.of(new StockReview(), new ShaftReview()));
        job.bench()
                .ifPresent(bench -> reviews.addAll(
                        List.of(new LengthDoubt(bench), new FitDoubt(bench, job.fit()), new SwingWeightDoubt(bench))));
        return reviews;
    }
}
