package dev.tipwright.core.uncertainty;

import java.util.Arrays;

/**
 * Inputs tied to each other, directly or through others, and to none outside; an uncorrelated input is a group of one.
 * Holds a factor {@code G} of the correlation matrix, {@code R = G G'}, so that {@code G} times independent unit
 * deviates is correlated as wanted.
 */
final class CorrelatedGroup {

    /** What rounding may leave of a zero, for coefficients that lie on the edge of the possible. */
    private static final double ROUNDING = 1e-12;

    private final int[] members;
    private final double[][] factor;

    private CorrelatedGroup(int[] members, double[][] factor) {
        this.members = members;
        this.factor = factor;
    }

    /** Picks the rows and columns of the members out of the matrix of all inputs. */
    static CorrelatedGroup of(int[] members, double[][] all) {
        int size = members.length;
        double[][] rest = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                rest[i][j] = all[members[i]][members[j]];
            }
        }
        return new CorrelatedGroup(members.clone(), factor(rest));
    }

    /**
     * Cholesky with the largest remaining diagonal first, which is what makes it safe where the matrix is singular.
     * Eats its argument.
     */
    private static double[][] factor(double[][] rest) {
        int size = rest.length;
        double[][] g = new double[size][size];
        for (int column = 0; column < size; column++) {
            int pivot = largestDiagonal(rest);
            double root = Math.sqrt(rest[pivot][pivot]);
            if (rest[pivot][pivot] <= ROUNDING) {
                break;
            }
            for (int i = 0; i < size; i++) {
                g[i][column] = rest[i][pivot] / root;
            }
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    rest[i][j] -= g[i][column] * g[j][column];
                }
            }
        }
        requireNothingLeft(rest);
        return g;
    }

    private static int largestDiagonal(double[][] rest) {
        int pivot = 0;
        for (int i = 1; i < rest.length; i++) {
            if (rest[i][i] > rest[pivot][pivot]) {
                pivot = i;
            }
        }
        return pivot;
    }

    private static void requireNothingLeft(double[][] rest) {
        for (double[] row : rest) {
            for (double left : row) {
                if (Math.abs(left) > rest.length * ROUNDING) {
                    throw new IllegalArgumentException("correlations contradict each other:"
                            + " the matrix of coefficients must be positive semidefinite");
                }
            }
        }
    }

    int size() {
        return members.length;
    }

    /** The indices of the members, in rising order. */
    int[] members() {
        return members.clone();
    }

    /** Whether the input with this index belongs to the group. */
    boolean holds(int index) {
        return Arrays.binarySearch(members, index) >= 0;
    }

    /** Root of the joint variance of the members' signed contributions: the length of {@code G' a}. */
    double combined(double[] contributions) {
        double[] parts = new double[members.length];
        for (int k = 0; k < members.length; k++) {
            for (int i = 0; i < members.length; i++) {
                parts[k] += factor[i][k] * contributions[members[i]];
            }
        }
        return Quadrature.of(parts);
    }

    /** Row {@code i} of {@code R a}: what the contribution of a member shares with all of them. */
    double projected(int index, double[] contributions) {
        int row = Arrays.binarySearch(members, index);
        double sum = 0;
        for (int j = 0; j < members.length; j++) {
            double coefficient = 0;
            for (int k = 0; k < members.length; k++) {
                coefficient += factor[row][k] * factor[j][k];
            }
            sum += coefficient * contributions[members[j]];
        }
        return sum;
    }

    /** Turns independent unit deviates into correlated ones, in place. */
    void mix(double[] deviates, double[] scratch) {
        for (int i = 0; i < members.length; i++) {
            double sum = 0;
            for (int k = 0; k < members.length; k++) {
                sum += factor[i][k] * deviates[members[k]];
            }
            scratch[i] = sum;
        }
        for (int i = 0; i < members.length; i++) {
            deviates[members[i]] = scratch[i];
        }
    }
}
