package dev.tipwright.core.flex;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.beam.Cantilever;
import dev.tipwright.core.internal.beam.EndBody;
import dev.tipwright.core.internal.beam.Mode;
import dev.tipwright.core.internal.beam.Polyline;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The bending stiffness of a raw shaft from tip to butt, from stations, from a tube's own section, or from either scaled to a frequency
 * that was timed.
 *
 * <p>A tube of one material has {@code EI = E pi (d^4 - b^4) / 64}, outside {@code d} under the finish, inside {@code b}. Frequency
 * goes with the square root of stiffness, so one timed frequency {@code f} scales the whole shape by {@code (f / f_shape)^2}; further
 * timings show whether the shape is right.
 *
 * <pre>{@code
 * Shaft shaft = Samples.shaft();   // EI from 20 N m2 at the tip to 60 at the butt, timed at 300 a minute
 * ShaftBend bend = ShaftBend.of(shaft).orElseThrow();
 * ShaftFlex.Timed timed = shaft.flex().known().orElseThrow().measured().get(0);
 * Math.round(bend.raw(shaft, timed).perMinute());   // = 300
 * }</pre>
 *
 * @param knots stiffness at stations from the raw tip (0) to the butt, straight between them; two at one place are a step
 * @param scale what the shape was scaled by; 1 if it was not
 */
public record ShaftBend(List<StiffnessShape.Knot> knots, double scale) {

    /**
     * Checks the values.
     *
     * @param knots stiffness at stations from the raw tip (0) to the butt, straight between them; two at one place are a step
     * @param scale what the shape was scaled by; 1 if it was not
     */
    public ShaftBend {
        knots = new StiffnessShape.AtStations(Require.list("knots", knots)).knots();
        Require.that(Double.isFinite(scale) && scale > 0, "scale", "must be above zero", scale);
    }

    /**
     * The stiffness of a shaft as far as it is known: its shape, scaled to the first frequency timed if there is one.
     *
     * @param shaft the raw shaft
     * @return the stiffness; empty if the shape is unknown, if stations or section do not reach from tip to butt, or if the mass
     *     along the shaft is not believable
     */
    public static Optional<ShaftBend> of(Shaft shaft) {
        Require.given("shaft", shaft);
        if (ShaftCut.lineDensity(shaft).isEmpty()) {
            return Optional.empty();
        }
        Optional<ShaftFlex> flex = shaft.flex().known();
        Optional<ShaftBend> shape = flex.flatMap(known -> known.shape().known())
                .flatMap(known -> knots(shaft, known))
                .map(knots -> new ShaftBend(knots, 1));
        List<ShaftFlex.Timed> timed = flex.map(ShaftFlex::measured).orElse(List.of());
        return timed.isEmpty() ? shape : shape.map(bend -> bend.calibrated(shaft, timed.get(0)));
    }

    private static Optional<List<StiffnessShape.Knot>> knots(Shaft shaft, StiffnessShape shape) {
        if (shape instanceof StiffnessShape.AtStations stations) {
            return Optional.of(stations.knots()).filter(knots -> reach(knots, shaft));
        }
        return TubeStiffness.of(shaft, ((StiffnessShape.Tube) shape).modulus());
    }

    private static boolean reach(List<StiffnessShape.Knot> knots, Shaft shaft) {
        return !knots.get(knots.size() - 1).at().lessThan(shaft.length());
    }

    private ShaftBend calibrated(Shaft shaft, ShaftFlex.Timed timed) {
        double ratio = timed.frequency().ratioTo(raw(shaft, timed));
        List<StiffnessShape.Knot> scaled = knots.stream()
                .map(knot -> new StiffnessShape.Knot(knot.at(), knot.stiffness().scaledBy(ratio * ratio)))
                .toList();
        return new ShaftBend(scaled, ratio * ratio);
    }

    /**
     * The frequency of the raw shaft under the conditions of a timing.
     *
     * @param shaft the raw shaft, its mass along it believable, no longer than the stiffness reaches
     * @param timed clamp and tip mass; its frequency is not used
     * @return cycles a minute
     * @throws IllegalArgumentException if the shaft is longer, or its mass not believable, or the clamp leaves none of it
     */
    public Frequency raw(Shaft shaft, ShaftFlex.Timed timed) {
        requireFit("shaft", shaft);
        Require.given("timed", timed);
        Require.that(
                timed.clamp().lessThan(shaft.length()),
                "timed",
                "must be clamped short of the shaft's " + shaft.length(),
                timed.clamp());
        EndBody body = EndBody.point(timed.tipMass().grams() / 1000);
        Mode mode = slowest(shaft, Length.ZERO, shaft.length().minus(timed.clamp()), body);
        return Frequency.ofHertz(mode.frequencyHz());
    }

    /**
     * What this stiffness says to each frequency timed on a shaft. The first was used to scale it; the others show whether its shape is
     * right.
     *
     * @param shaft the raw shaft
     * @return one check a timing, in their order; empty if none was timed
     * @throws IllegalArgumentException if the shaft is longer than the stiffness reaches, or its mass not believable
     */
    public List<ShapeCheck> checks(Shaft shaft) {
        requireFit("shaft", shaft);
        return shaft.flex().known().map(ShaftFlex::measured).orElse(List.of()).stream()
                .map(timed -> new ShapeCheck(timed, raw(shaft, timed)))
                .toList();
    }

    void requireFit(String name, Shaft shaft) {
        Require.given(name, shaft);
        Require.that(
                reach(knots, shaft),
                name,
                "must have a shaft no longer than its stiffness reaches, "
                        + knots.get(knots.size() - 1).at(),
                shaft.length());
        Require.that(
                ShaftCut.lineDensity(shaft).isPresent(),
                name,
                "must have a shaft whose mass is known along it, or balances inside its middle third",
                shaft.mass().balance());
    }

    /** The slowest swing of the shaft between a rigid body at one place and the clamp at another, both from the raw tip. */
    Mode slowest(Shaft shaft, Length end, Length clamp, EndBody body) {
        List<LineDensityProfile.Knot> masses =
                ShaftCut.lineDensity(shaft).orElseThrow().knots();
        Polyline stiffness =
                along(knots, StiffnessShape.Knot::at, knot -> knot.stiffness().newtonSquareMetres());
        Polyline density = along(
                masses, LineDensityProfile.Knot::at, knot -> knot.density().kilogramsPerMetre());
        double s0 = clamp.metres();
        double tip = end.metres();
        return Cantilever.of(stiffness.between(s0, tip), density.between(s0, tip), body)
                .slowestSwing();
    }

    /** Values from the raw tip up. */
    private static <K> Polyline along(List<K> knots, Function<K, Length> at, ToDoubleFunction<K> value) {
        return Polyline.of(
                knots.stream().mapToDouble(knot -> at.apply(knot).metres()).toArray(),
                knots.stream().mapToDouble(value).toArray());
    }
}
