package dev.tipwright.core.uncertainty;

/** The differences behind {@link SecondOrder}, taken along independent unit deviates {@code z} of the inputs. */
final class Expansion {

    private static final double H = FirstOrder.STEP;

    private final Measurand measurand;
    private final FirstOrder first;
    private final double noise;
    private final double centre;
    private final double[] above;
    private final double[] below;
    private final double[] slope;
    private double variance;
    private double shift;

    Expansion(Measurand measurand) {
        int n = measurand.inputs().size();
        this.measurand = measurand;
        this.first = FirstOrder.of(measurand);
        this.noise = first.noise();
        this.centre = first.value();
        this.above = new double[n];
        this.below = new double[n];
        this.slope = new double[n];
        for (int i = 0; i < n; i++) {
            single(i);
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                pair(i, j);
            }
        }
    }

    SecondOrder secondOrder() {
        return new SecondOrder(first.combined(), variance, shift);
    }

    private void single(int i) {
        above[i] = at(i, H, i, 0);
        below[i] = at(i, -H, i, 0);
        slope[i] = (above[i] - below[i]) / (2 * H);
        double second = clean(above[i] - 2 * centre + below[i]) / (H * H);
        double third = clean(at(i, 2 * H, i, 0) - 2 * above[i] + 2 * below[i] - at(i, -2 * H, i, 0)) / (2 * H * H * H);
        double kappa = kurtosis(i);
        variance += (kappa - 1) / 4 * second * second + kappa / 3 * slope[i] * third;
        shift += second / 2;
    }

    private void pair(int i, int j) {
        double bothUp = at(i, H, j, H);
        double iUp = at(i, H, j, -H);
        double jUp = at(i, -H, j, H);
        double bothDown = at(i, -H, j, -H);
        double mixed = clean(bothUp - iUp - jUp + bothDown) / (4 * H * H);
        double ijj = clean((bothUp - 2 * above[i] + iUp) - (jUp - 2 * below[i] + bothDown)) / (2 * H * H * H);
        double jii = clean((bothUp - 2 * above[j] + jUp) - (iUp - 2 * below[j] + bothDown)) / (2 * H * H * H);
        variance += mixed * mixed + slope[i] * ijj + slope[j] * jii;
    }

    /** The model with two deviates away from 0, or one if both indices are the same. */
    private double at(int i, double zi, int j, double zj) {
        double[] z = new double[above.length];
        z[j] = zj;
        z[i] = zi;
        double[] scratch = new double[z.length];
        measurand.inputs().groups().forEach(group -> group.mix(z, scratch));
        double[] x = measurand.inputs().estimates();
        for (int k = 0; k < x.length; k++) {
            x[k] += z[k] * measurand.inputs().at(k).standardUncertainty();
        }
        return measurand.at(x);
    }

    private double clean(double difference) {
        return Math.abs(difference) <= noise ? 0 : difference;
    }

    private double kurtosis(int i) {
        boolean correlated = measurand.inputs().groupOf(i).size() > 1;
        return switch (measurand.inputs().at(i).distribution()) {
            case RECTANGULAR -> correlated ? 3 : 9 / 5.0;
            case TRIANGULAR -> correlated ? 3 : 12 / 5.0;
            case NORMAL, STUDENT -> 3;
        };
    }
}
