package dev.tipwright.core.flex;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.beam.Cantilever;
import dev.tipwright.core.internal.beam.EndBody;
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
 * <p>A tube of one material has {@code EI = E pi (d^4 - b^4) / 64}, outside {@code d}, inside {@code b}. Frequency goes with the square
 * root of stiffness, so one timed frequency {@code f} scales the whole shape by {@code (f / f_shape)^2}.
 *
 * @param knots stiffness at stations from the raw tip (0) to the butt, straight between them
 * @param scale what the shape was scaled by; 1 if it was not
 */
public record ShaftBend(List<StiffnessShape.Knot> knots, double scale) {

    /**
     * Checks the values.
     *
     * @param knots stiffness at stations from the raw tip (0) to the butt, straight between them
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
     * @return the stiffness; empty if the shape is unknown, a tube was not read from tip to butt, or the mass along the shaft is
     *     not believable
     */
    public static Optional<ShaftBend> of(Shaft shaft) {
        Require.given("shaft", shaft);
        if (!ShaftCut.believable(shaft)) {
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
            List<StiffnessShape.Knot> knots = stations.knots();
            boolean whole = !knots.get(knots.size() - 1).at().lessThan(shaft.length());
            return whole ? Optional.of(knots) : Optional.empty();
        }
        return TubeStiffness.of(shaft, ((StiffnessShape.Tube) shape).modulus());
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
     * @param shaft the raw shaft
     * @param timed clamp and tip mass; its frequency is not used
     * @return cycles a minute
     */
    public Frequency raw(Shaft shaft, ShaftFlex.Timed timed) {
        Require.given("shaft", shaft);
        Require.given("timed", timed);
        EndBody body = EndBody.point(timed.tipMass().grams() / 1000);
        return frequency(shaft, Length.ZERO, shaft.length().minus(timed.clamp()), body);
    }

    /** The frequency of the shaft between a rigid body at one place and the clamp at another, both from the raw tip. */
    Frequency frequency(Shaft shaft, Length end, Length clamp, EndBody body) {
        List<LineDensityProfile.Knot> masses = ShaftCut.lineDensity(shaft).knots();
        Polyline stiffness =
                along(knots, StiffnessShape.Knot::at, knot -> knot.stiffness().newtonSquareMetres());
        Polyline density = along(
                masses, LineDensityProfile.Knot::at, knot -> knot.density().kilogramsPerMetre());
        double s0 = clamp.metres();
        double tip = end.metres();
        return Frequency.ofHertz(Cantilever.of(stiffness.between(s0, tip), density.between(s0, tip), body)
                .slowestSwing()
                .frequencyHz());
    }

    /** Values from the raw tip up. */
    private static <K> Polyline along(List<K> knots, Function<K, Length> at, ToDoubleFunction<K> value) {
        return Polyline.of(
                knots.stream().mapToDouble(knot -> at.apply(knot).metres()).toArray(),
                knots.stream().mapToDouble(value).toArray());
    }
}
