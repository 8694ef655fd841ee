package dev.tipwright.core.offcut;

import java.util.List;
import java.util.Optional;

/**
 * The line density, straight between given places, that meets as many conditions on its integral as there are places. Places are
 * in parts of the shaft's length.
 */
final class BentLine {

    private final double[] places;

    BentLine(List<Double> places) {
        this.places = places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** What each place's density adds to the mass between two stations. */
    double[] mass(double from, double to) {
        return weights(from, to, 0);
    }

    /** What each place's density adds to the first moment between two stations, about station 0. */
    double[] moment(double from, double to) {
        return weights(from, to, 1);
    }

    /** Simpson's rule is exact here: a straight piece, or one times its place, is of the second degree at most. */
    private double[] weights(double from, double to, int power) {
        double[] weights = new double[places.length];
        for (int i = 1; i < places.length; i++) {
            double low = Math.max(from, places[i - 1]);
            double high = Math.min(to, places[i]);
            if (low < high) {
                double middle = low + (high - low) / 2;
                double width = (high - low) / 6;
                double[] at = {low, middle, high};
                double[] simpson = {width, 4 * width, width};
                for (int k = 0; k < at.length; k++) {
                    double upper = (at[k] - places[i - 1]) / (places[i] - places[i - 1]);
                    double share = simpson[k] * (power == 0 ? 1 : at[k]);
                    weights[i - 1] += share * (1 - upper);
                    weights[i] += share * upper;
                }
            }
        }
        return weights;
    }

    /**
     * The densities that meet the conditions, by elimination with the largest pivot.
     *
     * @param conditions one row a condition, its weights and then what they must come to
     * @return the density at each place, empty if the conditions do not settle it
     */
    static Optional<double[]> solve(double[][] conditions) {
        int n = conditions.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(conditions[row][column]) > Math.abs(conditions[pivot][column])) {
                    pivot = row;
                }
            }
            double[] swapped = conditions[pivot];
            conditions[pivot] = conditions[column];
            conditions[column] = swapped;
            if (swapped[column] == 0) {
                return Optional.empty();
            }
            for (int row = column + 1; row < n; row++) {
                double share = conditions[row][column] / swapped[column];
                for (int k = column; k <= n; k++) {
                    conditions[row][k] -= share * swapped[k];
                }
            }
        }
        return Optional.of(back(conditions));
    }

    private static double[] back(double[][] triangle) {
        int n = triangle.length;
        double[] solution = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double rest = triangle[row][n];
            for (int k = row + 1; k < n; k++) {
                rest -= triangle[row][k] * solution[k];
            }
            solution[row] = rest / triangle[row][row];
        }
        return solution;
    }
}
