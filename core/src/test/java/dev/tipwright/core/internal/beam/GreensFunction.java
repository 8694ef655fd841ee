package dev.tipwright.core.internal.beam;

import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The same frequency from influence coefficients: how far each of many points moves when another is pushed, as a dense matrix,
 * all of whose eigenvalues EJML finds.
 *
 * <p>Any textbook of structural mechanics: a unit force at {@code r} moves {@code s} by
 * {@code int_0^min(r,s) (s - t)(r - t) / EI dt}. The centre of the body is a point beyond the end, reached by a rigid arm; its
 * rotation is one more coordinate. Masses are those of a Gauss rule of Commons Math between stations.
 */
final class GreensFunction {

    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();
    private static final int POINTS = 24;

    private final double[][] stiffness;
    private final double[] place;
    private final double[] mass;
    /** The integrals of 1, t and t^2 over EI from 0 to each place, and last to the end. */
    private final double[][] moments;

    private GreensFunction(double[][] stiffness, double[][] density) {
        this.stiffness = stiffness;
        TreeSet<Double> stations = new TreeSet<>();
        for (double s : stiffness[0]) {
            stations.add(s);
        }
        for (double s : density[0]) {
            stations.add(s);
        }
        place = new double[POINTS * (stations.size() - 1) + 1];
        mass = new double[place.length];
        moments = new double[place.length][3];
        int k = 0;
        double[] sums = new double[3];
        for (double from : stations.headSet(stations.last())) {
            double to = stations.higher(from);
            GaussIntegrator rule = RULES.legendre(POINTS, from, to);
            double before = from;
            for (int i = 0; i < POINTS; i++) {
                place[k] = rule.getPoint(i);
                mass[k] = rule.getWeight(i) * value(density, from, to, place[k]);
                advance(sums, from, to, before, place[k]);
                before = place[k];
                moments[k++] = sums.clone();
            }
            advance(sums, from, to, before, to);
        }
        place[k] = stations.last();
        moments[k] = sums;
    }

    static double frequencyHz(double[][] stiffness, double[][] density, EndBody body) {
        return new GreensFunction(stiffness, density).frequencyHz(body);
    }

    private double frequencyHz(EndBody body) {
        int beam = place.length - 1;
        int size = beam + 2;
        double[] lever = new double[size];
        double[] root = new double[size];
        for (int i = 0; i < beam; i++) {
            lever[i] = place[i];
            root[i] = Math.sqrt(mass[i]);
        }
        lever[beam] = place[beam] + body.offsetM();
        root[beam] = Math.sqrt(body.massKg());
        root[beam + 1] = Math.sqrt(body.inertiaKgM2());
        DMatrixRMaj matrix = new DMatrixRMaj(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                double[] m = moments[Math.min(Math.min(i, j), beam)];
                double influence;
                if (i <= beam && j <= beam) {
                    influence = lever[i] * lever[j] * m[0] - (lever[i] + lever[j]) * m[1] + m[2];
                } else if (i <= beam || j <= beam) {
                    influence = lever[Math.min(i, j)] * m[0] - m[1];
                } else {
                    influence = m[0];
                }
                matrix.set(i, j, root[i] * influence * root[j]);
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> all = DecompositionFactory_DDRM.eig(size, false, true);
        all.decompose(matrix);
        double largest = 0;
        for (int i = 0; i < size; i++) {
            largest = Math.max(largest, all.getEigenvalue(i).getReal());
        }
        return 1 / (2 * Math.PI * Math.sqrt(largest));
    }

    private void advance(double[] sums, double from, double to, double before, double after) {
        GaussIntegrator rule = RULES.legendre(8, before, after);
        for (int power = 0; power < 3; power++) {
            int p = power;
            sums[power] += rule.integrate(t -> Math.pow(t, p) / value(stiffness, from, to, t));
        }
    }

    /** The value at a place between two neighbouring stations. */
    private static double value(double[][] line, double from, double to, double s) {
        int i = 0;
        while (!(line[0][i] <= from && to <= line[0][i + 1])) {
            i++;
        }
        return line[1][i] + (line[1][i + 1] - line[1][i]) * (s - line[0][i]) / (line[0][i + 1] - line[0][i]);
    }
}
