package dev.tipwright.fitcheck.bond;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;

/**
 * One of the two tubes of a joint.
 *
 * @param outside outside diameter; 1 um to 100 mm
 * @param inside inside diameter; zero or more, at least 1 um less than the outside
 * @param young Young's modulus along the axis; 1 kPa to 10 000 GPa
 * @param shear shear modulus about the axis; 1 kPa to 10 000 GPa
 */
public record Tube(Length outside, Length inside, Stress young, Stress shear) {

    private static final Length FINEST = Length.ofMicrometres(1);

    /**
     * Checks the values.
     *
     * @param outside outside diameter; 1 um to 100 mm
     * @param inside inside diameter; zero or more, at least 1 um less than the outside
     * @param young Young's modulus along the axis; 1 kPa to 10 000 GPa
     * @param shear shear modulus about the axis; 1 kPa to 10 000 GPa
     */
    public Tube {
        Require.between("outside", outside, FINEST, Length.ofMillimetres(100));
        Require.between("inside", inside, Length.ZERO, outside.minus(FINEST));
        modulus("young", young);
        modulus("shear", shear);
    }

    static void modulus(String name, Stress modulus) {
        Require.between(name, modulus, Stress.ofMegapascals(1e-3), Stress.ofGigapascals(10_000));
    }

    /** {@code E A}, in newtons. */
    double axial() {
        double outer = outside.millimetres();
        double inner = inside.millimetres();
        return young.megapascals() * Math.PI / 4 * (outer * outer - inner * inner);
    }

    /** {@code G J}, in N mm2. */
    double torsional() {
        double outer = outside.millimetres() * outside.millimetres();
        double inner = inside.millimetres() * inside.millimetres();
        return shear.megapascals() * Math.PI / 32 * (outer * outer - inner * inner);
    }
}
