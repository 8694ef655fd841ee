package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.junit.jupiter.api.Test;

/** Largest eigenvalue of a tridiagonal matrix against the dense solver of EJML. */
class RitzTest {

    @Test
    void oneByOneIsItself() {
        assertThat(Ritz.largest(new double[] {7}, new double[0], 1, 0)).isEqualTo(new Ritz(7, 1));
    }

    @Test
    void twoByTwoByHand() {
        // [[2, 1], [1, 2]] has 3 with (1, 1) / sqrt 2.
        Ritz ritz = Ritz.largest(new double[] {2, 2}, new double[] {1}, 2, 2);
        assertThat(ritz.value()).isCloseTo(3, within(1e-15));
        assertThat(ritz.last()).isCloseTo(Math.sqrt(0.5), within(1e-15));
    }

    @Test
    void manyAgainstAReference() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            double[] diagonal = random.doubles(12).toArray();
            double[] beside = random.doubles(11, 0.01, 1).toArray();
            double before = 0;
            for (int size = 1; size <= 12; size++) {
                Ritz ritz = Ritz.largest(diagonal, beside, size, before);
                assertAgrees(ritz, size == 1 ? 1 : beside[size - 2], dense(diagonal, beside, size));
                before = ritz.value();
            }
        }
    }

    private static void assertAgrees(Ritz ritz, double b, DMatrixRMaj matrix) {
        int size = matrix.numRows;
        EigenDecomposition_F64<DMatrixRMaj> all = DecompositionFactory_DDRM.eig(size, true, true);
        all.decompose(matrix);
        int largest = 0;
        for (int i = 1; i < size; i++) {
            largest =
                    all.getEigenvalue(i).getReal() > all.getEigenvalue(largest).getReal() ? i : largest;
        }
        double gap = 1;
        for (int i = 0; i < size; i++) {
            gap = i == largest
                    ? gap
                    : Math.min(gap, ritz.value() - all.getEigenvalue(i).getReal());
        }
        // Values are near 1 and each takes a few dozen operations of rounding 1e-16.
        assertThat(ritz.value()).isCloseTo(all.getEigenvalue(largest).getReal(), within(1e-14));
        // An eigenvector turns by the rounding over the gap to the next one; and the square of its last coordinate goes
        // as
        // the rise over the next smaller matrix divided by b squared, and so does the rounding in that rise.
        double last = all.getEigenVector(largest).get(size - 1, 0);
        assertThat(ritz.last() * ritz.last()).isCloseTo(last * last, within(1e-14 / gap + 1e-14 / (b * b)));
    }

    private static DMatrixRMaj dense(double[] diagonal, double[] beside, int size) {
        DMatrixRMaj matrix = new DMatrixRMaj(size, size);
        for (int i = 0; i < size; i++) {
            matrix.set(i, i, diagonal[i]);
            if (i > 0) {
                matrix.set(i, i - 1, beside[i - 1]);
                matrix.set(i - 1, i, beside[i - 1]);
            }
        }
        return matrix;
    }
}
