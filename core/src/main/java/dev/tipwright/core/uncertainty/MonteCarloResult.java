package dev.tipwright.core.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What a {@link MonteCarlo} run found: the output values in rising order and what JCGM 101:2008, 7.5 to 7.7, takes from
 * them.
 */
public final class MonteCarloResult {

    private final Measurand measurand;
    private final long seed;
    private final double[] sorted;
    private final Spread spread;
    private final List<Note> notes;

    private MonteCarloResult(Measurand measurand, long seed, double[] sorted) {
        this.measurand = measurand;
        this.seed = seed;
        this.sorted = sorted;
        this.spread = Spread.of(sorted);
        Check.result("mean of " + measurand.name(), spread.mean());
        Check.result("standard uncertainty of " + measurand.name(), spread.standardDeviation());
        this.notes = List.copyOf(Note.about(measurand.inputs()));
    }

    /** What a reader of the mean and the standard uncertainty has to know. */
    public enum Note {
        /**
         * An input has a Student distribution with at most two degrees of freedom (two or three readings), which has no
         * standard deviation. The standard uncertainty is that of this sample only and does not settle with more
         * trials; the intervals and quantiles do.
         */
        NO_STANDARD_DEVIATION,

        /** An input has a Student distribution with one degree of freedom (two readings), which has no mean either. */
        NO_MEAN;

        static List<Note> about(Inputs inputs) {
            double least = inputs.list().stream()
                    .filter(i -> i.distribution() == Distribution.STUDENT && i.standardUncertainty() > 0)
                    .mapToDouble(i -> 1 / i.degreesOfFreedom().reciprocal())
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            if (least > 2) {
                return List.of();
            }
            return least > 1 ? List.of(NO_STANDARD_DEVIATION) : List.of(NO_STANDARD_DEVIATION, NO_MEAN);
        }
    }

    /** Takes the array over and sorts it. */
    static MonteCarloResult of(Measurand measurand, long seed, double[] values) {
        Arrays.sort(values);
        return new MonteCarloResult(measurand, seed, values);
    }

    /**
     * The measurand of the run, inputs and model included.
     *
     * @return the measurand
     */
    public Measurand measurand() {
        return measurand;
    }

    /**
     * The seed of the run.
     *
     * @return the seed
     */
    public long seed() {
        return seed;
    }

    /**
     * The number of trials.
     *
     * @return {@code M}
     */
    public int trials() {
        return sorted.length;
    }

    /**
     * The mean of the values (JCGM 101:2008, 7.6, equation 16).
     *
     * @return the estimate, in the unit of the measurand
     */
    public double mean() {
        return spread.mean();
    }

    /**
     * The standard deviation of the values, with {@code M - 1} (JCGM 101:2008, 7.6, equation 17).
     *
     * @return the standard uncertainty, in the unit of the measurand
     */
    public double standardUncertainty() {
        return spread.standardDeviation();
    }

    /**
     * What a reader of the mean and the standard uncertainty has to know.
     *
     * @return an unmodifiable list, most often empty
     */
    public List<Note> notes() {
        return notes;
    }

    /**
     * The values in rising order.
     *
     * @return a stream over all of them
     */
    public DoubleStream sorted() {
        return Arrays.stream(sorted);
    }

    /**
     * The value that the output stays below with a probability: linear between the sorted values, of which number
     * {@code r} stands for the probability {@code (r - 1/2) / M} (JCGM 101:2008, annex D).
     *
     * @param probability the probability, from {@code 1 / 2M} to {@code 1 - 1 / 2M}
     * @return the value, in the unit of the measurand
     * @throws IllegalArgumentException if the probability is outside its range: beyond the least and the greatest value
     *     the trials say nothing
     */
    public double quantile(double probability) {
        double half = 0.5 / sorted.length;
        if (!(probability >= half && probability <= 1 - half)) {
            throw new IllegalArgumentException("probability must lie between " + half + " and 1 - " + half + " for "
                    + sorted.length + " trials, was " + probability);
        }
        double place = probability * sorted.length - 0.5;
        int below = Math.min((int) place, sorted.length - 2);
        double step = Check.result("step between values", sorted[below + 1] - sorted[below]);
        return sorted[below] + (place - below) * step;
    }

    /**
     * The interval that leaves out as many values below as above (JCGM 101:2008, 7.7.2).
     *
     * @param probability the coverage probability, between 0 and 1
     * @return the interval
     * @throws IllegalArgumentException if the probability is outside its range or leaves no value out, or none in
     */
    public Interval symmetricInterval(double probability) {
        int covered = covered(probability);
        int first = (sorted.length - covered + 1) / 2 - 1;
        return new Interval(probability, sorted[first], sorted[first + covered]);
    }

    /**
     * The shortest interval, the lowest of them if several are (JCGM 101:2008, 7.7.3 and 5.3.4). For an output whose
     * distribution leans it is the more telling one; it settles more slowly with the number of trials.
     *
     * @param probability the coverage probability, between 0 and 1
     * @return the interval
     * @throws IllegalArgumentException if the probability is outside its range or leaves no value out, or none in
     */
    public Interval shortestInterval(double probability) {
        int covered = covered(probability);
        int first = 0;
        for (int r = 1; r + covered < sorted.length; r++) {
            if (sorted[r + covered] - sorted[r] < sorted[first + covered] - sorted[first]) {
                first = r;
            }
        }
        return new Interval(probability, sorted[first], sorted[first + covered]);
    }

    /** {@code q} of JCGM 101:2008, 7.7.1: {@code pM}, rounded if it is not whole. */
    private int covered(double probability) {
        Check.share("probability", probability);
        int covered = (int) (probability * sorted.length + 0.5);
        if (covered < 1 || covered >= sorted.length) {
            throw new IllegalArgumentException("probability must leave at least one of " + sorted.length
                    + " trials in and one out, was " + probability);
        }
        return covered;
    }

    /**
     * The output with its standard uncertainty, rounded to two figures of it, and the number of trials.
     *
     * @return the text
     */
    @Override
    public String toString() {
        String unit = measurand.unit();
        return measurand.name() + " = " + Figures.of(mean(), standardUncertainty(), unit) + ", " + sorted.length
                + " trials";
    }
}
