package dev.tipwright.core.internal.beam;

/**
 * The largest eigenvalue of a symmetric tridiagonal matrix, and how much its eigenvector has of the last coordinate.
 *
 * @param value the eigenvalue
 * @param last the size of the last coordinate of the eigenvector of length 1
 */
record Ritz(double value, double last) {

    /**
     * By Newton's method on the determinant of {@code x - T}, from the right, where it only ever comes down.
     *
     * <p>The determinant is the product of the pivots {@code p_1 = x - a_1, p_i = x - a_i - b_(i-1)^2 / p_(i-1)}, all positive right
     * of the eigenvalue. Their derivatives {@code g_1 = 1, g_i = 1 + (b_(i-1) / p_(i-1))^2 g_(i-1)} give the step
     * {@code 1 / sum(g_i / p_i)}, and at the eigenvalue the last of them is one over the square of the last coordinate.
     *
     * @param diagonal its entries {@code a}, {@code size} of them used
     * @param beside the entries {@code b} next to the diagonal, none 0, {@code size - 1} of them used
     * @param size the order of the matrix, 1 or more
     * @param before the largest eigenvalue of the matrix without its last row and column; unused if {@code size} is 1
     */
    static Ritz largest(double[] diagonal, double[] beside, int size, double before) {
        if (size == 1) {
            return new Ritz(diagonal[0], 1);
        }
        double next = Math.max(before, diagonal[size - 1]) + beside[size - 2];
        double x;
        double growth;
        do {
            x = next;
            double pivot = x - diagonal[0];
            growth = 1;
            double sum = growth / pivot;
            for (int i = 1; i < size; i++) {
                double ratio = beside[i - 1] / pivot;
                growth = 1 + ratio * ratio * growth;
                pivot = x - diagonal[i] - ratio * beside[i - 1];
                sum += growth / pivot;
            }
            // Rounding may carry x on or left of the eigenvalue, where the last pivot is no longer positive.
            next = pivot > 0 ? x - 1 / sum : x;
        } while (next < x);
        return new Ritz(x, 1 / Math.sqrt(growth));
    }
}
