package dev.tipwright.core.uncertainty;

/** Root of a sum of squares, scaled so that no square overflows or vanishes. */
final class Quadrature {

    private Quadrature() {}

    static double of(double... parts) {
        double largest = 0;
        for (double part : parts) {
            largest = Math.max(largest, Math.abs(part));
        }
        if (largest == 0) {
            return 0;
        }
        double sum = 0;
        for (double part : parts) {
            sum += (part / largest) * (part / largest);
        }
        return largest * Math.sqrt(sum);
    }
}
