package dev.tipwright.core.uncertainty;

/**
 * The value at the estimates, the sensitivities and the signed contributions, in the order of the inputs.
 *
 * <p>Sensitivity {@code c = (f(x + h) - f(x - h)) / 2h}. The step is one eighth of the input's own standard
 * uncertainty. JCGM 100:2008, 5.1.3, note 2, takes the whole of it, which mixes a third of the third-order term into
 * the first ({@code c u + f''' u^3 / 6}); {@link SecondOrder} counts that term itself, and with an eighth the mixture
 * falls to one part in 64 of it, while the rounding of the difference stays some eight parts in 1e16 of the value. The
 * step never falls below {@code 2^-30} of the estimate, so that rounding cannot swamp the difference of an input that
 * is known very well.
 */
final class FirstOrder {

    static final double STEP = 1 / 8.0;

    private static final double LEAST_STEP = 0x1p-30;

    private final Measurand measurand;
    private final double[] estimates;
    private final double value;
    private final double[] sensitivity;
    private final double[] contribution;

    private FirstOrder(Measurand measurand) {
        int n = measurand.inputs().size();
        this.measurand = measurand;
        this.estimates = measurand.inputs().estimates();
        this.value = measurand.at(estimates.clone()) + 0.0;
        this.sensitivity = new double[n];
        this.contribution = new double[n];
        for (int i = 0; i < n; i++) {
            if (measurand.inputs().at(i).standardUncertainty() > 0) {
                differentiate(i);
            }
        }
    }

    static FirstOrder of(Measurand measurand) {
        return new FirstOrder(measurand);
    }

    private void differentiate(int i) {
        Input input = measurand.inputs().at(i);
        double u = input.standardUncertainty();
        double h = Math.max(STEP * u, LEAST_STEP * Math.abs(input.estimate()));
        double above = input.estimate() + h;
        double below = input.estimate() - h;
        double difference = moved(i, above) - moved(i, below);
        String what = "sensitivity of " + measurand.name() + " to " + input.name();
        sensitivity[i] = Check.result(what, difference / (above - below));
        contribution[i] = Check.result(what, sensitivity[i] * u);
    }

    private double moved(int i, double x) {
        double[] values = estimates.clone();
        values[i] = x;
        return measurand.at(values);
    }

    double value() {
        return value;
    }

    double sensitivity(int i) {
        return sensitivity[i];
    }

    double contribution(int i) {
        return contribution[i];
    }

    /** The root of the joint variance: quadrature, with the correlations. */
    double combined() {
        double[] groups = measurand.inputs().groups().stream()
                .mapToDouble(g -> g.combined(contribution))
                .toArray();
        return Check.result("uncertainty of " + measurand.name(), Quadrature.of(groups));
    }

    /**
     * The part of the joint variance that goes with each input, half of each covariance included; all parts add up to 1.
     */
    double[] shares(double combined) {
        double[] shares = new double[contribution.length];
        if (combined == 0) {
            return shares;
        }
        double[] scaled = new double[contribution.length];
        for (int j = 0; j < scaled.length; j++) {
            scaled[j] = contribution[j] / combined;
        }
        for (CorrelatedGroup group : measurand.inputs().groups()) {
            for (int i : group.members()) {
                shares[i] = Check.result("share", scaled[i] * group.projected(i, scaled));
            }
        }
        return shares;
    }

    /**
     * Welch-Satterthwaite over groups (JCGM 100:2008, G.4.1, equation G.2b). A group of correlated inputs counts as one
     * component with the least degrees of freedom in it.
     */
    DegreesOfFreedom effectiveDegreesOfFreedom(double combined) {
        double sum = 0;
        for (CorrelatedGroup group : measurand.inputs().groups()) {
            double part = combined == 0 ? 0 : group.combined(contribution) / combined;
            sum += part * part * part * part * greatestReciprocal(group);
        }
        return DegreesOfFreedom.ofReciprocal(sum);
    }

    private double greatestReciprocal(CorrelatedGroup group) {
        double greatest = 0;
        for (int i : group.members()) {
            if (contribution[i] != 0) {
                greatest = Math.max(
                        greatest, measurand.inputs().at(i).degreesOfFreedom().reciprocal());
            }
        }
        return greatest;
    }

    /**
     * What a difference of a few model values can show by rounding alone: 16 units in the last place of the value and
     * of what each input brings to it.
     */
    double noise() {
        double sum = Math.abs(value);
        for (int i = 0; i < sensitivity.length; i++) {
            sum += Math.abs(sensitivity[i] * measurand.inputs().at(i).estimate());
        }
        return 0x1p-48 * sum;
    }
}
