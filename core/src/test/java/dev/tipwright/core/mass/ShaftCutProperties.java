package dev.tipwright.core.mass;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** Cutting makes and loses nothing; the whole piece is what was weighed; weighed stations integrate as Commons Math says. */
class ShaftCutProperties {

    /** 28 to 48 in, 40 to 140 g, balanced in the middle third. */
    @Provide
    Arbitrary<Shaft> shafts() {
        return Combinators.combine(
                        Arbitraries.doubles().between(28, 48),
                        Arbitraries.doubles().between(40, 140),
                        Arbitraries.doubles().between(0.34, 0.66))
                .as((inches, grams, part) -> {
                    Length length = Length.ofInches(inches);
                    return Bench.shaft("A")
                            .withLength(length.max(len("39 in")))
                            .withMass(ShaftMass.of(Mass.ofGrams(grams), length.scaledBy(part)))
                            .withLength(length);
                });
    }

    /** The same with a line density at four stations. */
    @Provide
    Arbitrary<Shaft> weighed() {
        Arbitrary<List<Double>> densities =
                Arbitraries.doubles().between(0.02, 0.2).list().ofSize(4);
        return Combinators.combine(shafts(), densities).as((shaft, density) -> {
            List<LineDensityProfile.Knot> knots = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                knots.add(new LineDensityProfile.Knot(
                        i == 3 ? shaft.length() : shaft.length().scaledBy(i * i / 9.0),
                        LineDensity.ofGramsPerMillimetre(density.get(i))));
            }
            return shaft.withMass(shaft.mass().withAlong(Reading.measured(new LineDensityProfile(knots))));
        });
    }

    @Provide
    Arbitrary<Shaft> both() {
        return Arbitraries.oneOf(shafts(), weighed());
    }

    @Property
    void theWholePieceIsWhatWasWeighed(@ForAll("shafts") Shaft shaft) {
        ShaftCut whole = new ShaftCut(shaft, Length.ZERO, shaft.length());
        // 1e-12 relative: a dozen roundings of doubles.
        assertThat(whole.mass().ratioTo(shaft.mass().mass())).isCloseTo(1, within(1e-12));
        assertThat(whole.balance().ratioTo(shaft.mass().balance())).isCloseTo(1, within(1e-11));
    }

    @Property
    void threePiecesAddUpToTheWhole(
            @ForAll("both") Shaft shaft,
            @ForAll @DoubleRange(min = 0, max = 0.4) double low,
            @ForAll @DoubleRange(min = 0.5, max = 1) double high) {
        Length a = shaft.length().scaledBy(low);
        Length b = shaft.length().scaledBy(high);
        ShaftCut whole = new ShaftCut(shaft, Length.ZERO, shaft.length());
        List<ShaftCut> pieces = List.of(
                new ShaftCut(shaft, Length.ZERO, a), new ShaftCut(shaft, a, b), new ShaftCut(shaft, b, shaft.length()));
        double mass = 0;
        double moment = 0;
        double inertia = 0;
        for (ShaftCut piece : pieces) {
            double m = piece.mass().grams();
            double own = piece.momentAboutTip().gramMillimetres();
            double from = piece.from().millimetres();
            mass += m;
            moment += own + m * from;
            inertia += piece.inertiaAboutTip().gramSquareMillimetres() + 2 * from * own + from * from * m;
        }
        assertThat(mass / whole.mass().grams()).isCloseTo(1, within(1e-12));
        // Moments are carried to the raw tip and back, which costs a digit.
        assertThat(moment / whole.momentAboutTip().gramMillimetres()).isCloseTo(1, within(1e-11));
        assertThat(inertia / whole.inertiaAboutTip().gramSquareMillimetres()).isCloseTo(1, within(1e-11));
    }

    @Property
    void everyPieceBalancesInsideItself(
            @ForAll("both") Shaft shaft,
            @ForAll @DoubleRange(min = 0, max = 0.4) double low,
            @ForAll @DoubleRange(min = 0.5, max = 1) double high) {
        ShaftCut piece =
                new ShaftCut(shaft, shaft.length().scaledBy(low), shaft.length().scaledBy(high));
        Length length = piece.to().minus(piece.from());
        assertThat(piece.mass()).isGreaterThan(Mass.ZERO);
        assertThat(piece.balance()).isGreaterThan(Length.ZERO).isLessThan(length);
        // The inertia about the own balance point is never negative (Steiner).
        double atBalance =
                piece.momentAboutTip().gramMillimetres() * piece.balance().millimetres();
        assertThat(piece.inertiaAboutTip().gramSquareMillimetres()).isGreaterThan(atBalance);
    }

    @Property(tries = 200)
    void weighedStationsIntegrateAsTheReferenceDoes(
            @ForAll("weighed") Shaft shaft,
            @ForAll @DoubleRange(min = 0, max = 0.4) double low,
            @ForAll @DoubleRange(min = 0.5, max = 1) double high) {
        List<LineDensityProfile.Knot> knots =
                shaft.mass().along().known().orElseThrow().knots();
        double[] at = knots.stream().mapToDouble(k -> k.at().millimetres()).toArray();
        double[] mu = knots.stream()
                .mapToDouble(k -> k.density().gramsPerMillimetre())
                .toArray();
        UnivariateFunction reference = new LinearInterpolator().interpolate(at, mu);
        ShaftCut piece =
                new ShaftCut(shaft, shaft.length().scaledBy(low), shaft.length().scaledBy(high));
        double from = piece.from().millimetres();
        double to = piece.to().millimetres();
        double[] places = Stream.concat(
                        Stream.of(from, to),
                        knots.stream().map(k -> k.at().millimetres()).filter(z -> z > from && z < to))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        double mass = 0;
        double moment = 0;
        double inertia = 0;
        for (int i = 1; i < places.length; i++) {
            mass += integral(reference, places[i - 1], places[i]);
            moment += integral(z -> (z - from) * reference.value(z), places[i - 1], places[i]);
            inertia += integral(z -> (z - from) * (z - from) * reference.value(z), places[i - 1], places[i]);
        }
        assertThat(piece.mass().grams() / mass).isCloseTo(1, within(1e-11));
        assertThat(piece.momentAboutTip().gramMillimetres() / moment).isCloseTo(1, within(1e-10));
        assertThat(piece.inertiaAboutTip().gramSquareMillimetres() / inertia).isCloseTo(1, within(1e-10));
    }

    /** Three Gauss points are exact for a cubic. */
    private static double integral(UnivariateFunction function, double from, double to) {
        return new GaussIntegratorFactory().legendre(3, from, to).integrate(function);
    }
}
