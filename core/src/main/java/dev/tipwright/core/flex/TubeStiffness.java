package dev.tipwright.core.flex;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stiffness of a tube of one material, {@code EI = E pi (d^4 - b^4) / 64}, at stations close enough to draw straight lines between. */
final class TubeStiffness {

    /** Parts of each straight stretch of the section; the fourth powers bend between its ends. */
    private static final int PARTS = 8;

    private TubeStiffness() {}

    static Optional<List<StiffnessShape.Knot>> of(Shaft shaft, Stress modulus) {
        Optional<Wall> wall = shaft.section().wall().known();
        if (wall.isEmpty() || !shaft.section().outside().to().equals(shaft.length())) {
            return Optional.empty();
        }
        double length = shaft.length().millimetres();
        Polyline outside = Polyline.of(shaft.section().outside(), Polyline.Diameter.MEAN);
        Polyline inside = outside.plus(Polyline.of(wall.get().thickness(), Length.ZERO, length), -2);
        List<StiffnessShape.Knot> knots = new ArrayList<>();
        for (int i = 1; i < inside.size(); i++) {
            double start = inside.at(i - 1);
            double span = inside.at(i) - start;
            for (int part = knots.isEmpty() ? 0 : 1; part <= PARTS && span > 0; part++) {
                double z = part == PARTS ? inside.at(i) : start + span * part / PARTS;
                double second = second(outside.before(z), inside.before(z));
                knots.add(new StiffnessShape.Knot(
                        Length.ofMillimetres(z),
                        BendingStiffness.ofNewtonSquareMillimetres(modulus.megapascals() * second)));
            }
        }
        return Optional.of(knots);
    }

    private static double second(double outside, double inside) {
        double b = Math.max(0, inside);
        return Math.PI / 64 * (outside * outside * outside * outside - b * b * b * b);
    }
}
