package dev.tipwright.benchmarks;

import dev.tipwright.core.internal.beam.EndBody;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The textbook way to the frequency of a clamped beam: elements with cubic shapes, then all eigenvalues of the dense matrices by EJML.
 * Przemieniecki, Theory of Matrix Structural Analysis, chapters 5 and 11 (from memory). The matrices are made once, outside the time
 * that is measured.
 */
final class DenseBeam {

    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(6, 0, 1);

    private final double[] stations;
    private final double[] stiffness;
    private final double[] density;
    private final DMatrixRMaj k;
    private final DMatrixRMaj m;

    /** So many elements between two stations. */
    DenseBeam(double[] stations, double[] stiffness, double[] density, EndBody body, int elements) {
        this.stations = stations;
        this.stiffness = stiffness;
        this.density = density;
        int size = 2 * (elements * (stations.length - 1) + 1);
        DMatrixRMaj all = new DMatrixRMaj(size, size);
        DMatrixRMaj mass = new DMatrixRMaj(size, size);
        for (int e = 0; e < size / 2 - 1; e++) {
            add(all, mass, e, elements);
        }
        double o = body.offsetM();
        mass.add(size - 2, size - 2, body.massKg());
        mass.add(size - 2, size - 1, body.massKg() * o);
        mass.add(size - 1, size - 2, body.massKg() * o);
        mass.add(size - 1, size - 1, body.massKg() * o * o + body.inertiaKgM2());
        this.k = CommonOps_DDRM.extract(all, 2, size, 2, size);
        this.m = CommonOps_DDRM.extract(mass, 2, size, 2, size);
    }

    private void add(DMatrixRMaj all, DMatrixRMaj mass, int element, int elements) {
        int span = element / elements;
        double h = (stations[span + 1] - stations[span]) / elements;
        double start = (element % elements) / (double) elements;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                int a = i;
                int b = j;
                double bends = RULE.integrate(
                        x -> between(stiffness, span, start + x / elements) * bend(a, x, h) * bend(b, x, h));
                double moves = RULE.integrate(
                        x -> between(density, span, start + x / elements) * shape(a, x, h) * shape(b, x, h));
                all.add(2 * element + i, 2 * element + j, bends * h);
                mass.add(2 * element + i, 2 * element + j, moves * h);
            }
        }
    }

    private static double between(double[] values, int span, double share) {
        return values[span] + share * (values[span + 1] - values[span]);
    }

    private static double shape(int i, double x, double h) {
        return switch (i) {
            case 0 -> 1 - 3 * x * x + 2 * x * x * x;
            case 1 -> h * x * (1 - x) * (1 - x);
            case 2 -> x * x * (3 - 2 * x);
            default -> h * x * x * (x - 1);
        };
    }

    private static double bend(int i, double x, double h) {
        return switch (i) {
            case 0 -> (12 * x - 6) / (h * h);
            case 1 -> (6 * x - 4) / h;
            case 2 -> (6 - 12 * x) / (h * h);
            default -> (6 * x - 2) / h;
        };
    }

    /** The lowest frequency: the largest eigenvalue of {@code L^-1 M L^-T} where {@code K = L L^T}. */
    double frequencyHz() {
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(k.numRows, true);
        if (!cholesky.decompose(k.copy())) {
            throw new IllegalStateException("stiffness is not positive");
        }
        DMatrixRMaj inverse = cholesky.getT(null);
        CommonOps_DDRM.invert(inverse);
        DMatrixRMaj half = new DMatrixRMaj(k.numRows, k.numRows);
        CommonOps_DDRM.mult(inverse, m, half);
        DMatrixRMaj symmetric = new DMatrixRMaj(k.numRows, k.numRows);
        CommonOps_DDRM.multTransB(half, inverse, symmetric);
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(k.numRows, false, true);
        eigen.decompose(symmetric);
        double largest = 0;
        for (int i = 0; i < eigen.getNumberOfEigenvalues(); i++) {
            largest = Math.max(largest, eigen.getEigenvalue(i).getReal());
        }
        return 1 / (2 * Math.PI * Math.sqrt(largest));
    }
}
