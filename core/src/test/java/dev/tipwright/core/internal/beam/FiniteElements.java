package dev.tipwright.core.internal.beam;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The textbook way to the same frequency: many elements with cubic shapes, stiffness and mass matrices by a quadrature rule of
 * Commons Math, and all eigenvalues of the dense matrices by EJML.
 *
 * <p>Przemieniecki, Theory of Matrix Structural Analysis, chapters 5 and 11 (from memory): unknowns are deflection and slope at
 * each node, the rigid body adds its mass matrix at the last.
 */
final class FiniteElements {

    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(6, 0, 1);

    private FiniteElements() {}

    /** The lowest frequency; both lines have the same stations, without steps, and so many elements between two of them. */
    static double frequencyHz(double[][] stiffness, double[][] density, EndBody body, int elements) {
        List<Double> nodes = new ArrayList<>();
        for (int i = 0; i + 1 < stiffness[0].length; i++) {
            for (int j = 0; j < elements; j++) {
                nodes.add(stiffness[0][i] + j * (stiffness[0][i + 1] - stiffness[0][i]) / elements);
            }
        }
        nodes.add(stiffness[0][stiffness[0].length - 1]);
        int size = 2 * nodes.size();
        DMatrixRMaj k = new DMatrixRMaj(size, size);
        DMatrixRMaj m = new DMatrixRMaj(size, size);
        for (int e = 0; e + 1 < nodes.size(); e++) {
            addElement(k, m, 2 * e, nodes.get(e), nodes.get(e + 1), stiffness, density);
        }
        double o = body.offsetM();
        m.add(size - 2, size - 2, body.massKg());
        m.add(size - 2, size - 1, body.massKg() * o);
        m.add(size - 1, size - 2, body.massKg() * o);
        m.add(size - 1, size - 1, body.massKg() * o * o + body.inertiaKgM2());
        double largest = largestOf(withoutClamp(k), withoutClamp(m));
        return 1 / (2 * Math.PI * Math.sqrt(largest));
    }

    /** The value at a share of the way from one node to the next, between which there is no station. */
    private static double value(double[][] line, double from, double to, double share) {
        int i = 0;
        while (!((from + to) / 2 < line[0][i + 1])) {
            i++;
        }
        double s = from + share * (to - from);
        return line[1][i] + (line[1][i + 1] - line[1][i]) * (s - line[0][i]) / (line[0][i + 1] - line[0][i]);
    }

    private static void addElement(
            DMatrixRMaj k, DMatrixRMaj m, int first, double from, double to, double[][] stiffness, double[][] density) {
        double h = to - from;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                int a = i;
                int b = j;
                k.add(
                        first + i,
                        first + j,
                        RULE.integrate(x -> value(stiffness, from, to, x) * bend(a, x, h) * bend(b, x, h)) * h);
                m.add(
                        first + i,
                        first + j,
                        RULE.integrate(x -> value(density, from, to, x) * shape(a, x, h) * shape(b, x, h)) * h);
            }
        }
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

    private static DMatrixRMaj withoutClamp(DMatrixRMaj full) {
        return CommonOps_DDRM.extract(full, 2, full.numRows, 2, full.numCols);
    }

    /** The largest t with {@code M x = t K x}: of the symmetric {@code L^-1 M L^-T} where {@code K = L L^T}. */
    private static double largestOf(DMatrixRMaj k, DMatrixRMaj m) {
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(k.numRows, true);
        if (!cholesky.decompose(k)) {
            throw new IllegalStateException("stiffness is not positive");
        }
        DMatrixRMaj inverse = cholesky.getT(null);
        CommonOps_DDRM.invert(inverse);
        DMatrixRMaj half = new DMatrixRMaj(k.numRows, k.numRows);
        CommonOps_DDRM.mult(inverse, m, half);
        DMatrixRMaj symmetric = new DMatrixRMaj(k.numRows, k.numRows);
        CommonOps_DDRM.multTransB(half, inverse, symmetric);
        EigenDecomposition_F64<DMatrixRMaj> all = DecompositionFactory_DDRM.eig(k.numRows, false, true);
        all.decompose(symmetric);
        double largest = 0;
        for (int i = 0; i < all.getNumberOfEigenvalues(); i++) {
            largest = Math.max(largest, all.getEigenvalue(i).getReal());
        }
        return largest;
    }
}
