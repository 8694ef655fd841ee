package dev.tipwright.core.internal.beam;

/**
 * The slowest free swing of a beam.
 *
 * @param frequencyHz its frequency in hertz
 * @param residual how far the shape found is from reproducing itself under its own inertia forces: the size of
 *     {@code bend(w) - t w} over that of {@code t w}, 0 to 1
 * @param iterations how many times the beam was bent to find it
 */
public record Mode(double frequencyHz, double residual, int iterations) {

    static Mode of(double t, double residual, int iterations) {
        double frequencyHz = 1 / (2 * Math.PI * Math.sqrt(t));
        // Written so that NaN fails too.
        if (!(frequencyHz > 0 && frequencyHz < Double.POSITIVE_INFINITY && residual >= 0)) {
            throw new ArithmeticException("The frequency is out of the range of a double: " + frequencyHz + " Hz");
        }
        return new Mode(frequencyHz, residual, iterations);
    }
}
