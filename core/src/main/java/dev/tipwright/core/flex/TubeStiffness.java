package dev.tipwright.core.flex;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stiffness of a tube of one material, {@code EI = E pi (d^4 - b^4) / 64}, at stations close enough to draw straight lines between.
 * A step of the section is a step of the stiffness. Finish adds none: the outside counts under it.
 */
final class TubeStiffness {

    /**
     * Parts of a straight stretch for each change of its diameter by its own size. The chord of {@code d^4} lies above it by at most
     * {@code 12/8 (change / d)^2}, so by a thousandth at most, and the frequency is raised by a fraction of that.
     */
    private static final double PARTS = 40;

    private final double modulus;
    private final Polyline outside;
    private final Polyline inside;
    private final List<StiffnessShape.Knot> knots = new ArrayList<>();

    private TubeStiffness(double modulus, Polyline outside, Polyline inside) {
        this.modulus = modulus;
        this.outside = outside;
        this.inside = inside;
    }

    /** Empty if the section was not read from tip to butt, or leaves no wall under the finish somewhere. */
    static Optional<List<StiffnessShape.Knot>> of(Shaft shaft, Stress modulus) {
        Optional<Wall> wall = shaft.section().wall().known();
        if (wall.isEmpty() || !shaft.section().outside().to().equals(shaft.length())) {
            return Optional.empty();
        }
        Optional<ThicknessProfile> finish = shaft.section().finish().known().map(Finish::thickness);
        Polyline over = Polyline.of(shaft.section().outside(), Polyline.Diameter.MEAN);
        Polyline bare = over.plus(thickness(shaft, finish.orElse(ThicknessProfile.uniform(Length.ZERO))), -2);
        Polyline inside = over.plus(thickness(shaft, wall.get().thickness()), -2);
        // Adding nothing of the one to the other gives both the knots of both.
        return new TubeStiffness(modulus.megapascals(), bare.plus(inside, 0), inside.plus(bare, 0)).knots();
    }

    private static Polyline thickness(Shaft shaft, ThicknessProfile thickness) {
        return Polyline.of(thickness, Length.ZERO, shaft.length().millimetres());
    }

    private Optional<List<StiffnessShape.Knot>> knots() {
        for (int i = 1; i < outside.size(); i++) {
            if (outside.at(i) > outside.at(i - 1) && !stretch(i)) {
                return Optional.empty();
            }
        }
        return Optional.of(knots);
    }

    /** Adds the stretch that ends at a knot; false if it has no wall somewhere. */
    private boolean stretch(int end) {
        double start = outside.at(end - 1);
        double change = Math.max(
                Math.abs(outside.value(end) - outside.value(end - 1)),
                Math.abs(inside.value(end) - inside.value(end - 1)));
        double least = Math.min(outside.value(end), outside.value(end - 1));
        if (least <= 0) {
            return false;
        }
        int parts = (int) Math.max(1, Math.min(PARTS, Math.ceil(PARTS * change / least)));
        for (int part = 0; part <= parts; part++) {
            double share = (double) part / parts;
            double d = (1 - share) * outside.value(end - 1) + share * outside.value(end);
            double b = Math.max(0, (1 - share) * inside.value(end - 1) + share * inside.value(end));
            double stiffness = modulus * Math.PI / 64 * (d * d * d * d - b * b * b * b);
            if (!(stiffness > 0)) {
                return false;
            }
            add(new StiffnessShape.Knot(
                    Length.ofMillimetres(start + share * (outside.at(end) - start)),
                    BendingStiffness.ofNewtonSquareMillimetres(stiffness)));
        }
        return true;
    }

    /** Where two stretches meet without a step one knot is enough. */
    private void add(StiffnessShape.Knot knot) {
        if (knots.isEmpty() || !knots.get(knots.size() - 1).equals(knot)) {
            knots.add(knot);
        }
    }
}
