package dev.tipwright.core.profile;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** Diameters and thicknesses between their stations, against the linear interpolation of Commons Math. */
class ProfileInterpolationProperties {

    /** Places with gaps of 1 um to 100 mm, values of 0.1 to 20 mm, in nanometres. */
    record Knots(List<Long> gaps, List<Long> values) {

        long at(int i) {
            return gaps.subList(0, i).stream().mapToLong(Long::longValue).sum();
        }

        UnivariateFunction reference() {
            double[] x = new double[values.size()];
            double[] y = new double[values.size()];
            for (int i = 0; i < x.length; i++) {
                x[i] = at(i);
                y[i] = values.get(i);
            }
            return new LinearInterpolator().interpolate(x, y);
        }
    }

    @Provide
    Arbitrary<Knots> knots() {
        return Arbitraries.integers()
                .between(2, 8)
                .flatMap(n -> Combinators.combine(
                                Arbitraries.longs()
                                        .between(1000, 100_000_000)
                                        .list()
                                        .ofSize(n - 1),
                                Arbitraries.longs()
                                        .between(100_000, 20_000_000)
                                        .list()
                                        .ofSize(n))
                        .as(Knots::new));
    }

    /** Both give the nearest double or nanometre: a nanometre of rounding here, less there. */
    private static void assertNear(Length ours, double nanometres) {
        assertThat(Math.abs(ours.nanometres() - nanometres)).isLessThanOrEqualTo(1);
    }

    @Property
    void diametersAreThoseOfTheReference(
            @ForAll("knots") Knots knots, @ForAll @DoubleRange(min = 0, max = 1) double part) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < knots.values().size(); i++) {
            stations.add(Station.of(
                    Length.ofNanometres(knots.at(i)),
                    Length.ofNanometres(knots.values().get(i))));
        }
        DiameterProfile profile = DiameterProfile.of(stations);
        UnivariateFunction reference = knots.reference();
        Length place = profile.length().scaledBy(part);
        assertNear(profile.diameterAt(place), reference.value((double) place.nanometres()));
        // The same place on a trimmed profile is as much nearer to its start.
        Length trim = place.half();
        if (trim.nanometres() > 0) {
            assertNear(profile.trimmedFromStart(trim).diameterAt(place.minus(trim)), reference.value((double)
                    place.nanometres()));
        }
        for (Station station : stations) {
            assertThat(profile.diameterAt(station.at())).isEqualTo(station.mean());
        }
    }

    @Property
    void thicknessesAreThoseOfTheReferenceAndGoOnFlat(
            @ForAll("knots") Knots knots, @ForAll @DoubleRange(min = -0.5, max = 1.5) double part) {
        List<ThicknessProfile.Knot> list = new ArrayList<>();
        for (int i = 0; i < knots.values().size(); i++) {
            list.add(new ThicknessProfile.Knot(
                    Length.ofNanometres(knots.at(i)),
                    Length.ofNanometres(knots.values().get(i))));
        }
        ThicknessProfile profile = new ThicknessProfile(list);
        long last = knots.at(list.size() - 1);
        Length place = Length.ofNanometres(last).scaledBy(part);
        double inside = Math.min(Math.max(place.nanometres(), 0), last);
        assertNear(profile.at(place), knots.reference().value(inside));
    }
}
