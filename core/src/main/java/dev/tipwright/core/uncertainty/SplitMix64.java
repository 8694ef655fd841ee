package dev.tipwright.core.uncertainty;

/**
 * SplitMix64 (Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014) used as a counter:
 * number {@code k} of the sequence is a function of the seed and {@code k} alone. Any thread can work out any part of
 * it, so the numbers do not depend on how trials are shared out.
 */
final class SplitMix64 {

    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final double TWO_TO_MINUS_52 = 0x1p-52;

    private SplitMix64() {}

    /** Number {@code k} of the sequence, the first being {@code k = 0}. */
    static long bits(long seed, long k) {
        return mix(seed + (k + 1) * GOLDEN_GAMMA);
    }

    /** A bijection of 64 bits that leaves no trace of a pattern in its argument. */
    static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    /**
     * A number strictly between 0 and 1: the middle of one of 2^52 equal cells. The middles are exact in a double and
     * lie symmetrically about one half.
     */
    static double uniform(long seed, long k) {
        return ((bits(seed, k) >>> 12) + 0.5) * TWO_TO_MINUS_52;
    }
}
