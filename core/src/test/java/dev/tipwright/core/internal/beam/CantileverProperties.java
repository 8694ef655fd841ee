package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Laws of a swinging beam. */
class CantileverProperties {

    /** A tapered beam with a kink in its stiffness and a step in its density. */
    record Beam(double length, List<Double> stiffness, List<Double> density, EndBody body) {

        double frequencyHz() {
            return cantilever().slowestSwing().frequencyHz();
        }

        Cantilever cantilever() {
            double[] kinked = {0, 0.4 * length, length};
            double[] stepped = {0, 0.7 * length, 0.7 * length, length};
            return Cantilever.of(Polyline.of(kinked, array(stiffness)), Polyline.of(stepped, array(density)), body);
        }

        Beam with(EndBody other) {
            return new Beam(length, stiffness, density, other);
        }
    }

    @Provide
    Arbitrary<Beam> beams() {
        Arbitrary<Double> length = Arbitraries.doubles().between(0.4, 1.2).ofScale(6);
        Arbitrary<List<Double>> stiffness =
                Arbitraries.doubles().between(10, 80).ofScale(6).list().ofSize(3);
        Arbitrary<List<Double>> density =
                Arbitraries.doubles().between(0.02, 0.15).ofScale(6).list().ofSize(4);
        Arbitrary<EndBody> body = Combinators.combine(
                        Arbitraries.doubles().between(0, 0.5).ofScale(6),
                        Arbitraries.doubles().between(0, 1e-3).ofScale(9),
                        Arbitraries.doubles().between(0, 0.05).ofScale(6))
                .as(EndBody::new);
        return Combinators.combine(length, stiffness, density, body).as(Beam::new);
    }

    @Property(tries = 200)
    void aHeavierBodyLowersIt(
            @ForAll("beams") Beam beam, @ForAll @DoubleRange(min = 0.001, max = 0.1) @Scale(6) double more) {
        EndBody b = beam.body();
        double before = beam.frequencyHz();
        assertThat(beam.with(new EndBody(b.massKg() + more, b.inertiaKgM2(), b.offsetM()))
                        .frequencyHz())
                .isLessThan(before);
        assertThat(beam.with(new EndBody(b.massKg(), b.inertiaKgM2() + more / 100, b.offsetM()))
                        .frequencyHz())
                .isLessThan(before);
        assertThat(beam.with(new EndBody(b.massKg() + more, b.inertiaKgM2(), b.offsetM() + more))
                        .frequencyHz())
                .isLessThan(before);
    }

    @Property(tries = 200)
    void stifferAnywhereRaisesItAndDenserAnywhereLowersIt(
            @ForAll("beams") Beam beam, @ForAll @IntRange(max = 2) int stiffer, @ForAll @IntRange(max = 2) int denser) {
        List<Double> stiffness = new ArrayList<>(beam.stiffness());
        stiffness.set(stiffer, 1.1 * stiffness.get(stiffer));
        assertThat(new Beam(beam.length(), stiffness, beam.density(), beam.body()).frequencyHz())
                .isGreaterThan(beam.frequencyHz());
        // The first density station is at the clamp, where hardly anything moves.
        List<Double> density = new ArrayList<>(beam.density());
        density.set(1 + denser, 1.1 * density.get(1 + denser));
        assertThat(new Beam(beam.length(), beam.stiffness(), density, beam.body()).frequencyHz())
                .isLessThan(beam.frequencyHz());
    }

    @Property(tries = 200)
    void stiffnessTimesKGivesTheRootOfK(
            @ForAll("beams") Beam beam, @ForAll @DoubleRange(min = 0.01, max = 100) double k) {
        double expected = beam.frequencyHz() * Math.sqrt(k);
        Beam stiffer = new Beam(beam.length(), times(beam.stiffness(), k), beam.density(), beam.body());
        // Rounding only, but k may move a panel across the limit of steepness: what a panel more or less changes.
        assertThat(stiffer.frequencyHz()).isCloseTo(expected, within(1e-10 * expected));
    }

    @Property(tries = 200)
    void fourTimesTheStiffnessDoublesItToTheLastBit(@ForAll("beams") Beam beam) {
        Beam stiffer = new Beam(beam.length(), times(beam.stiffness(), 4), beam.density(), beam.body());
        assertThat(stiffer.frequencyHz()).isEqualTo(2 * beam.frequencyHz());
    }

    @Property(tries = 200)
    void twiceTheSizeInEveryLengthQuartersIt(@ForAll("beams") Beam beam) {
        EndBody b = beam.body();
        // Mass twice as the beam's own is; inertia eight times. f goes with L^-2.
        Beam larger = new Beam(
                2 * beam.length(),
                beam.stiffness(),
                beam.density(),
                new EndBody(2 * b.massKg(), 8 * b.inertiaKgM2(), 2 * b.offsetM()));
        double expected = beam.frequencyHz() / 4;
        assertThat(larger.frequencyHz()).isCloseTo(expected, within(1e-14 * expected));
    }

    @Property(tries = 200)
    void theDeflectionFromACoupleIsTheSlopeFromAForce(@ForAll("beams") Beam beam) {
        // Maxwell's law of reciprocal deflections.
        double slope = beam.cantilever().under(1, 0).slope();
        assertThat(beam.cantilever().under(0, 1).deflectionM()).isCloseTo(slope, within(1e-14 * slope));
    }

    @Property(tries = 200)
    void itIsNotFasterThanItsMassWouldBeOnAMasslessBeam(@ForAll("beams") Beam beam) {
        // Dunkerley: 1/f^2 of the whole is at least that of a part; the body's centre at the end or beyond.
        double flexibility = beam.cantilever().under(1, 0).deflectionM();
        double alone = 1 / (2 * Math.PI * Math.sqrt(beam.body().massKg() * flexibility + 1e-300));
        assertThat(beam.frequencyHz()).isLessThanOrEqualTo(alone * (1 + 1e-9));
    }

    @Property(tries = 200)
    void readFromTheOtherEndOrInPartsItIsTheSameBeam(@ForAll("beams") Beam beam) {
        double length = beam.length();
        double[] fromEnd = {0, 0.6 * length, length};
        double[] s = array(beam.stiffness());
        Polyline stiffness =
                Polyline.of(fromEnd, new double[] {s[2], s[1], s[0]}).between(length, 0);
        double[] d = array(beam.density());
        // A step at each end that the part does not see, and a station that says nothing new.
        double[] longer = {0, 1, 1, 1 + 0.35 * length, 1 + 0.7 * length, 1 + 0.7 * length, 1 + length, 1 + length, 9};
        Polyline density = Polyline.of(longer, new double[] {5, 5, d[0], (d[0] + d[1]) / 2, d[1], d[2], d[3], 7, 7})
                .between(1, 1 + length);
        // Both are given the length as the difference of two places.
        double end = density.lastM();
        Polyline fitted = stiffness.lastM() == end ? stiffness : stretched(stiffness, end);
        // Stations differ in their last places and panels are cut elsewhere: what a panel more or less changes.
        assertThat(Cantilever.of(fitted, density, beam.body()).slowestSwing().frequencyHz())
                .isCloseTo(beam.frequencyHz(), within(1e-9 * beam.frequencyHz()));
    }

    /** The same with its last station moved by a rounding. */
    private static Polyline stretched(Polyline line, double end) {
        double[] stations = new double[line.size()];
        double[] values = new double[line.size()];
        for (int i = 0; i < stations.length; i++) {
            stations[i] = i == stations.length - 1 ? end : line.stationM(i);
            values[i] = line.valueIn(Math.max(1, i), line.stationM(i));
        }
        return Polyline.of(stations, values);
    }

    private static List<Double> times(List<Double> values, double k) {
        return values.stream().map(value -> k * value).toList();
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(value -> value).toArray();
    }
}
