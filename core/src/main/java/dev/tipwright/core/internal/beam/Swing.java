package dev.tipwright.core.internal.beam;

/**
 * How a beam with a body on its end bends under forces, and what its movements weigh.
 *
 * <p>A movement is an array: deflection at each Gauss point from the clamp on, then deflection and slope of the end.
 */
final class Swing {

    private final Panels panels;
    private final EndBody body;
    private final int points;
    private final double[] curvature;

    Swing(Panels panels, EndBody body) {
        this.panels = panels;
        this.body = body;
        points = panels.density.length;
        curvature = new double[points];
    }

    /** The length of an array that holds a movement. */
    int size() {
        return points + 2;
    }

    /**
     * Writes to {@code bent} how the beam bends under the inertia forces of a movement: mass times {@code moved} as if that
     * were acceleration.
     */
    void bendUnderInertia(double[] moved, double[] bent) {
        double force = body.massKg() * (moved[points] + body.offsetM() * moved[points + 1]);
        double couple = body.inertiaKgM2() * moved[points + 1] + body.offsetM() * force;
        bend(force, couple, moved, bent);
    }

    /** Writes to {@code bent} how the beam bends under a force and a couple at its end alone. */
    void bendUnderEndLoad(double force, double couple, double[] bent) {
        bend(force, couple, new double[points], bent);
    }

    /** Twice the kinetic energy that two movements have in common, as a scalar product. */
    double product(double[] a, double[] b) {
        double sum = 0;
        for (int p = 0; p < panels.count(); p++) {
            double part = 0;
            for (int i = 0; i < Gauss.POINTS; i++) {
                int k = Gauss.POINTS * p + i;
                part += Gauss.weight(i) * panels.density[k] * a[k] * b[k];
            }
            sum += panels.lengthM[p] * part;
        }
        double offset = body.offsetM();
        double centreA = a[points] + offset * a[points + 1];
        double centreB = b[points] + offset * b[points + 1];
        return sum + body.massKg() * centreA * centreB + body.inertiaKgM2() * a[points + 1] * b[points + 1];
    }

    private void bend(double force, double couple, double[] moved, double[] bent) {
        momentsFromTheEnd(force, couple, moved);
        deflectionsFromTheClamp(bent);
    }

    private void momentsFromTheEnd(double force, double couple, double[] moved) {
        double shear = force;
        double moment = couple;
        double[] q = new double[Gauss.POINTS];
        for (int p = panels.count() - 1; p >= 0; p--) {
            double h = panels.lengthM[p];
            int first = Gauss.POINTS * p;
            double load = 0;
            double leverage = 0;
            for (int j = 0; j < Gauss.POINTS; j++) {
                q[j] = h * panels.density[first + j] * moved[first + j];
                load += Gauss.weight(j) * q[j];
                leverage += Gauss.weight(j) * Gauss.point(j) * q[j];
            }
            for (int i = 0; i < Gauss.POINTS; i++) {
                double sum = (1 - Gauss.point(i)) * shear;
                for (int j = 0; j < Gauss.POINTS; j++) {
                    sum += Gauss.twiceBack(i, j) * q[j];
                }
                curvature[first + i] = (moment + h * sum) / panels.stiffness[first + i];
            }
            moment += h * (shear + leverage);
            shear += load;
        }
    }

    private void deflectionsFromTheClamp(double[] bent) {
        double slope = 0;
        double deflection = 0;
        for (int p = 0; p < panels.count(); p++) {
            double h = panels.lengthM[p];
            int first = Gauss.POINTS * p;
            double turn = 0;
            double rise = 0;
            for (int j = 0; j < Gauss.POINTS; j++) {
                turn += Gauss.weight(j) * curvature[first + j];
                rise += Gauss.weight(j) * (1 - Gauss.point(j)) * curvature[first + j];
            }
            for (int i = 0; i < Gauss.POINTS; i++) {
                double sum = Gauss.point(i) * slope;
                for (int j = 0; j < Gauss.POINTS; j++) {
                    sum += h * Gauss.twice(i, j) * curvature[first + j];
                }
                bent[first + i] = deflection + h * sum;
            }
            deflection += h * (slope + h * rise);
            slope += h * turn;
        }
        bent[points] = deflection;
        bent[points + 1] = slope;
    }
}
