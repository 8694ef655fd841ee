package dev.tipwright.fitcheck.bond;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;

/**
 * How unevenly the shear of a bond is spread: peak over mean at its two ends, by shear-lag (Volkersen; Adams and Peppiatt for tubes,
 * from memory).
 *
 * <pre>
 *   pull    w^2 = (2 pi a Ga / ta) (1/s1 + 1/s2)        s = E A
 *   torque  w^2 = (2 pi a^3 Ga / ta) (1/s1 + 1/s2)      s = G J
 *   mouth   (w l / 2) (coth(w l / 2) + (1 - p) / (1 + p) tanh(w l / 2)),   p = s1 / s2
 *   bottom  the same with a minus
 * </pre>
 *
 * <p>At the mouth the tip carries all the load, at the bottom the hosel does. {@code a} is the mean radius of the bond, {@code ta} its
 * thickness, {@code Ga} the shear modulus of the adhesive, {@code l} the bonded length. Elastic, no peel, no end effects: it says where a
 * bond begins to fail and that more length helps little, not at which load.
 *
 * <pre>{@code
 * Tube tip = new Tube(
 *         Length.parse("9.2 mm"), Length.parse("5 mm"), Stress.ofGigapascals(100), Stress.ofGigapascals(10));
 * Tube hosel = new Tube(
 *         Length.parse("13.4 mm"), Length.parse("9.4 mm"), Stress.ofGigapascals(207), Stress.ofGigapascals(80));
 * ShearLag pull = ShearLag.ofPull(tip, hosel, Stress.ofGigapascals(1), Length.parse("30 mm"));
 * Math.round(pull.atMouth() * 1000);     // = 6532
 * Math.round(pull.atBottom() * 1000);    // = 2066
 * }</pre>
 *
 * @param perMillimetre {@code w}, which is one over the length in which the load is handed over; zero or more
 * @param atMouth peak over mean at the hosel mouth
 * @param atBottom peak over mean at the end of the tip
 */
public record ShearLag(double perMillimetre, double atMouth, double atBottom) {

    private static final double SHORTEST = 1e-6;

    /**
     * Checks the values.
     *
     * @param perMillimetre {@code w}; zero or more
     * @param atMouth peak over mean at the hosel mouth; zero or more
     * @param atBottom peak over mean at the end of the tip; zero or more
     */
    public ShearLag {
        finite("perMillimetre", perMillimetre);
        finite("atMouth", atMouth);
        finite("atBottom", atBottom);
    }

    private static void finite(String name, double value) {
        Require.that(Double.isFinite(value) && value >= 0, name, "must be finite and zero or more", value);
    }

    /**
     * Under a pull along the axis.
     *
     * @param tip the tip
     * @param hosel the hosel; wider inside than the tip outside
     * @param adhesive shear modulus of the adhesive; 1 kPa to 10 000 GPa
     * @param overlap bonded length; 1 um to 3 m
     * @return peak over mean
     */
    public static ShearLag ofPull(Tube tip, Tube hosel, Stress adhesive, Length overlap) {
        check(tip, hosel, adhesive, overlap);
        double line = 2 * Math.PI * radius(tip, hosel) * adhesive.megapascals() / thickness(tip, hosel);
        return of(line, tip.axial(), hosel.axial(), overlap.millimetres());
    }

    /**
     * Under a torque about the axis.
     *
     * @param tip the tip
     * @param hosel the hosel; wider inside than the tip outside
     * @param adhesive shear modulus of the adhesive; 1 kPa to 10 000 GPa
     * @param overlap bonded length; 1 um to 3 m
     * @return peak over mean
     */
    public static ShearLag ofTorque(Tube tip, Tube hosel, Stress adhesive, Length overlap) {
        check(tip, hosel, adhesive, overlap);
        double a = radius(tip, hosel);
        double line = 2 * Math.PI * a * a * a * adhesive.megapascals() / thickness(tip, hosel);
        return of(line, tip.torsional(), hosel.torsional(), overlap.millimetres());
    }

    /**
     * A flat lap of two equal strips, for comparison with published examples: {@code (r / 2) coth(r / 2)}, with
     * {@code r^2 = 2 Ga l^2 / (E t ta)}.
     *
     * @param young Young's modulus of the strips; 1 kPa to 10 000 GPa
     * @param strip their thickness; 1 um to 100 mm
     * @param adhesive shear modulus of the adhesive; 1 kPa to 10 000 GPa
     * @param bondLine thickness of the adhesive; 1 um to 100 mm
     * @param overlap bonded length; 1 um to 3 m
     * @return peak over mean, the same at both ends
     */
    public static ShearLag ofEqualStrips(Stress young, Length strip, Stress adhesive, Length bondLine, Length overlap) {
        Tube.modulus("young", young);
        Tube.modulus("adhesive", adhesive);
        Length finest = Length.ofMicrometres(1);
        Require.between("strip", strip, finest, Length.ofMillimetres(100));
        Require.between("bondLine", bondLine, finest, Length.ofMillimetres(100));
        Require.between("overlap", overlap, finest, Length.ofMillimetres(3000));
        double stiffness = young.megapascals() * strip.millimetres();
        return of(adhesive.megapascals() / bondLine.millimetres(), stiffness, stiffness, overlap.millimetres());
    }

    private static void check(Tube tip, Tube hosel, Stress adhesive, Length overlap) {
        Require.given("tip", tip);
        Require.given("hosel", hosel);
        Tube.modulus("adhesive", adhesive);
        Length finest = Length.ofMicrometres(1);
        Require.between("overlap", overlap, finest, Length.ofMillimetres(3000));
        Require.that(
                !hosel.inside().minus(tip.outside()).lessThan(finest),
                "hosel",
                "must leave room for adhesive around a tip of " + tip.outside(),
                hosel.inside());
    }

    private static double radius(Tube tip, Tube hosel) {
        return (tip.outside().millimetres() + hosel.inside().millimetres()) / 4;
    }

    private static double thickness(Tube tip, Tube hosel) {
        return (hosel.inside().millimetres() - tip.outside().millimetres()) / 2;
    }

    private static ShearLag of(double line, double first, double second, double length) {
        double w = Math.sqrt(line / first + line / second);
        double x = w * length / 2;
        double tanh = StrictMath.tanh(x);
        double even = x < SHORTEST ? 1 : x / tanh;
        double skew = (second - first) / (second + first) * x * tanh;
        return new ShearLag(w, Math.max(0, even + skew), Math.max(0, even - skew));
    }

    /**
     * The greater of the two ends.
     *
     * @return peak over mean
     */
    public double peak() {
        return Math.max(atMouth, atBottom);
    }
}
