package dev.tipwright.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.interpolation.LinearInterpolator;

/** Volume is additive, and that of Hipparchus' quadrature. */
class ProfileVolumeProperties {

    /** Places up to 250 mm are doubles good to 3e-14 mm, which is 3e-13 of the shortest segment, a tenth of a millimetre. */
    private static final double ROUNDING = 1e-12;

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    @Provide
    Arbitrary<DiameterProfile> profiles() {
        Arbitrary<Long> gaps = Arbitraries.longs().between(100_000, 50_000_000);
        Arbitrary<Long> diameters = Arbitraries.longs().between(1_000_000, 30_000_000);
        return Arbitraries.integers()
                .between(2, 6)
                .flatMap(n -> Combinators.combine(
                                gaps.list().ofSize(n), diameters.list().ofSize(n))
                        .as((gap, diameter) -> {
                            List<Station> stations = new ArrayList<>();
                            long at = 0;
                            for (int i = 0; i < n; i++) {
                                stations.add(Station.of(Length.ofNanometres(at), Length.ofNanometres(diameter.get(i))));
                                at += gap.get(i);
                            }
                            return DiameterProfile.of(stations);
                        }));
    }

    private static double volume(DiameterProfile profile) {
        return new ProfileVolume(profile).volume().cubicMillimetres();
    }

    @Property
    void partsAddUpToTheWhole(
            @ForAll("profiles") DiameterProfile profile, @ForAll @DoubleRange(min = 0.01, max = 0.99) double part) {
        Length split = profile.length().scaledBy(part);
        double whole = volume(profile);
        assertThat(volume(profile.endedAt(split)) + volume(profile.trimmedFromStart(split)))
                .isCloseTo(whole, within(ROUNDING * whole));
    }

    @Property(tries = 200)
    void isThatOfQuadrature(@ForAll("profiles") DiameterProfile profile) {
        int n = profile.stations().size();
        double[] at = new double[n];
        double[] diameter = new double[n];
        for (int i = 0; i < n; i++) {
            at[i] = profile.stations().get(i).at().millimetres();
            diameter[i] = profile.stations().get(i).mean().millimetres();
        }
        UnivariateFunction reference = new LinearInterpolator().interpolate(at, diameter);
        // Three Gauss points are exact for a square of a straight line.
        double sum = 0;
        for (int i = 1; i < n; i++) {
            GaussIntegrator gauss = GAUSS.legendre(3, at[i - 1], at[i]);
            sum += gauss.integrate(z -> Math.PI / 4 * reference.value(z) * reference.value(z));
        }
        assertThat(volume(profile)).isCloseTo(sum, within(ROUNDING * sum));
    }

    @Property
    void growsWithTheDiameterAndTheLength(
            @ForAll("profiles") DiameterProfile profile, @ForAll @DoubleRange(min = 0.01, max = 0.99) double part) {
        assertThat(volume(profile.widenedBy(Length.parse("1 um")))).isGreaterThan(volume(profile));
        assertThat(volume(profile.endedAt(profile.length().scaledBy(part)))).isLessThan(volume(profile));
    }
}
