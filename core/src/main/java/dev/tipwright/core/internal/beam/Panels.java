package dev.tipwright.core.internal.beam;

import java.util.Arrays;

/**
 * A beam cut into panels along which both stiffness and density are linear and neither long nor steep.
 *
 * <p>A panel ends at every station of either quantity, so that steps and kinks lie between panels. It is halved while it is
 * longer than a given part of the beam, or while the stiffness at one end is more than a quarter above that at the other: the
 * curvature {@code m / EI} is then smooth enough for four points. The arrays hold one entry for each panel, or one for each
 * of its Gauss points, in order from the clamp.
 */
final class Panels {

    private static final double STEEPEST = 1.25;

    /** Length of each panel, in metres. */
    double[] lengthM = new double[16];

    /** Stiffness at each Gauss point, in newton square metres. */
    double[] stiffness = new double[16 * Gauss.POINTS];

    /** Line density at each Gauss point, in kilograms per metre. */
    double[] density = new double[16 * Gauss.POINTS];

    private final double longestM;
    private int count;

    private Panels(double longestM) {
        this.longestM = longestM;
    }

    /**
     * The panels of a beam.
     *
     * @param stiffness bending stiffness from the clamp to the end
     * @param density line density over the same stations from first to last
     * @param longest how long a panel may be, as a part of the beam
     */
    static Panels of(Polyline stiffness, Polyline density, double longest) {
        double end = stiffness.stationM(stiffness.size() - 1);
        Panels panels = new Panels(longest * end);
        double from = 0;
        int i = 1;
        int j = 1;
        while (i < stiffness.size() && j < density.size()) {
            double to = Math.min(stiffness.stationM(i), density.stationM(j));
            if (to > from) {
                panels.add(
                        to - from,
                        stiffness.valueIn(i, from),
                        stiffness.valueIn(i, to),
                        density.valueIn(j, from),
                        density.valueIn(j, to));
                from = to;
            }
            if (stiffness.stationM(i) <= to) {
                i++;
            }
            if (density.stationM(j) <= to) {
                j++;
            }
        }
        return panels.trimmed();
    }

    /** The number of panels. */
    int count() {
        return count;
    }

    private void add(double length, double stiffness0, double stiffness1, double density0, double density1) {
        boolean steep = Math.max(stiffness0, stiffness1) > STEEPEST * Math.min(stiffness0, stiffness1);
        if (length > longestM || steep) {
            double middleStiffness = stiffness0 / 2 + stiffness1 / 2;
            double middleDensity = density0 / 2 + density1 / 2;
            add(length / 2, stiffness0, middleStiffness, density0, middleDensity);
            add(length / 2, middleStiffness, stiffness1, middleDensity, density1);
            return;
        }
        if (count == lengthM.length) {
            grow(2 * count);
        }
        lengthM[count] = length;
        for (int k = 0; k < Gauss.POINTS; k++) {
            double share = Gauss.point(k);
            stiffness[Gauss.POINTS * count + k] = (1 - share) * stiffness0 + share * stiffness1;
            density[Gauss.POINTS * count + k] = (1 - share) * density0 + share * density1;
        }
        count++;
    }

    private Panels trimmed() {
        grow(count);
        return this;
    }

    private void grow(int panels) {
        lengthM = Arrays.copyOf(lengthM, panels);
        stiffness = Arrays.copyOf(stiffness, panels * Gauss.POINTS);
        density = Arrays.copyOf(density, panels * Gauss.POINTS);
    }
}
