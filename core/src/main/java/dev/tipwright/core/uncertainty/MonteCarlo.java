package dev.tipwright.core.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/**
 * Propagation of distributions by a Monte Carlo method (JCGM 101:2008, clause 7), for models that bend or jump.
 *
 * <p>Reproducible to the last bit: the inputs of trial {@code t} are a function of the seed and {@code t} alone
 * (SplitMix64 used as a counter, inverse distribution functions by {@code StrictMath} and plain arithmetic), so one
 * thread or many give the same result, on every Java virtual machine. Correlated inputs must be normal (JCGM 101:2008,
 * 6.4.8).
 *
 * <p>For a coverage probability {@code p}, JCGM 101:2008, 7.2.2, asks for at least 10 000 times {@code 1 / (1 - p)}
 * trials: 200 000 for 0.95. A trial needs 8 bytes.
 *
 * <pre>{@code
 * Measurand square = Measurand.of(
 *         "square", "mm2", Inputs.of(Input.ofLimits("side", "mm", 0, 1)), x -> x[0] * x[0]);
 * Math.round(100 * MonteCarlo.of(100_000, 7).run(square).mean());    // = 33
 * Budget.of(square).value();                                         // = 0.0
 * }</pre>
 */
public final class MonteCarlo {

    private static final int MOST_TRIALS = 100_000_000;

    /** Small enough for a report of progress every few milliseconds, large enough for the hand-over to cost nothing. */
    private static final int BLOCK = 8192;

    /** Trials drawn together: few enough for their inputs to stay near the processor. */
    private static final int TOGETHER = 64;

    private final int trials;
    private final long seed;
    private final Progress progress;

    private MonteCarlo(int trials, long seed, Progress progress) {
        this.trials = trials;
        this.seed = seed;
        this.progress = progress;
    }

    /** Told now and then how far a run has come. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Called on the thread that called {@code run}, with {@code done} rising, the last time with {@code done} equal
         * to {@code total}. An exception thrown here ends the run.
         *
         * @param done trials done
         * @param total trials in all
         */
        void report(int done, int total);
    }

    /**
     * A run to be made.
     *
     * @param trials the number of trials, from 2 to 100 000 000
     * @param seed the seed; any number
     * @return the run, silent
     * @throws IllegalArgumentException if the number of trials is outside its range
     */
    public static MonteCarlo of(int trials, long seed) {
        if (trials < 2 || trials > MOST_TRIALS) {
            throw new IllegalArgumentException("trials must lie between 2 and 100000000, was " + trials);
        }
        return new MonteCarlo(trials, seed, (done, total) -> {});
    }

    /**
     * The same run with a report of its progress.
     *
     * @param newProgress called after every few thousand trials
     * @return the changed copy
     * @throws NullPointerException if it is null
     */
    public MonteCarlo withProgress(Progress newProgress) {
        return new MonteCarlo(trials, seed, Objects.requireNonNull(newProgress, "newProgress"));
    }

    /**
     * Runs on the calling thread.
     *
     * @param measurand the measurand
     * @return the result
     * @throws NullPointerException if the measurand is null
     * @throws IllegalArgumentException if a correlated input is not normal, or the model gives a value that is not
     *     finite; the text names the output and the inputs
     * @throws ArithmeticException if a result overflows
     */
    public MonteCarloResult run(Measurand measurand) {
        Objects.requireNonNull(measurand, "measurand");
        Sampler sampler = Sampler.of(measurand.inputs(), seed);
        double[] values = new double[trials];
        for (int from = 0; from < trials; from = end(from)) {
            fill(values, from, measurand, sampler);
            progress.report(end(from), trials);
        }
        return MonteCarloResult.of(measurand, seed, values);
    }

    /**
     * Runs in blocks on the threads of an executor and waits for them. The same bits come out as on one thread. The
     * model is called on several threads at once. Do not call this from a task of the same executor: if all its threads
     * wait, none is left to work. The executor is left running.
     *
     * @param measurand the measurand
     * @param executor where the blocks run; its number of threads is the number used
     * @return the result
     * @throws NullPointerException if an argument is null
     * @throws IllegalArgumentException if a correlated input is not normal, or the model gives a value that is not
     *     finite; the text names the output and the inputs, and is that of the first such trial
     * @throws ArithmeticException if a result overflows
     * @throws CancellationException if the calling thread is interrupted, which stays marked so
     * @throws java.util.concurrent.RejectedExecutionException if the executor takes no more tasks
     */
    public MonteCarloResult run(Measurand measurand, ExecutorService executor) {
        Objects.requireNonNull(measurand, "measurand");
        Objects.requireNonNull(executor, "executor");
        Sampler sampler = Sampler.of(measurand.inputs(), seed);
        double[] values = new double[trials];
        List<Future<?>> blocks = new ArrayList<>();
        try {
            for (int from = 0; from < trials; from = end(from)) {
                int block = from;
                blocks.add(executor.submit(() -> fill(values, block, measurand, sampler)));
            }
            for (int i = 0; i < blocks.size(); i++) {
                if (!succeeded(blocks.get(i))) {
                    // Done again here, where the model fails again and its own exception reaches the caller.
                    fill(values, i * BLOCK, measurand, sampler);
                }
                progress.report(end(i * BLOCK), trials);
            }
            int half = blocks.size() / 2 * BLOCK;
            blocks.add(executor.submit(() -> Arrays.sort(values, 0, half)));
            Arrays.sort(values, half, trials);
            succeeded(blocks.get(blocks.size() - 1));
        } finally {
            // Does nothing to blocks that are done; after a failure it keeps the rest from starting.
            blocks.forEach(block -> block.cancel(false));
        }
        return MonteCarloResult.of(measurand, seed, values);
    }

    private int end(int from) {
        return Math.min(from + BLOCK, trials);
    }

    private void fill(double[] values, int from, Measurand measurand, Sampler sampler) {
        int inputs = measurand.inputs().size();
        double[][] x = new double[TOGETHER][inputs];
        double[] scratch = new double[inputs];
        for (int first = from; first < end(from); first += TOGETHER) {
            int rows = Math.min(TOGETHER, end(from) - first);
            sampler.draw(first, rows, x, scratch);
            for (int row = 0; row < rows; row++) {
                values[first + row] = measurand.at(x[row]) + 0.0;
            }
        }
        // Rising runs, made on all threads, that the sort of the whole only merges.
        Arrays.sort(values, from, end(from));
    }

    private static boolean succeeded(Future<?> block) {
        try {
            block.get();
            return true;
        } catch (ExecutionException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            CancellationException cancelled = new CancellationException("interrupted while waiting for trials");
            cancelled.initCause(e);
            throw cancelled;
        }
    }

    /**
     * Trials and seed.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return trials + " trials, seed " + seed;
    }
}
