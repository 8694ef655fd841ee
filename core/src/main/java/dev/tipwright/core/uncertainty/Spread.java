package dev.tipwright.core.uncertainty;

/** Mean and standard deviation ({@code n - 1}) of at least two values, by two passes, scaled against overflow. */
record Spread(double mean, double standardDeviation) {

    static Spread of(double[] values) {
        double pivot = values[0] / 2 + values[values.length - 1] / 2;
        double mean = pivot + sumOfDeviations(values, pivot) / values.length;
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value - mean));
        }
        return new Spread(mean, largest == 0 ? 0 : largest * scaledDeviation(values, mean, largest));
    }

    private static double sumOfDeviations(double[] values, double pivot) {
        double sum = 0;
        for (double value : values) {
            sum += value - pivot;
        }
        return sum;
    }

    private static double scaledDeviation(double[] values, double mean, double scale) {
        double sum = 0;
        double squares = 0;
        for (double value : values) {
            double deviation = (value - mean) / scale;
            sum += deviation;
            squares += deviation * deviation;
        }
        int n = values.length;
        // The second term takes out what rounding left in the mean.
        return Math.sqrt((squares - sum * sum / n) / (n - 1));
    }
}
