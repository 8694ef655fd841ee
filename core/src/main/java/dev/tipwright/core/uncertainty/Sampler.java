package dev.tipwright.core.uncertainty;

import java.util.List;

/**
 * Draws input vectors: trial {@code t} is a function of the seed and {@code t} alone. Each input uses a fixed count of
 * uniform numbers: one, turned over by the inverse of its distribution function (JCGM 101:2008, C.2), or two for
 * Student's t.
 */
final class Sampler {

    private static final double SQRT_3 = Math.sqrt(3);
    private static final double SQRT_6 = Math.sqrt(6);

    private final Inputs inputs;
    private final long start;
    private final int[] offset;
    private final int stride;
    private final List<CorrelatedGroup> tied;

    private Sampler(Inputs inputs, long seed) {
        this.inputs = inputs;
        // Mixed once so that neighbouring seeds do not give sequences that are shifted copies of each other.
        this.start = SplitMix64.mix(seed);
        this.offset = new int[inputs.size()];
        int next = 0;
        for (int i = 0; i < offset.length; i++) {
            offset[i] = next;
            next += inputs.at(i).distribution() == Distribution.STUDENT ? 2 : 1;
        }
        this.stride = next;
        this.tied = inputs.groups().stream().filter(g -> g.size() > 1).toList();
    }

    static Sampler of(Inputs inputs, long seed) {
        Sampler sampler = new Sampler(inputs, seed);
        for (CorrelatedGroup group : sampler.tied) {
            for (int i : group.members()) {
                requireNormal(inputs.at(i));
            }
        }
        return sampler;
    }

    private static void requireNormal(Input input) {
        if (input.distribution() != Distribution.NORMAL) {
            throw new IllegalArgumentException("correlated input " + input.name()
                    + " must be normal for Monte Carlo (JCGM 101:2008, 6.4.8), was " + input.distribution()
                    + "; make what the inputs share an input of its own instead");
        }
    }

    /**
     * Fills each row of {@code x} with the values of one trial. One input is drawn for all the trials before the next is: then no
     * number waits for the one before it.
     *
     * @param firstTrial the trial that the first row is for
     * @param rows how many rows to fill
     * @param x a row for each trial
     * @param scratch as long as a row
     */
    void draw(long firstTrial, int rows, double[][] x, double[] scratch) {
        for (int i = 0; i < offset.length; i++) {
            Input input = inputs.at(i);
            long first = firstTrial * stride + offset[i];
            for (int row = 0; row < rows; row++) {
                x[row][i] = deviate(input, first + (long) row * stride);
            }
        }
        for (int row = 0; row < rows; row++) {
            for (CorrelatedGroup group : tied) {
                group.mix(x[row], scratch);
            }
        }
        for (int i = 0; i < offset.length; i++) {
            double estimate = inputs.at(i).estimate();
            double uncertainty = inputs.at(i).standardUncertainty();
            for (int row = 0; row < rows; row++) {
                x[row][i] = estimate + uncertainty * x[row][i];
            }
        }
    }

    private double deviate(Input input, long k) {
        double p = SplitMix64.uniform(start, k);
        return switch (input.distribution()) {
            case NORMAL -> NormalQuantile.of(p);
            case RECTANGULAR -> SQRT_3 * (2 * p - 1);
            case TRIANGULAR -> SQRT_6 * (p < 0.5 ? Math.sqrt(2 * p) - 1 : 1 - Math.sqrt(2 * (1 - p)));
            case STUDENT -> student(p, SplitMix64.uniform(start, k + 1), input.degreesOfFreedom());
        };
    }

    /**
     * Bailey, Polar Generation of Random Variates with the t-Distribution, Mathematics of Computation 62, 1994,
     * 779-781.
     */
    private static double student(double p, double turn, DegreesOfFreedom nu) {
        double twice = 2 * nu.reciprocal();
        double square = StrictMath.expm1(-twice * StrictMath.log(p)) * 2 / twice;
        return Math.sqrt(square) * StrictMath.cos(2 * Math.PI * turn);
    }
}
