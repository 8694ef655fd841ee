package dev.tipwright.core.uncertainty;

import java.util.Optional;

/** The model at a few places about its estimates, against the straight line that a first-order budget takes it for. */
final class Screen {

    private static final int[] PLACES = {-2, -1, 1, 2};

    private final Measurand measurand;
    private final FirstOrder first;
    private final double combined;

    Screen(Measurand measurand) {
        this.measurand = measurand;
        this.first = FirstOrder.of(measurand);
        this.combined = first.combined();
    }

    Optional<String> straysWith(double tolerance) {
        int worst = -1;
        int largest = 0;
        double farthest = Math.max(first.noise(), 2 * tolerance * combined);
        for (int i = 0; i < measurand.inputs().size(); i++) {
            double stray = strayAlong(i);
            if (stray > farthest) {
                worst = i;
                farthest = stray;
            }
            if (Math.abs(first.contribution(i)) > Math.abs(first.contribution(largest))) {
                largest = i;
            }
        }
        if (worst < 0 && strayTogether() > farthest) {
            worst = largest;
        }
        return worst < 0
                ? Optional.empty()
                : Optional.of(measurand.inputs().at(worst).name());
    }

    private double strayAlong(int i) {
        double u = measurand.inputs().at(i).standardUncertainty();
        double stray = 0;
        for (int z : PLACES) {
            double[] x = measurand.inputs().estimates();
            x[i] += z * u;
            stray = Math.max(stray, Math.abs(measurand.at(x) - first.value() - z * first.contribution(i)));
        }
        return u == 0 ? 0 : stray;
    }

    private double strayTogether() {
        if (combined == 0) {
            return 0;
        }
        double stray = 0;
        for (int z : PLACES) {
            double[] x = measurand.inputs().estimates();
            double expected = 0;
            for (int i = 0; i < x.length; i++) {
                double part = z * first.contribution(i) / combined;
                x[i] += part * measurand.inputs().at(i).standardUncertainty();
                expected += part * first.contribution(i);
            }
            stray = Math.max(stray, Math.abs(measurand.at(x) - first.value() - expected));
        }
        return stray;
    }
}
